/**
 * The return flange chart of a job's brake for the job's sheet: for every web the longest return flange, at several
 * angles, and the job's own channels as points on it. Outside dimensions, plain data in mm and degrees.
 */

import type { Brake } from "../brake/brake.ts";
import type { ChartPoint, FlangeChart } from "../jobFile/flangeChart.ts";
import type { Job } from "../jobFile/job.ts";
import type { Part } from "../part/part.ts";
import { MM_PER_INCH } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import type { BendingSheet } from "./channel.ts";
import { type FlangeLimit, type FlangeRange, flangeCurve, longestFlange } from "./flangeCurve.ts";
import { Machines } from "./machines.ts";

/** Right angle first in mind, and one on either side of it. */
export const CHART_ANGLES: readonly Deg[] = [60, 90, 120];

const MOST_WEB: Readonly<Record<Job["units"], Mm>> = { in: 2 * MM_PER_INCH, mm: 50 };
const TABLE_STEP: Readonly<Record<Job["units"], Mm>> = { in: MM_PER_INCH / 8, mm: 2.5 };
/** Flanges longer than this many widest webs are as good as unlimited. */
const MOST_FLANGE_WEBS = 1.25;
const WEBS = 17;

/**
 * The chart. Angles that the leaf cannot swing to are left out.
 * @example flangeChart(job).curves[0]?.points // [{ web: 4.1, flange: 2.3 }, …]
 */
export function flangeChart(job: Job, angles: readonly Deg[] = CHART_ANGLES): FlangeChart {
  const { part, units } = job;
  const brake = asSetFor(job);
  const sheet = sheetOf(part);
  const channels = channelsOf(part);
  const widest = Math.max(MOST_WEB[units], ...channels.map(({ web, flange }) => 1.2 * Math.max(web, flange)));
  const range: FlangeRange = { mostWebMm: widest, mostFlangeMm: MOST_FLANGE_WEBS * widest, webs: WEBS };
  const step = TABLE_STEP[units];
  const webs = Array.from({ length: Math.floor(widest / step + 1e-9) }, (_, i) => (i + 1) * step);
  const machines = new Machines();
  const reachable = angles.filter((angle) => angle * sheet.overbendRatio <= brake.leaf.swingDeg);
  return {
    brake: brake.name,
    metal: part.metal.name,
    thickness: part.thicknessMm,
    insideRadius: sheet.insideRadiusMm,
    mostFlange: range.mostFlangeMm,
    webs,
    curves: reachable.map((angle) => ({
      angle,
      overbend: angle * sheet.overbendRatio,
      points: flangeCurve(brake, sheet, angle, range).map(pointOf),
      row: webs.map((web) =>
        longestFlange(brake, sheet, { angleDeg: angle, webMm: web }, range.mostFlangeMm, machines),
      ),
    })),
    part: channels.map((point) => {
      const at = { angleDeg: point.angle, webMm: point.web };
      return { ...point, longest: longestFlange(brake, sheet, at, range.mostFlangeMm, machines) };
    }),
  };
}

/** A nose kept where it is for all bends of the part stays there for other angles too. */
function asSetFor({ brake, part }: Job): Brake {
  const noseSetback = part.bends.find(({ hem }) => !hem)?.noseSetbackMm;
  return brake.noseSetback === "one" && noseSetback !== undefined ? { ...brake, noseSetback } : brake;
}

function pointOf({ webMm, flangeMm }: FlangeLimit) {
  return { web: webMm, flange: flangeMm };
}

/** The sheet as the first bend of the part forms it. */
function sheetOf({ metal, thicknessMm, kFactor, bends }: Part): BendingSheet {
  // A chart is of bends that a leaf makes whole; of a hem alone, of its first stroke.
  const hem = bends[0]?.hem;
  const bend = bends.find((one) => !one.hem);
  const range = bend?.overbendRangeDeg;
  return {
    metal,
    thicknessMm,
    kFactor,
    insideRadiusMm: bend?.insideRadiusMm ?? hem?.foldRadiusMm ?? thicknessMm,
    overbendRatio: bend ? bend.overbendDeg / bend.angleDeg : 1 / (hem?.kept ?? 1),
    ...(range && bend && { overbendRatios: [range[0] / bend.angleDeg, range[1] / bend.angleDeg] as const }),
  };
}

/** Webs between two bends that turn the same way, with the shorter of the two flats beyond, measured outside. */
function channelsOf({ flatsMm, bends }: Part): Omit<ChartPoint, "longest">[] {
  const outside = flatsMm.map(
    (flat, i) => flat + (bends[i - 1]?.bendSetbackMm ?? 0) + (bends[i]?.bendSetbackMm ?? 0),
  );
  return bends.flatMap((bend, i): Omit<ChartPoint, "longest">[] => {
    const next = bends[i + 1];
    if (!next || next.turn !== bend.turn || bend.hem || next.hem) return [];
    const flange = Math.min(outside[i] ?? 0, outside[i + 2] ?? 0);
    return [{ flat: i + 2, web: outside[i + 1] ?? 0, flange, angle: Math.max(bend.angleDeg, next.angleDeg) }];
  });
}
