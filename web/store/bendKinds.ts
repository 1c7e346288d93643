/**
 * What a bend of the file can be: a plain one by its angle from flat or between the flats, a hem, or an offset; and the change
 * from one to another. An order goes where the chain gets longer or shorter, since its steps would name other bends.
 */
import { chainFlats, inChain } from "./chain.ts";
import { withChain } from "./chainEdits.ts";
import { type BendFile, type JobFile, setAt, type Typed } from "./jobFile.ts";
import { present } from "./sieve.ts";

export type BendKind = "angle" | "included" | "closed" | "open" | "teardrop" | "offset";

export function kindOf({ hem, offset, included }: BendFile): BendKind {
  return hem ?? (offset !== undefined ? "offset" : included === undefined ? "angle" : "included");
}

/** What is left of 180°; words that are no number stay as typed. @example halfTurnLess("60") // 120 */
function halfTurnLess(angle: Typed): Typed {
  const deg = Number(String(angle).replace(",", "."));
  return Number.isFinite(deg) && String(angle).trim() !== "" ? Number((180 - deg).toFixed(6)) : angle;
}

/** The angle of a plain bend from flat as typed; undefined for a hem. */
export function angleFromFlat({ angle, included }: BendFile): Typed | undefined {
  return included === undefined ? angle : halfTurnLess(included);
}

/** Height of an offset to begin with. */
const firstOffset = (units: JobFile["units"]): Typed => (units === "in" ? "1/4" : 6);

/** The file with bend `index` (as the file counts) of another kind; what the kind has no use for goes. */
export function withKind(file: JobFile, index: number, kind: BendKind): JobFile {
  const { part, units } = file;
  const before = part.bends[index];
  if (before === undefined || kindOf(before) === kind) return file;
  const { turn, insideRadius, overbend, deduction } = before;
  const angle = angleFromFlat(before) ?? 90;
  const plain = { turn, insideRadius, overbend, deduction };
  const bend = present<BendFile>(
    kind === "angle"
      ? { angle, ...plain }
      : kind === "included"
        ? { included: halfTurnLess(angle), ...plain }
        : kind === "offset"
          ? { offset: firstOffset(units), angle, ...plain }
          : { hem: kind, turn, insideRadius, gap: kind === "closed" ? undefined : before.gap },
  );
  const bends = part.bends.with(index, bend);
  const at = inChain(part, index) + 1;
  const from = Array.from({ length: chainFlats(part) }, (_, i): number | null => i);
  if (kind === "offset") return withChain(file, part.flats, bends, from.toSpliced(at, 0, null));
  if (before.offset !== undefined) return withChain(file, part.flats, bends, from.toSpliced(at, 1));
  return setAt(file, ["part", "bends"], bends);
}

/** A plain bend, an offset or a hem to add. */
export type Addition = "bend" | "hem" | "offset";

/** At which end of the part a hem can still be added. */
export function hemEnd({ part }: JobFile): "start" | "end" | null {
  if (part.bends.at(-1)?.hem === undefined) return "end";
  return part.bends[0]?.hem === undefined ? "start" : null;
}

/** A new bend and flat at the end of the part, before a hem that closes it; a hem at an end that has none. */
export function withAddition(file: JobFile, what: Addition): JobFile {
  const { flats, bends } = file.part;
  const last = bends.findLast(({ hem }) => hem === undefined);
  const chain = Array.from({ length: chainFlats(file.part) }, (_, i): number | null => i);
  const turn = last?.turn ?? bends[0]?.turn ?? "up";
  if (what === "hem") {
    const end = hemEnd(file);
    const [flat, bend] = [file.units === "in" ? "3/8" : 10, { hem: "closed", turn } as const];
    if (end === "end") return withChain(file, [...flats, flat], [...bends, bend], [...chain, null]);
    return end === null ? file : withChain(file, [flat, ...flats], [bend, ...bends], [null, ...chain]);
  }
  const bend: BendFile =
    what === "offset"
      ? { offset: firstOffset(file.units), angle: 45, turn: "up" }
      : present({ angle: 90, turn, overbend: last?.overbend });
  const hemmed = bends.at(-1)?.hem !== undefined && bends.length > 1;
  const at = hemmed ? bends.length - 1 : bends.length;
  const flat = flats[at] ?? (file.units === "in" ? "1/2" : 12);
  const news = what === "offset" ? [null, null] : [null];
  return withChain(
    file,
    flats.toSpliced(at + 1, 0, flat),
    bends.toSpliced(at, 0, bend),
    chain.toSpliced(hemmed ? -1 : chain.length, 0, ...news),
  );
}
