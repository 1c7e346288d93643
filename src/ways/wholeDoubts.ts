/**
 * Whether a whole part still folds, in the order that was found, when its sizes were read wrong by so much: each size alone,
 * both ways, and all together. Each mix is a job of its own; mixes between them are not looked at.
 */
import { checkWhole } from "../answer/wholeCheck.ts";
import { wholeJobOf } from "../jobFile/readWhole.ts";
import type { WholeAnswer, WholeDoubts } from "../jobFile/wholeAnswer.ts";
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import { withKeys } from "../jobFile/wholeWay.ts";
import { writtenLength } from "../jobFile/writtenLength.ts";
import { SearchStopped, type Watch } from "../order/judge.ts";
import type { Mm } from "../units/quantity.ts";
import { type Sized, sizesOf } from "./wholeSizes.ts";

/** Sizes of a whole part that can be read wrong; a drawn pattern has none. */
export function doubtfulSizes(file: WholeFile): Sized[] {
  const { lips, walls, over } = sizesOf(file);
  return [...over, ...walls, ...lips];
}

/** Judges `answer`'s order with the sizes off by `byMm`. */
export function wholeDoubts(file: WholeFile, answer: WholeAnswer, byMm: Mm, watch?: Watch): WholeDoubts {
  const sizes = doubtfulSizes(file);
  const order = answer.order.map(({ bends, clampedAt }) => ({
    bends: [...bends],
    clampedAt: [...clampedAt],
  }));
  const mixes = [sizes, ...sizes.map((size) => [size])].flatMap((off) => [
    { off, mm: byMm },
    { off, mm: -byMm },
  ]);
  let [worst, reached] = [null as WholeDoubts["worst"], Number.POSITIVE_INFINITY];
  const deciding = new Set<string>();
  for (const [i, { off, mm }] of mixes.entries()) {
    if (watch?.stopped()) throw new SearchStopped();
    watch?.progress(i / mixes.length);
    const changes = off.flatMap(({ paths, mm: size }) =>
      paths.map((path) => ({ path, to: writtenLength(size + mm, file.units) })),
    );
    const read = wholeJobOf(withKeys(file, [...changes, { path: ["order"], to: order }]));
    const stops = read.ok ? checkWhole(read.job).order.find(({ verdict }) => verdict === "hits") : undefined;
    const folds = read.ok && !stops;
    if (off.length === 1 && folds !== (answer.verdict !== "hits")) deciding.add(off[0]!.what);
    const share = stops ? stops.reached / stops.overbend : 0;
    if (folds || share >= reached) continue;
    reached = share;
    worst = { sizes: off.map(({ what }) => what), off: mm, bends: stops?.bends ?? [] };
  }
  return { asRead: answer.verdict, by: byMm, worst, deciding: [...deciding], mixesTried: mixes.length };
}
