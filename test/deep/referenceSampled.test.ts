/**
 * The reference against itself done the plainest way: every pair of shapes asked of JSTS at every half degree,
 * and every slide as one swept polygon. Source: JSTS's overlay, relate and distance, a general geometry library.
 */
import fc from "fast-check";
import ConvexHull from "jsts/org/locationtech/jts/algorithm/ConvexHull.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import { expect, it } from "vitest";
import { drawn, shareOf } from "../drawn.ts";
import { checkBend } from "../reference/bendCheck.ts";
import { clearancePairs } from "../reference/clearance.ts";
import { contactPairs, LeafAlone } from "../reference/contact.ts";
import { enumerate } from "../reference/enumerate.ts";
import { barredBy, barsSlide } from "../reference/loading.ts";
import { overlaps, toJsts } from "../reference/overlap.ts";
import { type Stage, stageOf } from "../reference/pairs.ts";
import type { PlainJob, State } from "../reference/plainJob.ts";
import { randomJobs } from "../reference/randomJob.ts";
import { boxOf, placed, type Shape } from "../reference/shape.ts";

const factory = new GeometryFactory();

/** A random state of a job: any set of bends made, any other bend to make, either end clamped. */
const jobInState = fc
  .tuple(randomJobs(4), fc.integer({ min: 0, max: 15 }), fc.nat(3), fc.boolean())
  .map(([job, set, pick, start]): { job: PlainJob; state: State } => {
    const bend = pick % job.part.bends.length;
    const done = job.part.bends.map((_, i) => i !== bend && ((set >> i) & 1) === 1);
    return { job, state: { done, bend, end: start ? "start" : "end" } };
  });

function sampledContact(stage: Stage): number | null {
  const pairs = contactPairs(stage);
  for (let deg = 0; deg * (Math.PI / 180) <= stage.endPhi; deg += 0.5) {
    const phi = deg * (Math.PI / 180);
    const met = pairs.some((pair) => {
      const shape = pair.at(phi);
      return shape !== null && overlaps(shape, pair.still);
    });
    if (met) return deg;
  }
  return null;
}

it("finds no contact later than plain sampling does, nor one that is not there", () => {
  let met = 0;
  fc.assert(
    fc.property(jobInState, ({ job, state }) => {
      const stage = stageOf(job, state, 0.01, 0.0005);
      const check = checkBend(job, state);
      const sampled = sampledContact(stage);
      if (sampled !== null) {
        met++;
        expect(check.contact).not.toBeNull();
        expect(check.contact!.angleDeg).toBeLessThan(sampled + 0.05);
      }
      if (check.contact === null || check.contact.angleDeg === 0) return;
      const past = ((check.contact.angleDeg + 0.05) * Math.PI) / 180;
      const fine = contactPairs(stageOf(job, state, 0.01, 0.0002));
      const there = [0, 0.5, 1].some((share) => {
        const phi = past - (share * 0.05 * Math.PI) / 180;
        return fine.some((pair) => pair.at(phi) !== null && overlaps(pair.at(phi)!, pair.still));
      });
      const alone = new LeafAlone();
      const byLeaf = [alone.meets(stage, "bed"), alone.meets(stage, "clamp")].some(
        (phi) => (phi ?? 9) < past,
      );
      expect(there || byLeaf).toBe(true);
    }),
    drawn(7, 200),
  );
  expect(met).toBeGreaterThan(shareOf(30));
});

it("measures no more clearance than JSTS does at any half degree", () => {
  let measured = 0;
  fc.assert(
    fc.property(jobInState, ({ job, state }) => {
      const check = checkBend(job, state);
      if (check.contact !== null || check.clearanceMm === null) return;
      measured++;
      const stage = stageOf(job, state, 0, 0.002);
      let least = Infinity;
      for (const pair of clearancePairs(stage)) {
        const still = toJsts(pair.still);
        for (let phi = 0; phi <= stage.endPhi; phi += Math.PI / 360) {
          const shape = pair.at(phi);
          if (shape !== null) least = Math.min(least, DistanceOp.distance(toJsts(shape), still) as number);
          if (pair.speed(1) === 0) break;
        }
      }
      expect(check.clearanceMm).toBeLessThan(least + 0.003);
      expect(check.clearanceMm).toBeGreaterThan(least - 0.6);
    }),
    drawn(8, 120),
  );
  expect(measured).toBeGreaterThan(shareOf(30));
});

/** True where a shape slid right by 500 mm, as one polygon, meets a body. Cut in strips that are nearly convex. */
function sweptMeets(shape: Shape, body: Shape): boolean {
  const [, low, , high] = boxOf(shape);
  const whole = toJsts(shape);
  const slices = 40;
  for (let i = 0; i < slices; i++) {
    const [y0, y1] = [low + ((high - low) * i) / slices, low + ((high - low) * (i + 1)) / slices];
    const band = toJsts(Float64Array.of(-900, y0, 900, y0, 900, y1, -900, y1));
    const cut = OverlayOp.intersection(whole, band);
    if (cut.isEmpty()) continue;
    const corners: Coordinate[] = [];
    for (const { x, y } of cut.getCoordinates())
      corners.push(new Coordinate(x, y), new Coordinate(x + 500, y));
    const swept = new ConvexHull(corners, factory).getConvexHull();
    if (swept.getArea() > 0 && OverlayOp.intersection(swept, toJsts(body)).getArea() > 1e-7) return true;
  }
  return false;
}

it("bars a slide where the swept sheet meets the brake, and nowhere else", () => {
  let [barredOnes, freeOnes] = [0, 0];
  fc.assert(
    fc.property(jobInState, fc.boolean(), ({ job, state }, formed) => {
      const stage = stageOf(job, state, 0.01, 0.002);
      const sheet = stage.motion.seated(stage.clampedPieces, stage.movingPieces, formed, 0.01, 0.002);
      const { machine, clamp } = stage;
      const below = [machine.bed, machine.leaf, ...machine.frame];
      for (const rise of [0.37, 3.1, 11.3, 24.7]) {
        const up = sheet.map((shape) => placed(shape, 0, 0, rise));
        const byBelow = up.some((shape) => below.some((body) => sweptMeets(shape, body)));
        const lifted = clamp.map((shape) => placed(shape, 0, 0, rise));
        const byClamp = sheet.some((shape) => lifted.some((body) => sweptMeets(shape, body)));
        expect(barsSlide(barredBy(sheet, below, 1), rise)).toBe(byBelow);
        expect(barsSlide(barredBy(sheet, clamp, -1), rise)).toBe(byClamp);
        barredOnes += Number(byBelow) + Number(byClamp);
        freeOnes += Number(!byBelow) + Number(!byClamp);
      }
    }),
    drawn(9, 30),
  );
  expect(Math.min(barredOnes, freeOnes)).toBeGreaterThan(shareOf(30));
});

it("answers the same for a random part seen from its other end", () => {
  let viable = 0;
  fc.assert(
    fc.property(randomJobs(3), (job) => {
      const here = enumerate(job);
      const { flats, bends } = job.part;
      const part = { ...job.part, flats: flats.toReversed(), bends: bends.toReversed() };
      const there = enumerate({ ...job, part });
      if (here.viableOrders > 0) viable++;
      expect([there.verdict, there.viableOrders, there.furthest, there.rank?.changes]).toEqual([
        here.verdict,
        here.viableOrders,
        here.furthest,
        here.rank?.changes,
      ]);
      expect(Math.abs((there.rank?.clearance ?? 0) - (here.rank?.clearance ?? 0))).toBeLessThan(0.002);
    }),
    drawn(10, 60),
  );
  expect(viable).toBeGreaterThan(shareOf(15));
});
