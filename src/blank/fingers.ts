/**
 * Which fingers to put on the brake for the last bends of a pan: they stand between the walls folded first, so their
 * widths together fill the inside length less a gap. Exact over all choices, widths taken to the nearest 0.001 mm:
 * fewest fingers first, then the widest fill.
 */
import type { Mm } from "../units/quantity.ts";

export interface FingerStock {
  readonly widthMm: Mm;
  /** How many of this width the brake has. */
  readonly count: number;
}

export interface FingerGap {
  /** Room that must stay free between the walls, both ends together: walls lean in and have a radius inside. */
  readonly leastMm: Mm;
  /** Length at most that may go without a finger over it, both ends together, or the ends of the bend bow. */
  readonly mostMm: Mm;
}

export interface FingerChoice {
  /** Widths from wide to narrow, one for each finger. */
  readonly widthsMm: readonly Mm[];
  readonly filledMm: Mm;
  /** What stays open, both ends together. */
  readonly gapMm: Mm;
}

/** Way to a filled length: the finger added last, and the fewest fingers that got there. */
interface Fill {
  readonly fingers: number;
  readonly widthUm: number;
  readonly before: Fill | undefined;
}

/** More different lengths than this to look through would keep a page waiting. */
const MOST_FILLS = 2_000_000;

/** A whole number of 0.001 mm must not be lost to the last bit of a double. */
const HAIR = 1e-6;

const EMPTY: Fill = { fingers: 0, widthUm: 0, before: undefined };

/** Play beside the walls, and what may go without a finger at each end. Common practice, no source. */
const PLAY_MM: Mm = 0.5;
const BARE_END_MM: Mm = 6;

/**
 * The gap to leave between walls that were folded with an inside radius: the fingers stand on the flat of the bottom,
 * clear of both radii.
 * @example gapBesideWalls(1) // { leastMm: 2.5, mostMm: 14 }
 */
export function gapBesideWalls(insideRadiusMm: Mm): FingerGap {
  const leastMm = 2 * insideRadiusMm + PLAY_MM;
  return { leastMm, mostMm: 2 * insideRadiusMm + 2 * BARE_END_MM };
}

/**
 * The fewest fingers that fill an inside length within the gap, the widest fill among equals; undefined where no
 * choice does.
 * @throws RangeError when a width or the length is not above zero, a count not whole, or the gap turned round
 * @example chooseFingers([{ widthMm: 100, count: 2 }, { widthMm: 50, count: 1 }], 152, { leastMm: 1, mostMm: 6 }).widthsMm // [100, 50]
 */
export function chooseFingers(
  stock: readonly FingerStock[],
  insideLengthMm: Mm,
  gap: FingerGap,
): FingerChoice | undefined {
  mustBeSound(stock, insideLengthMm, gap);
  const most = Math.floor((insideLengthMm - gap.leastMm) * 1000 + HAIR);
  const least = Math.max(1, Math.ceil((insideLengthMm - gap.mostMm) * 1000 - HAIR));
  const fills = allFills(stock, most, least);
  let best: { readonly filledUm: number; readonly fill: Fill } | undefined;
  for (const [filledUm, fill] of fills) {
    if (filledUm < least) continue;
    const fewer = best === undefined || fill.fingers < best.fill.fingers;
    const wider = best !== undefined && fill.fingers === best.fill.fingers && filledUm > best.filledUm;
    if (fewer || wider) best = { filledUm, fill };
  }
  if (best === undefined) return undefined;
  const filledMm = best.filledUm / 1000;
  return { widthsMm: widthsOf(best.fill), filledMm, gapMm: tidy(insideLengthMm - filledMm) };
}

/** Every length up to `most` that some fingers fill, with the fewest fingers that do. */
function allFills(stock: readonly FingerStock[], most: number, least: number): ReadonlyMap<number, Fill> {
  const sorted = [...stock].sort((a, b) => b.widthMm - a.widthMm);
  let stillToComeUm = sorted.reduce((sum, one) => sum + Math.round(one.widthMm * 1000) * one.count, 0);
  let fills = new Map<number, Fill>([[0, EMPTY]]);
  for (const { widthMm, count } of sorted) {
    const widthUm = Math.round(widthMm * 1000);
    stillToComeUm -= widthUm * count;
    const longer = new Map<number, Fill>();
    for (const [filledUm, fill] of fills) {
      let reached: Fill = fill;
      for (let taken = 0; taken <= count; taken += 1) {
        const length = filledUm + taken * widthUm;
        if (length > most) break;
        if (taken > 0) reached = { fingers: reached.fingers + 1, widthUm, before: reached };
        // What the fingers still to come can't bring up to the least is no use.
        if (length + stillToComeUm < least) continue;
        const known = longer.get(length);
        if (known === undefined || reached.fingers < known.fingers) longer.set(length, reached);
      }
    }
    if (longer.size > MOST_FILLS) throw new RangeError("too many different finger widths to look through");
    fills = longer;
  }
  return fills;
}

function widthsOf(fill: Fill): readonly Mm[] {
  const widths: Mm[] = [];
  for (let at: Fill | undefined = fill; at?.before !== undefined; at = at.before)
    widths.push(at.widthUm / 1000);
  return widths.sort((a, b) => b - a);
}

function tidy(lengthMm: Mm): Mm {
  return Math.round(lengthMm * 1e6) / 1e6;
}

function mustBeSound(
  stock: readonly FingerStock[],
  insideLengthMm: Mm,
  { leastMm, mostMm }: FingerGap,
): void {
  const sound = stock.every(({ widthMm, count }) => widthMm > 0 && Number.isInteger(count) && count >= 0);
  if (!sound) throw new RangeError("a finger needs a width above zero and a whole count");
  if (!(insideLengthMm > 0)) throw new RangeError("the inside length must be above zero");
  if (!(leastMm >= 0 && mostMm >= leastMm)) {
    throw new RangeError("the gap's least must be zero or more, and its most no less than that");
  }
}
