/**
 * What boxes alone tell: that a shape never comes near a body, the leaf or a shape of the other side, however far the leaf
 * swings. Never wrong: a box is no smaller than its shape (contact/sector).
 */
import type { Machine } from "../contact/machine.ts";
import type { SeatPieces } from "../contact/seatPieces.ts";
import { type Box, leadingDirection, lowestDirection, trailingDirection } from "../contact/sector.ts";
import type { Swing } from "../motion/swing.ts";
import type { Rad } from "../units/quantity.ts";
import type { Body } from "./strokeBodies.ts";

/** Whether two boxes share nothing, or only touch. */
export function boxesApart(a: Box, b: Box): boolean {
  return a.minX >= b.maxX || b.minX >= a.maxX || a.minY >= b.maxY || b.minY >= a.maxY;
}

/** Whether a moving shape never comes near a body. */
export function sweepsClear(
  { turning, sliding, startCut }: SeatPieces,
  box: Box,
  { member, solid }: Body,
): boolean {
  const { features } = solid;
  // Against the leaf the sheet only slides along x.
  if (member === "leaf") return box.minY >= features.maxY || box.maxY <= features.minY;
  if (startCut) return false;
  const slide = Math.max(turning.maxSlide, sliding.maxSlide);
  if (farOf(box) + slide < features.near || nearOf(box) - slide > features.far) return true;
  return sectorsApart(box, turning, solid);
}

/** Whether the swinging leaf never comes near a clamped shape. */
export function leafClear({ leaf }: Machine, sweepRad: Rad, box: Box): boolean {
  if (nearOf(box) > leaf.features.far) return true;
  // A leaf that lies below the pivot's level at rest leads with its face, in direction φ.
  return leaf.features.maxY <= 1e-9 && box.minY >= 0 && trailingDirection(box, 0) > sweepRad;
}

/** Whether what swings keeps short of a body, and does not come at it from below. */
export function sectorsApart(
  box: Box,
  swing: Swing,
  { leastDirection, mostDirection }: Body["solid"],
): boolean {
  const leading = leadingDirection(box, swing.maxInward, 0) + swing.sweepRad;
  return leading < leastDirection && lowestDirection(box, swing.maxInward) > mostDirection - 2 * Math.PI;
}

/** Whether a moving shape never comes near a clamped one. */
export function sidesApart({ turning, startCut }: SeatPieces, moving: Box, clamped: Box): boolean {
  if (startCut) return false;
  const slide = turning.maxSlide;
  if (farOf(moving) + slide < nearOf(clamped) || nearOf(moving) - slide > farOf(clamped)) return true;
  const leading = leadingDirection(moving, turning.maxInward, 0) + turning.sweepRad;
  const most = clamped.minY >= 0 ? Math.PI : clamped.maxX <= 0 ? 1.5 * Math.PI : 2 * Math.PI;
  const lowest = lowestDirection(moving, turning.maxInward);
  return leading < trailingDirection(clamped, 0) && lowest > most - 2 * Math.PI;
}

/** Farthest and nearest that a box comes to the pivot. */
export function farOf({ minX, minY, maxX, maxY }: Box): number {
  return Math.hypot(Math.max(-minX, maxX), Math.max(-minY, maxY));
}

export function nearOf({ minX, minY, maxX, maxY }: Box): number {
  return Math.hypot(Math.max(minX, -maxX, 0), Math.max(minY, -maxY, 0));
}
