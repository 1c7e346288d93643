/**
 * What is dimensioned and numbered on the stage at a leaf angle: the angle of the bend being made, then
 * the flats, the shortest first, then the bends, which find room round their corners. In canvas points.
 */
import type { Point } from "../../src/plane/point.ts";
import { toRad } from "../../src/units/quantity.ts";
import { angleWords } from "../../src/words/angleWords.ts";
import type { AskedAngle, AskedLength, AskedNote } from "../drafting/asked.ts";
import type { Piece } from "../drafting/boxes.ts";
import { type Camera, onCanvas } from "./camera.ts";
import { type FlatPlace, flatPlaces } from "./flatPlaces.ts";
import type { MeasuredFlat } from "./measured.ts";
import { bentDeg, type StepPose } from "./stepPose.ts";

export interface Lettering {
  readonly widthOf: (words: string) => number;
  /** Height of a label. */
  readonly high: number;
}

/** Air round a number, and round a number with its figure. */
const NUMBER_AIR = 10;
const FIGURE_AIR = 22;

export interface AskedOnStage {
  readonly asked: readonly (AskedNote | AskedAngle | AskedLength)[];
  /** Middle lines of the whole sheet. */
  readonly sheet: readonly Piece[];
}

/** Labels of the stage, and the sheet that they keep off. */
export function stageLabels(
  pose: StepPose,
  leafDeg: number,
  camera: Camera,
  {
    measured,
    lettering,
    size,
  }: { measured: readonly MeasuredFlat[]; lettering: Lettering; size: { width: number; height: number } },
): AskedOnStage {
  const { seat } = pose;
  const half = (seat.thicknessMm * camera.scale) / 2;
  const clampedCount = seat.clampedChain.joints + 1;
  const places = flatPlaces(pose, leafDeg).map((place, i) => ({ ...place, clamped: i < clampedCount }));
  const inOrder = places.toSorted((a, b) => a.flat - b.flat);
  const joints: Piece[] = [];
  const { widthOf, high } = lettering;
  const bends = inOrder.slice(1).map((after, i): AskedNote => {
    const before = inOrder[i]!;
    const run = arcBetween(before, after);
    joints.push(...run.slice(1).map((to, k): Piece => [onCanvas(camera, run[k]!), onCanvas(camera, to)]));
    const at = run[run.length >> 1]!;
    const away = outward(at, before, after);
    const words = `${i + 1}`;
    return {
      kind: "note",
      key: `bend ${i}`,
      at: onCanvas(camera, at),
      away: { x: away.x, y: -away.y },
      half,
      size: { halfWide: Math.max(high, widthOf(words) + NUMBER_AIR) / 2, halfHigh: high / 2 },
    };
  });
  const flats = inOrder.map((place, i) =>
    askedFlat(place, i, { pose, camera, measured, lettering, half, inOrder }),
  );
  const sheet = [
    ...inOrder.map(({ from, to }): Piece => [onCanvas(camera, from), onCanvas(camera, to)]),
    ...joints,
  ];
  const seen = <One extends { readonly at: Point } | { readonly from: Point; readonly to: Point }>(
    one: One,
  ) => isSeen("at" in one ? [one.at, one.at] : [one.from, one.to], size);
  const long = (one: AskedLength) => Math.hypot(one.to.x - one.from.x, one.to.y - one.from.y);
  return {
    asked: [
      ...angle(pose, leafDeg, camera, lettering),
      ...flats.filter(seen).sort((a, b) => long(a) - long(b)),
      ...bends.filter(seen),
    ],
    sheet,
  };
}

/** Whether something of a piece lies well on the canvas. */
function isSeen(
  [a, b]: Piece,
  { width, height }: { readonly width: number; readonly height: number },
): boolean {
  const count = 12;
  for (let i = 0; i <= count; i++) {
    const x = a.x + ((b.x - a.x) * i) / count;
    const y = a.y + ((b.y - a.y) * i) / count;
    if (x > 4 && y > 4 && x < width - 4 && y < height - 4) return true;
  }
  return false;
}

type Placed = FlatPlace & { readonly clamped: boolean };

function askedFlat(
  place: Placed,
  i: number,
  given: {
    readonly pose: StepPose;
    readonly camera: Camera;
    readonly measured: readonly MeasuredFlat[];
    readonly lettering: Lettering;
    readonly half: number;
    readonly inOrder: readonly Placed[];
  },
): AskedLength {
  const { pose, camera, measured, lettering, half, inOrder } = given;
  // From its end at the lower-numbered bend to the other.
  const before = inOrder[i - 1];
  const turned = before
    ? apart(place.from, before) > apart(place.to, before)
    : apart(place.from, inOrder[1]!) < apart(place.to, inOrder[1]!);
  const [low, high] = turned ? [place.to, place.from] : [place.from, place.to];
  const run = Math.hypot(high.x - low.x, high.y - low.y) || 1;
  const along = { x: (high.x - low.x) / run, y: (high.y - low.y) / run };
  const {
    words = "?",
    pastMm = [0, 0] as const,
    edges = ["tangent", "tangent"] as const,
  } = measured[i] ?? {};
  const past = (p: Point, mm: number): Point => ({ x: p.x + along.x * mm, y: p.y + along.y * mm });
  const { bends } = pose.job.part;
  // Seen with flat 1 at the left and the marked face up, a bend up has its outside below: at the right of that way.
  const faceUpTurns = turnsOver(pose) ? -1 : 1;
  const face = (bend: number, edge: string): 1 | 0 | -1 => {
    const made = bends[bend];
    if (made === undefined || edge === "tangent") return 0;
    const outside = made.turn === "up" ? 1 : -1;
    return (outside * faceUpTurns * (edge === "inside" ? -1 : 1)) as 1 | -1;
  };
  const number = `${i + 1}`;
  const badge = lettering.widthOf(number) + NUMBER_AIR;
  return {
    kind: "length",
    key: `flat ${i}`,
    from: onCanvas(camera, past(low, -pastMm[0])),
    to: onCanvas(camera, past(high, pastMm[1])),
    faces: [face(i - 1, edges[0]), face(i, edges[1])],
    half,
    size: {
      halfWide: (lettering.widthOf(number) + lettering.widthOf(words) + FIGURE_AIR) / 2,
      halfHigh: lettering.high / 2,
    },
    small: { halfWide: Math.max(badge, lettering.high) / 2, halfHigh: lettering.high / 2 },
    own: i,
  };
}

/**
 * Whether, going along a flat toward higher numbers, the marked face lies at the right. With the marked face up it lies at
 * the left on the way out of the throat from `start`; the other end in the throat turns the way round, and so does the face.
 */
export function turnsOver({ step }: StepPose): boolean {
  return (step.clamped === "start") !== step.markedFaceUp;
}

/** The angle that the leaf has turned the flange up by, at the mold line. */
function angle(
  pose: StepPose,
  leafDeg: number,
  camera: Camera,
  { widthOf, high }: Lettering,
): readonly AskedAngle[] {
  const bent = bentDeg(pose, leafDeg);
  if (bent < 8) return [];
  const { pivot } = pose.seat;
  const at = onCanvas(camera, { x: pivot.x + pivot.y * Math.tan(toRad(bent) / 2), y: 0 });
  return [
    {
      kind: "angle",
      key: "angle",
      at,
      fromRad: 0,
      toRad: toRad(bent),
      size: { halfWide: (widthOf(angleWords(bent)) + 8) / 2, halfHigh: high / 2 },
    },
  ];
}

const apart = (p: Point, { from, to }: FlatPlace) =>
  Math.min(Math.hypot(p.x - from.x, p.y - from.y), Math.hypot(p.x - to.x, p.y - to.y));

type Run = { readonly from: Point; readonly to: Point };

/** The ends of two flats between which their bend lies: that of the one, that of the other. */
function nearestEnds(one: Run, other: Run): readonly [Point, Point] {
  const pairs = [one.from, one.to].flatMap((a) => [other.from, other.to].map((b) => [a, b] as const));
  const far = ([a, b]: readonly [Point, Point]) => Math.hypot(a.x - b.x, a.y - b.y);
  return pairs.reduce((best, pair) => (far(pair) < far(best) ? pair : best));
}

/**
 * The middle line of the bend between two flats, five points: an arc that leaves along the one and ends along the other, as a
 * conic through the point where they meet, weighted by the cosine of half the angle.
 */
function arcBetween(one: Run, other: Run): readonly Point[] {
  const [a, b] = nearestEnds(one, other);
  const [u, v] = [
    a === one.to ? unit(one.from, one.to) : unit(one.to, one.from),
    b === other.to ? unit(other.from, other.to) : unit(other.to, other.from),
  ];
  const turn = u.x * v.y - u.y * v.x;
  const chord = Math.hypot(b.x - a.x, b.y - a.y);
  const reach = Math.abs(turn) < 1e-6 ? 0 : ((b.x - a.x) * v.y - (b.y - a.y) * v.x) / turn;
  const meet = { x: a.x + u.x * reach, y: a.y + u.y * reach };
  const weight = reach < 1e-9 || reach > 20 * chord ? 0 : chord / (2 * reach);
  return [0, 0.25, 0.5, 0.75, 1].map((t) => {
    const parts = [(1 - t) ** 2, 2 * weight * t * (1 - t), t ** 2] as const;
    const all = parts[0] + parts[1] + parts[2];
    return {
      x: (parts[0] * a.x + parts[1] * meet.x + parts[2] * b.x) / all,
      y: (parts[0] * a.y + parts[1] * meet.y + parts[2] * b.y) / all,
    };
  });
}

const unit = (from: Point, to: Point): Point => {
  const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (to.x - from.x) / long, y: (to.y - from.y) / long };
};

/** From a bend toward the outside of its corner; square to the sheet where it runs straight through. */
function outward(at: Point, one: Run, other: Run): Point {
  const middle = (run: Run) => ({ x: (run.from.x + run.to.x) / 2, y: (run.from.y + run.to.y) / 2 });
  const [a, b] = [unit(at, middle(one)), unit(at, middle(other))];
  const sum = { x: -(a.x + b.x), y: -(a.y + b.y) };
  const long = Math.hypot(sum.x, sum.y);
  return long < 0.05 ? { x: a.y, y: -a.x } : { x: sum.x / long, y: sum.y / long };
}
