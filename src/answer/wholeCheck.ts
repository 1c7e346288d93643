/**
 * The whole check of a whole part's job: search or the user's own order, every stroke judged, the blank, the finished sizes,
 * warnings. Plain data in, plain data out.
 */
import { Machine } from "../contact/machine.ts";
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob, WholeStep } from "../jobFile/wholeJob.ts";
import type { Watch } from "../order/judge.ts";
import { foldedSize } from "../pattern/foldedSize.ts";
import { searchWhole, standsOf } from "../pattern/searchWhole.ts";
import { type JudgedStroke, judgeStroke, type StrokeRules } from "../pattern/stroke.ts";
import type { Tooling } from "../pattern/strokeBodies.ts";
import { StrokeJudge } from "../pattern/strokeJudge.ts";
import { strokeOver } from "../pattern/strokeOver.ts";
import { strokePlan } from "../pattern/strokePlan.ts";
import { StrokeRange } from "../pattern/strokeRange.ts";
import { strokeState } from "../pattern/strokeState.ts";
import { placedBrakes } from "../pattern/tooling.ts";
import { wholeVariantsOf } from "../pattern/wholeVariants.ts";
import { blankAnswer, facesAnswer } from "./wholeBlank.ts";
import { type Shown, wholeStepAnswer } from "./wholeStep.ts";
import { wholeWarnings } from "./wholeWarnings.ts";

/** Answers a whole part's job. `watch` is told how far a long search is and may stop it (SearchStopped is thrown then). */
export function checkWhole(job: WholeJob, watch?: Watch): WholeAnswer {
  const { part, brake, along, marginMm } = job;
  const rules: StrokeRules = {
    marginMm,
    leaf: brake.leaf,
    ...(along.leastGripMm !== undefined && { leastGripMm: along.leastGripMm }),
    ...(along.leastFlangeMm !== undefined && { leastFlangeMm: along.leastFlangeMm }),
  };
  const searched = job.order ? undefined : searchWhole(part, brake, along, rules, watch);
  const found = searched?.found;
  const steps: readonly Planned[] = searched?.order ?? asGiven(job, job.order!, rules);
  const machine = new Machine(brake, part.thicknessMm);
  const range = new StrokeRange(part, brake, rules);
  let made = 0;
  const strokes = steps.map(({ stroke, tooling, clampedAt, setByUser }): Shown => {
    const planned = strokePlan(part, brake, stroke);
    if (!planned.ok) throw new Error("a stroke that was read can be planned");
    const own = new StrokeJudge(planned.plan, machine, along, rules);
    const state = strokeState(own.elements, made);
    if (!state) throw new Error("a stroke that was read lies on one line");
    const before = made;
    for (const bend of stroke.bends) made |= 1 << bend;
    let judged = judgeStroke(state, machine, tooling, rules);
    const isBare = tooling.fingers?.length === 0;
    const fallback = setByUser || (judged.verdict !== "hits" && !isBare) ? undefined : own.rowAfter(before);
    // Fingers that meet nothing say more of what is wrong than those that stand in the way.
    if (fallback) judged = judgeStroke(state, machine, { ...tooling, fingers: fallback.row }, rules);
    const { missing, barred } = fallback ?? {};
    // A row that leaves too much bare is shown and told; it is no way to make the bend.
    const shown =
      missing || barred || (isBare && !setByUser) ? { ...judged, verdict: "hits" as const } : judged;
    const at = { stroke, made: before, tooling: judged.tooling };
    return {
      judged: shown,
      ...(shown.verdict !== "hits" && { ranged: range.over(at, shown) }),
      ...(clampedAt && { clampedAt }),
      ...(missing && { missing }),
      ...(barred && { barred }),
    };
  });
  const finished = job.finished ?? part;
  const folded = foldedSize(finished.sheet);
  return {
    verdict: worst(strokes.map(({ judged, ranged }) => ranged ?? judged)),
    order: strokes.map((shown) => wholeStepAnswer(job, shown)),
    viableOrders: found?.orders === undefined || found.orders === null ? null : exact(found.orders),
    statesChecked: found?.judged ?? strokes.length,
    faces: facesAnswer(finished),
    blank: blankAnswer(finished),
    folded: {
      size: folded.sizeMm,
      faces: folded.facesMm.map((size, i) => ({ face: i + 1, size })),
    },
    ...(job.finishByHand && {
      finishByHand: job.finishByHand.map(({ bend, toDeg, fillerMm }) => ({
        bend: bend + 1,
        to: toDeg,
        angle: finished.sheet.pattern.bends[bend]!.angleDeg,
        filler: fillerMm ?? null,
      })),
    }),
    remedies: [],
    warnings: wholeWarnings(job, strokes),
  };
}

interface Planned {
  readonly stroke: Pick<WholeStep, "bends" | "clampedFace">;
  readonly tooling: Tooling;
  /** The user's own fingers: they are checked as they stand. */
  readonly setByUser?: boolean;
  readonly clampedAt?: WholeStep["clampedAt"];
}

/** The user's own steps: fingers as they are set, else the fewest that hold the bend over all that is doubted. */
function asGiven(
  { part, brake, along }: WholeJob,
  order: readonly WholeStep[],
  rules: StrokeRules,
): Planned[] {
  const stands = standsOf(wholeVariantsOf(part, brake));
  let made = 0;
  return order.map((step) => {
    const planned = strokeOver(stands, step, along, rules);
    if (!planned.ok) throw new Error("a step that was read can be planned");
    const { over } = planned;
    const [base] = placedBrakes(over.plan, along) as [Tooling];
    const placed = { ...base, ...(step.placedMm !== undefined && { placedMm: step.placedMm }) };
    const before = made;
    for (const bend of step.bends) made |= 1 << bend;
    if (step.fingers)
      return {
        stroke: step,
        tooling: { ...placed, fingers: step.fingers },
        clampedAt: step.clampedAt,
        setByUser: true,
      };
    if (!along.fingers) return { stroke: step, tooling: placed, clampedAt: step.clampedAt };
    const [held] = over.held(before, []);
    const tooling = held?.setup.tooling ?? { ...placed, fingers: over.roughly().row };
    return { stroke: step, tooling, clampedAt: step.clampedAt };
  });
}

function worst(strokes: readonly Pick<JudgedStroke, "verdict">[]): WholeAnswer["verdict"] {
  if (strokes.some(({ verdict }) => verdict === "hits")) return "hits";
  return strokes.some(({ verdict }) => verdict === "tight") ? "tight" : "clear";
}

function exact(count: bigint): number | bigint {
  return count <= BigInt(Number.MAX_SAFE_INTEGER) ? Number(count) : count;
}
