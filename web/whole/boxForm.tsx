/**
 * A box on its plan: the bottom in the middle with width and depth, a wall at each side with its height, lips outside the
 * walls; corners below.
 */
import { Choice } from "../fields/choice.tsx";
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";
import { withWall } from "../store/wholeEdits.ts";
import { type CornersFile, SIDES } from "../store/wholeFile.ts";
import { EdgeKey, Standing } from "./standing.tsx";

const CORNERS = [
  { value: "open", words: "Open" },
  { value: "meet", words: "Walls meet" },
  { value: "tab", words: "Tabs" },
] as const;
const SIDES_OF_WALL = [
  { value: "inside", words: "Inside" },
  { value: "outside", words: "Outside" },
] as const;

export function BoxForm() {
  const { store, snapshot } = usePage();
  const { box } = snapshot.file.part;
  if (!box) return null;
  return (
    <>
      <section class="box-plan" aria-label="Plan of the box, seen from above, marked face up">
        <div class="bottom">
          <Field label="Width" path={["part", "box", "width"]} kind="length" note="Left to right" />
          <Field label="Depth" path={["part", "box", "depth"]} kind="length" note="Front to back" />
        </div>
        {SIDES.map((side) => (
          <div key={side} class={`side at-${side}${box.walls[side] === undefined ? " none" : ""}`}>
            {box.walls[side] === undefined ? (
              <EdgeKey
                words={`${side} wall`}
                onPress={() => store.replace((now) => withWall(now, side), `add the ${side} wall`)}
              />
            ) : (
              <Standing name={`${side} wall`} path={["part", "box", "walls", side]} kind="wall" />
            )}
          </div>
        ))}
      </section>
      <Corners corners={box.corners ?? "open"} />
    </>
  );
}

function Corners({ corners }: { readonly corners: CornersFile }) {
  const { store, snapshot } = usePage();
  const kind = typeof corners === "string" ? corners : "tab";
  const choose = (to: "open" | "meet" | "tab") => {
    const tab = snapshot.file.units === "in" ? "3/8" : 10;
    const next = to === "open" ? undefined : to === "tab" ? { tab } : to;
    store.set(["part", "box", "corners"], next, "change the corners");
  };
  return (
    <>
      <div class="row spread">
        <Choice label="Corners" options={CORNERS} value={kind} onChoose={choose} />
        {typeof corners === "object" ? (
          <Choice
            label="Tabs lie"
            options={SIDES_OF_WALL}
            value={corners.on ?? "inside"}
            onChoose={(on) => store.set(["part", "box", "corners", "on"], on, `lay the tabs ${on}`)}
          />
        ) : null}
      </div>
      <div class="fields">
        {typeof corners === "object" ? (
          <Field label="Width of the tabs" path={["part", "box", "corners", "tab"]} kind="length" />
        ) : null}
        <Field
          label="Gap"
          path={["part", "box", "gap"]}
          kind="length"
          optional={snapshot.file.units === "in" ? "0.5 mm" : "0.5"}
          note="Where lips or walls would meet"
        />
      </div>
    </>
  );
}
