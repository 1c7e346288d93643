/**
 * Edits of the whole chain: take a bend away, mirror it, turn it over; and the shapes to start from.
 * A user's order, doubts and cut-outs are kept where they still have a meaning and dropped where they have none.
 */
import { chainFlats, inChain } from "./chain.ts";
import { type BlankSize, turnedCutOuts } from "./cutOuts.ts";
import { movedDoubts } from "./doubts.ts";
import { turnedEnd } from "./flats.ts";
import type { BendFile, FlatFile, JobFile, PartFile, Typed } from "./jobFile.ts";
import { present } from "./sieve.ts";

/** Which flat of the chain before each flat is after a change; null for a new one. */
export type FlatsFrom = readonly (number | null)[];

/** The flats that are left when bend `bend` of the file is taken away with the flat after it. */
export function flatsAfterRemoval(part: PartFile, bend: number): FlatsFrom {
  const after = inChain(part, bend + 1);
  const own = part.bends[bend]?.offset === undefined ? after : after - 1;
  return flatsOf(part).filter((flat) => flat !== after && flat !== own);
}

/** The flats of a part turned end for end. */
export function flatsEndForEnd(part: PartFile): FlatsFrom {
  return flatsOf(part).toReversed();
}

const flatsOf = (part: PartFile): number[] => Array.from({ length: chainFlats(part) }, (_, i) => i);

/** Takes bend `index` away with the flat after it; one bend always stays. */
export function removeBend(file: JobFile, index: number): JobFile {
  const { flats, bends } = file.part;
  if (bends.length < 2) return file;
  return withChain(
    file,
    flats.filter((_, i) => i !== index + 1),
    bends.filter((_, i) => i !== index),
    flatsAfterRemoval(file.part, index),
  );
}

/** The part turned end for end: flat 1 becomes the last; a user's order, doubts and cut-outs go along. */
export function mirror(file: JobFile, blank: BlankSize): JobFile {
  const { flats, bends, cutOuts, overall } = file.part;
  const last = chainFlats(file.part);
  const part = present({
    ...file.part,
    flats: flats.toReversed().map(turnedEnd),
    overall: overall && { ...overall, along: last + 1 - overall.along },
    // An offset begins with its other bend when it is read from the other end.
    bends: bends.toReversed().map((bend) => (bend.offset === undefined ? bend : turned(bend))),
    doubts: movedDoubts(file, flatsEndForEnd(file.part)),
    cutOuts: cutOuts && turnedCutOuts(cutOuts, blank, file.units, true),
  });
  const mirrored: JobFile = { ...file, part };
  const byHand = file.finishByHand?.map((one) => ({ ...one, bend: last - one.bend }));
  if (byHand) Object.assign(mirrored, { finishByHand: byHand });
  if (file.order === undefined) return mirrored;
  const order = file.order.map((step) => ({
    ...step,
    bend: last - step.bend,
    clamped: step.clamped === "start" ? ("end" as const) : ("start" as const),
  }));
  return { ...mirrored, order };
}

/** The marked face on the other side: every bend turns the other way, and the blank begins at its other end. */
export function turnOver(file: JobFile, blank: BlankSize): JobFile {
  const { cutOuts } = file.part;
  const bends = file.part.bends.map(turned);
  const moved = cutOuts && turnedCutOuts(cutOuts, blank, file.units, false);
  return { ...file, part: present({ ...file.part, bends, cutOuts: moved }) };
}

const turned = (bend: BendFile): BendFile => ({ ...bend, turn: bend.turn === "up" ? "down" : "up" });

/** The file with another chain; `from` says where its flats come from. */
export function withChain(
  file: JobFile,
  flats: readonly FlatFile[],
  bends: readonly BendFile[],
  from: FlatsFrom,
): JobFile {
  const { order: _order, finishByHand: _byHand, ...rest } = file;
  const { overall } = file.part;
  const along = overall && from.indexOf(overall.along - 1) + 1;
  const moved = { overall: overall && { ...overall, along: along || overall.along } };
  return {
    ...rest,
    part: present({ ...file.part, flats, bends, ...moved, doubts: movedDoubts(file, from) }),
  };
}

export interface Shape {
  readonly name: string;
  /** Flats in sixteenths of an inch, and in mm. */
  readonly sixteenths: readonly number[];
  readonly mm: readonly number[];
  readonly bends: readonly BendFile[];
}

const up = (angle: number): BendFile => ({ angle, turn: "up" });
const down = (angle: number): BendFile => ({ angle, turn: "down" });

/** Shapes to start from: the trade's own names, sizes of the observatory's small parts. */
export const SHAPES: readonly Shape[] = [
  { name: "Angle", sixteenths: [16, 16], mm: [25, 25], bends: [up(90)] },
  { name: "Channel", sixteenths: [8, 12, 8], mm: [12, 20, 12], bends: [up(90), up(90)] },
  {
    name: "Hat",
    sixteenths: [10, 14, 20, 14, 10],
    mm: [15, 22, 32, 22, 15],
    bends: [up(90), down(90), down(90), up(90)],
  },
  { name: "Z", sixteenths: [12, 16, 12], mm: [20, 25, 20], bends: [up(90), down(90)] },
  {
    name: "C with lips",
    sixteenths: [6, 16, 32, 16, 6],
    mm: [10, 25, 50, 25, 10],
    bends: [up(90), up(90), up(90), up(90)],
  },
  { name: "Drip edge", sixteenths: [48, 32, 8], mm: [75, 50, 12], bends: [down(90), up(30)] },
];

/** Sixteenths as a fraction in lowest terms. @example sixteenthWords(10) // "5/8" */
export function sixteenthWords(count: number): Typed {
  const whole = Math.floor(count / 16);
  let over = count % 16;
  if (over === 0) return whole;
  let under = 16;
  while (over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}

/** Sizes that a shape is tried in when its usual one does not fold, the nearest first. */
export const SIZES: readonly number[] = [1.25, 1.5, 2, 0.75, 3, 0.5];

/** A shape so many times as large, in whole sixteenths and millimetres. @example resized(SHAPES[0], 2).mm // [50, 50] */
export function resized(shape: Shape, times: number): Shape {
  const all = (figures: readonly number[]) =>
    figures.map((figure) => Math.max(1, Math.round(figure * times)));
  return { ...shape, sixteenths: all(shape.sixteenths), mm: all(shape.mm) };
}

/** The part with another shape's chain; metal, thickness and radius stay, doubts are the usual ones, cut-outs go. */
export function withShape(file: JobFile, shape: Shape): JobFile {
  const flats = file.units === "in" ? shape.sixteenths.map(sixteenthWords) : shape.mm;
  const changed = withChain(
    file,
    flats,
    shape.bends,
    flats.map(() => null),
  );
  const { cutOuts: _cutOuts, ...rest } = changed.part;
  // A name that the person gave stays; one that only said the shape follows it.
  const plain = /^(New part|Angle|Channel|Hat|Z|C with lips|Drip edge)( \d+)?$/.test(rest.name);
  const part: PartFile = { ...rest, name: plain ? shape.name : rest.name, dimensions: "outside" };
  return { ...changed, part };
}
