/**
 * Traces a clamp's profile from a photo, right on the worksheet: two points on the ruler, round the outline, two
 * points on the underside. The picture stays in this browser's memory and is gone with the page.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import { parseLength } from "../../src/units/length.ts";
import { Choice } from "../fields/choice.tsx";
import { lengthLabel } from "../fields/typed.ts";
import { usePage } from "../page.ts";
import { withArrival } from "../store/brakeShelf.ts";
import { openJob } from "../store/shelf.ts";
import { HEAD_BYTES, photoHead } from "../trace/photoHead.ts";
import { asProfile, measured } from "../trace/place.ts";
import { type Spot, traced } from "../trace/traced.ts";
import { type Mode, TracePicture } from "./tracePicture.tsx";

interface Marks {
  readonly scale: readonly Spot[];
  readonly square: readonly Spot[];
  readonly outline: readonly Spot[];
  readonly level: readonly Spot[];
}

const NONE: Marks = { scale: [], square: [], outline: [], level: [] };
const MODES = [
  { value: "scale", words: "1 Ruler" },
  { value: "outline", words: "2 Outline" },
  { value: "level", words: "3 Underside" },
  { value: "square", words: "Photo aslant" },
] as const;
const DO: Readonly<Record<Mode, string>> = {
  scale: "Click two points on the ruler, far apart.",
  outline: "Click round the clamp's side. Drag a point to move it; the arrow keys move it finely.",
  level: "Click two points on the underside, to level it.",
  square:
    "Click the four corners of a square or a sheet of paper held to the clamp’s side, in their order around. They take the slant out, and no ruler is needed.",
};
const LARGEST_FILE = 40_000_000;
/** Unpacked a picture takes four bytes a point: 400 MB. */
const MOST_POINTS = 100_000_000;

/** Why a file can't be traced, or null; told from its first bytes, before the browser unpacks it. */
async function whyNot(file: File): Promise<string | null> {
  if (file.size > LARGEST_FILE || !file.type.startsWith("image/"))
    return "that is not a picture of up to 40 MB.";
  const bytes = await file.slice(0, HEAD_BYTES).arrayBuffer();
  const head = photoHead(new Uint8Array(bytes));
  if (head === null)
    return "the picture could not be read. Photos are JPEG, PNG, WebP, GIF, BMP, AVIF or HEIC.";
  const millions = (head.width * head.height) / 1e6;
  if (head.width * head.height <= MOST_POINTS) return null;
  return `the picture is too large, ${Math.round(millions)} million points; up to 100 million can be traced.`;
}

export function TracePanel() {
  const { store, snapshot } = usePage();
  const { units } = snapshot.file;
  const [picture, setPicture] = useState<{
    readonly address: string;
    readonly width: number;
    readonly height: number;
  } | null>(null);
  const [mode, setMode] = useState<Mode>("scale");
  const [marks, setMarks] = useState<Marks>(NONE);
  const [past, setPast] = useState<readonly Marks[]>([]);
  const [apart, setApart] = useState("");
  const [wide, setWide] = useState("");
  const [high, setHigh] = useState("");
  const [said, setSaid] = useState("");
  const [radius, setRadius] = useState("");
  const [noseAt, setNoseAt] = useState<"right" | "left">("right");
  const address = useRef<string | null>(null);
  const latest = useRef<File | null>(null);

  useEffect(() => () => void (address.current && URL.revokeObjectURL(address.current)), []);

  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    latest.current = file;
    const why = await whyNot(file).catch(() => "the picture could not be read.");
    if (why !== null) {
      store.say(`${file.name}: ${why}`);
      return;
    }
    // Another was asked for meanwhile.
    if (latest.current !== file) return;
    const made = URL.createObjectURL(file);
    const image = new Image();
    image.onload = () => {
      if (latest.current !== file) {
        URL.revokeObjectURL(made);
        return;
      }
      // The one before and its marks stay until this one can be shown.
      if (address.current) URL.revokeObjectURL(address.current);
      address.current = made;
      setPicture({ address: made, width: image.naturalWidth, height: image.naturalHeight });
      setMarks(NONE);
      setPast([]);
      setMode("scale");
    };
    image.onerror = () => {
      URL.revokeObjectURL(made);
      store.say(`${file.name}: the picture could not be read.`);
    };
    image.src = made;
  };
  const change = (next: Marks, remember: boolean) => {
    if (remember) setPast([...past, marks].slice(-200));
    setMarks(next);
  };
  const back = () => {
    const before = past.at(-1);
    if (before === undefined) return;
    setMarks(before);
    setPast(past.slice(0, -1));
  };

  const result = traced({
    ...marks,
    apartMm: parseLength(apart, units),
    squareMm: { wide: parseLength(wide, units), high: parseLength(high, units) },
    noseAt,
    noseRadiusMm: parseLength(radius, units),
  });
  const take = () => {
    if (!result.ok) return;
    const profile = asProfile(result.corners, units);
    const noseRadiusMm = parseLength(radius, units);
    store.reshelve((shelf) => {
      const { file } = openJob(shelf);
      const noseRadius = noseRadiusMm ? measured(noseRadiusMm, units) : (file.brake.clamp.noseRadius ?? 0);
      const clamp = { type: "profile" as const, noseRadius, profiles: [profile] };
      const arrival = { name: `${file.brake.name}, traced`, came: "traced from a photo" };
      return withArrival(shelf, { ...file, brake: { ...file.brake, clamp } }, arrival);
    }, "take the traced profile");
    setPicture(null);
  };
  const width = result.ok
    ? Math.max(...result.corners.map((c) => c.x)) - Math.min(...result.corners.map((c) => c.x))
    : 0;
  const height = result.ok ? Math.max(...result.corners.map((c) => c.y)) : 0;

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a place to drop a photo; the button inside does the same by key
    <div
      class={`trace${picture ? " open" : ""}`}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        void open(event.dataTransfer?.files[0]);
      }}
      onKeyDown={(event) => {
        if (picture === null || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
        event.preventDefault();
        event.stopPropagation();
        back();
      }}
    >
      <label class="button">
        Trace from a photo
        <input
          type="file"
          class="heard"
          accept="image/*"
          onChange={(event) => {
            void open(event.currentTarget.files?.[0]);
            event.currentTarget.value = "";
          }}
        />
      </label>
      {picture ? (
        <div class="tracing">
          <p class="hint">
            The photo: clamp seen square from the side, a ruler in the same plane. It never leaves this page.
          </p>
          <Choice label="Mark" options={MODES} value={mode} onChoose={setMode} />
          <p role="status">{DO[mode]}</p>
          <TracePicture picture={picture} mode={mode} marks={marks} onChange={change} onSay={setSaid} />
          <p role="status" class="note">
            {said}
          </p>
          <div class="fields">
            {marks.square.length > 0 || mode === "square" ? (
              <>
                <LengthField label="First to second corner" units={units} value={wide} onType={setWide} />
                <LengthField label="Second to third corner" units={units} value={high} onType={setHigh} />
              </>
            ) : (
              <LengthField
                label="Distance of the two ruler points"
                units={units}
                value={apart}
                onType={setApart}
              />
            )}
            <LengthField
              label="Nose radius, if the corner was clicked sharp"
              units={units}
              value={radius}
              usual="as traced"
              onType={setRadius}
            />
            <Choice
              label="The nose points"
              options={[
                { value: "right", words: "right" },
                { value: "left", words: "left" },
              ]}
              value={noseAt}
              onChoose={setNoseAt}
            />
          </div>
          <p role="status" class="traced">
            {result.ok
              ? `Traced: ${lengthLabel(width, units)} deep, ${lengthLabel(height, units)} high, ${result.corners.length} corners.`
              : result.missing}
          </p>
          <div class="row">
            <button type="button" disabled={!result.ok} onClick={take}>
              Make it the clamp
            </button>
            <button type="button" disabled={past.length === 0} onClick={back}>
              Take the last mark back
            </button>
            <button type="button" onClick={() => setPicture(null)}>
              Leave the photo
            </button>
          </div>
        </div>
      ) : null}
    </div>
  );
}

/** A length that belongs to the photo, not to the job. */
function LengthField({
  label,
  units,
  value,
  usual,
  onType,
}: {
  readonly label: string;
  readonly units: string;
  readonly value: string;
  readonly usual?: string;
  readonly onType: (text: string) => void;
}) {
  return (
    <label class="field">
      <span>
        {label} <span class="unit">{units}</span>
      </span>
      <input
        type="text"
        inputMode="decimal"
        value={value}
        placeholder={usual ?? ""}
        maxLength={40}
        onInput={(event) => onType(event.currentTarget.value)}
      />
    </label>
  );
}
