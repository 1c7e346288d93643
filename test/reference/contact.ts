/**
 * First contact while the leaf swings from 0 to the overbend angle: sampled as finely as the shapes are near, then
 * bisected. An interval is passed over only where the bound on speed proves it free. To 1e-4°, plus what flattening costs.
 */
import { roomBetween } from "./overlap.ts";
import {
  bothStill,
  leafAgainst,
  type Member,
  movingAgainst,
  movingAgainstLeaf,
  type Pair,
  type Stage,
} from "./pairs.ts";

const FINEST = (0.02 * Math.PI) / 180;
/** The leaf touches the bed all through its swing, so that every step of it must be asked of JSTS. */
const FINEST_OF_LEAF = (0.25 * Math.PI) / 180;
const SOLVED = (1e-5 * Math.PI) / 180;

export interface Contact {
  angleDeg: number;
  member: Member;
  /** Every member overlapped at a whisker past the contact angle. */
  members: Member[];
}

/** Pairs of one bend that may meet, sheet faces pulled in by the inset. */
export function contactPairs(stage: Stage): Pair[] {
  const { machine, clampedShapes, clamp, movingPieces } = stage;
  const pairs: Pair[] = [];
  for (const shape of clampedShapes) {
    for (const body of clamp) pairs.push(bothStill(shape, body, "clamp"));
    pairs.push(bothStill(shape, machine.bed, "bed"));
    for (const body of machine.frame) pairs.push(bothStill(shape, body, "frame"));
    pairs.push(leafAgainst(stage, shape, "leaf"));
  }
  movingPieces.forEach((_, i) => {
    for (const body of clamp) pairs.push(movingAgainst(stage, i, body, "clamp"));
    pairs.push(movingAgainst(stage, i, machine.bed, "bed"));
    for (const body of machine.frame) pairs.push(movingAgainst(stage, i, body, "frame"));
    for (const body of clampedShapes) pairs.push(movingAgainst(stage, i, body, "part"));
    pairs.push(movingAgainstLeaf(stage, i));
  });
  return pairs;
}

/** The leaf against bed and clamp: the same for every state of the part, so remembered for the whole job. */
export class LeafAlone {
  private readonly known = new Map<string, number | null>();

  /** First angle at which the leaf meets bed or clamp in the whole of its swing. */
  meets(stage: Stage, member: "bed" | "clamp"): number | null {
    const key = member === "bed" ? member : `${member} ${stage.noseSetback} ${stage.sheet.thickness}`;
    const before = this.known.get(key);
    if (before !== undefined) return before;
    const swing = (stage.machine.swing * Math.PI) / 180;
    const bodies = member === "bed" ? [stage.machine.bed] : stage.clamp;
    const angles = bodies
      .map((body) => firstOverlap(leafAgainst(stage, body, member), swing, FINEST_OF_LEAF))
      .filter((phi) => phi !== null);
    const first = angles.length === 0 ? null : Math.min(...angles);
    this.known.set(key, first);
    return first;
  }
}

/** Distance still to go at φ; −1 where the two overlap; 0 where the bend zone has taken all, since it may give some back. */
function roomAt(pair: Pair, phi: number): number {
  const shape = pair.at(phi);
  if (shape === null) return 0;
  return roomBetween(shape, pair.convex, pair.still, pair.stillConvex);
}

/** First angle with overlap between two angles, the first of which is free; null if there is none. */
function firstBetween(
  pair: Pair,
  a: number,
  b: number,
  roomA: number,
  roomB: number,
  finest: number,
): number | null {
  if (roomB >= 0 && roomA + roomB > pair.speed(b) * (b - a)) return null;
  if (b - a < finest) {
    if (roomB >= 0) return null;
    let [free, met] = [a, b];
    while (met - free > SOLVED) {
      const middle = (free + met) / 2;
      if (roomAt(pair, middle) < 0) met = middle;
      else free = middle;
    }
    return met;
  }
  const middle = (a + b) / 2;
  const room = roomAt(pair, middle);
  const early = firstBetween(pair, a, middle, roomA, room, finest);
  if (early !== null || room < 0) return early;
  return firstBetween(pair, middle, b, room, roomB, finest);
}

/** First angle in [from, endPhi] at which the pair overlaps. */
export function firstOverlap(pair: Pair, endPhi: number, finest = FINEST, from = 0): number | null {
  const start = roomAt(pair, from);
  if (start < 0) return from;
  if (pair.speed(endPhi) === 0) return null;
  return firstBetween(pair, from, endPhi, start, roomAt(pair, endPhi), finest);
}

/** First contact of the bend from leaf angle `from` on, or null. */
export function firstContact(stage: Stage, alone: LeafAlone, from = 0): Contact | null {
  const pairs = contactPairs(stage);
  let least = Infinity;
  let member: Member = "part";
  for (const pair of pairs) {
    const phi = firstOverlap(pair, Math.min(least, stage.endPhi), FINEST, from);
    if (phi === null || phi >= least) continue;
    least = phi;
    member = pair.member;
    if (least === from) break;
  }
  const byLeaf = (["bed", "clamp"] as const).map((body) => ({
    body,
    phi: alone.meets(stage, body) ?? Infinity,
  }));
  for (const { body, phi } of byLeaf) {
    if (phi > stage.endPhi || phi >= least) continue;
    least = phi;
    member = body;
  }
  if (least === Infinity) return null;
  const past = least + (1e-3 * Math.PI) / 180;
  const members = new Set(pairs.filter((pair) => roomAt(pair, past) < 0).map((pair) => pair.member));
  for (const { body, phi } of byLeaf) if (phi <= past) members.add(body);
  return { angleDeg: (least * 180) / Math.PI, member, members: [...members] };
}
