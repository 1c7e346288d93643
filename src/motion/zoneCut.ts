/**
 * How much of the moving flat the bend zone takes: it ends (r + T)·tan(φ/2) past the apex, which may lie beyond the flat's
 * start (src/model.md, section 5). Exact.
 */
import type { Mm } from "../units/quantity.ts";
import type { Seat } from "./seat.ts";
import { slideAt } from "./swing.ts";

/**
 * By how much the zone at most reaches past the moving flat's start: largest at an end of the sweep, or where it turns,
 * (slideTan − cutTan)/2·sec²(φ/2) = slideTurn. Less than 0 where it never reaches it.
 */
export function mostCutMm(seat: Seat): Mm {
  const { slideTan, slideTurn, sweepRad, pivot } = seat;
  const cutTan = seat.bendZoneTan - pivot.y;
  const past = (phiRad: number) =>
    cutTan * Math.tan(phiRad / 2) - (seat.movingTangentX - pivot.x) - slideAt(seat, phiRad);
  const turnRad = 2 * Math.atan(Math.sqrt(Math.max(0, (2 * slideTurn) / (slideTan - cutTan) - 1)));
  return Math.max(past(0), past(sweepRad), turnRad < sweepRad ? past(turnRad) : Number.NEGATIVE_INFINITY);
}
