/**
 * The whole check of a job: search or the user's own order, every bend judged, the blank, the foreman's warnings.
 * Plain data in, plain data out; the command and the page both show what this returns.
 */
import { layOut, sightLineOf } from "../blank/blank.ts";
import { cutBlank } from "../blank/cutBlank.ts";
import { OverRange, type RangedStep } from "../contact/overRange.ts";
import type { Answer, HandFinishAnswer, ReliefHoleAnswer, Verdict } from "../jobFile/answer.ts";
import { finishedPart, type HandFinish, type Job } from "../jobFile/job.ts";
import { AS_LIKELY } from "../motion/variants.ts";
import type { Watch } from "../order/judge.ts";
import { searchSection } from "../section/searchSection.ts";
import { noseBackFor } from "../section/wanted.ts";
import type { Mm } from "../units/quantity.ts";
import { oddSentence } from "../words/oddWords.ts";
import { unseenWords } from "../words/rangeWords.ts";
import { doubtsFound, withDoubts } from "./doubtsAnswer.ts";
import { flangeAfter } from "./flangeAfter.ts";
import { layoutWarnings } from "./layoutWarnings.ts";
import { stepAnswer } from "./stepAnswer.ts";
import { warningsFor } from "./warnings.ts";

/**
 * Answers a job. `watch` is told how far a long search is and may stop it (SearchStopped is thrown then).
 * Where the job gives an order, that order is judged; orders are counted all the same.
 */
export function check(job: Job, watch?: Watch): Answer {
  const { part, brake, marginMm } = job;
  const found = searchSection(part, brake, marginMm, watch);
  const order = job.order ?? found.order;
  const steps = new OverRange(part, brake, marginMm).judgeWhole(order);
  const layout = layOut(part);
  // The lines of the blank are those of the whole bends; where to sight is as the leaf makes them.
  const whole = layOut(finishedPart(job));
  const { noseRunMm } = brake.clamp;
  const doubts = doubtsFound(job, order);
  return {
    verdict: withDoubts(worst(steps), doubts),
    order: steps.map((step) => ({
      ...stepAnswer(step, job.units),
      // The fold of a hem takes up other sheet than the finished hem does.
      sightLine: sightLineOf(
        (step.stage.hem === "fold" ? layOut(step.stage.part) : layout).bends[step.stage.bend]!,
        step.stage.clamped,
        noseRunMm,
      ),
      flange: flangeAfter(step.stage),
      ...noseBackOf(job, step),
    })),
    viableOrders: found.orders === null ? null : exact(found.orders),
    statesChecked: found.judged,
    ...(found.kind === "unknown" && { decided: false }),
    blank: {
      developedWidth: whole.developedWidthMm,
      bends: whole.bends.map((line, i) => ({
        bend: i + 1,
        tangents: line.tangentsMm,
        sightLine: sightLineOf(layout.bends[i]!, "start", noseRunMm),
        allowance: line.allowanceMm,
        deduction: line.deductionMm,
      })),
      ...(job.cutOuts !== undefined && { reliefHoles: reliefHoles(job, job.cutOuts) }),
    },
    ...(doubts !== undefined && { doubts: doubts.answer }),
    ...(job.finishByHand !== undefined && { finishByHand: job.finishByHand.map(handFinishAnswer(job)) }),
    remedies: [],
    warnings: [
      ...(job.odd ?? []).map((odd) => oddSentence(odd, job.units)),
      ...(doubts?.warning === undefined ? [] : [doubts.warning]),
      ...steps.flatMap(({ stage, verdict, unseenMm }) =>
        unseenMm === undefined || verdict === "hits"
          ? []
          : [unseenWords(stage.bend + 1, unseenMm, job.units)],
      ),
      ...warningsFor(
        job,
        steps.map(({ likely }) => likely),
      ),
      ...layoutWarnings(job),
    ],
  };
}

/** Of a bend that meets the clamp: how much farther back the nose would have to stand. */
function noseBackOf({ part, brake }: Job, { stage, likely }: RangedStep): { readonly noseBack?: Mm } {
  if (likely.contact?.member !== "clamp" || stage.begun || stage.toDeg !== undefined) return {};
  const noseBack = noseBackFor({ part, brake, off: AS_LIKELY }, stage);
  return noseBack === undefined ? {} : { noseBack };
}

/** What the hand still has to do to a bend. */
function handFinishAnswer(job: Job) {
  return ({ bend, toDeg, fillerMm }: HandFinish): HandFinishAnswer => ({
    bend: bend + 1,
    to: toDeg,
    angle: finishedPart(job).bends[bend]!.angleDeg,
    filler: fillerMm ?? null,
  });
}

function reliefHoles(job: Job, cutOuts: NonNullable<Job["cutOuts"]>): ReliefHoleAnswer[] {
  if (cutOuts.length === 0) return [];
  return cutBlank(finishedPart(job), cutOuts).holes.map(({ center, diameterMm, bend, cutOut }) => ({
    x: center.x,
    y: center.y,
    diameter: diameterMm,
    bend: bend + 1,
    cutOut: cutOut + 1,
  }));
}

function worst(steps: readonly RangedStep[]): Verdict {
  if (steps.some((step) => step.verdict === "hits")) return "hits";
  return steps.some((step) => step.verdict === "tight") ? "tight" : "clear";
}

function exact(count: bigint): number | bigint {
  return count <= BigInt(Number.MAX_SAFE_INTEGER) ? Number(count) : count;
}
