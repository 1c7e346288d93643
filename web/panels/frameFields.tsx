/**
 * What is told of the brake beside its section: pieces of the frame with the stretch along which they stand, and how far off its
 * readings may be.
 */
import { capital } from "../../src/words/capital.ts";
import { CornerTable } from "../fields/cornerTable.tsx";
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";
import { type FramePiece, type JobFile, setAt, type Typed } from "../store/jobFile.ts";

type Named = Exclude<FramePiece, readonly unknown[]>;

const isNamed = (piece: FramePiece): piece is Named => "profile" in piece;
const usualName = (index: number) => `frame piece ${index + 1}`;

/** The file with a piece that has a name, and so may have a stretch, changed. */
function withPiece(file: JobFile, index: number, change: (piece: Named) => Named): JobFile {
  const piece = file.brake.frame?.[index];
  if (piece === undefined) return file;
  const named = isNamed(piece) ? piece : { name: usualName(index), profile: piece };
  return setAt(file, ["brake", "frame", index], change(named));
}

function withEnd({ along, ...piece }: Named, end: 0 | 1, value: Typed): Named {
  const ends = [along?.[0] ?? "", along?.[1] ?? ""] as [Typed, Typed];
  ends[end] = value;
  return ends.every((one) => String(one).trim() === "") ? piece : { ...piece, along: ends };
}

export function FrameFields({ index }: { readonly index: number }) {
  const { store, snapshot } = usePage();
  const frame = snapshot.file.brake.frame ?? [];
  const piece = frame[index];
  if (piece === undefined) return null;
  const path = ["brake", "frame", index];
  const name = isNamed(piece) && piece.name !== "" ? piece.name : usualName(index);
  const nameNow = (file: JobFile) => {
    const now = file.brake.frame?.[index];
    return now && isNamed(now) ? now.name : usualName(index);
  };
  const endNow = (end: 0 | 1) => (file: JobFile) => {
    const now = file.brake.frame?.[index];
    return now && isNamed(now) ? now.along?.[end] : undefined;
  };
  return (
    <>
      <div class="fields">
        <Field
          label={`Name of frame piece ${index + 1}`}
          path={[...path, "name"]}
          kind="words"
          through={{
            show: nameNow,
            put: (file, value) => withPiece(file, index, (now) => ({ ...now, name: String(value) })),
          }}
        />
        {(["from", "to"] as const).map((word, end) => (
          <Field
            key={word}
            label={`${capital(name)}, along the brake ${word}`}
            path={[...path, "along", end]}
            kind="length"
            optional={end === 0 ? "all along" : "all along it"}
            {...(end === 0 ? { note: "From the brake’s left end" } : {})}
            through={{
              show: endNow(end as 0 | 1),
              put: (file, value) => withPiece(file, index, (now) => withEnd(now, end as 0 | 1, value)),
            }}
          />
        ))}
      </div>
      <CornerTable
        label={capital(name)}
        path={[...path, ...(isNamed(piece) ? ["profile"] : [])]}
        onRemove={() => store.set(["brake", "frame"], frame.toSpliced(index, 1), "take a frame piece away")}
      />
    </>
  );
}

export function BrakeDoubts() {
  return (
    <details class="more">
      <summary>How far off the brake’s readings may be</summary>
      <p class="hint">The verdict then holds for every mix of readings within these.</p>
      <div class="fields">
        <Field
          label="Leaf angle off by"
          unit="°"
          path={["brake", "doubts", "overbend"]}
          kind="angle"
          optional="worked out"
          note="Either way of each overbend"
        />
        <Field
          label="Nose setback off by"
          path={["brake", "doubts", "setback"]}
          kind="length"
          optional="none"
          note="Either way"
        />
        <Field
          label="Nose radius off by"
          path={["brake", "doubts", "noseRadius"]}
          kind="length"
          optional="none"
          note="Either way"
        />
      </div>
    </details>
  );
}
