/**
 * The brake round one stroke: every body with the interval of w over which it runs. Bed, leaf, holder and frame run over
 * the brake's length, but for frame pieces that stand along a stretch of it; the clamp too unless it is shorter; a finger over its own width, and it carries the finger's profile
 * alone. Touching is no contact, so each interval is drawn in by 0.01 mm at both ends.
 */
import type { Brake } from "../brake/brake.ts";
import type { Machine } from "../contact/machine.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import { boxOf } from "../plane/bounding.ts";
import type { Mm } from "../units/quantity.ts";
import type { Interval } from "./strokePlan.ts";

export type WholeMember = "finger" | "clamp" | "holder" | "leaf" | "bed" | "frame" | "part";

/** A finger in its place: `fromMm` is its left side in w. */
export interface PlacedFinger {
  readonly widthMm: Mm;
  readonly fromMm: Mm;
}

/** How the brake stands to the part: what clamps, and how far the brake itself runs. */
export interface Tooling {
  /** Undefined: one clamp, over the brake's length or `clampLengthMm` of it from its left end. */
  readonly fingers?: readonly PlacedFinger[];
  readonly clampLengthMm?: Mm;
  /** Undefined: as long as need be. */
  readonly brakeLengthMm?: Mm;
  /** w of the brake's left end; where the brake has a length or the clamp has. */
  readonly placedMm?: Mm;
}

export interface Body extends Interval {
  readonly member: Exclude<WholeMember, "part">;
  /** Of a finger, its number from the left, from 0. */
  readonly finger?: number;
  /** Of a frame piece that the job names. */
  readonly name?: string;
  readonly solid: SolidBody;
  /** Rises with the clamp when it opens. */
  readonly rises: boolean;
}

/** Touching ends are no contact. */
export const DRAWN_IN_MM: Mm = 0.01;

/** A clamp profile that begins higher than this over the underside hangs over the fingers: it is the holder. */
const ON_SHEET_MM: Mm = 0.01;

/** The bodies of a stroke with the nose set back by `noseSetbackMm`. */
export function strokeBodies(machine: Machine, noseSetbackMm: Mm, tooling: Tooling): Body[] {
  const { brake } = machine;
  const whole = brakeInterval(tooling);
  const clamp = clampIntervals(tooling, whole);
  const clampBodies = machine.clampAt(noseSetbackMm).flatMap((solid, i): Body[] => {
    if (isHolder(brake, i)) return [{ member: "holder", solid, rises: true, ...whole }];
    return clamp.map((at, finger) => ({
      member: tooling.fingers ? "finger" : "clamp",
      ...(tooling.fingers && { finger }),
      solid,
      rises: true,
      ...at,
    }));
  });
  return [
    ...clampBodies,
    { member: "bed", solid: machine.bed, rises: false, ...whole },
    ...machine.frame.map((solid, i): Body => {
      const name = brake.frameNames?.[i];
      return { member: "frame", ...(name !== undefined && { name }), solid, rises: false, ...whole };
    }),
    ...machine.stretches.map((solid, i): Body => {
      const { name, fromMm, toMm } = brake.stretches![i]!;
      const at = tooling.placedMm ?? 0;
      return { member: "frame", name, solid, rises: false, ...drawnIn(at + fromMm, at + toMm) };
    }),
    { member: "leaf", solid: machine.leaf, rises: false, ...whole },
  ];
}

/** Whether an outline of the clamp is what carries the fingers: it begins higher than the lowest one. */
export function isHolder({ clamp }: Brake, outline: number): boolean {
  return boxOf(clamp.outlines[outline]!).minY > boxOf(...clamp.outlines).minY + ON_SHEET_MM;
}

function drawnIn(from: number, to: number): Interval {
  return { from: from + DRAWN_IN_MM, to: to - DRAWN_IN_MM };
}

/** The stretch of w over which the brake runs. */
export function brakeInterval({ brakeLengthMm, placedMm = 0 }: Tooling): Interval {
  return brakeLengthMm === undefined
    ? { from: -Infinity, to: Infinity }
    : drawnIn(placedMm, placedMm + brakeLengthMm);
}

/** The stretches of w over which something clamps. */
function clampIntervals({ fingers, clampLengthMm, placedMm = 0 }: Tooling, whole: Interval): Interval[] {
  if (fingers) return fingers.map(({ fromMm, widthMm }) => drawnIn(fromMm, fromMm + widthMm));
  return [clampLengthMm === undefined ? whole : drawnIn(placedMm, placedMm + clampLengthMm)];
}
