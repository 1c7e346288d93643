/**
 * How far the leaf turns until it meets the brake, with no sheet in it: profiles of what turns against what stands, wherever
 * both are found along the bend, tried every quarter of a degree; and whether the pieces go together at all.
 * Separating axes for convex profiles (all of ours are); a round is taken by its box. The angle is rounded down to whole degrees.
 */
import { type Deg, toRad } from "../units/quantity.ts";
import { boxOfShape, isRound, type Piece, rectangle, type Xy } from "./solid.ts";

const MOST_DEG = 135;
const STEP_DEG = 0.25;
/** Apart by this counts as free. */
const TOUCH_MM = 0.01;

/** Pieces that are not joined and yet stand in one place at rest, by their names; a round is taken by its box, pins run in their holes. */
export function inOnePlace(pieces: readonly Piece[]): (readonly [string, string])[] {
  const bodies = pieces
    .filter(({ name }) => name !== "hinge pin")
    .map((piece) => ({ piece, body: bodyOf(piece), joined: [...piece.weldedTo, ...piece.boltedTo] }));
  return bodies.flatMap((one, i) =>
    bodies
      .slice(i + 1)
      .filter(
        (other) =>
          one.body.from < other.body.to - TOUCH_MM &&
          other.body.from < one.body.to - TOUCH_MM &&
          !one.joined.includes(other.piece.id) &&
          !other.joined.includes(one.piece.id) &&
          overlap(one.body.profile, other.body.profile),
      )
      .map((other) => [one.piece.name, other.piece.name] as const),
  );
}

interface Body {
  readonly profile: readonly Xy[];
  readonly from: number;
  readonly to: number;
}

export interface FreeSwing {
  /** The largest whole angle up to 135° at which nothing overlaps. */
  readonly deg: Deg;
  /** What meets past it, by name: a piece that turns and one that stands; undefined at 135°. */
  readonly meet?: readonly [turning: string, still: string];
}

export function freeSwing(pieces: readonly Piece[]): FreeSwing {
  const named = (piece: Piece) => ({ ...bodyOf(piece), name: piece.name });
  const turning = pieces.filter(({ turnsWithLeaf }) => turnsWithLeaf).map(named);
  const still = pieces.filter(({ turnsWithLeaf, name }) => !turnsWithLeaf && name !== "hinge pin").map(named);
  const pairs = turning.flatMap((one) =>
    still.filter((other) => one.from < other.to && other.from < one.to).map((other) => [one, other] as const),
  );
  let free = 0;
  for (let deg = 0; deg <= MOST_DEG; deg += STEP_DEG) {
    const met = pairs.find(([one, other]) => overlap(turned(one.profile, deg), other.profile));
    if (met) return { deg: Math.floor(free), meet: [met[0].name, met[1].name] };
    free = deg;
  }
  return { deg: MOST_DEG };
}

function bodyOf({ shape }: Piece): Body {
  const { min, max } = boxOfShape(shape);
  return {
    profile: isRound(shape) ? rectangle(min[0], min[1], max[0], max[1]) : shape.profile,
    from: min[2],
    to: max[2],
  };
}

function turned(profile: readonly Xy[], deg: Deg): Xy[] {
  const [cos, sin] = [Math.cos(toRad(deg)), Math.sin(toRad(deg))];
  return profile.map(([x, y]) => [x * cos - y * sin, x * sin + y * cos]);
}

/** Two convex profiles overlap unless some edge of either keeps them apart. */
function overlap(a: readonly Xy[], b: readonly Xy[]): boolean {
  return !apartAlongEdges(a, b) && !apartAlongEdges(b, a);
}

function apartAlongEdges(a: readonly Xy[], b: readonly Xy[]): boolean {
  return a.some(([x, y], i) => {
    const [nx, ny] = a[(i + 1) % a.length]!;
    const length = Math.hypot(nx - x, ny - y);
    if (length < 1e-9) return false;
    const normal: Xy = [(ny - y) / length, (x - nx) / length];
    const reach = (points: readonly Xy[]) => points.map(([px, py]) => px * normal[0] + py * normal[1]);
    const [ofA, ofB] = [reach(a), reach(b)];
    return Math.min(...ofB) > Math.max(...ofA) - TOUCH_MM || Math.min(...ofA) > Math.max(...ofB) - TOUCH_MM;
  });
}
