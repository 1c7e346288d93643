/**
 * The sheet of a seated bend piece by piece, at rest, with the bend finished and taken up again after a first stroke: each edge
 * and arc lies on the border of the reference's sheet, and each long face of that is found again. Source: test/reference
 * (pose, chain), which shares no line with the engine; arcs flattened to 0.0005 mm.
 */
import { describe, expect, it } from "vitest";
import { Features } from "../../src/contact/features.ts";
import { FLAT, JOINT, SeatPieces, type Side } from "../../src/contact/seatPieces.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { formedJoints } from "../../src/part/chain.ts";
import { toDeg } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import { type Pick, stateOf } from "../contact/roughJob.ts";
import { type Stage, stageOf } from "../reference/pairs.ts";
import { nearBend } from "../reference/pose.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import type { Shape } from "../reference/shape.ts";
import { type Point, pointToSegment } from "./roundedBlocks.ts";
import { TRUTHS } from "./truths.ts";

const INSET_MM = 0.01;
const CHORD_MM = 0.0005;
const OFF_MM = 0.002;

type Border = readonly (readonly [Point, Point])[];

function borderOf(shapes: readonly Shape[]): Border {
  return shapes.flatMap((shape) =>
    Array.from({ length: shape.length / 2 }, (_, i): readonly [Point, Point] => {
      const j = (2 * i + 2) % shape.length;
      return [
        [shape[2 * i]!, shape[2 * i + 1]!],
        [shape[j]!, shape[j + 1]!],
      ];
    }),
  );
}

const offBy = (point: Point, border: Border) =>
  Math.min(...border.map(([a, b]) => pointToSegment(point, a, b)));

/** Points along edges and arcs, from the pivot. */
function pointsOf(F: Features): Point[] {
  const points: Point[] = [];
  for (let i = 0; i < F.segments; i++)
    for (const share of [0.001, 0.5, 0.999]) {
      const along = share * F.segLength[i]!;
      points.push([F.segX[i]! + along * F.segUx[i]!, F.segY[i]! + along * F.segUy[i]!]);
    }
  const arc = (x: number, y: number, r: number, mx: number, my: number, cosHalf: number) => {
    const half = cosHalf < -1 ? 0 : Math.acos(cosHalf);
    for (const turn of [-0.98 * half, 0, 0.98 * half]) {
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      points.push([x + r * (mx * c - my * s), y + r * (mx * s + my * c)]);
    }
  };
  for (let i = 0; i < F.rounds; i++)
    arc(F.roundX[i]!, F.roundY[i]!, F.roundR[i]!, F.roundMx[i]!, F.roundMy[i]!, F.roundCos[i]!);
  for (let i = 0; i < F.hollows; i++)
    arc(F.hollowX[i]!, F.hollowY[i]!, F.hollowR[i]!, F.hollowMx[i]!, F.hollowMy[i]!, F.hollowCos[i]!);
  return points;
}

interface Case {
  readonly file: RandomJob;
  readonly pick: Pick;
}

/** Bends of three and more flats, of sizes at which three points tell an arc. */
const cases: Case[] = TRUTHS.bends
  .filter(({ file }) => file.part.bends.length > 1 && file.part.flats.every((length) => length < 100))
  .filter((_, i) => i % 8 === 0)
  .flatMap(({ file, states }) => states.slice(0, 2).map(({ pick }) => ({ file, pick })));

/** The reference's stages, set up once. */
const stages = new Map<Pick, Stage>();

function seated({ file, pick }: Case, leftShare: number) {
  const { part, brake } = jobOf(file);
  const { state, bendsDone } = stateOf(part.bends.length, pick);
  const leftDeg = leftShare * part.bends[state.bend]!.angleDeg;
  const seat = seatFor(part, brake, state.bend, state.end, leftDeg);
  const stage = stages.get(pick) ?? stageOf(file, state, INSET_MM, CHORD_MM);
  stages.set(pick, stage);
  const { x, y } = seat.pivot;
  const fromPivot = (shapes: readonly (Shape | null)[]): Border =>
    borderOf(shapes.filter((shape) => shape !== null)).map(([a, b]) => [
      [a[0] - x, a[1] - y],
      [b[0] - x, b[1] - y],
    ]);
  const straight = nearBend(stage.movingPieces);
  const movingAt = (phi: number) =>
    fromPivot(stage.movingPieces.map(({ shape }, i) => stage.motion.moving(shape, phi, i < straight)));
  const zone = (finished: boolean) =>
    fromPivot(stage.motion.seated(stage.clampedPieces, stage.movingPieces, finished, INSET_MM, CHORD_MM));
  const pieces = new SeatPieces(seat);
  const formed = (side: Side) => formedJoints(pieces.chainOf(side), bendsDone);
  return { pieces, seat, stage, movingAt, zone, clamped: fromPivot(stage.clampedShapes), formed };
}

const groups = Array.from({ length: Math.ceil(cases.length / 5) }, (_, i) => ({
  some: cases.slice(5 * i, 5 * i + 5),
}));

it("has enough bends", () => {
  expect(cases.length).toBeGreaterThan(60);
});

describe.each(groups)("a seated sheet", ({ some }) => {
  const F = new Features(16, 24, 4);

  /** Every element's points lie on the border; every face longer than the sheet is thick has them near. */
  function expectSame(elements: readonly (() => void)[], border: Border, T: number, said: string): void {
    const points = elements.flatMap((lay) => {
      lay();
      return pointsOf(F);
    });
    for (const point of points) expect(offBy(point, border), `${said} ${point}`).toBeLessThan(OFF_MM);
    const found: Border = points.slice(1).map((point, i) => [points[i]!, point]);
    for (const [a, b] of border) {
      if (Math.hypot(b[0] - a[0], b[1] - a[1]) < 1.001 * T) continue;
      const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
      expect(found.length === 0 ? Infinity : offBy(middle, found), `${said} wants ${middle}`).toBeLessThan(
        OFF_MM,
      );
    }
  }

  it("lies in the throat, and on the leaf at rest and begun, as the reference lays it", () => {
    for (const one of some) {
      const said = JSON.stringify(one.pick);
      const { pieces, seat, movingAt, clamped, formed } = seated(one, 0.5);
      const [inThroat, onLeaf] = [formed("clamped"), formed("moving")];
      const all = (side: Side, lay: (k: number) => void) =>
        Array.from({ length: pieces.chainOf(side).joints + 1 }, (_, k) => () => lay(k));
      const T = seat.thicknessMm;
      const inset = INSET_MM;
      expectSame(
        all("clamped", (k) => pieces.element(F, "clamped", k, inThroat, JOINT | FLAT, inset, false)),
        clamped,
        T,
        `clamped ${said}`,
      );
      expectSame(
        all("moving", (k) => pieces.movingAtRest(F, k, onLeaf, inset)),
        movingAt(0),
        T,
        `at rest ${said}`,
      );
      expectSame(
        all("moving", (k) => pieces.begunElement(F, k, onLeaf, JOINT | FLAT, inset, false)),
        movingAt(seat.fromRad),
        T,
        `begun ${said}`,
      );
      // Laying it begun leaves it at rest again.
      pieces.element(F, "moving", 0, onLeaf, JOINT | FLAT, inset, false);
      expect(F.segX[0]).toBeCloseTo(seat.movingTangentX - seat.pivot.x, 9);
    }
  });

  it("lies as the reference lays it once the bend is made, its points, lowest height and slide told beforehand", () => {
    for (const one of some) {
      const { pieces, seat, stage, zone, formed } = seated(one, 0);
      const onLeaf = formed("moving");
      const finished = zone(true);
      for (let k = 0; k <= seat.movingChain.joints; k++) {
        pieces.element(F, "moving", k, onLeaf, JOINT | FLAT, INSET_MM, false);
        const rest = pointsOf(F);
        const corners = [F.minX, F.maxX].flatMap((x) => [F.minY, F.maxY].map((y): Point => [x, y]));
        const lowest = pieces.lowestFinished(F);
        pieces.layMoving(true);
        pieces.element(F, "moving", k, onLeaf, JOINT | FLAT, INSET_MM, false);
        const made = pointsOf(F);
        pieces.layMoving(false);
        expect(made.length).toBe(rest.length);
        made.forEach((point, i) => {
          expect(offBy(point, finished)).toBeLessThan(OFF_MM);
          const told = pieces.finishedPoint(...rest[i]!);
          expect(Math.hypot(told.x - point[0], told.y - point[1])).toBeLessThan(1e-9);
        });
        expect(lowest).toBeCloseTo(
          Math.min(...corners.map((corner) => pieces.finishedPoint(...corner).y)),
          9,
        );
      }
      // Along the leaf from rest: the tangent's way from the apex, and the apex's own.
      const { motion } = stage;
      const along = (phi: number) => motion.slide(phi) - motion.pivot[1] * Math.tan(phi / 2);
      const angles = Array.from({ length: 801 }, (_, i) => (seat.sweepRad * i) / 800);
      const slides = [...angles, motion.bend.theta].map((phi) => Math.abs(along(phi) - along(0)));
      expect(pieces.mostSlideMm).toBeGreaterThan(Math.max(...slides) - 1e-9);
      expect(pieces.mostSlideMm).toBeLessThan(Math.max(...slides) + 1e-4 * (1 + Math.max(...slides)));
    }
  });

  it("has its bend zone flat before the bend and round after it", () => {
    for (const one of some) {
      const { pieces, seat, zone } = seated(one, 0);
      for (const finished of [false, true]) {
        pieces.bendZone(F, finished);
        const border = zone(finished);
        const points = pointsOf(F);
        expect(points).toHaveLength(6);
        for (const point of points)
          expect(offBy(point, border), toDeg(seat.angleRad).toFixed(1)).toBeLessThan(OFF_MM);
        expect([F.segments, F.rounds, F.hollows, F.hasCore]).toEqual(
          finished ? [0, 1, 1, false] : [2, 0, 0, true],
        );
        if (finished) continue;
        const from = seat.clampedTangentX - seat.pivot.x;
        const middle = seat.thicknessMm / 2 - seat.pivot.y;
        const core = [F.coreX1, F.coreY1, F.coreX2, F.coreY2];
        core.forEach((figure, i) => {
          expect(figure).toBeCloseTo([from, middle, from + seat.allowanceMm, middle][i]!, 9);
        });
        expect([F.segUx[0], F.segUx[1]]).toEqual([1, -1]);
        expect(F.segLength[0]).toBeCloseTo(seat.allowanceMm, 9);
      }
    }
  });
});
