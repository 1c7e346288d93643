/**
 * The way in or out of a stroke: by the front, by an end, or with fingers that come off the holder with the part.
 */
import type { Machine } from "../contact/machine.ts";
import { fitThroughMouth, patchesOver } from "./fingersOff.ts";
import { strokeBodies, type Tooling } from "./strokeBodies.ts";
import { lyingShapes, overlapsBrake, strokeHandling, type WholeHandling } from "./strokeHandling.ts";
import type { StrokeState } from "./strokeState.ts";
import { fingerDepth } from "./tooling.ts";

/** The way in or out of a stroke by itself, fingers taken off with the part where nothing else goes. */
export function handlingOf(
  state: StrokeState,
  machine: Machine,
  tooling: Tooling,
  finished: boolean,
): WholeHandling {
  const { liftMm, openEnds } = machine.brake;
  const { noseSetbackMm } = state.elements.seat;
  const bodiesOf = (standing: Tooling) => strokeBodies(machine, noseSetbackMm, standing);
  const by = (standing: Tooling) => strokeHandling(state, bodiesOf(standing), { liftMm, openEnds }, finished);
  const way = by(tooling);
  if (way !== "blocked" || !tooling.fingers || tooling.fingers.length === 0) return way;
  if (overlapsBrake(state, bodiesOf(tooling), finished)) return "blocked";
  const above = patchesOver(state.elements, lyingShapes(state, finished));
  if (!fitThroughMouth(state, above, tooling.fingers, fingerDepth(machine.brake))) return "blocked";
  return by({ ...tooling, fingers: [] }) === "blocked" ? "blocked" : "fingers off";
}
