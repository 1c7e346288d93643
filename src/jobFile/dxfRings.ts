/**
 * Chains loose edges of a drawing into closed rings, end to end, whichever way each was drawn.
 * Ends meet when they are within 0.02 mm, which is what drawing programs leave between pieces.
 */
import type { Point } from "../plane/point.ts";

/** A straight edge (bulge 0) or an arc; bulge is the tangent of a quarter of the swept angle, positive to the left. */
export interface DxfEdge {
  readonly from: Point;
  readonly to: Point;
  readonly bulge: number;
}

const MEET_MM = 0.02;

const meets = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y) <= MEET_MM;

/** The closed rings, counter-clockwise, how many edges belong to none, and where one of those ends. */
export function ringsOf(edges: readonly DxfEdge[]): {
  readonly rings: readonly (readonly DxfEdge[])[];
  readonly loose: number;
  readonly open?: Point;
} {
  const left = edges.filter((edge) => !meets(edge.from, edge.to));
  const rings: DxfEdge[][] = [];
  let loose = 0;
  let open: Point | undefined;
  while (left.length > 0) {
    const ring = [left.shift()!];
    while (!meets(ring.at(-1)!.to, ring[0]!.from)) {
      const end = ring.at(-1)!.to;
      const next = left.findIndex((edge) => meets(edge.from, end) || meets(edge.to, end));
      if (next < 0) break;
      const [edge] = left.splice(next, 1);
      ring.push(meets(edge!.from, end) ? edge! : reversed(edge!));
    }
    if (ring.length > 1 && meets(ring.at(-1)!.to, ring[0]!.from)) rings.push(counterClockwise(ring));
    else {
      loose += ring.length;
      open ??= ring.at(-1)!.to;
    }
  }
  return { rings, loose, ...(open && { open }) };
}

function reversed(edge: DxfEdge): DxfEdge {
  return { from: edge.to, to: edge.from, bulge: -edge.bulge };
}

function counterClockwise(ring: readonly DxfEdge[]): DxfEdge[] {
  let area = 0;
  for (const { from, to, bulge } of ring) {
    area += (from.x * to.y - to.x * from.y) / 2;
    // An arc adds the circular segment between itself and its chord.
    if (bulge !== 0) {
      const sweep = 4 * Math.atan(bulge);
      const radius = Math.hypot(to.x - from.x, to.y - from.y) / 2 / Math.sin(Math.abs(sweep) / 2);
      area += (Math.sign(bulge) * radius ** 2 * (Math.abs(sweep) - Math.sin(Math.abs(sweep)))) / 2;
    }
  }
  return area >= 0 ? [...ring] : ring.toReversed().map(reversed);
}
