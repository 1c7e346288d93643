/**
 * What `blank`, `nest`, `pan` and `doubt` print with --json: one object each, in the manner of the answer to a check.
 * Lengths in mm, angles in degrees, bends, flats and cuts counted from 1; keys without a unit in their name.
 */
import { blankByMethod } from "../blank/blankByMethod.ts";
import { cutBlank } from "../blank/cutBlank.ts";
import type { FingerChoice } from "../blank/fingers.ts";
import type { Nest } from "../blank/nest.ts";
import type { PanBlank, PanSide } from "../blank/pan.ts";
import { blankWeightKg } from "../blank/weight.ts";
import type { Answer, DoubtsAnswer } from "../jobFile/answer.ts";
import { finishedPart, type Job } from "../jobFile/job.ts";
import { sightLines } from "../jobFile/sightLine.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";

/** JSON text, two spaces a level, ending with a line end. */
export function planText(plan: object): string {
  return `${JSON.stringify(plan, null, 2)}\n`;
}

/** The blank: lines from the datum edge, sighted for the end that the order clamps; `weight` in kg, null where not known. */
export function blankPlan(job: Job, answer: Answer): object {
  const { cutOuts } = job;
  const part = finishedPart(job);
  const { developedWidth, bends, reliefHoles } = answer.blank;
  const sights = sightLines(answer);
  const others = blankByMethod(part);
  return {
    verdict: answer.verdict,
    developedWidth,
    length: part.lengthMm ?? null,
    kFactor: part.kFactor,
    bends: bends.map((bend, i) => ({
      ...bend,
      angle: part.bends[i]?.angleDeg,
      turn: part.bends[i]?.turn,
      sightLine: sights[i]?.at ?? bend.sightLine,
      clamped: sights[i]?.clamped,
    })),
    others: { empirical: others.empiricalOffMm, din6935: others.din6935OffMm },
    weight: blankWeight(job, developedWidth),
    grain: job.grainDeg ?? null,
    ...(cutOuts !== undefined && {
      cutOuts: cutOuts.map(({ acrossMm, alongMm }) => ({ across: acrossMm, along: alongMm })),
      reliefHoles,
    }),
    warnings: answer.warnings,
  };
}

/** Weight of the blank in kg, cut-outs and holes taken off; null without a length or the metal's density. */
export function blankWeight(job: Job, widthMm: Mm): number | null {
  const { cutOuts = [] } = job;
  const part = finishedPart(job);
  const { lengthMm, thicknessMm, metal } = part;
  if (lengthMm === undefined || metal.densityKgM3 === undefined) return null;
  const takenMm2 = cutOuts.length === 0 ? 0 : cutBlank(part, cutOuts).takenMm2;
  return blankWeightKg({ widthMm, lengthMm, thicknessMm, takenMm2 }, metal.densityKgM3);
}

/** A nest; x across the sheet's width, y along its length, which is the way of the grain. All 0 where no blank fits. */
export function nestPlan(nest: Nest | undefined): object {
  if (nest === undefined)
    return { perSheet: 0, sheets: 0, waste: null, rest: null, rows: [], places: [], cuts: [] };
  return {
    perSheet: nest.perSheet,
    sheets: nest.sheets,
    waste: nest.wastePercent,
    rest: nest.restMm,
    rows: nest.rows.map(({ laid, count, fromMm, sizeMm }) => ({ laid, count, from: fromMm, size: sizeMm })),
    places: nest.places.map(({ at, widthMm, heightMm }) => ({ at: pair(at), size: [widthMm, heightMm] })),
    cuts: nest.cuts.map(({ from, to }) => ({ from: pair(from), to: pair(to) })),
  };
}

/** A pan's blank; `fingers` null where no set was given or none of it fits. */
export function panPlan(
  blank: PanBlank,
  fingers: { readonly insideMm: Mm; readonly choice: FingerChoice } | undefined,
): object {
  return {
    width: side(blank.across),
    length: side(blank.along),
    allowance: blank.allowanceMm,
    reliefHoles: blank.holes.map(({ center, diameterMm }) => ({ ...center, diameter: diameterMm })),
    fingers:
      fingers === undefined
        ? null
        : { between: fingers.insideMm, widths: fingers.choice.widthsMm, gap: fingers.choice.gapMm },
  };
}

function side({ sizeMm, bends, sightLinesMm }: PanSide): object {
  return {
    size: sizeMm,
    bends: bends.map(({ tangentsMm }, i) => ({ tangents: tangentsMm, sightLine: sightLinesMm[i] })),
  };
}

/** What doubts do to a job: the finding, and the doubts that it was asked with. */
export function doubtPlan(found: DoubtsAnswer, doubtsMm: readonly Mm[], answer: Answer): object {
  return { asRead: answer.verdict, doubts: doubtsMm, ...found };
}

function pair({ x, y }: Point): readonly [Mm, Mm] {
  return [x, y];
}
