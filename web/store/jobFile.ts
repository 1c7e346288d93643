/**
 * The job file as the worksheet holds it: exactly what is saved, with every figure as the person typed it.
 * It is the contract's shape, not a checked job: the engine's reader says what is wrong with it, key by key.
 */

import type { FingerFile, WholeKeys } from "./wholeFile.ts";
import type { Profile, Typed, Vertex } from "./written.ts";

export type { Profile, Typed, Vertex } from "./written.ts";

/** A bend by its angle from flat or between the flats; a hem; or an offset, two bends with a flat between. */
export interface BendFile {
  readonly angle?: Typed;
  readonly included?: Typed;
  readonly hem?: "closed" | "open" | "teardrop";
  /** Between the layers of a hem. */
  readonly gap?: Typed;
  /** Height of an offset over its outside faces. */
  readonly offset?: Typed;
  readonly turn: "up" | "down";
  readonly insideRadius?: Typed;
  readonly overbend?: Typed;
  readonly deduction?: Typed;
}

/** A flat as measured: from edge to edge of the bends at its ends, or "rest" of the overall size. */
export type FlatFile =
  | Typed
  | {
      readonly size: Typed;
      readonly from?: "outside" | "inside" | "tangent";
      readonly to?: "outside" | "inside" | "tangent";
    };

export interface OwnMetalFile {
  readonly name: string;
  readonly yield: Typed;
  readonly modulus: Typed;
  readonly ultimate?: Typed;
}

/** Of a box or a pattern the lists of flats and bends are empty; they are not written. */
export interface PartFile extends WholeKeys {
  readonly name: string;
  readonly material: string | OwnMetalFile;
  readonly thickness: Typed;
  readonly insideRadius: Typed;
  readonly kFactor?: Typed;
  readonly length?: Typed;
  readonly dimensions: "outside" | "inside" | "flat";
  readonly closedBends?: "corner" | "tangent";
  readonly flats: readonly FlatFile[];
  readonly bends: readonly BendFile[];
  readonly overall?: { readonly size: Typed; readonly along: number };
  readonly allowance?: "kFactor" | "din6935";
  /** "across" or "along" the bend lines, or the angle to them. */
  readonly grain?: Typed;
  /** How far readings may be off: one for all flats, or one for each. */
  readonly doubts?: Typed | readonly Typed[];
  readonly cutOuts?: readonly CutOutFile[];
}

/** From and to; the second may be "end". */
export type SpanFile = readonly [from: Typed, to: Typed];

export interface CutOutFile {
  /** From the free end of flat 1. */
  readonly across: SpanFile;
  /** From the blank's start along the bend lines. */
  readonly along: SpanFile;
}

export interface ClampFile {
  readonly type: "finger" | "bar" | "profile";
  readonly noseAngle?: Typed;
  readonly noseRadius?: Typed;
  readonly height?: Typed;
  readonly footDepth?: Typed;
  readonly thickness?: Typed;
  readonly depth?: Typed;
  readonly topRadius?: Typed;
  readonly holderBack?: Typed;
  readonly holderHeight?: Typed;
  readonly holderDepth?: Typed;
  readonly shim?: Typed;
  readonly profiles?: readonly Profile[];
  /** Fingers that the shop owns, and the longest bare length between them. */
  readonly fingers?: readonly FingerFile[];
  readonly fingerGap?: Typed;
  /** Of one clamp without fingers, from the brake's left end. */
  readonly length?: Typed;
}

/** A fixed piece of the brake: its profile, or that with a name and the stretch of the brake along which it stands. */
export type FramePiece =
  | Profile
  | { readonly name: string; readonly profile: Profile; readonly along?: readonly [Typed, Typed] };

export interface BrakeFile {
  readonly name: string;
  /** Day on which it was measured, year-month-day. */
  readonly measured?: string;
  readonly clamp: ClampFile;
  readonly bed: { readonly profile: Profile };
  readonly leaf: { readonly profile: Profile; readonly swing: Typed; readonly pivot?: Vertex };
  readonly frame?: readonly FramePiece[];
  readonly lift: Typed;
  readonly openEnds: boolean;
  /** Of bed and leaf. */
  readonly length?: Typed;
  readonly setback?: Typed;
  readonly leastGrip?: Typed;
  readonly leastFlange?: Typed;
  /** How far readings may be off, either way: the leaf angle in degrees, nose setback and nose radius as lengths. */
  readonly doubts?: { readonly overbend?: Typed; readonly setback?: Typed; readonly noseRadius?: Typed };
  readonly rated?: { readonly thickness: Typed; readonly length: Typed; readonly yield: Typed };
}

export interface OrderFile {
  readonly bend: number;
  readonly clamped: "start" | "end";
  /** Leaves the bend at this angle, to be finished by a later step. */
  readonly to?: Typed;
}

/** A bend that the leaf leaves at an angle, to be closed by hand. */
export interface HandFinishFile {
  readonly bend: number;
  readonly to: Typed;
  readonly filler?: Typed;
}

export interface JobFile {
  readonly noseroom: 1;
  readonly units: "mm" | "in";
  readonly part: PartFile;
  readonly brake: BrakeFile;
  readonly order?: readonly OrderFile[];
  readonly finishByHand?: readonly HandFinishFile[];
  readonly margin?: Typed;
}

export type Key = string | number;
export type KeyPath = readonly Key[];

/**
 * A copy of `value` with the thing at `path` replaced; `undefined` takes an optional key away.
 * @example setAt({ a: [1, 2] }, ["a", 1], 3) // { a: [1, 3] }
 */
export function setAt<T>(value: T, path: KeyPath, next: unknown): T {
  const [head, ...rest] = path;
  if (head === undefined) return next as T;
  if (Array.isArray(value)) {
    const copy = value.slice() as unknown[];
    copy[head as number] = setAt(copy[head as number], rest, next);
    return copy as T;
  }
  const copy: Record<Key, unknown> = { ...(value as Record<Key, unknown>) };
  const inner = setAt(copy[head], rest, next);
  if (inner === undefined) delete copy[head];
  else copy[head] = inner;
  return copy as T;
}

/** What stands at `path`, or undefined. @example getAt({ a: [1] }, ["a", 0]) // 1 */
export function getAt(value: unknown, path: KeyPath): unknown {
  let at: unknown = value;
  for (const key of path) {
    if (at === null || typeof at !== "object" || !Object.hasOwn(at, key)) return undefined;
    at = (at as Record<Key, unknown>)[key];
  }
  return at;
}

/** The job as the contract has it: a box and a pattern are written without flats and bends, a pattern has its own size. */
export function written(file: JobFile): object {
  const { flats, bends, dimensions, ...part } = file.part;
  if (part.pattern) return { ...file, part };
  return part.box ? { ...file, part: { ...part, dimensions } } : file;
}

/** The job file's text, the same to the letter as a file that the command reads. */
export function fileText(file: JobFile): string {
  return `${JSON.stringify(written(file), null, 2)}\n`;
}

/** A file name for a job: its own name, with what file systems dislike taken out. @example fileName("Trough 3/8") // "trough-3-8.json" */
export function fileName(name: string): string {
  const plain = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  return `${plain === "" ? "job" : plain}.json`;
}
