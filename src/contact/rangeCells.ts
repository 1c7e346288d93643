/**
 * Boxes of what a job doubts (motion/variants), halved until nothing within one can be met that was not met where we looked: no point
 * of sheet or brake goes further from its place there than `movedMm`, a sum of everything that places one. Bends, setbacks and radii
 * change one way only along each side of a box, so the corners bound them.
 */
import type { Brake } from "../brake/brake.ts";
import type { Seat } from "../motion/seat.ts";
import type { Stage } from "../motion/stages.ts";
import { isReckoned, type Off } from "../motion/variants.ts";
import type { Part } from "../part/part.ts";
import { type Mm, toRad } from "../units/quantity.ts";
import { FACE_INSET_MM } from "./gaps.ts";
import type { SolidBody } from "./solidBody.ts";

type Axis = keyof Off;
type Span = readonly [low: number, high: number];
export type Cell = Readonly<Record<Axis, Span>>;

const AXES: readonly Axis[] = ["spring", "noseSetbackMm", "nose"];
const NOWHERE: Span = [0, 0];

/** All that is doubted; undefined where nothing is. */
export function wholeCell(part: Part, { doubts = {} }: Brake): Cell | undefined {
  const { noseSetbackMm: back = 0, noseRadius } = doubts;
  const cell: Cell = {
    spring: isReckoned(part) ? [-1, 1] : NOWHERE,
    noseSetbackMm: back > 0 ? [-back, back] : NOWHERE,
    nose: noseRadius ? [-1, 1] : NOWHERE,
  };
  return AXES.some((axis) => cell[axis] !== NOWHERE) ? cell : undefined;
}

/** Where a cell is looked at: the middle, with the most springback in it, so that the leaf sweeps all the others' angles. */
export function lookAt({ spring, noseSetbackMm, nose }: Cell): Off {
  const middle = ([low, high]: Span) => (low + high) / 2;
  return { spring: spring[1], noseSetbackMm: middle(noseSetbackMm), nose: middle(nose) };
}

/** Its corners, one a mix of the ends that differ. */
export function cornersOf(cell: Cell): readonly Off[] {
  return AXES.reduce<readonly Off[]>(
    (offs, axis) => offs.flatMap((off) => [...new Set(cell[axis])].map((at) => ({ ...off, [axis]: at }))),
    [{ spring: 0, noseSetbackMm: 0, nose: 0 }],
  );
}

/** The two halves across the axis along which most moves; none where it can't be told apart any more. */
export function halved(cell: Cell, movesBetween: (from: Off, to: Off) => Mm): readonly Cell[] {
  const from = lookAt(cell);
  let [across, most]: [Axis | undefined, Mm] = [undefined, 0];
  for (const axis of AXES) {
    const [low, high] = cell[axis];
    const moves = low < high ? movesBetween({ ...from, [axis]: low }, { ...from, [axis]: high }) : 0;
    if (moves > most) [across, most] = [axis, moves];
  }
  if (across === undefined) return [];
  const [low, high] = cell[across];
  const middle = (low + high) / 2;
  return [
    { ...cell, [across]: [low, middle] },
    { ...cell, [across]: [middle, high] },
  ];
}

/** What moves at most, against anything else and at any one leaf angle, from one stage of an order to the same with other figures. */
export function movedMm(a: Stage, b: Stage): Mm {
  const made = [a.part.bends[a.bend]!, b.part.bends[b.bend]!] as const;
  const [from, to] = made;
  let chain = 0;
  for (let i = 0; i < a.part.flatsMm.length; i++) chain += Math.abs(a.part.flatsMm[i]! - b.part.flatsMm[i]!);
  for (let i = 0; i < a.part.bends.length; i++) {
    const [p, q] = [a.part.bends[i]!, b.part.bends[i]!];
    chain += Math.abs(p.allowanceMm - q.allowanceMm) + 2 * Math.abs(p.insideRadiusMm - q.insideRadiusMm);
  }
  const mostRad = toRad(Math.max(from.overbendDeg, to.overbendDeg));
  const radius = Math.abs(from.insideRadiusMm - to.insideRadiusMm);
  const turn = Math.abs(from.allowanceMm / toRad(from.angleDeg) - to.allowanceMm / toRad(to.angleDeg));
  const slide = 2 * radius * Math.tan(mostRad / 2) + turn * mostRad;
  const noseBack = Math.abs(from.noseSetbackMm - to.noseSetbackMm);
  const nose = Math.abs(a.brake.clamp.noseRunMm - b.brake.clamp.noseRunMm);
  // The clamp goes by the setback and its shape by the radius, at most twice over; the part by the tangent line between them.
  return 2 * noseBack + 3 * nose + slide + chain;
}

/**
 * Whether the flat on the leaf, however long, keeps `byMm` off everything of the clamp but the rounding that the sheet bends over;
 * that lies within the bend's arc by its own rule (brake/nosePinch). A point over the face comes nearest to it at the end of the swing.
 */
export function clampKeepsOff(
  { pivot, thicknessMm, clampedTangentX, sweepRad }: Seat,
  clamp: readonly SolidBody[],
  byMm: Mm,
): boolean {
  const [cos, sin] = [Math.cos(sweepRad), Math.sin(sweepRad)];
  const top = thicknessMm - pivot.y;
  const noseX = clampedTangentX - pivot.x;
  return clamp.every(({ features: { rounds, roundX, roundY, roundR } }) => {
    for (let i = 0; i < rounds; i++) {
      const [x, y, r] = [roundX[i]!, roundY[i]!, roundR[i]!];
      const isNose = Math.abs(x - noseX) < FACE_INSET_MM && Math.abs(y - r - top) < FACE_INSET_MM;
      if (!isNose && y * cos - x * sin - r < top + byMm) return false;
    }
    return true;
  });
}
