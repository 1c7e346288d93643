/**
 * What stands up from an edge of a face: a wall of a box or an end of a section, with its size, its lips outward, and a key at
 * its outer edge that adds another lip. Where nothing stands, the edge itself is the key that adds it.
 */
import { Choice } from "../fields/choice.tsx";
import { Field } from "../fields/field.tsx";
import { TakeAway } from "../fields/takeAway.tsx";
import { usePage } from "../page.ts";
import { getAt, type JobFile, type KeyPath, setAt } from "../store/jobFile.ts";
import { newLip, without } from "../store/wholeEdits.ts";
import type { LipFile } from "../store/wholeFile.ts";

type Turn = NonNullable<LipFile["turn"]>;

const TURNS: Readonly<Record<"wall" | "end", readonly [Turn, Turn]>> = {
  wall: ["in", "out"],
  end: ["up", "down"],
};

/** The key along an edge. */
export function EdgeKey({ words, onPress }: { readonly words: string; readonly onPress: () => void }) {
  return (
    <button type="button" class="edge-key" onClick={onPress}>
      + {words}
    </button>
  );
}

export function Standing({
  name,
  path,
  kind,
}: {
  /** "left wall", "end 1". */
  readonly name: string;
  readonly path: KeyPath;
  readonly kind: "wall" | "end";
}) {
  const { store, snapshot } = usePage();
  const { file } = snapshot;
  const value = getAt(file, path);
  const isGroup = typeof value === "object";
  const key = kind === "wall" ? "height" : "size";
  const lips = (isGroup ? ((value as { lips?: readonly LipFile[] }).lips ?? []) : []) as readonly LipFile[];
  const turns = TURNS[kind];
  /** A wall that is a height alone becomes a group for whatever is said of it besides. */
  const group = (now: JobFile) => {
    const found = getAt(now, path);
    return typeof found === "object" ? now : setAt(now, path, { height: found });
  };
  const say = (more: string, to: unknown, did: string) =>
    store.replace((now) => setAt(group(now), [...path, more], to), did);
  const addLip = () =>
    say(
      "lips",
      [...lips, newLip(file.units, lips.length === 0 ? turns[1] : turns[0])],
      `add a lip to the ${name}`,
    );
  const more = (what: string, label: string, kindOf: "angle" | "length", usual: string) => (
    <Field
      label={`${label} of the ${name}`}
      path={[...path, what]}
      kind={kindOf}
      optional={usual}
      {...(kindOf === "angle" ? { unit: "°" } : {})}
      {...(isGroup
        ? {}
        : { through: { show: () => undefined, put: (now, to) => setAt(group(now), [...path, what], to) } })}
    />
  );
  const turn = (isGroup ? (value as { turn?: string }).turn : undefined) ?? "up";
  return (
    <div class={`standing ${kind}`}>
      <div class="row tight">
        <Field
          label={name.replace(/^./, (letter) => letter.toUpperCase())}
          path={isGroup ? [...path, key] : path}
          kind="length"
        />
        <TakeAway
          what={`the ${name}`}
          onClick={() => store.replace((now) => without(now, path), `take the ${name} away`)}
        />
      </div>
      {lips.map((lip, i) => (
        <Lip key={i} name={name} path={[...path, "lips", i]} lip={lip} number={i + 1} turns={turns} />
      ))}
      <EdgeKey words={`lip on the ${name}`} onPress={addLip} />
      <details class="more">
        <summary>Angle and radius of the {name}</summary>
        {more("angle", "Angle", "angle", "90")}
        {more("insideRadius", "Inside radius", "length", "the part’s")}
        {more("overbend", "Leaf angle", "angle", "reckoned")}
        <Choice
          label={`Turn of the ${name}`}
          options={[
            { value: "up", words: "Up" },
            { value: "down", words: "Down" },
          ]}
          value={turn}
          onChoose={(to) => say("turn", to, `turn the ${name} ${to}`)}
        />
      </details>
    </div>
  );
}

function Lip({
  name,
  path,
  lip,
  number,
  turns,
}: {
  readonly name: string;
  readonly path: KeyPath;
  readonly lip: LipFile;
  readonly number: number;
  readonly turns: readonly [Turn, Turn];
}) {
  const { store } = usePage();
  const what = `lip ${number} of the ${name}`;
  // A box's lip turns in where it isn't said.
  const turn = lip.turn ?? turns[0];
  const other = turns.find((one) => one !== turn)!;
  return (
    <div class="standing-lip">
      <div class="row tight">
        <Field label={`Lip ${number} of the ${name}`} path={[...path, "size"]} kind="length" />
        <TakeAway
          what={what}
          onClick={() => store.replace((now) => without(now, path), `take ${what} away`)}
        />
      </div>
      <div class="row tight">
        <button
          type="button"
          aria-label={`Turn ${what} ${other}; it turns ${turn}`}
          onClick={() => store.set([...path, "turn"], other, `turn ${what} ${other}`)}
        >
          Turns {turn}
        </button>
      </div>
      <Field label={`Angle of ${what}`} unit="°" path={[...path, "angle"]} kind="angle" optional="90" />
    </div>
  );
}
