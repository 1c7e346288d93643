/**
 * One stroke of a whole part judged whole: contact, clearance, ways in and out, grip and flange, bare lengths, verdict.
 */
import type { Machine } from "../contact/machine.ts";
import type { Verdict } from "../contact/step.ts";
import type { Mm } from "../units/quantity.ts";
import { type StrokeLimits, shortOf } from "./gripAndFlange.ts";
import { handlingOf } from "./handlingOf.ts";
import { type Body, DRAWN_IN_MM, strokeBodies, type Tooling } from "./strokeBodies.ts";
import { strokeClearance, type WholeClearance } from "./strokeClearance.ts";
import { strokeContact, type WholeContact } from "./strokeContact.ts";
import type { WholeHandling } from "./strokeHandling.ts";
import type { StrokePlan } from "./strokePlan.ts";
import type { StrokeState } from "./strokeState.ts";
import { tooShort } from "./tooling.ts";

export interface JudgedStroke {
  readonly state: StrokeState;
  readonly tooling: Tooling;
  readonly contact: WholeContact | undefined;
  readonly clearance: WholeClearance | undefined;
  readonly load: WholeHandling;
  readonly unload: WholeHandling;
  /** The leaf does not swing as far as the overbend angle. */
  readonly swingShort: boolean;
  /** Too little sheet to clamp, or for the leaf to catch. */
  readonly refused: Refused | undefined;
  readonly bareMm: Mm;
  readonly verdict: Verdict;
}

/** Why a stroke is not even begun: the nose pinches the sheet, the brake is too weak or too short, too little to hold or to catch. */
export type Refused = "pinched" | "rated" | "length" | "grip" | "flange";

export interface StrokeRules extends StrokeLimits {
  readonly marginMm: Mm;
}

/** Judges a seated stroke with the fingers, or the clamp, as they stand. */
export function judgeStroke(
  state: StrokeState,
  machine: Machine,
  tooling: Tooling,
  rules: StrokeRules,
): JudgedStroke {
  const { seat } = state.elements;
  const bodies = strokeBodies(machine, seat.noseSetbackMm, tooling);
  const refused = refusedFor(state, tooling, rules);
  const contact = refused ? undefined : strokeContact(state, bodies, machine);
  const clearance = refused || contact ? undefined : strokeClearance(state, bodies);
  const load = handlingOf(state, machine, tooling, false);
  const unload = handlingOf(state, machine, tooling, true);
  const swingShort = seat.sweepRad < seat.overbendRad;
  const hits = contact || load === "blocked" || unload === "blocked" || swingShort || refused;
  const tight = clearance !== undefined && clearance.mm < rules.marginMm;
  return {
    state,
    tooling,
    contact,
    clearance,
    load,
    unload,
    swingShort,
    refused,
    bareMm: bareLength(state.plan, bodies),
    verdict: hits ? "hits" : tight ? "tight" : "clear",
  };
}

/** Why a stroke is not begun, undefined where it is. */
function refusedFor(state: StrokeState, tooling: Tooling, rules: StrokeRules): Refused | undefined {
  if (state.elements.seat.pinched) return "pinched";
  const { overload } = state.plan;
  if (overload) return overload.kind;
  return tooShort(state.plan, tooling) ? "length" : shortOf(state, rules);
}

/** The longest stretch of the stroke's bend lines under no finger or clamp. */
export function bareLength({ lines }: StrokePlan, bodies: readonly Body[]): Mm {
  const over = bodies
    .filter(({ member }) => member === "finger" || member === "clamp")
    .map(({ from, to }) => ({ from: from - DRAWN_IN_MM, to: to + DRAWN_IN_MM }))
    .sort((a, b) => a.from - b.from);
  let bare = 0;
  for (const line of lines) {
    let reached = line.from;
    for (const { from, to } of over) {
      if (to <= reached || from >= line.to) continue;
      bare = Math.max(bare, from - reached);
      reached = to;
    }
    bare = Math.max(bare, line.to - reached);
  }
  return bare;
}
