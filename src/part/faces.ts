/**
 * The two faces of a chain of flats and bends as edges, led outward from the bend being made, for pictures.
 * Frame: origin on the outer face at the bend tangent line, x along the first flat, sheet between y = 0 and y = T.
 */
import type { Edge } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { Chain } from "./chain.ts";

export interface Faces {
  /** The face that lies on the bed or the leaf, outward. */
  readonly under: readonly Edge[];
  /** The face away from it, outward. */
  readonly over: readonly Edge[];
}

/** Faces of a chain with the joints in `formed` made (joint 0 in bit 0); the first `trimMm` are left away. */
export function facesOf(chain: Chain, formed: number, thicknessMm: Mm, trimMm: Mm): Faces {
  const under: Edge[] = [];
  const over: Edge[] = [];
  let x = trimMm;
  let y = 0;
  let dir = 0;
  let straightMm = chain.flatMm[0]! - trimMm;

  const offset = (heightMm: Mm): Point => ({
    x: x - heightMm * Math.sin(dir),
    y: y + heightMm * Math.cos(dir),
  });
  const goStraight = () => {
    const [from, fromOver] = [offset(0), offset(thicknessMm)];
    x += straightMm * Math.cos(dir);
    y += straightMm * Math.sin(dir);
    under.push({ kind: "line", from, to: offset(0) });
    over.push({ kind: "line", from: fromOver, to: offset(thicknessMm) });
  };

  for (let j = 0; j < chain.joints; j++) {
    if (!((formed >>> j) & 1)) {
      straightMm += chain.allowanceMm[j]! + chain.flatMm[j + 1]!;
      continue;
    }
    goStraight();
    const up = chain.turn[j]!;
    const r = chain.insideRadiusMm[j]!;
    const center = offset(up > 0 ? thicknessMm + r : -r);
    const sweepRad = up * chain.angleRad[j]!;
    const [from, fromOver] = [offset(0), offset(thicknessMm)];
    const startRad = up > 0 ? dir - Math.PI / 2 : dir + Math.PI / 2;
    dir += sweepRad;
    const underRadius = up > 0 ? r + thicknessMm : r;
    x = center.x + up * underRadius * Math.sin(dir);
    y = center.y - up * underRadius * Math.cos(dir);
    const overRadius = up > 0 ? r : r + thicknessMm;
    under.push({ kind: "arc", from, to: offset(0), center, radius: underRadius, startRad, sweepRad });
    over.push({
      kind: "arc",
      from: fromOver,
      to: offset(thicknessMm),
      center,
      radius: overRadius,
      startRad,
      sweepRad,
    });
    straightMm = chain.flatMm[j + 1]!;
  }
  goStraight();
  return { under, over };
}
