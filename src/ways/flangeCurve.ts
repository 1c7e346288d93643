/**
 * The longest return flange of a channel for every web on a brake, at one angle: a limit of the verdict for each web,
 * and more webs wherever the line between two of them would stray. Outside dimensions.
 * Bound: each limit to 0.005 mm of the flange; between two webs the true limit is within 0.05 mm of the line, or 1/8 mm of web.
 */
import type { Brake } from "../brake/brake.ts";
import { leastFlangeMm, leastGripMm } from "../motion/holds.ts";
import { seatFor } from "../motion/seat.ts";
import type { Bend } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { type BendingSheet, channel, channelBend } from "./channel.ts";
import { folds } from "./folds.ts";
import { largestPassing } from "./limit.ts";
import { Machines } from "./machines.ts";

export interface FlangeLimit {
  readonly webMm: Mm;
  /** Longest flange; null where none at all can be made, `mostMm` of the range where nothing stops it. */
  readonly flangeMm: Mm | null;
}

export interface FlangeRange {
  readonly mostWebMm: Mm;
  readonly mostFlangeMm: Mm;
  /** Webs between which the curve is looked into. */
  readonly webs: number;
}

const TOLERANCE_MM: Mm = 0.005;
/** Flanges are tried so far apart, from the shortest up. */
const SCAN_MM: Mm = 3;
/** Shortest flat that is tried between two bends, or at an edge. */
const LEAST_FLAT_MM: Mm = 0.2;
const STRAY_MM: Mm = 0.05;
const NARROWEST_MM: Mm = 0.125;

/** Longest flange for one web; null where not even the shortest can be made. */
export function longestFlange(
  brake: Brake,
  sheet: BendingSheet,
  { angleDeg, webMm }: { readonly angleDeg: Deg; readonly webMm: Mm },
  mostFlangeMm: Mm,
  machines: Machines = new Machines(),
): Mm | null {
  const bend = channelBend(brake, sheet, angleDeg);
  if (bend === undefined) return null;
  const made = (flangeMm: Mm) => {
    const part = channel(sheet, bend, webMm, flangeMm);
    return part !== undefined && folds({ part, brake }, 0, machines);
  };
  const shortest = shortestFlats(brake, sheet, bend, webMm)
    .map((flatMm) => bend.bendSetbackMm + flatMm)
    .find((flangeMm) => flangeMm < mostFlangeMm && made(flangeMm));
  if (shortest === undefined) return null;
  const passes = (more: Mm) => made(shortest + more);
  const most = mostFlangeMm - shortest;
  return shortest + largestPassing({ passes, most, first: SCAN_MM, tolerance: TOLERANCE_MM });
}

/** Flats that a flange may start from: the shortest tried, what the leaf needs to push, what the clamp needs to grip. */
function shortestFlats(brake: Brake, sheet: BendingSheet, bend: Bend, webMm: Mm): Mm[] {
  const grip = leastGripMm(brake, sheet.thicknessMm);
  const part = channel(sheet, bend, webMm, bend.bendSetbackMm + grip);
  if (part === undefined) return [];
  const push = leastFlangeMm(brake, seatFor(part, brake, 0, "end"));
  return [LEAST_FLAT_MM, push, grip].toSorted((a, b) => a - b);
}

/** The whole curve, webs from the narrowest that can be bent to the widest of the range. */
export function flangeCurve(
  brake: Brake,
  sheet: BendingSheet,
  angleDeg: Deg,
  range: FlangeRange,
): FlangeLimit[] {
  const machines = new Machines();
  const limitAt = (webMm: Mm): FlangeLimit => ({
    webMm,
    flangeMm: longestFlange(brake, sheet, { angleDeg, webMm }, range.mostFlangeMm, machines),
  });
  const bendSetbackMm = channelBend(brake, sheet, angleDeg)?.bendSetbackMm ?? 0;
  const least = 2 * (bendSetbackMm + LEAST_FLAT_MM);
  const points = Array.from({ length: range.webs }, (_, i) =>
    limitAt(least + ((range.mostWebMm - least) * i) / (range.webs - 1)),
  );
  return points.flatMap((point, i) => {
    const next = points[i + 1];
    return next === undefined ? [point] : [point, ...between(point, next, limitAt)];
  });
}

/** Points to be put between two, where the curve leaves the line. */
function between(a: FlangeLimit, b: FlangeLimit, limitAt: (webMm: Mm) => FlangeLimit): FlangeLimit[] {
  if (b.webMm - a.webMm < NARROWEST_MM) return [];
  // Both at the end of the range, or both impossible: taken to be so between.
  if (a.flangeMm === b.flangeMm) return [];
  const middle = limitAt((a.webMm + b.webMm) / 2);
  if (a.flangeMm !== null && b.flangeMm !== null && middle.flangeMm !== null) {
    const stray = Math.abs(middle.flangeMm - (a.flangeMm + b.flangeMm) / 2);
    if (stray <= STRAY_MM) return [];
  }
  return [...between(a, middle, limitAt), middle, ...between(middle, b, limitAt)];
}
