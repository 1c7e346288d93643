/**
 * What a job file holds of a whole part beside the sheet: a box, a pattern, the ends and spans of a section, and the order
 * of its strokes; and the fingers that the shop owns. Figures as typed.
 */
import type { Profile, Typed } from "./written.ts";

interface Bent {
  readonly insideRadius?: Typed;
  readonly overbend?: Typed;
}

export interface LipFile extends Bent {
  readonly size: Typed;
  readonly angle?: Typed;
  readonly turn?: "in" | "out" | "up" | "down";
}

export interface WallFile extends Bent {
  readonly height: Typed;
  readonly angle?: Typed;
  readonly turn?: "up" | "down";
  readonly lips?: readonly LipFile[];
}

export const SIDES = ["left", "right", "front", "back"] as const;
export type Side = (typeof SIDES)[number];

export type CornersFile =
  | "open"
  | "meet"
  | ({ readonly tab: Typed; readonly on?: "inside" | "outside" } & Bent);

export interface BoxFile {
  readonly width: Typed;
  readonly depth: Typed;
  readonly walls: { readonly [side in Side]?: Typed | WallFile };
  readonly corners?: CornersFile;
  readonly gap?: Typed;
}

export interface EndFile extends Bent {
  readonly flat: number;
  readonly at: "start" | "finish";
  readonly size: Typed;
  readonly angle: Typed;
  readonly turn: "up" | "down";
  readonly from?: Typed;
  readonly to?: Typed;
  readonly lips?: readonly LipFile[];
}

export interface FlatSpanFile {
  readonly flat: number;
  readonly from: Typed;
  readonly to: Typed;
}

type Place = readonly [x: Typed, y: Typed];

export interface LineBendFile extends Bent {
  readonly line: readonly [Place, Place];
  readonly angle: Typed;
  readonly turn: "up" | "down";
}

export interface PatternFile {
  readonly outline: Profile;
  readonly holes?: readonly Profile[];
  readonly bends: readonly LineBendFile[];
}

/** Keys of a part that make it more than a section. */
export interface WholeKeys {
  readonly box?: BoxFile;
  readonly pattern?: PatternFile;
  readonly ends?: readonly EndFile[];
  readonly spans?: readonly FlatSpanFile[];
}

/** One stroke of the user's own order. */
export interface WholeStepFile {
  readonly bends: readonly number[];
  readonly clampedAt: Place;
  readonly fingers?: readonly { readonly width: Typed; readonly from: Typed }[];
  readonly placed?: Typed;
}

export interface FingerFile {
  readonly width: Typed;
  readonly count: number;
}

/** Whether a part is more than a section. */
export function isWhole({ box, pattern, ends, spans }: WholeKeys): boolean {
  return (box ?? pattern ?? ends ?? spans) !== undefined;
}

/** A wall as a group, its height alone included. */
export function wallOf(wall: Typed | WallFile): WallFile {
  return typeof wall === "object" ? wall : { height: wall };
}
