/**
 * Relief holes of a whole blank: where two bends meet at a corner of the sheet, a hole at the crossing of their inside bend
 * tangent lines takes away the metal that would tear (FAA-H-8083-31, chapter 4, forming a box; diameters in relief.ts).
 */

import type { NamedPart } from "../pattern/namedPart.ts";
import type { LineBend, Pattern } from "../pattern/pattern.ts";
import { distanceToRing } from "../pattern/ring.ts";
import { wayOf } from "../pattern/strips.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { reliefDiameterMm } from "./relief.ts";

export interface WholeRelief {
  readonly center: Point;
  readonly diameterMm: Mm;
  /** The two bends that meet there, from 0. */
  readonly bends: readonly [number, number];
}

/** Two bends whose tangent lines cross nearer than this to the sheet's own corner there meet at it. */
const AT_CORNER_MM: Mm = 0.05;

/** The holes: one where two bends beside one face come together at a corner of that face. */
export function wholeReliefs({ pattern, hinges, faces }: NamedPart): WholeRelief[] {
  const { bends, thicknessMm } = pattern;
  const reliefs: WholeRelief[] = [];
  for (const [face, { outer }] of faces.entries()) {
    const beside = hinges.flatMap(({ bend, left, right }) => {
      const side = left.includes(face) ? 1 : right.includes(face) ? -1 : 0;
      return side === 0 ? [] : [{ bend, side }];
    });
    for (const [i, one] of beside.entries()) {
      for (const other of beside.slice(i + 1)) {
        const center = crossing(pattern, one, other);
        if (!center || !outer.some((corner) => near(corner, center))) continue;
        if (!endsAt(bends[one.bend]!, center) || !endsAt(bends[other.bend]!, center)) continue;
        const radii = [one, other].map(({ bend }) => bends[bend]!.insideRadiusMm);
        if (reliefs.some((known) => near(known.center, center))) continue;
        if (distanceToRing(outer, center) > AT_CORNER_MM) continue;
        reliefs.push({
          center,
          diameterMm: reliefDiameterMm(thicknessMm, radii),
          bends: [one.bend, other.bend],
        });
      }
    }
  }
  return reliefs;
}

interface Beside {
  readonly bend: number;
  /** +1 where the face lies on the left of the bend's line. */
  readonly side: number;
}

/** Where the two tangent lines beside the face cross. */
function crossing({ bends }: Pattern, one: Beside, other: Beside): Point | undefined {
  const [a, b] = [one, other].map(({ bend, side }) => {
    const of = bends[bend]!;
    const { ux, uy } = wayOf(of);
    const off = (side * of.allowanceMm) / 2;
    return { x: of.from.x - uy * off, y: of.from.y + ux * off, ux, uy };
  }) as [Ray, Ray];
  const turn = a.ux * b.uy - a.uy * b.ux;
  if (Math.abs(turn) < 1e-6) return undefined;
  const t = ((b.x - a.x) * b.uy - (b.y - a.y) * b.ux) / turn;
  return { x: a.x + t * a.ux, y: a.y + t * a.uy };
}

interface Ray extends Point {
  readonly ux: number;
  readonly uy: number;
}

function near(a: Point, b: Point): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) < AT_CORNER_MM;
}

/** Whether a bend's line ends about where the two cross: within its own allowance. */
function endsAt({ from, to, allowanceMm }: LineBend, center: Point): boolean {
  return [from, to].some((end) => Math.hypot(end.x - center.x, end.y - center.y) < allowanceMm);
}
