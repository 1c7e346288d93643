/**
 * The swings of the leaf in which the end of the bend zone lies in an element of the moving side: it rides on the leaf at
 * (r + T)·tan(φ/2) from the apex (src/model.md, section 5), without the sheet's slide.
 */
import type { Seat } from "../motion/seat.ts";
import { type Swing, tableSwing } from "../motion/swing.ts";
import { cutRanges } from "../motion/zoneCut.ts";
import { flatRunMm } from "../part/chain.ts";

/** Those of element k, all of the run up to its flat being flat: none, one, or one on either side of the turn. */
export function endSwings(seat: Seat, k: number): readonly Swing[] {
  const fromMm = k === 0 ? 0 : flatRunMm(seat.movingChain, k - 1);
  const cutTan = seat.bendZoneTan - seat.pivot.y;
  return cutRanges(seat, fromMm, flatRunMm(seat.movingChain, k)).map(([from, to]) =>
    tableSwing(1, cutTan, 0, to, from),
  );
}
