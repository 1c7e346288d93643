/**
 * The pieces of a shop-made narrow brake as solids: prisms along the bend and rounds, with their holes.
 * Section frame of the model with w along the bend, 0 at the middle of the brake; leaf at rest; millimetres.
 * Arcs of a profile are told by points that lie within 0.01 mm of them.
 */
import type { Deg, Mm } from "../units/quantity.ts";

export type Xy = readonly [x: Mm, y: Mm];
export type Xyw = readonly [x: Mm, y: Mm, w: Mm];

export interface Hole {
  readonly diameter: Mm;
  /** The thread, where it is tapped. */
  readonly tapped?: string;
  readonly from: Xyw;
  readonly to: Xyw;
  /** Sawn open, as wide as the hole, from it out of the piece's back edge. */
  readonly slot?: true;
  /** Why it may lie nearer to an edge than one and a half diameters. */
  readonly reason?: string;
}

export interface Prism {
  readonly profile: readonly Xy[];
  readonly from: Mm;
  readonly to: Mm;
}

export interface Round {
  readonly diameter: Mm;
  readonly from: Xyw;
  readonly to: Xyw;
}

export interface Piece {
  readonly id: string;
  /** Its number in the cut list. */
  readonly item: number;
  readonly name: string;
  readonly stock: string;
  readonly shape: Prism | Round;
  readonly holes: readonly Hole[];
  readonly turnsWithLeaf: boolean;
  readonly weldedTo: readonly string[];
  /** Bolted, screwed or pressed in. */
  readonly boltedTo: readonly string[];
}

/** How the brake is held: in a vise by its spine, or on a bench by its feet. */
export interface Mounting {
  readonly held: "vise" | "bench";
  /** Top of the jaws, or of the bench. */
  readonly topY: Mm;
  /** Jaws, or the bench, as far as the brake could meet them. */
  readonly bodies: readonly { readonly name: string; readonly profile: readonly Xy[] }[];
  readonly jawWidth?: Mm;
  readonly jawHeight?: Mm;
}

export interface Assembly {
  readonly pieces: readonly Piece[];
  readonly pivot: Xy;
  /** How far the leaf turns until it meets something, with no sheet in the brake. */
  readonly swing: Deg;
  readonly vise: Mounting;
}

/** How far the points of a rounded corner may lie off the true arc: half of what the assembly promises. */
const ARC_OFF_MM: Mm = 0.005;

/** @example rectangle(-2, 0, 0, 1).length // 4 */
export function rectangle(minX: Mm, minY: Mm, maxX: Mm, maxY: Mm): Xy[] {
  return [
    [minX, minY],
    [maxX, minY],
    [maxX, maxY],
    [minX, maxY],
  ];
}

/** Points of an arc, both ends among them; a positive sweep runs counter-clockwise. */
export function arcPoints([x, y]: Xy, radius: Mm, startRad: number, sweepRad: number): Xy[] {
  const step = 2 * Math.acos(1 - Math.min(1, ARC_OFF_MM / radius));
  const count = Math.max(1, Math.ceil(Math.abs(sweepRad) / step));
  return Array.from({ length: count + 1 }, (_, i) => {
    const angle = startRad + (sweepRad * i) / count;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

export function isRound(shape: Prism | Round): shape is Round {
  return "diameter" in shape;
}

/** Length along the piece: along w for a prism, along its axis for a round. */
export function lengthOf(shape: Prism | Round): Mm {
  if (!isRound(shape)) return shape.to - shape.from;
  const [a, b] = [shape.from, shape.to];
  return Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
}

/** Length that is sawn off the stock: of a plate cut from a flat that lies square to the bend, its own; else along the piece. */
export function sawnLength({ name, shape }: Piece): Mm {
  const { min, max } = boxOfShape(shape);
  if (name === "bed ear" || name === "foot") return max[0] - min[0];
  return name === "leaf ear" ? max[1] - min[1] : lengthOf(shape);
}

/** Area of a polygon. */
export function areaOf(profile: readonly Xy[]): number {
  const twice = profile.reduce((sum, [x, y], i) => {
    const [nx, ny] = profile[(i + 1) % profile.length]!;
    return sum + x * ny - nx * y;
  }, 0);
  return Math.abs(twice) / 2;
}

/** Volume in mm³, holes left in: within 3 % of the drilled piece. */
export function volumeOf(shape: Prism | Round): number {
  const area = isRound(shape) ? (Math.PI / 4) * shape.diameter ** 2 : areaOf(shape.profile);
  return area * lengthOf(shape);
}

export interface Box {
  readonly min: Xyw;
  readonly max: Xyw;
}

/** Box of a piece, along x, y and w; a round is taken by its own box. */
export function boxOfShape(shape: Prism | Round): Box {
  if (!isRound(shape)) {
    const xs = shape.profile.map(([x]) => x);
    const ys = shape.profile.map(([, y]) => y);
    return {
      min: [Math.min(...xs), Math.min(...ys), shape.from],
      max: [Math.max(...xs), Math.max(...ys), shape.to],
    };
  }
  const { from, to, diameter } = shape;
  const length = lengthOf(shape);
  const reach = (i: 0 | 1 | 2) => (diameter / 2) * Math.sqrt(1 - ((to[i] - from[i]) / length) ** 2);
  const low = (i: 0 | 1 | 2) => Math.min(from[i], to[i]) - reach(i);
  const high = (i: 0 | 1 | 2) => Math.max(from[i], to[i]) + reach(i);
  return { min: [low(0), low(1), low(2)], max: [high(0), high(1), high(2)] };
}

/** The piece of that id. @throws RangeError where there is none */
export function pieceOf({ pieces }: Pick<Assembly, "pieces">, id: string): Piece {
  const found = pieces.find((piece) => piece.id === id);
  if (found === undefined) throw new RangeError(`the brake has no piece ${id}`);
  return found;
}
