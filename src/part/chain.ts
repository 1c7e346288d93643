/**
 * One side of a part as a chain that leads away from the bend being made: flat, joint, flat, joint, flat …
 * A joint is another bend of the part, formed or still flat; it turns up when it turns like the bend being made,
 * whichever end is clamped, because the sheet is always laid so that the bend being made goes up.
 */
import { type Mm, toRad } from "../units/quantity.ts";
import type { End, Part } from "./part.ts";

export interface Chain {
  /** Number of joints; there is one flat more. */
  readonly joints: number;
  /** Tangent-to-tangent length of each flat, outward. */
  readonly flatMm: Float64Array;
  /** Which flat of the part each is, from 0. */
  readonly flatNumber: Int32Array;
  /** Which bend of the part joint j (between flat j and flat j + 1) is, from 0. */
  readonly bendNumber: Int32Array;
  readonly allowanceMm: Float64Array;
  readonly insideRadiusMm: Float64Array;
  readonly angleRad: Float64Array;
  readonly cosAngle: Float64Array;
  readonly sinAngle: Float64Array;
  readonly cosHalfAngle: Float64Array;
  readonly sinHalfAngle: Float64Array;
  /** +1 where the joint turns up, −1 where it turns down. */
  readonly turn: Int8Array;
}

/**
 * The chain on one side of a bend. `towards` says at which end of the part it finishes: the chain towards the
 * clamped end is the clamped side, the other one the moving side.
 */
export function chainFrom(part: Part, bend: number, towards: End): Chain {
  const joints = towards === "start" ? bend : part.bends.length - 1 - bend;
  const chain = {
    joints,
    flatMm: new Float64Array(joints + 1),
    flatNumber: new Int32Array(joints + 1),
    bendNumber: new Int32Array(joints),
    allowanceMm: new Float64Array(joints),
    insideRadiusMm: new Float64Array(joints),
    angleRad: new Float64Array(joints),
    cosAngle: new Float64Array(joints),
    sinAngle: new Float64Array(joints),
    cosHalfAngle: new Float64Array(joints),
    sinHalfAngle: new Float64Array(joints),
    turn: new Int8Array(joints),
  };
  const upTurn = part.bends[bend]!.turn;
  for (let k = 0; k <= joints; k++) {
    const flat = towards === "start" ? bend - k : bend + 1 + k;
    chain.flatNumber[k] = flat;
    chain.flatMm[k] = part.flatsMm[flat]!;
    if (k === joints) break;
    const number = towards === "start" ? bend - 1 - k : bend + 1 + k;
    const joint = part.bends[number]!;
    chain.bendNumber[k] = number;
    chain.allowanceMm[k] = joint.allowanceMm;
    chain.insideRadiusMm[k] = joint.insideRadiusMm;
    chain.angleRad[k] = toRad(joint.angleDeg);
    chain.cosAngle[k] = Math.cos(chain.angleRad[k]!);
    chain.sinAngle[k] = Math.sin(chain.angleRad[k]!);
    chain.cosHalfAngle[k] = Math.cos(chain.angleRad[k]! / 2);
    chain.sinHalfAngle[k] = Math.sin(chain.angleRad[k]! / 2);
    chain.turn[k] = joint.turn === upTurn ? 1 : -1;
  }
  return chain;
}

/** Which joints of a chain are formed, joint 0 in bit 0, from the part's set of bends done (bend 1 in bit 0). */
export function formedJoints(chain: Chain, bendsDone: number): number {
  let formed = 0;
  for (let j = 0; j < chain.joints; j++) {
    if ((bendsDone >>> chain.bendNumber[j]!) & 1) formed |= 1 << j;
  }
  return formed;
}

/** Length of flats 0 to k of a chain with the strips between them, none of the joints formed. */
export function flatRunMm({ flatMm, allowanceMm }: Chain, k: number): Mm {
  let mm = flatMm[0]!;
  for (let j = 1; j <= k; j++) mm += allowanceMm[j - 1]! + flatMm[j]!;
  return mm;
}
