/**
 * What is to be done to each piece, in a few words for the cut list and the note under its drawing: what a dimension can't say.
 */
import type { LengthUnit } from "../../units/length.ts";
import { formatLength } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import { WELDED_SHARE } from "../checks/bedBeam.ts";
import type { UnderLoad } from "../checks/under.ts";
import type { Piece } from "../solid.ts";

/** How straight bar, leaf and bed edge must be over their length: common practice, no source. */
const STRAIGHT: Readonly<Record<LengthUnit, string>> = { in: "0.004 in", mm: "0.1 mm" };

export function workOn(piece: Piece, under: UnderLoad): string {
  const { requirements, sizes, places } = under;
  const { units } = requirements;
  const words = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const straight = `straight within ${STRAIGHT[units]} over its length`;
  const every = units === "in" ? "2 in in every 4 in" : "50 mm in every 100 mm";
  const runs = WELDED_SHARE < 1 ? `, ${every}, ends first` : "";
  switch (piece.name) {
    case "clamp bar": {
      const bevel = requirements.frontBevelDeg;
      const front = bevel > 0 ? `; lean the front back by ${bevel}°` : "";
      return `Round the bottom front edge to ${words(requirements.noseRadiusMm)}${front}; nose ${straight}. Countersink from below, heads flush or lower.`;
    }
    case "holder":
      return `Front edge ${straight}. Holes that do not go through are drilled from below. Break all edges.`;
    case "rib of the holder":
      return `Fillet ${words(sizes.weldMm)} both sides${runs}, before the holder's front is dressed.`;
    case "bed cap":
      return `Front top edge sharp, not rounded, ${straight}; dress after welding. Weld to the spine: fillet ${words(sizes.weldMm)} both sides${runs}.`;
    case "spine":
      return `Weld under the cap, front face ${words(places.spineFrontMm)} behind the cap's front edge, its ends standing out ${words(places.bedEarW - places.capLongMm / 2)} past the cap's. Keep the ends bare for the ears.`;
    case "back leg":
      return `Weld under the cap, square to it, flush with its back edge and its ends: fillet ${words(sizes.weldMm)} both sides${runs}.`;
    case "screw rail":
      return places.inside
        ? `Weld on the cap, middle on middle, its back face ${words(places.railBackMm)} behind the cap's front edge: fillet ${words(sizes.railWeldMm)} before and behind${runs}.`
        : `Weld on the cap, one flush with each end, back faces ${words(places.railBackMm)} behind the cap's front edge: fillet ${words(sizes.railWeldMm)} all round.`;
    case "heel strip":
      return `Cut one from each sheet that you fold; tape it to the cap against the rail, its front edge ${words(places.stripFrontMm)} behind the cap's. Take it out for sheet that reaches so far back.`;
    case "bed ear":
      return `Drill as a pair, clamped together; ream for a press fit of the pin. Round the corner over the hole to a radius of ${words(places.earRadiusMm)}, about the hole. Weld to the spine's end: fillet ${words(sizes.weldMm)} up the front and the back of the spine, all of the ear's height there.`;
    case "leaf ear":
      return `Drill as a pair; ream for a running fit. Round the end to a radius of ${words(places.earRadiusMm)}, about the hole. Weld to the leaf's end: fillet ${words(sizes.weldMm)} up its back and its front, from the bottom to just below the hole.`;
    case "hinge pin":
      return "Press into the bed ear, flush outside; tack there. Free in the leaf ear, oiled.";
    case "leaf rest":
      return "Press into the bed ear, flush outside; tack there. File until the leaf's face lies level with the bed.";
    case "leaf":
      return `Face and back edge sharp, ${straight}. No weld on the working face.`;
    case "handle":
      return `Let into the leaf, ${words(places.handleRootX)} short of its back; fillet ${words(sizes.weldMm)} round it in front. Round the hand's end.`;
    case "slotted washer":
      return "Drill, then saw out to the back edge as wide as the hole, so that it slides off the bolt. Round the front corners and break all edges.";
    case "hold-down bolt":
      return "Chamfer both ends. Screw into the cap, lower nut tight under it; thread locker.";
    case "foot":
      return `Weld under the spine, square to it, the middle of each foot ${words(places.bedEarW - places.footW)} from the spine's end, its front end ${words(places.footFrontMm)} behind the cap's front edge: fillet ${words(sizes.weldMm)} before and behind, as long as the foot is wide.`;
    case "lift spring":
      return "Its lengths and its push: see what the brake carries.";
    case "setback screw":
      return "One lock nut each.";
    default:
      return "";
  }
}
