/**
 * How large a change a bend wants that can't be made, so that of the orders that get equally far the one is shown whose bend is nearest to
 * being made: a turn of the nose's screws before a cut of the sheet, of two cuts the smaller. A cut is as large as the way that what is
 * met still has to go, its distance from the pivot by the angle that is left. Common practice, no source.
 */

import type { Brake } from "../brake/brake.ts";
import { judgeStep, type Step } from "../contact/step.ts";
import { flangeOf, gripOf } from "../motion/holds.ts";
import type { BendInTurn } from "../motion/stages.ts";
import { type Off, variantAt } from "../motion/variants.ts";
import type { Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";

/** The nose is tried so much farther back. */
const TRIED_BACK_MM: readonly Mm[] = [0.2, 0.4, 0.6, 0.8, 1];
/** A cut further off than this is none that moving the nose so little would spare. */
const NEAR_MM: Mm = 15;
/** All turns of a screw rank before the smallest cut. */
const CUT: Mm = 1000;
/** Getting in or out wants about this much more lift, or as much off a flat. */
const HANDLING_MM: Mm = 10;

/** Where a part off by `off` is judged: the part and the brake as the job has them. */
export interface Standing {
  readonly part: Part;
  readonly brake: Brake;
  readonly off: Off;
}

/** The least of a few steps that the nose has to go back for this bend to pass; undefined where none of them does. */
export function noseBackFor({ part, brake, off }: Standing, blocked: BendInTurn): Mm | undefined {
  if (part.bends[blocked.bend]!.hem) return undefined;
  return TRIED_BACK_MM.find((mm) => {
    const at = variantAt(part, brake, { ...off, noseSetbackMm: off.noseSetbackMm + mm });
    return judgeStep(at.part, at.brake, blocked, 0).verdict !== "hits";
  });
}

/** The change that a blocked stroke wants, larger for what is harder to change; endless where the brake is not rated for it. */
export function changeWanted(step: Step, standing: Standing, bend: number): number {
  const { seat, bendsDone, refused, contact } = step;
  if (refused === "pinched") return 0;
  if (refused === "grip" || refused === "flange") {
    const { runMm, leastMm } = (refused === "grip" ? gripOf : flangeOf)(seat, standing.brake, bendsDone);
    return CUT + leastMm - runMm;
  }
  if (refused) return Number.POSITIVE_INFINITY;
  const left = seat.overbendRad - (contact ? Math.max(0, contact.leafAngleRad) : seat.sweepRad);
  if (!contact) return CUT + (left > 0 ? left * (seat.movingChain.flatMm[0] ?? 0) : HANDLING_MM);
  const { x, y } = contact.point;
  const cut = left * Math.hypot(x - seat.pivot.x, y - seat.pivot.y);
  const back = contact.member === "clamp" && cut < NEAR_MM;
  return (back ? noseBackFor(standing, { bendsDone, bend, clamped: seat.clamped }) : undefined) ?? CUT + cut;
}
