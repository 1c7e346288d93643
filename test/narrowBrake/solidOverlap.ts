/**
 * Whether two solids of an assembly overlap, by another library (jsts) and another way than the designer's: every solid is cut across w
 * into slices, holes taken out, and slices at the same w are intersected as polygons.
 * Sampled along w at places where anything begins or ends and between them; areas under 0.05 mm² are rounding.
 */
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";

interface HoleLike {
  readonly diameter: number;
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
}

export interface PieceLike {
  readonly id: string;
  readonly shape:
    | { readonly profile: readonly (readonly [number, number])[]; readonly from: number; readonly to: number }
    | {
        readonly diameter: number;
        readonly from: readonly [number, number, number];
        readonly to: readonly [number, number, number];
      };
  readonly holes: readonly (HoleLike & {
    readonly tapped?: string;
    readonly reason?: string;
    readonly slot?: boolean;
  })[];
  readonly turnsWithLeaf: boolean;
  readonly weldedTo: readonly string[];
  readonly boltedTo: readonly string[];
}

type Ring = readonly (readonly [number, number])[];

const factory = new GeometryFactory();
const ROUNDING_MM2 = 0.05;

function polygon(ring: Ring, deg: number) {
  const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  const points = [...ring, ring[0]!].map(([x, y]) => new Coordinate(x * cos - y * sin, x * sin + y * cos));
  return factory.createPolygon(factory.createLinearRing(points));
}

function circle(x: number, y: number, r: number): Ring {
  return Array.from({ length: 64 }, (_, i) => {
    const a = (2 * Math.PI * i) / 64;
    return [x + r * Math.cos(a), y + r * Math.sin(a)] as const;
  });
}

/** What a cylinder shows of itself at w: a circle where it runs along w, else a rectangle. */
function cylinderAt({ diameter, from, to }: HoleLike, w: number): Ring | undefined {
  const r = diameter / 2;
  if (Math.abs(to[2] - from[2]) > 1e-9) {
    const [low, high] = [Math.min(from[2], to[2]), Math.max(from[2], to[2])];
    return w > low && w < high ? circle(from[0], from[1], r) : undefined;
  }
  const off = w - from[2];
  if (Math.abs(off) >= r) return undefined;
  const half = Math.sqrt(r * r - off * off);
  const upright = Math.abs(to[1] - from[1]) > 1e-9;
  const [x0, x1] = upright
    ? [from[0] - half, from[0] + half]
    : [Math.min(from[0], to[0]), Math.max(from[0], to[0])];
  const [y0, y1] = upright
    ? [Math.min(from[1], to[1]), Math.max(from[1], to[1])]
    : [from[1] - half, from[1] + half];
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

function sliceAt({ shape, holes, turnsWithLeaf }: PieceLike, w: number, leafDeg: number) {
  const deg = turnsWithLeaf ? leafDeg : 0;
  const ring =
    "diameter" in shape ? cylinderAt(shape, w) : w > shape.from && w < shape.to ? shape.profile : undefined;
  if (!ring) return undefined;
  let slice = polygon(ring, deg);
  for (const hole of holes) {
    const cut = cylinderAt(hole, w);
    if (cut) slice = OverlayOp.difference(slice, polygon(cut, deg));
    if (cut && hole.slot) {
      // Out of the back edge, as wide as the hole.
      const [y0, y1] = [hole.from[1], hole.to[1]];
      const open: Ring = [
        [hole.from[0] - 1000, y0],
        [hole.from[0], y0],
        [hole.from[0], y1],
        [hole.from[0] - 1000, y1],
      ];
      slice = OverlayOp.difference(slice, polygon(open, deg));
    }
  }
  return slice;
}

/** Ends of a piece and of its holes along w. */
function endsAlong({ shape, holes }: PieceLike): number[] {
  const ends = (one: HoleLike) =>
    Math.abs(one.to[2] - one.from[2]) > 1e-9
      ? [one.from[2], one.to[2]]
      : [one.from[2] - one.diameter / 2, one.from[2], one.from[2] + one.diameter / 2];
  const own = "diameter" in shape ? ends(shape) : [shape.from, shape.to];
  return [...own, ...holes.flatMap(ends)];
}

/** Pairs that overlap at a leaf angle without being joined, by their ids. */
export function overlaps(pieces: readonly PieceLike[], leafDeg: number): string[] {
  const found: string[] = [];
  pieces.forEach((a, i) => {
    for (const b of pieces.slice(i + 1)) {
      if (a.turnsWithLeaf === b.turnsWithLeaf && leafDeg > 0) continue;
      if ([a.weldedTo, a.boltedTo].flat().includes(b.id) || [b.weldedTo, b.boltedTo].flat().includes(a.id))
        continue;
      const area = sharedArea(a, b, leafDeg);
      if (area > ROUNDING_MM2) found.push(`${a.id} and ${b.id} at ${leafDeg}°: ${area.toFixed(2)} mm²`);
    }
  });
  return found;
}

/** Box of a piece with the leaf turned: where two boxes stand apart the pieces do. */
function boxAt({ shape, turnsWithLeaf }: PieceLike, leafDeg: number) {
  const r = "diameter" in shape ? shape.diameter / 2 : 0;
  const points = "diameter" in shape ? [shape.from, shape.to] : shape.profile;
  const rad = turnsWithLeaf ? (leafDeg * Math.PI) / 180 : 0;
  const xs = points.map(([x, y]) => x * Math.cos(rad) - y * Math.sin(rad));
  const ys = points.map(([x, y]) => x * Math.sin(rad) + y * Math.cos(rad));
  return {
    x0: Math.min(...xs) - r,
    x1: Math.max(...xs) + r,
    y0: Math.min(...ys) - r,
    y1: Math.max(...ys) + r,
  };
}

function sharedArea(a: PieceLike, b: PieceLike, leafDeg: number): number {
  const [boxA, boxB] = [boxAt(a, leafDeg), boxAt(b, leafDeg)];
  if (boxA.x0 >= boxB.x1 || boxB.x0 >= boxA.x1 || boxA.y0 >= boxB.y1 || boxB.y0 >= boxA.y1) return 0;
  const [endsA, endsB] = [endsAlong(a), endsAlong(b)];
  const low = Math.max(Math.min(...endsA), Math.min(...endsB));
  const high = Math.min(Math.max(...endsA), Math.max(...endsB));
  if (high - low < 1e-3) return 0;
  const cuts = [low, high, ...[...endsA, ...endsB].filter((w) => w > low && w < high)].sort((p, q) => p - q);
  let most = 0;
  for (let i = 1; i < cuts.length; i++) {
    if (cuts[i]! - cuts[i - 1]! < 1e-3) continue;
    const w = (cuts[i]! + cuts[i - 1]!) / 2;
    const [p, q] = [sliceAt(a, w, leafDeg), sliceAt(b, w, leafDeg)];
    if (!p || !q) continue;
    if (!p.getEnvelopeInternal().intersects(q.getEnvelopeInternal())) continue;
    most = Math.max(most, OverlayOp.intersection(p, q).getArea());
  }
  return most;
}

/** The piece so much further forward. */
export function movedBy<P extends PieceLike>(piece: P, byX: number): P {
  const to = ([x, y, w]: readonly [number, number, number]) => [x + byX, y, w] as const;
  const along = <R extends HoleLike>(round: R): R => ({ ...round, from: to(round.from), to: to(round.to) });
  const { shape, holes } = piece;
  return {
    ...piece,
    shape:
      "diameter" in shape
        ? along(shape)
        : { ...shape, profile: shape.profile.map(([x, y]) => [x + byX, y] as const) },
    holes: holes.map(along),
  };
}
