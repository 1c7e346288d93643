/**
 * One stroke of a whole part judged whole: contact, clearance, ways in and out, grip and flange, bare lengths, verdict.
 */
import { FACE_INSET_MM } from "../contact/gaps.ts";
import type { Machine } from "../contact/machine.ts";
import type { Verdict } from "../contact/step.ts";
import type { Mm } from "../units/quantity.ts";
import { type StrokeLimits, shortOf } from "./gripAndFlange.ts";
import { type Body, DRAWN_IN_MM, strokeBodies, type Tooling } from "./strokeBodies.ts";
import { strokeClearance, type WholeClearance } from "./strokeClearance.ts";
import { strokeContact, type WholeContact } from "./strokeContact.ts";
import { strokeHandling, type WholeHandling } from "./strokeHandling.ts";
import type { StrokeSeat } from "./strokeSeat.ts";
import { strokeShapes } from "./strokeShapes.ts";

export interface JudgedStroke {
  readonly at: StrokeSeat;
  readonly tooling: Tooling;
  readonly contact: WholeContact | undefined;
  readonly clearance: WholeClearance | undefined;
  readonly load: WholeHandling;
  readonly unload: WholeHandling;
  /** The leaf does not swing as far as the overbend angle. */
  readonly swingShort: boolean;
  /** Too little sheet to clamp, or for the leaf to catch. */
  readonly refused: "grip" | "flange" | undefined;
  readonly bareMm: Mm;
  readonly verdict: Verdict;
}

export interface StrokeRules extends StrokeLimits {
  readonly marginMm: Mm;
}

/** Judges a seated stroke with the fingers, or the clamp, as they stand. */
export function judgeStroke(
  at: StrokeSeat,
  machine: Machine,
  tooling: Tooling,
  rules: StrokeRules,
): JudgedStroke {
  const bodies = strokeBodies(machine, at.seat.noseSetbackMm, tooling);
  const shapes = strokeShapes(at, FACE_INSET_MM, false);
  const contact = strokeContact(at, shapes, bodies, machine);
  const clearance = contact ? undefined : strokeClearance(at, strokeShapes(at, 0, true), bodies, machine);
  const { liftMm, openEnds } = machine.brake;
  const way = (finished: boolean) => strokeHandling(shapes, bodies, { liftMm, openEnds }, finished);
  const [load, unload] = [way(false), way(true)];
  const swingShort = at.seat.sweepRad < at.seat.overbendRad;
  const refused = shortOf(at, rules);
  const hits = contact || load === "blocked" || unload === "blocked" || swingShort || refused;
  const tight = clearance !== undefined && clearance.mm < rules.marginMm;
  return {
    at,
    tooling,
    contact,
    clearance,
    load,
    unload,
    swingShort,
    refused,
    bareMm: bareLength(at, bodies),
    verdict: hits ? "hits" : tight ? "tight" : "clear",
  };
}

/** The longest stretch of the stroke's bend lines under no finger or clamp. */
export function bareLength({ lines }: StrokeSeat, bodies: readonly Body[]): Mm {
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
