/**
 * One judged stroke of a whole part as the answer tells it: degrees, bends, faces and fingers from 1.
 */
import type { MissingFinger, WholeContactAnswer, WholeStepAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob, WholeStep } from "../jobFile/wholeJob.ts";
import { innerPoint } from "../pattern/innerPoint.ts";
import type { Missing } from "../pattern/missingFinger.ts";
import type { JudgedStroke } from "../pattern/stroke.ts";
import type { RowShown } from "../pattern/strokeJudge.ts";
import { toDeg } from "../units/quantity.ts";

/** A stroke to be told. */
export interface Shown {
  readonly judged: JudgedStroke;
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
  { judged: stroke, clampedAt, missing, barred }: Shown,
): WholeStepAnswer {
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
    reached,
    relaxesTo: (reached * angleDeg) / overbendDeg,
    verdict: stroke.verdict,
    clearance: contact ? 0 : (clearance?.mm ?? null),
    clearancePoints: clearance?.points ?? null,
    contact: stroke.refused ? null : contactAnswer(stroke),
    refused: stroke.refused ?? null,
    fingers: (tooling.fingers ?? []).map(({ widthMm, fromMm }) => ({ width: widthMm, from: fromMm })),
    bareLength: stroke.bareMm,
    load: stroke.load,
    unload: stroke.unload,
    setback: seat.noseSetbackMm,
    ...(tooling.placedMm !== undefined && { placed: tooling.placedMm }),
    ...(missing && { missing: missingAnswer(missing, stroke) }),
    ...(barred && { barred: { from: barred.from, to: barred.to, face: barred.face + 1 } }),
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
