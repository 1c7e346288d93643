/**
 * The brake: clamp first, because it decides most, then leaf, bed and the rest. The figures are guesses until they
 * are measured, and say so; the guide shows how.
 */
import { Choice } from "../fields/choice.tsx";
import { CornerTable } from "../fields/cornerTable.tsx";
import { DayField } from "../fields/day.tsx";
import { Field } from "../fields/field.tsx";
import { bedMeasures, bedProfile, leafMeasures, leafProfile } from "../fields/rectangle.ts";
import { usePage } from "../page.ts";
import { withClampKind } from "../store/brakeShelf.ts";
import type { ClampFile, JobFile, Profile, Typed } from "../store/jobFile.ts";
import { setAt } from "../store/jobFile.ts";
import { BrakePicture } from "./brakePicture.tsx";
import { BrakeShelfPanel } from "./brakeShelfPanel.tsx";
import { ClampFields } from "./clampFields.tsx";
import { BrakeDoubts, FrameFields } from "./frameFields.tsx";
import { Guide } from "./guide.tsx";

const CLAMPS = [
  { value: "finger", words: "Finger" },
  { value: "bar", words: "Clamp bar" },
  { value: "profile", words: "Own profile" },
] as const;

export function BrakePanel() {
  const { store, snapshot } = usePage();
  const { file } = snapshot;
  const { clamp } = file.brake;
  const choose = (type: ClampFile["type"]) => {
    if (type !== clamp.type)
      store.reshelve((shelf) => withClampKind(shelf, type), `change the clamp to ${type}`);
  };
  return (
    <section class="panel" aria-labelledby="brake-heading">
      <h2 id="brake-heading">Brake</h2>
      <BrakeShelfPanel />
      <div class="fields">
        <Field label="Brake’s name" path={["brake", "name"]} kind="words" wide />
        <DayField
          label="Measured on"
          value={file.brake.measured}
          onChoose={(day) => store.set(["brake", "measured"], day, "say when the brake was measured")}
        />
      </div>
      <Choice label="Clamp" options={CLAMPS} value={clamp.type} onChoose={choose} />
      <BrakePicture />
      <ClampFields />
      <LeafAndBed />
      <NoseSetback />
      <div class="fields">
        <Field label="Lift" path={["brake", "lift"]} kind="length" note="How far the clamp opens" />
        <label class="tick">
          <input
            type="checkbox"
            checked={file.brake.openEnds}
            onChange={(event) =>
              store.set(["brake", "openEnds"], event.currentTarget.checked, "change the open ends")
            }
          />
          <span>Ends open: the part can slide out sideways</span>
        </label>
      </div>
      <MoreOfTheBrake />
      <Guide />
    </section>
  );
}

const SETBACKS = [
  { value: "auto", words: "For each bend" },
  { value: "one", words: "One for all bends" },
  { value: "set", words: "As set on the brake" },
] as const;

/** How the nose is set: worked out for each bend, once for all, or a figure measured on the brake. */
function NoseSetback() {
  const { store, snapshot, standing } = usePage();
  const { brake, units } = snapshot.file;
  const typed = brake.setback ?? "auto";
  const how = typed === "auto" || typed === "one" ? typed : "set";
  const likely = standing.job?.part.bends[0]?.noseSetbackMm;
  const choose = (value: (typeof SETBACKS)[number]["value"]) => {
    const figure = likely === undefined ? 0 : Number((units === "in" ? likely / 25.4 : likely).toFixed(3));
    const next = value === "auto" ? undefined : value === "one" ? "one" : figure;
    store.set(["brake", "setback"], next, "change how the nose is set");
  };
  return (
    <>
      <Choice label="Set the nose back" options={SETBACKS} value={how} onChoose={choose} />
      <p class="hint">
        {how === "auto"
          ? "The nose is set anew for each bend, by its radius and angle. Steps say how far."
          : how === "one"
            ? "The largest setback is kept for all bends; milder bends get a larger radius."
            : "The nose stays where you measured it; it decides the radius of each bend."}
      </p>
      {how === "set" ? (
        <div class="fields">
          <Field
            label="Nose setback"
            path={["brake", "setback"]}
            kind="length"
            note="From the bed’s front edge back to the nose; less than 0 over the leaf"
          />
        </div>
      ) : null}
    </>
  );
}

function LeafAndBed() {
  const { snapshot } = usePage();
  const { leaf, bed } = snapshot.file.brake;
  const leafPath = ["brake", "leaf", "profile"] as const;
  const bedPath = ["brake", "bed", "profile"] as const;
  const asLeaf = leafMeasures(leaf.profile);
  const asBed = bedMeasures(bed.profile);
  const leafNow = (file: JobFile) => leafMeasures(file.brake.leaf.profile) ?? { face: "", edge: "" };
  const bedNow = (file: JobFile) => bedMeasures(file.brake.bed.profile) ?? { width: "", height: "" };
  const put = (path: readonly string[], profile: Profile) => (file: JobFile) => setAt(file, path, profile);
  const leafField = (face: (f: JobFile, v: Typed) => Profile) => (file: JobFile, value: Typed) =>
    put(leafPath, face(file, value))(file);
  const bedField = (face: (f: JobFile, v: Typed) => Profile) => (file: JobFile, value: Typed) =>
    put(bedPath, face(file, value))(file);
  return (
    <>
      <div class="fields">
        {asLeaf ? (
          <>
            <Field
              label="Leaf face"
              path={[...leafPath, 1, 0]}
              kind="length"
              note="How far the leaf reaches up the flange"
              through={{
                show: (f) => leafNow(f).face,
                put: leafField((f, v) => leafProfile(v, leafNow(f).edge)),
              }}
            />
            <Field
              label="Leaf thickness"
              path={[...leafPath, 0, 1]}
              kind="length"
              through={{
                show: (f) => leafNow(f).edge,
                put: leafField((f, v) => leafProfile(leafNow(f).face, v)),
              }}
            />
          </>
        ) : null}
        <Field
          label="Leaf swing"
          unit="°"
          path={["brake", "leaf", "swing"]}
          kind="angle"
          note="Largest leaf angle"
        />
        {asBed ? (
          <>
            <Field
              label="Bed depth"
              path={[...bedPath, 0, 0]}
              kind="length"
              note="Front edge to the back"
              through={{
                show: (f) => bedNow(f).width,
                put: bedField((f, v) => bedProfile(v, bedNow(f).height)),
              }}
            />
            <Field
              label="Bed height"
              path={[...bedPath, 0, 1]}
              kind="length"
              through={{
                show: (f) => bedNow(f).height,
                put: bedField((f, v) => bedProfile(bedNow(f).width, v)),
              }}
            />
          </>
        ) : null}
      </div>
      {asLeaf ? null : <CornerTable label="Leaf at rest" path={leafPath} />}
      {asBed ? null : <CornerTable label="Bed" path={bedPath} />}
    </>
  );
}

function MoreOfTheBrake() {
  const { store, snapshot } = usePage();
  const { brake, units } = snapshot.file;
  const frame = brake.frame ?? [];
  const corner = (x: number, y: number): readonly [number, number] =>
    units === "in" ? [x, y] : [x * 25, y * 25];
  const addFrame = () => {
    const block: Profile = [corner(-6, 3), corner(-4, 3), corner(-4, 4), corner(-6, 4)];
    store.set(["brake", "frame"], [...frame, block], "add a frame piece");
  };
  const rate = () => {
    const rated = {
      thickness: units === "in" ? "16 ga steel" : 1.5,
      length: units === "in" ? 48 : 1200,
      yield: 250,
    };
    store.set(
      ["brake", "rated"],
      brake.rated ? undefined : rated,
      brake.rated ? "take the rating away" : "add a rating",
    );
  };
  return (
    <details class="more">
      <summary>More of the brake: pivot, grip, length, doubts, rating, frame, corners, margin</summary>
      <div class="fields">
        <Field
          label="Pivot x"
          path={["brake", "leaf", "pivot", 0]}
          kind="length"
          through={{
            show: (f) => f.brake.leaf.pivot?.[0] ?? 0,
            put: (f, v) => setAt(f, ["brake", "leaf", "pivot"], [v, f.brake.leaf.pivot?.[1] ?? 0]),
          }}
        />
        <Field
          label="Pivot y"
          path={["brake", "leaf", "pivot", 1]}
          kind="length"
          note="From the bed’s front top edge; y up"
          through={{
            show: (f) => f.brake.leaf.pivot?.[1] ?? 0,
            put: (f, v) => setAt(f, ["brake", "leaf", "pivot"], [f.brake.leaf.pivot?.[0] ?? 0, v]),
          }}
        />
        <Field
          label="Least grip"
          path={["brake", "leastGrip"]}
          kind="length"
          optional="usual"
          note="Sheet that the clamp must hold; 0 asks for none"
        />
        <Field
          label="Least flange"
          path={["brake", "leastFlange"]}
          kind="length"
          optional="usual"
          note="Sheet that must lie on the leaf; 0 asks for none"
        />
        <Field
          label="Length of the brake"
          path={["brake", "length"]}
          kind="length"
          optional="not given"
          note="Of bed and leaf, along the bend"
        />
        <Field
          label="Margin"
          path={["margin"]}
          kind="length"
          optional="usual"
          note="Less than this to spare is tight"
        />
      </div>
      {brake.rated ? (
        <div class="fields">
          <Field label="Rated thickness" path={["brake", "rated", "thickness"]} kind="thickness" />
          <Field label="Rated length" path={["brake", "rated", "length"]} kind="length" />
          <Field
            label="Yield it is rated for"
            unit="MPa"
            path={["brake", "rated", "yield"]}
            kind="strength"
          />
        </div>
      ) : null}
      <div class="row">
        <button type="button" onClick={rate}>
          {brake.rated ? "Take the rating away" : "Add the maker’s rating"}
        </button>
        <button type="button" onClick={addFrame}>
          Add a frame piece
        </button>
      </div>
      {frame.map((_, i) => (
        <FrameFields key={i} index={i} />
      ))}
      <BrakeDoubts />
      <CornerTable label="Leaf at rest, corners" path={["brake", "leaf", "profile"]} />
      <CornerTable label="Bed, corners" path={["brake", "bed", "profile"]} />
    </details>
  );
}
