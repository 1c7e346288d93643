/**
 * The answer to a whole part's job, as plain data: what `check --json` prints. Lengths in mm, angles in degrees, bends, faces
 * and fingers counted from 1. Points of the brake are [x, y, w], section frame and distance along the bend line from its
 * left end; points of the blank are [x, y].
 */
import type { FaceName } from "../pattern/faceName.ts";
import type { WholeMember } from "../pattern/strokeBodies.ts";
import type { WholeHandling } from "../pattern/strokeHandling.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import type { HandFinishAnswer, JudgedBend, PointPair, Verdict } from "./answer.ts";
import type { WholeWay } from "./wholeWay.ts";

export type PlacePoint = readonly [x: Mm, y: Mm, w: Mm];
export type { WholeHandling, WholeMember };

export interface WholeContactAnswer {
  readonly angle: Deg;
  /** Null where the leaf meets the brake itself. */
  readonly face: number | null;
  readonly member: WholeMember;
  /** Which finger, counted from the left. */
  readonly finger?: number;
  /** Of a frame piece that the job names. */
  readonly name?: string;
  readonly point: PlacePoint;
}

export interface FingerAnswer {
  readonly width: Mm;
  /** Its left side in w. */
  readonly from: Mm;
}

/** A width that no finger of the shop has, with the fingers to put beside it. */
export interface MissingFinger {
  readonly least: Mm;
  readonly most: Mm;
  readonly beside: readonly Mm[];
  /** The owned fingers that leave least bare, and how much; null where that is far too much. */
  readonly instead: { readonly fingers: readonly Mm[]; readonly bare: Mm } | null;
}

/** Where a stroke fails only within the doubts, contact and ways in and out are those there. */
export interface WholeStepAnswer extends JudgedBend {
  readonly bends: readonly number[];
  readonly clampedAt: PointPair;
  readonly clampedFace: number;
  readonly clearancePoints: readonly [PlacePoint, PlacePoint] | null;
  readonly contact: WholeContactAnswer | null;
  readonly refused: "grip" | "flange" | "rated" | "length" | "pinched" | null;
  readonly fingers: readonly FingerAnswer[];
  /** The longest stretch of bend line under no finger. */
  readonly bareLength: Mm;
  readonly load: WholeHandling;
  readonly unload: WholeHandling;
  /** Where the brake's left end stands in w; only where brake or clamp has a length. */
  readonly placed?: Mm;
  /** Only where no row of fingers holds the bend down. */
  readonly missing?: MissingFinger;
  /** Only where some stretch of the bend line, in w, is closed to any finger of this clamp because of a face. */
  readonly barred?: { readonly from: Mm; readonly to: Mm; readonly face: number };
}

export interface FaceAnswer {
  readonly face: number;
  readonly name: FaceName;
  readonly outline: readonly PointPair[];
  readonly holes: readonly (readonly PointPair[])[];
}

export interface WholeBlankBend {
  readonly bend: number;
  /** Its middle line's ends, on the outline. */
  readonly line: readonly [PointPair, PointPair];
  readonly tangents: readonly [readonly [PointPair, PointPair], readonly [PointPair, PointPair]];
  readonly allowance: Mm;
  readonly deduction: Mm;
}

export interface WholeReliefHole {
  readonly x: Mm;
  readonly y: Mm;
  readonly diameter: Mm;
  readonly bends: readonly [number, number];
}

/** What misread sizes do to the order that was found. */
export interface WholeDoubts {
  readonly asRead: Verdict;
  /** How far each size may be off. */
  readonly by: Mm;
  /** The mix that stops soonest: which sizes are off, by how much, and the bends that then fail; no bends: no such part. */
  readonly worst: {
    readonly sizes: readonly string[];
    readonly off: Mm;
    readonly bends: readonly number[];
  } | null;
  /** Sizes that alone change whether it folds. */
  readonly deciding: readonly string[];
  readonly mixesTried: number;
}

export interface WholeAnswer {
  readonly verdict: Verdict;
  readonly order: readonly WholeStepAnswer[];
  readonly viableOrders: number | bigint | null;
  readonly statesChecked: number;
  readonly faces: readonly FaceAnswer[];
  readonly blank: {
    readonly outline: readonly (PointPair | readonly [x: Mm, y: Mm, radius: Mm])[];
    readonly holes: readonly (readonly (PointPair | readonly [x: Mm, y: Mm, radius: Mm])[])[];
    readonly reliefHoles: readonly WholeReliefHole[];
    readonly bends: readonly WholeBlankBend[];
  };
  readonly folded: {
    readonly size: readonly [x: Mm, y: Mm, z: Mm];
    readonly faces: readonly { readonly face: number; readonly size: readonly [x: Mm, y: Mm] }[];
  };
  /** Bends that a hand closes in the end; only where the job has some. */
  readonly finishByHand?: readonly HandFinishAnswer[];
  readonly remedies: readonly WholeWay[];
  readonly warnings: readonly string[];
}
