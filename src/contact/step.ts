/**
 * One bend judged whole: first contact, clearance, loading and unloading, verdict. Gathers every pair of pieces.
 * The search (section/) asks the same questions piecewise; this is the full answer for one bend with its points.
 */
import type { Brake } from "../brake/brake.ts";
import type { Flattening } from "../motion/hemStrokes.ts";
import { holdFault } from "../motion/holds.ts";
import { type Seat, seatFor } from "../motion/seat.ts";
import type { BendInTurn, Stage } from "../motion/stages.ts";
import { formedJoints } from "../part/chain.ts";
import type { Part } from "../part/part.ts";
import type { Point } from "../plane/point.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import { ClearanceChecks, noClearance } from "./clearance.ts";
import type { Side } from "./element.ts";
import type { Features } from "./features.ts";
import { type Handling, LoadingChecks, openRoom } from "./loading.ts";
import { Machine } from "./machine.ts";
import { type Member, noContact, SideChecks } from "./sideChecks.ts";
import type { SolidBody } from "./solidBody.ts";

export type Verdict = "clear" | "tight" | "hits";

/** Why a bend is not even begun. */
export type Refusal = "pinched" | "rated" | "length" | "grip" | "flange";

export interface Contact {
  readonly leafAngleRad: Rad;
  readonly member: Member;
  /** The part's feature (strip.ts), −1 where the leaf meets the brake itself. */
  readonly tag: number;
  readonly point: Point;
}

/** A bend of the part in the brake, judged. */
export interface Step {
  readonly seat: Seat;
  /** A hem pressed flat: nothing swings. */
  readonly flattens?: true;
  /** Bends made before it, bend 1 in bit 0. */
  readonly bendsDone: number;
  /** Why the bend is not begun; then nothing is met and nothing measured. */
  readonly refused: Refusal | undefined;
  readonly contact: Contact | undefined;
  /** Undefined where nothing is left to measure; 0 on contact. */
  readonly clearanceMm: Mm | undefined;
  readonly clearancePoints: readonly [part: Point, other: Point] | undefined;
  /** What the clearance was measured to. */
  readonly clearanceMember: Member | undefined;
  readonly load: Handling;
  readonly unload: Handling;
  /** The leaf does not swing as far as the overbend angle. */
  readonly swingShort: boolean;
  readonly verdict: Verdict;
}

/** Judges one bend of a part. */
export function judgeStep(
  part: Part,
  brake: Brake,
  { bendsDone, bend, clamped }: BendInTurn,
  marginMm: Mm,
  machine: Machine = new Machine(brake, part.thicknessMm),
): Step {
  return judged(seatFor(part, brake, bend, clamped), bendsDone, marginMm, machine);
}

/**
 * Judges one stage of an order. A bend that was begun before goes in as it came out then, and the leaf comes up to it
 * before it bends on. `machine` is of the stage's brake.
 */
export function judgeStage(stage: Stage, marginMm: Mm, machine: Machine): Step {
  const { part, brake, bendsDone, bend, clamped, begun } = stage;
  if (stage.hem !== undefined && stage.hem !== "fold")
    return judgeFlattening(stage, stage.hem.flattening, marginMm);
  const seat = seatFor(part, brake, bend, clamped, begun?.fromDeg);
  if (!begun) return judged(seat, bendsDone, marginMm, machine);
  return judged(seat, bendsDone, marginMm, machine, seatFor(begun.part, brake, bend, clamped));
}

/** A hem that the clamp flattens: the rest of the part where it lies then, and the clamp's lift. Nothing is gripped or pushed. */
function judgeFlattening(stage: Stage, flattening: Flattening | undefined, marginMm: Mm): Step {
  const { part, brake, bendsDone, bend, clamped } = stage;
  const seat = seatFor(part, brake, bend, clamped);
  const machine = new Machine(brake, flattening?.underClampMm ?? 2 * part.thicknessMm);
  const step: Step = { ...judged(seat, bendsDone, marginMm, machine), flattens: true };
  return flattening?.lifts ? step : { ...step, contact: undefined, load: "blocked", verdict: "hits" };
}

/** Why the bend is not begun after the bends in `bendsDone`. */
function refusalOf(seat: Seat, brake: Brake, bendsDone: number): Refusal | undefined {
  if (seat.overload) return seat.overload.kind;
  return seat.pinched ? "pinched" : holdFault(seat, brake, bendsDone);
}

/** `goesIn` is the seat of the part as it goes in, where that is not flat at this bend. */
function judged(seat: Seat, bendsDone: number, marginMm: Mm, machine: Machine, goesIn?: Seat): Step {
  const checks = new SideChecks(seat, machine);
  const formed = {
    moving: formedJoints(seat.movingChain, bendsDone),
    clamped: formedJoints(seat.clampedChain, bendsDone),
  };
  const refused = refusalOf(seat, machine.brake, bendsDone);
  const contact = refused ? undefined : contactOf(checks, formed);
  const clearance = refused || contact ? undefined : clearanceOf(checks, formed);
  const loading = new LoadingChecks(checks);
  const load = goesIn
    ? handlingOf(new LoadingChecks(new SideChecks(goesIn, machine)), goesIn, formed, true)
    : handlingOf(loading, seat, formed, false);
  const unload = handlingOf(loading, seat, formed, true);
  const swingShort = seat.sweepRad < seat.overbendRad;
  const hits =
    refused !== undefined ||
    contact !== undefined ||
    load === "blocked" ||
    unload === "blocked" ||
    swingShort;
  const clearanceMm = contact ? 0 : clearance?.mm;
  const tight = clearanceMm !== undefined && clearanceMm < marginMm;
  return {
    seat,
    bendsDone,
    refused,
    contact,
    clearanceMm,
    clearancePoints: clearance?.points,
    clearanceMember: clearance?.member,
    load,
    unload,
    swingShort,
    verdict: hits ? "hits" : tight ? "tight" : "clear",
  };
}

interface Formed {
  readonly moving: number;
  readonly clamped: number;
}

const SIDES: readonly Side[] = ["moving", "clamped"];

function contactOf(checks: SideChecks, formed: Formed): Contact | undefined {
  const record = noContact();
  const { seat } = checks;
  for (const side of SIDES) {
    for (let k = 0; k <= checks.pieces.chainOf(side).joints; k++)
      checks.withBrake(side, k, formed[side], record);
  }
  for (let m = 0; m <= seat.movingChain.joints; m++) {
    for (let c = 0; c <= seat.clampedChain.joints; c++) {
      checks.withSelf(m, formed.moving, c, formed.clamped, record);
    }
  }
  checks.leafWithBrake(record);
  if (record.phiRad === Infinity) return undefined;
  return {
    leafAngleRad: record.phiRad,
    member: record.member,
    tag: record.tag,
    point: { x: record.x + seat.pivot.x, y: record.y + seat.pivot.y },
  };
}

function clearanceOf(checks: SideChecks, formed: Formed) {
  const measure = new ClearanceChecks(checks);
  const record = noClearance();
  const { seat } = checks;
  for (const side of SIDES) {
    for (let k = 0; k <= checks.pieces.chainOf(side).joints; k++)
      measure.withBrake(side, k, formed[side], record);
  }
  measure.betweenSides(formed.moving, formed.clamped, record);
  if (record.mm === Infinity) return undefined;
  const { x, y } = seat.pivot;
  const points: readonly [Point, Point] = [
    { x: record.partX + x, y: record.partY + y },
    { x: record.otherX + x, y: record.otherY + y },
  ];
  return { mm: record.mm, points, member: memberOf(checks, record.other) };
}

/** Whose outline these features are: a body of the brake, else the part's own other side. */
function memberOf({ clamp, machine }: SideChecks, other: Features | undefined): Member {
  const lies = (body: SolidBody) => body.features === other;
  if (clamp.some(lies)) return "clamp";
  if (machine.frame.some(lies)) return "frame";
  if (lies(machine.bed)) return "bed";
  return lies(machine.leaf) ? "leaf" : "part";
}

function handlingOf(loading: LoadingChecks, seat: Seat, formed: Formed, finished: boolean): Handling {
  const [moving, clamped, zone] = [openRoom(), openRoom(), openRoom()];
  for (let k = 0; k <= seat.movingChain.joints; k++)
    loading.element("moving", k, formed.moving, finished, moving);
  for (let k = 0; k <= seat.clampedChain.joints; k++)
    loading.element("clamped", k, formed.clamped, finished, clamped);
  loading.bendZone(finished, zone);
  return loading.handling(moving, clamped, zone);
}
