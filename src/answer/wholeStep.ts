/**
 * One judged stroke of a whole part as the answer tells it: degrees, bends, faces and fingers from 1.
 */
import type { FailsAt } from "../jobFile/answer.ts";
import type { MissingFinger, WholeContactAnswer, WholeStepAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob, WholeStep } from "../jobFile/wholeJob.ts";
import { innerPoint } from "../pattern/innerPoint.ts";
import type { Missing } from "../pattern/missingFinger.ts";
import type { JudgedStroke } from "../pattern/stroke.ts";
import type { RowShown } from "../pattern/strokeJudge.ts";
import type { FailingStroke, RangedStroke } from "../pattern/strokeRange.ts";
import { toDeg } from "../units/quantity.ts";

/** A stroke to be told. */
export interface Shown {
  readonly judged: JudgedStroke;
  /** Over what the job doubts, where it can be made as likely. */
  readonly ranged?: RangedStroke;
  /** The user's own point, where there is one. */
  readonly clampedAt?: WholeStep["clampedAt"];
  /** No row of the owned fingers holds the bend down. */
  readonly missing?: Missing;
  /** Some stretch of the bend line is closed to any finger. */
  readonly barred?: RowShown["barred"];
}

/** The stroke as plain data. */
export function wholeStepAnswer(
  job: WholeJob,
  { judged: stroke, ranged, clampedAt, missing, barred }: Shown,
): WholeStepAnswer {
  // What stops it within the doubts is told where nothing does as likely.
  const stops = ranged?.failing?.judged ?? stroke;
  const { state, contact, clearance, tooling } = stroke;
  const { seat, plan } = state.elements;
  const { angleDeg, overbendDeg } = plan.bend;
  const clampedFace = plan.own[0]!.face;
  const at = clampedAt ?? innerPoint(job.part, clampedFace);
  const reached = stroke.refused
    ? 0
    : contact
      ? toDeg(contact.leafAngleRad)
      : stroke.swingShort
        ? toDeg(seat.sweepRad)
        : overbendDeg;
  return {
    bends: plan.stroke.bends.map((bend) => bend + 1),
    clampedAt: [at.x, at.y],
    clampedFace: (clampedAt ? plan.stroke.clampedFace : clampedFace) + 1,
    markedFaceUp: plan.markedFaceUp,
    angle: angleDeg,
    overbend: overbendDeg,
    overbendRange: plan.bend.overbendRangeDeg ?? [overbendDeg, overbendDeg],
    foldsFor: ranged?.foldsForDeg ?? null,
    ...(ranged?.failing && { failsAt: failsAt(job, ranged.failing) }),
    reached,
    relaxesTo: (reached * angleDeg) / overbendDeg,
    verdict: ranged?.verdict ?? stroke.verdict,
    clearance: contact ? 0 : (clearance?.mm ?? null),
    leastClearance: contact ? 0 : ((ranged ? ranged.leastMm : clearance?.mm) ?? null),
    clearancePoints: clearance?.points ?? null,
    contact: stops.refused ? null : contactAnswer(stops),
    refused: stops.refused ?? null,
    fingers: (tooling.fingers ?? []).map(({ widthMm, fromMm }) => ({ width: widthMm, from: fromMm })),
    bareLength: stroke.bareMm,
    load: stops.load,
    unload: stops.unload,
    setback: seat.noseSetbackMm,
    ...(tooling.placedMm !== undefined && { placed: tooling.placedMm }),
    ...(missing && { missing: missingAnswer(missing, stroke) }),
    ...(barred && { barred: { from: barred.from, to: barred.to, face: barred.face + 1 } }),
  };
}

function failsAt({ brake }: WholeJob, { off, judged }: FailingStroke): FailsAt {
  return {
    overbend: judged.state.plan.bend.overbendDeg,
    noseSetbackBy: off.noseSetbackMm,
    noseRadiusBy: off.nose * (brake.doubts?.noseRadius?.mm ?? 0),
  };
}

function missingAnswer(
  { leastMm, mostMm, besideMm, instead }: Missing,
  { bareMm }: JudgedStroke,
): MissingFinger {
  const row = instead && { fingers: instead.map(({ widthMm }) => widthMm), bare: bareMm };
  return { least: leastMm, most: mostMm, beside: besideMm, instead: row ?? null };
}

function contactAnswer({ contact }: JudgedStroke): WholeContactAnswer | null {
  if (!contact) return null;
  const { leafAngleRad, member, finger, name, face, point, w } = contact;
  return {
    angle: toDeg(leafAngleRad),
    face: face === undefined ? null : face + 1,
    member,
    ...(finger !== undefined && { finger: finger + 1 }),
    ...(name !== undefined && { name }),
    point: [point.x, point.y, w],
  };
}
