/**
 * A bend seated by hand in a brake of plain blocks, every length chosen so that the answer can be worked out on paper. All
 * coordinates from the leaf's pivot.
 */
import type { Brake } from "../../src/brake/brake.ts";
import { Machine } from "../../src/contact/machine.ts";
import { SideChecks } from "../../src/contact/sideChecks.ts";
import type { Seat } from "../../src/motion/seat.ts";
import type { Chain } from "../../src/part/chain.ts";
import { type CornerOf, outlineOf } from "../contact/shapes.ts";

export interface PlainJoint {
  readonly allowanceMm: number;
  readonly insideRadiusMm: number;
  readonly angleRad: number;
  readonly turn: 1 | -1;
}

/** Flats outward from the bend with the joints between them. */
export function plainChain(flatMm: readonly number[], joints: readonly PlainJoint[] = []): Chain {
  const of = (figure: (joint: PlainJoint) => number) => Float64Array.from(joints, figure);
  return {
    joints: joints.length,
    flatMm: Float64Array.from(flatMm),
    flatNumber: Int32Array.from(flatMm, (_, i) => i),
    bendNumber: Int32Array.from(joints, (_, i) => i),
    allowanceMm: of((joint) => joint.allowanceMm),
    insideRadiusMm: of((joint) => joint.insideRadiusMm),
    angleRad: of((joint) => joint.angleRad),
    cosAngle: of((joint) => Math.cos(joint.angleRad)),
    sinAngle: of((joint) => Math.sin(joint.angleRad)),
    cosHalfAngle: of((joint) => Math.cos(joint.angleRad / 2)),
    sinHalfAngle: of((joint) => Math.sin(joint.angleRad / 2)),
    turn: Int8Array.from(joints, (joint) => joint.turn),
  };
}

/** A seat whose pivot is the origin of the section, unless told; nothing slides. */
export function plainSeat(told: Partial<Seat>): Seat {
  const quarter = Math.PI / 2;
  return {
    bend: 0,
    clamped: "start",
    thicknessMm: 1,
    insideRadiusMm: 2,
    angleRad: quarter,
    overbendRad: quarter,
    fromRad: 0,
    sweepRad: quarter,
    allowanceMm: 4,
    pivot: { x: 0, y: 0 },
    clampedTangentX: -3,
    movingTangentX: 1,
    slideTan: 0,
    slideTurn: 0,
    bendZoneTan: 0,
    noseSetbackMm: 0,
    pinched: false,
    relaxedTangentMm: 3,
    movingChain: plainChain([20]),
    clampedChain: plainChain([20]),
    ...told,
  };
}

export type Block = readonly [x0: number, y0: number, x1: number, y1: number];

/** A body of the brake: a block, or its corners. */
export type PlainBody = Block | readonly CornerOf[];

export interface PlainBlocks {
  readonly clamp?: readonly PlainBody[];
  readonly bed?: PlainBody;
  readonly leaf?: PlainBody;
  readonly frame?: readonly PlainBody[];
  readonly liftMm?: number;
  readonly openEnds?: boolean;
}

/** The least that may stand about the pivot: out of the way of all that the tests lay farther out. */
const SMALL: Block = [-0.2, -0.2, 0, 0];

/** The checks of a seat in a brake of these bodies; those not told are small, at the pivot. */
export function checksIn(seat: Seat, blocks: PlainBlocks): SideChecks {
  return new SideChecks(seat, machineOf(seat, blocks));
}

export function machineOf({ pivot, thicknessMm, noseSetbackMm }: Seat, blocks: PlainBlocks): Machine {
  const { clamp = [SMALL], bed = SMALL, leaf = SMALL, frame = [], liftMm = 30, openEnds = false } = blocks;
  const placed = (body: PlainBody, dx: number, dy: number) =>
    outlineOf(...cornersOf(body).map(([x, y, radius = 0]): CornerOf => [x + dx, y + dy, radius]));
  const section = (body: PlainBody) => placed(body, pivot.x, pivot.y);
  const brake: Brake = {
    name: "plain",
    clamp: {
      kind: "profile",
      noseRadiusMm: 0,
      // Nose coordinates: the clamp is set back and stands on the sheet.
      outlines: clamp.map((body) => placed(body, pivot.x + noseSetbackMm, pivot.y - thicknessMm)),
    },
    bed: section(bed),
    leaf: { outline: section(leaf), swingDeg: 180, pivot },
    frame: frame.map(section),
    liftMm,
    openEnds,
    noseSetback: noseSetbackMm,
  };
  return new Machine(brake, thicknessMm);
}

function cornersOf(body: PlainBody): readonly CornerOf[] {
  const [first] = body;
  if (typeof first !== "number") return body as readonly CornerOf[];
  const [x0, y0, x1, y1] = body as Block;
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}
