/**
 * How far the leaf turns until it meets the brake, with no sheet in it: profiles of what turns against what stands, wherever
 * both are found along the bend, tried every quarter of a degree; and whether the pieces go together at all.
 * Separating axes for convex profiles (all of ours are); a round is taken by its box. The angle is rounded down to whole degrees.
 */
import { type Deg, type Mm, toRad } from "../units/quantity.ts";
import { boxOfShape, isRound, type Piece, rectangle, type Xy, type Xyw } from "./solid.ts";

const MOST_DEG = 135;
const STEP_DEG = 0.25;
const MOST_STEPS = MOST_DEG / STEP_DEG;
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
          apartAt(one.body, other.body, 0) <= -TOUCH_MM,
      )
      .map((other) => [one.piece.name, other.piece.name] as const),
  );
}

interface Body {
  readonly profile: readonly Xy[];
  /** Each edge's direction across, and from where to where the profile reaches along it. */
  readonly across: readonly { readonly normal: Xy; readonly from: Mm; readonly to: Mm }[];
  /** Along the bend. */
  readonly from: Mm;
  readonly to: Mm;
  /** The corner farthest from the pivot. */
  readonly farMm: Mm;
}

export interface FreeSwing {
  /** The largest whole angle up to 135° at which nothing overlaps. */
  readonly deg: Deg;
  /** What meets past it, by name: a piece that turns and one that stands; undefined at 135°. */
  readonly meet?: readonly [turning: string, still: string];
}

export function freeSwing(pieces: readonly Piece[]): FreeSwing {
  const named = (piece: Piece) => ({ body: bodyOf(piece), name: piece.name });
  const turning = pieces.filter(({ turnsWithLeaf }) => turnsWithLeaf).map(named);
  const still = pieces.filter(({ turnsWithLeaf, name }) => !turnsWithLeaf && name !== "hinge pin").map(named);
  let free = MOST_STEPS;
  let meet: FreeSwing["meet"];
  for (const one of turning) {
    for (const other of still) {
      if (one.body.from >= other.body.to || other.body.from >= one.body.to) continue;
      const steps = stepsApart(one.body, other.body, free);
      if (steps < free) meet = [one.name, other.name];
      free = Math.min(free, steps);
    }
  }
  return { deg: free < 0 ? 0 : Math.floor(free * STEP_DEG), ...(meet && { meet }) };
}

/** What moves back and forth with the bar when the setback screws are turned, and could meet the leaf. */
const SET_BACK: ReadonlySet<string> = new Set(["clamp bar", "holder", "rib of the holder", "bar screw"]);

/** How far the leaf turns before it meets bar or holder, these so much further forward than drawn. */
export function freeSwingBefore(pieces: readonly Piece[], forwardMm: Mm): FreeSwing {
  const clamp = pieces.filter(({ name }) => SET_BACK.has(name));
  return freeSwing([...pieces.filter(({ turnsWithLeaf }) => turnsWithLeaf), ...clamp.map(moved(forwardMm))]);
}

const moved =
  (byX: Mm) =>
  (piece: Piece): Piece => {
    const { shape } = piece;
    const to = ([x, y, w]: Xyw): Xyw => [x + byX, y, w];
    return {
      ...piece,
      shape: isRound(shape)
        ? { ...shape, from: to(shape.from), to: to(shape.to) }
        : { ...shape, profile: shape.profile.map(([x, y]): Xy => [x + byX, y]) },
    };
  };

/** The last of the steps up to `most` at which the two are apart; -1 where they overlap at rest. */
function stepsApart(one: Body, other: Body, most: number): number {
  const stepMm = one.farMm * toRad(STEP_DEG);
  let step = 0;
  while (step <= most) {
    const apartMm = apartAt(one, other, step * STEP_DEG);
    if (apartMm <= -TOUCH_MM) return step - 1;
    // No corner moves farther than the farthest one, so for so long they stay apart.
    step += Math.max(1, Math.floor(apartMm / stepMm));
  }
  return most;
}

function bodyOf({ shape }: Piece): Body {
  const { min, max } = boxOfShape(shape);
  const profile = isRound(shape) ? rectangle(min[0], min[1], max[0], max[1]) : shape.profile;
  const across = profile.flatMap(([x, y], i) => {
    const [nx, ny] = profile[(i + 1) % profile.length]!;
    const length = Math.hypot(nx - x, ny - y);
    if (length < 1e-9) return [];
    const normal: Xy = [(ny - y) / length, (x - nx) / length];
    return [{ normal, ...reach(profile, normal) }];
  });
  const farMm = Math.max(...profile.map(([x, y]) => Math.hypot(x, y)));
  return { profile, across, from: min[2], to: max[2], farMm };
}

/** How far some edge of either keeps two convex profiles apart at most, with the first one turned; under 0 where they overlap. */
function apartAt(one: Body, other: Body, deg: Deg): Mm {
  // Seen from the leaf: fewer corners turn.
  const [cos, sin] = [Math.cos(toRad(deg)), Math.sin(toRad(deg))];
  const turnedBack = ([x, y]: Xy): Xy => [x * cos + y * sin, y * cos - x * sin];
  const corners = other.profile.map(turnedBack);
  let most = Number.NEGATIVE_INFINITY;
  for (const { normal, from, to } of one.across) {
    const found = reach(corners, normal);
    most = Math.max(most, found.from - to, from - found.to);
  }
  for (const { normal, from, to } of other.across) {
    const found = reach(one.profile, turnedBack(normal));
    most = Math.max(most, found.from - to, from - found.to);
  }
  return most;
}

/** From where to where points reach in a direction. */
function reach(points: readonly Xy[], [nx, ny]: Xy): { readonly from: Mm; readonly to: Mm } {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [x, y] of points) {
    const along = x * nx + y * ny;
    if (along < from) from = along;
    if (along > to) to = along;
  }
  return { from, to };
}
