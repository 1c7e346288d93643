/**
 * Which piece of the brake a point lies on, by the name that the answer gives it: the holder apart from the finger or
 * bar that it carries, a piece of the frame by its own name. The nearest of the outlines that go by one member.
 */
import type { Brake } from "../brake/brake.ts";
import type { Member } from "../contact/sideChecks.ts";
import type { Met } from "../jobFile/answer.ts";
import type { Seat } from "../motion/seat.ts";
import { distanceToEdge } from "../plane/edge.ts";
import { movedOutline } from "../plane/move.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";

/** The piece at a point of the section with the clamp closed. Where bar and holder share an edge it is the bar. */
export function pieceMet(
  { clamp, frame, frameNames = [] }: Brake,
  seat: Seat,
  member: Member,
  at: Point,
): Met {
  if (member === "clamp" && clamp.kind !== "profile" && clamp.outlines.length > 1) {
    const closed = clamp.outlines.map((body) => movedOutline(body, -seat.noseSetbackMm, seat.thicknessMm));
    return { member: nearest(closed, at) === 0 ? "clamp" : "holder" };
  }
  if (member !== "frame") return { member };
  const name = frameNames[nearest(frame, at)];
  return { member, ...(name !== undefined && { name }) };
}

function nearest(outlines: readonly Outline[], at: Point): number {
  const off = outlines.map(({ edges }) => Math.min(...edges.map((edge) => distanceToEdge(at, edge))));
  return off.indexOf(Math.min(...off));
}
