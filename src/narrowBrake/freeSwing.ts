/**
 * How far the leaf turns until it meets the brake, with no sheet in it: profiles of what turns against what stands, wherever
 * both are found along the bend, tried every quarter of a degree.
 * Separating axes for convex profiles (all of ours are); a round is taken by its box. The angle is rounded down to whole degrees.
 */
import { type Deg, toRad } from "../units/quantity.ts";
import { boxOfShape, isRound, type Piece, rectangle, type Xy } from "./solid.ts";

const MOST_DEG = 135;
const STEP_DEG = 0.25;
/** Apart by this counts as free. */
const TOUCH_MM = 0.01;

interface Body {
  readonly profile: readonly Xy[];
  readonly from: number;
  readonly to: number;
}

/** @returns the largest whole angle up to 135° at which nothing overlaps */
export function freeSwing(pieces: readonly Piece[]): Deg {
  const turning = pieces.filter(({ turnsWithLeaf }) => turnsWithLeaf).map(bodyOf);
  const still = pieces
    .filter(({ turnsWithLeaf, name }) => !turnsWithLeaf && name !== "hinge pin")
    .map(bodyOf);
  const pairs = turning.flatMap((one) =>
    still.filter((other) => one.from < other.to && other.from < one.to).map((other) => [one, other] as const),
  );
  let free = 0;
  for (let deg = 0; deg <= MOST_DEG; deg += STEP_DEG) {
    if (pairs.some(([one, other]) => overlap(turned(one.profile, deg), other.profile)))
      return Math.floor(free);
    free = deg;
  }
  return MOST_DEG;
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
