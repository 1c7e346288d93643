/**
 * The clamp's own figures: a finger, a bar, or profiles of any shape that are typed, traced from a photo or read
 * from a DXF drawing.
 */
import { CornerTable } from "../fields/cornerTable.tsx";
import { Field } from "../fields/field.tsx";
import { readMm } from "../fields/typed.ts";
import { usePage } from "../page.ts";
import type { Typed, Vertex } from "../store/jobFile.ts";
import { asProfile, inNoseFrame } from "../trace/place.ts";
import { DxfImport } from "./dxfImport.tsx";
import { TracePanel } from "./tracePanel.tsx";

const at = (key: string) => ["brake", "clamp", key] as const;

/** A typed corner in mm; what can't be read counts as 0 and is told beside its field. */
function cornerOf(vertex: Vertex, units: "mm" | "in") {
  const mm = (value: Typed | undefined) => (value === undefined ? 0 : (readMm(value, "length", units) ?? 0));
  return { x: mm(vertex[0]), y: mm(vertex[1]), radius: mm(vertex[2]) };
}

function ShimField() {
  return (
    <Field
      label="Shim over the nose"
      path={at("shim")}
      kind="length"
      optional="none"
      note="Sheet folded round the nose"
    />
  );
}

function HolderFields() {
  return (
    <details class="more">
      <summary>Holder: what carries the clamp</summary>
      <div class="fields">
        <Field
          label="Holder set back"
          path={at("holderBack")}
          kind="length"
          optional="none"
          note="From the nose to its front"
        />
        <Field label="Holder height" path={at("holderHeight")} kind="length" optional="none" />
        <Field label="Holder depth" path={at("holderDepth")} kind="length" optional="none" />
      </div>
    </details>
  );
}

export function ClampFields() {
  const { store, snapshot } = usePage();
  const { clamp } = snapshot.file.brake;
  if (clamp.type === "profile") {
    const profiles = clamp.profiles ?? [];
    const moveIntoPlace = () => {
      const { units } = snapshot.file;
      const shapes = profiles.map((profile) => profile.map((vertex) => cornerOf(vertex, units)));
      const placed = inNoseFrame(shapes);
      if (placed === null)
        store.say("The profile crosses itself or goes around nothing, so it can’t be moved into place.");
      else
        store.set(
          at("profiles"),
          placed.map((corners) => asProfile(corners, units)),
          "move the profile into place",
        );
    };
    const take = (i: number) => store.set(at("profiles"), profiles.toSpliced(i, 1), "take a profile away");
    return (
      <div class="own-profile">
        <div class="fields">
          <Field
            label="Nose radius"
            path={at("noseRadius")}
            kind="length"
            note="Rounding that the sheet bends over"
          />
          <ShimField />
        </div>
        <p class="hint">Underside on y = 0, foremost point of the nose at x = 0, the body at x below 0.</p>
        <div class="row">
          <TracePanel />
          <DxfImport />
          <button type="button" onClick={moveIntoPlace}>
            Move it into place
          </button>
        </div>
        {profiles.map((_, i) => (
          <CornerTable
            key={i}
            label={`Clamp profile ${i + 1}`}
            path={["brake", "clamp", "profiles", i]}
            {...(profiles.length > 1 ? { onRemove: () => take(i) } : {})}
          />
        ))}
      </div>
    );
  }
  const finger = clamp.type === "finger";
  return (
    <>
      <div class="fields">
        {finger ? (
          <>
            <Field
              label="Nose angle"
              unit="°"
              path={at("noseAngle")}
              kind="angle"
              note="Underside to front face; 90 is square"
            />
            <Field label="Nose radius" path={at("noseRadius")} kind="length" />
            <Field label="Finger height" path={at("height")} kind="length" />
            <Field label="Foot depth" path={at("footDepth")} kind="length" />
          </>
        ) : (
          <>
            <Field label="Bar thickness" path={at("thickness")} kind="length" />
            <Field label="Bar depth" path={at("depth")} kind="length" />
            <Field label="Nose radius" path={at("noseRadius")} kind="length" />
            <Field
              label="Nose angle"
              unit="°"
              path={at("noseAngle")}
              kind="angle"
              optional="90"
              note="Less than 90: front bevelled"
            />
          </>
        )}
        <Field label="Top edge radius" path={at("topRadius")} kind="length" optional="sharp" />
        <ShimField />
      </div>
      <HolderFields />
    </>
  );
}
