/**
 * The steps of making, each with the pieces that its picture shows. Common practice, no source; every figure comes from the plan.
 */
import { formatLength } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import { nutTorqueNm } from "../checks/clampForces.ts";
import type { UnderLoad } from "../checks/under.ts";
import { torqueWords } from "../forceWords.ts";
import type { MakingStep } from "../narrowBrake.ts";
import { pieceOf } from "../solid.ts";

export function makingSteps(under: UnderLoad): MakingStep[] {
  const { requirements, places, sizes, assembly } = under;
  const { units } = requirements;
  const words = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const ids = (...names: readonly string[]) =>
    assembly.pieces.filter(({ name }) => names.includes(name)).map(({ id }) => id);
  const bed = ids("bed cap", "spine", "back leg", "screw rail");
  const ears = ids("bed ear", "hinge pin", "leaf rest");
  const leaf = ids("leaf", "leaf ear");
  const clamp = ids("clamp bar", "holder", "rib of the holder", "bar screw");
  const bench = under.sizes.held === "bench";
  const feet = ids("foot");
  // A bar between two sizes of the rack comes out of the thicker.
  const planed = pieceOf(assembly, "bar").stock.includes("planed")
    ? ` Plane or grind the bar to ${words(sizes.barMm)} thick, the same within ${units === "in" ? "0.002 in" : "0.05 mm"} all along, taking as much off both faces.`
    : "";
  return [
    {
      words: `Saw all pieces to the cut list: the straightest stock for bar, cap and leaf. Mark the numbers on them.${planed} Break every edge but the cap's and the leaf's working edges.`,
      shows: ids("clamp bar", "holder", "bed cap", "spine", "leaf"),
    },
    {
      words: `Drill and tap cap, holder, bar and rail from their drawings. Clamp holder on bar to drill the screw holes through both. Drill the bed ears as a pair and the leaf ears as a pair.`,
      shows: ids("bed cap", "holder", "clamp bar", "screw rail"),
    },
    {
      words: `Weld the spine under the cap, square to it, its front face ${words(places.spineFrontMm)} behind the cap's front edge. Short runs, from side to side and end to end, cooling between.${places.legHighMm > 0 ? " Weld the back leg in the same way, turn and turn about with the spine." : ""}${bench ? " Weld the feet under the spine the same way." : ""}`,
      shows: [...ids("bed cap", "spine", "back leg"), ...feet],
    },
    {
      words:
        "Weld the rail on the cap where its drawing says. Then lay the straightedge along the cap's front edge and draw-file what the heat has pulled: the edge must stay sharp.",
      shows: bed,
    },
    {
      words: `Weld the leaf ears to the leaf's ends, the middle of each hole on the corner of working face and back. Run the welds from the bottom up to just below the hole.`,
      shows: leaf,
    },
    {
      words: `Lay cap and leaf face down on a flat plate, edges together with a strip of paper between. Put the pins through both ears of each end, the bed ears ${words(places.gapMm)} off the leaf ears. Tack the bed ears to the spine's ends.`,
      shows: [...bed, ...leaf, ...ears],
    },
    {
      words:
        "Swing the leaf. Its edge must keep to the cap's edge all the way; correct the tacks, swing again. Then weld the bed ears, one run here, one run there.",
      shows: [...bed, ...leaf, ...ears],
    },
    {
      words:
        "Let in and weld the handles. Press the pins and rests home and tack them outside. File the rests until the leaf's face lies level with the bed.",
      shows: [...bed, ...leaf, ...ears, ...ids("handle")],
    },
    {
      words: `Dress the bar's nose: ${words(requirements.noseRadiusMm)} radius all along, checked with a gauge, no flats. Lean its front back by ${requirements.frontBevelDeg}° down to the rounding. Screw the bar under the holder.`,
      shows: clamp,
    },
    {
      words: `Screw the bolts into the cap, lower nuts tight. Put springs, heel strip, clamp, slotted washers (slots to the back) and nuts on. Set the bar with the setback screws, lock them, tighten the nuts to ${torqueWords(nutTorqueNm(under), units)}.`,
      shows: assembly.pieces.map(({ id }) => id),
    },
  ];
}
