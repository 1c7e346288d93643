/**
 * Changes of a whole part: walls, lips and ends added and taken away, fingers, and the way from a section to a box and back.
 * Sizes to start from are usual ones, in the job's unit.
 */

import { type JobFile, setAt, type Typed } from "./jobFile.ts";
import { newJob } from "./newJob.ts";
import type { EndFile, FingerFile, LipFile, Side } from "./wholeFile.ts";

type Units = JobFile["units"];

const usual = (units: Units, mm: Typed, inch: Typed): Typed => (units === "in" ? inch : mm);

/** Fingers that a shop may have: to be replaced by one's own. */
export function usualFingers(units: Units): readonly FingerFile[] {
  const widths: readonly (readonly [Typed, Typed, number])[] = [
    [100, 4, 2],
    [75, 3, 1],
    [50, 2, 2],
    [40, "1 1/2", 1],
    [25, 1, 2],
    [20, "3/4", 1],
    [10, "1/2", 2],
  ];
  return widths.map(([mm, inch, count]) => ({ width: usual(units, mm, inch), count }));
}

/** A job whose clamp has fingers, so that walls can stand between them. */
function onFingers(file: JobFile): JobFile {
  const { clamp } = file.brake;
  return clamp.fingers || clamp.length
    ? file
    : setAt(file, ["brake", "clamp", "fingers"], usualFingers(file.units));
}

const withoutOrder = ({ order: _order, finishByHand: _byHand, ...file }: JobFile): JobFile => file;

/** The job with a plain box in the place of its part. */
export function asBox(file: JobFile): JobFile {
  const { units } = file;
  const height = usual(units, 20, "3/4");
  const { ends: _ends, spans: _spans, pattern: _pattern, length: _length, ...sheet } = file.part;
  const { grain: _grain, doubts: _doubts, cutOuts: _cut, overall: _overall, ...part } = sheet;
  const box = {
    width: usual(units, 120, 5),
    depth: usual(units, 80, 3),
    walls: { left: height, right: height, front: height, back: height },
  };
  return onFingers(withoutOrder({ ...file, part: { ...part, flats: [], bends: [], box } }));
}

/** The section with room for ends, none of them there yet. */
export function withEnds(file: JobFile): JobFile {
  const length = file.part.length ?? usual(file.units, 150, 6);
  const { cutOuts: _cut, ...part } = file.part;
  return onFingers(withoutOrder({ ...file, part: { ...part, length, ends: [] } }));
}

/** The section alone again. */
export function asSection(file: JobFile): JobFile {
  const { ends: _ends, spans: _spans, ...part } = file.part;
  return part.bends.length > 0 ? withoutOrder({ ...file, part }) : file;
}

/** A new box with the sheet and the brake that were used last. */
export function newBox(last: JobFile): JobFile {
  return setAt(asBox(newJob(last)), ["part", "name"], "New box");
}

/** The height of a wall that is added: that of another, else a usual one. */
export function withWall(file: JobFile, side: Side): JobFile {
  const { walls = {} } = file.part.box ?? {};
  const [other] = Object.values(walls);
  const height = typeof other === "object" ? other.height : (other ?? usual(file.units, 20, "3/4"));
  return withoutOrder(setAt(file, ["part", "box", "walls", side], height));
}

/** A lip to add to a wall or an end. */
export function newLip(units: Units, turn: NonNullable<LipFile["turn"]>): LipFile {
  const lip = { size: usual(units, 10, "3/8"), turn };
  // Of an end the angle must be said; a wall's lip stands at 90° where it isn't.
  return turn === "in" || turn === "out" ? lip : { ...lip, angle: 90 };
}

/** The section with an end on a flat. */
export function withEnd(file: JobFile, flat: number, at: EndFile["at"]): JobFile {
  const ends = file.part.ends ?? [];
  const size = ends[0]?.size ?? usual(file.units, 20, "3/4");
  const end: EndFile = { flat, at, size, angle: 90, turn: "up" };
  return withoutOrder(setAt(file, ["part", "ends"], [...ends, end]));
}

/** The job without what stands at a key, or in a list at a place. Its order no longer fits its bends. */
export function without(file: JobFile, path: readonly (string | number)[]): JobFile {
  const at = path.at(-1);
  if (typeof at !== "number") return withoutOrder(setAt(file, path, undefined));
  const listPath = path.slice(0, -1);
  const list = listPath.reduce<unknown>(
    (value, key) => (value as Record<string | number, unknown>)[key],
    file,
  );
  return withoutOrder(setAt(file, listPath, (list as unknown[]).toSpliced(at, 1)));
}
