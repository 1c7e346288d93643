/**
 * The job file as the reference reads it: numbers only, in mm and degrees, overbend always given.
 * The keys are those of the file contract; everything else of the file is ignored here.
 */
import type { Corner } from "./shape.ts";

export type Turn = "up" | "down";
export type End = "start" | "end";

export interface PlainBend {
  angle: number;
  turn: Turn;
  insideRadius?: number;
  overbend: number;
}

export interface PlainPart {
  thickness: number;
  insideRadius: number;
  kFactor: number;
  dimensions: "outside" | "inside" | "flat";
  flats: number[];
  bends: PlainBend[];
}

export interface PlainHolder {
  holderBack?: number;
  holderHeight?: number;
  holderDepth?: number;
}

export type PlainClamp = { shim?: number } & (
  | (PlainHolder & {
      type: "finger";
      noseAngle: number;
      noseRadius: number;
      height: number;
      footDepth: number;
      topRadius?: number;
    })
  | (PlainHolder & {
      type: "bar";
      noseAngle?: number;
      noseRadius: number;
      thickness: number;
      depth: number;
      topRadius?: number;
    })
  | { type: "profile"; noseRadius: number; profiles: Corner[][] }
);

export interface PlainBrake {
  clamp: PlainClamp;
  bed: { profile: Corner[] };
  leaf: { profile: Corner[]; swing: number; pivot?: [number, number] };
  frame?: Corner[][];
  lift: number;
  openEnds: boolean;
  setback?: "auto" | "one" | number;
}

export interface PlainJob {
  part: PlainPart;
  brake: PlainBrake;
  margin?: number;
  order?: { bend: number; clamped: End }[];
}

/** What is made next, on a part with some bends made already. Bends count from 0. */
export interface State {
  done: readonly boolean[];
  bend: number;
  end: End;
}
