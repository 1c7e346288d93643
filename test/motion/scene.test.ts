/**
 * What the picture of a bend shows: one closed sheet of the right length, area and place at every leaf angle.
 * Source: the sheet keeps its neutral length (src/model.md, section 5); a bent strip's area is T times its middle line
 * (plane geometry, Pappus); dimensions of the finished part are what the job asks for.
 */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { relaxedSheet, sceneAt, sheetAt } from "../../src/motion/scene.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { distanceToEdge } from "../../src/plane/edge.ts";
import type { Edge, Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";
import { toRad } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import { picks, roughJobs, stateOf } from "../contact/roughJob.ts";
import { outlineHolds } from "../plane/throughLibrary.ts";
import { rectangle } from "../rectangle.ts";

const lengthOf = (edge: Edge): number =>
  edge.kind === "line"
    ? Math.hypot(edge.to.x - edge.from.x, edge.to.y - edge.from.y)
    : edge.radius * Math.abs(edge.sweepRad);

/** Area by Green's theorem: chords, and the segment between chord and arc. */
function areaOf({ edges }: Outline): number {
  return edges.reduce((sum, edge) => {
    const chord = (edge.from.x * edge.to.y - edge.to.x * edge.from.y) / 2;
    if (edge.kind === "line") return sum + chord;
    return sum + chord + (edge.radius ** 2 / 2) * (edge.sweepRad - Math.sin(edge.sweepRad));
  }, 0);
}

/** Lengths of the two faces: of all edges but the two ends, the first half is the under face. */
function facesOf(outline: Outline): { readonly under: number; readonly over: number; readonly ends: number } {
  const { edges } = outline;
  const half = edges.length / 2 - 1;
  const sum = (run: readonly Edge[]) => run.reduce((length, edge) => length + lengthOf(edge), 0);
  return {
    under: sum(edges.slice(0, half)),
    over: sum(edges.slice(half + 1, -1)),
    ends: lengthOf(edges[half]!) + lengthOf(edges.at(-1)!),
  };
}

function developedOf({ part }: Job): number {
  return [...part.flatsMm, ...part.bends.map((bend) => bend.allowanceMm)].reduce((a, b) => a + b, 0);
}

/** Flats longer than any bend zone, so that nothing of the sheet is cut away by it. */
const longJobs = (bends: number) =>
  roughJobs(bends).map((file) => ({
    ...file,
    part: { ...file.part, flats: file.part.flats.map((length) => length + 12) },
  }));

describe("the sheet's outline", () => {
  it("keeps the developed width on its neutral line while the leaf swings", () => {
    fc.assert(
      fc.property(
        longJobs(3),
        picks(1),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (file, [pick], share) => {
          const job = jobOf(file);
          const { part, brake } = job;
          const { state } = stateOf(part.bends.length, pick!);
          const seat = seatFor(part, brake, state.bend, state.end);
          const { under, over, ends } = facesOf(sheetAt(seat, 0, share * toRad(90) * 0.999));
          // Flat but for the bend being made: the under face is its outside, the over face its inside.
          expect(over + part.kFactor * (under - over)).toBeCloseTo(developedOf(job), 6);
          expect(ends).toBeCloseTo(2 * part.thicknessMm, 9);
        },
      ),
      { seed: 71, numRuns: 300 },
    );
  });

  it("is closed, runs counter-clockwise and holds T times its middle line", () => {
    fc.assert(
      fc.property(
        longJobs(4),
        picks(1),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (file, [pick], share) => {
          const { part, brake } = jobOf(file);
          const { state, bendsDone } = stateOf(part.bends.length, pick!);
          const seat = seatFor(part, brake, state.bend, state.end);
          const sheet = sheetAt(seat, bendsDone, share * toRad(90));
          sheet.edges.forEach((edge, i) => {
            const next = sheet.edges[(i + 1) % sheet.edges.length]!;
            expect(edge.to.x).toBeCloseTo(next.from.x, 7);
            expect(edge.to.y).toBeCloseTo(next.from.y, 7);
          });
          const { under, over } = facesOf(sheet);
          expect(areaOf(sheet)).toBeCloseTo((part.thicknessMm * (under + over)) / 2, 5);
        },
      ),
      { seed: 72, numRuns: 300 },
    );
  });
});

describe("sceneAt", () => {
  const job = jobOf({
    noseroom: 1,
    units: "mm",
    part: {
      name: "angle",
      material: "mild steel",
      thickness: 1,
      insideRadius: 1.5,
      kFactor: 0.45,
      dimensions: "outside",
      flats: [15, 25],
      bends: [{ angle: 75, turn: "up", overbend: 80 }],
    },
    brake: {
      name: "plain",
      clamp: { type: "bar", thickness: 5, depth: 30, noseRadius: 0.8 },
      bed: { profile: rectangle(-50, -20, 0, 0) },
      leaf: {
        profile: rectangle(0, -5, 20, 0),
        swing: 120,
        pivot: [0.2, 0.35],
      },
      lift: 20,
      openEnds: true,
    },
  });
  const { part, brake } = job;
  const corners = (outline: Outline) => outline.edges.map((edge) => edge.from);

  it("shows the flat blank lying on bed and leaf before the leaf moves", () => {
    const { sheet, clamp } = sceneAt(part, brake, { bendsDone: 0, bend: 0, clamped: "start" }, 0);
    const ys = corners(sheet).map((point) => point.y);
    const xs = corners(sheet).map((point) => point.x);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([0, 1]);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(developedOf(job), 9);
    expect(Math.min(...clamp.flatMap(corners).map((point) => point.y))).toBeCloseTo(1, 12);
  });

  it("shows the dimensions asked for, measured from the mold line, once the leaf has let go", () => {
    const theta = toRad(75);
    const seat = seatFor(part, brake, 0, "start");
    const sheet = relaxedSheet(seat, 0);
    // The relaxed part stands on an apex of its own, one bend setback past the clamped tangent line.
    const apex = { x: seat.clampedTangentX + part.bends[0]!.bendSetbackMm, y: 0 };
    const far = corners(sheet).map((point) => Math.hypot(point.x - apex.x, point.y - apex.y));
    const outer = (x: number, y: number) =>
      Math.min(...corners(sheet).map((point) => Math.hypot(point.x - x, point.y - y)));
    expect(outer(apex.x - 15, 0)).toBeLessThan(1e-9);
    expect(outer(apex.x + 25 * Math.cos(theta), 25 * Math.sin(theta))).toBeLessThan(1e-9);
    expect(Math.max(...far)).toBeCloseTo(Math.hypot(25, 1), 9);
  });

  it("turns the leaf about its pivot and leaves bed and clamp where they are", () => {
    const rest = sceneAt(part, brake, { bendsDone: 0, bend: 0, clamped: "start" }, 0);
    const swung = sceneAt(part, brake, { bendsDone: 0, bend: 0, clamped: "start" }, toRad(60));
    expect(swung.bed).toEqual(rest.bed);
    expect(swung.clamp).toEqual(rest.clamp);
    corners(swung.leaf).forEach((point, i) => {
      const before = corners(rest.leaf)[i]!;
      const reach = Math.hypot(before.x - 0.2, before.y - 0.35);
      expect(Math.hypot(point.x - 0.2, point.y - 0.35)).toBeCloseTo(reach, 12);
      const turned = Math.atan2(point.y - 0.35, point.x - 0.2) - Math.atan2(before.y - 0.35, before.x - 0.2);
      expect(Math.cos(turned)).toBeCloseTo(0.5, 12);
    });
  });
});

describe("the picture and the first contact with the pivot far out", () => {
  const thin = (
    thickness: number,
    insideRadius: number,
    angle: number,
    clamp: object,
    leaf: { pivot: [number, number]; swing: number; long: number; thick: number; round: number },
  ) =>
    jobOf({
      noseroom: 1,
      units: "mm",
      part: {
        name: "thin",
        material: "mild steel",
        thickness,
        insideRadius,
        kFactor: 0.259,
        dimensions: "flat",
        flats: [1, 1],
        bends: [{ angle, turn: "up", overbend: angle }],
      },
      brake: {
        name: "tiny",
        clamp: clamp as { type: "bar"; thickness: number; depth: number; noseRadius: number },
        bed: {
          profile: [
            [-24, -0.613],
            [-0.1, -0.613],
            [0, -0.3065],
            [0, 0],
            [-24, 0],
          ],
        },
        leaf: {
          profile: [
            [0, -leaf.thick],
            [leaf.long, -leaf.thick, leaf.round],
            [leaf.long, 0, leaf.round],
            [0, 0],
          ],
          swing: leaf.swing,
          pivot: leaf.pivot,
        },
        lift: 1,
        openEnds: true,
      },
    });
  const rim = (point: Point, { edges }: Outline) =>
    Math.min(...edges.map((edge) => distanceToEdge(point, edge)));

  it("meets a nose that came through the bend zone inside the sheet drawn, where the moving flat starts", () => {
    const bar = { type: "bar", noseRadius: 0.049722, noseAngle: 86, thickness: 0.226762, depth: 2.404 };
    const leaf = {
      pivot: [-0.43277, 0.687075] as [number, number],
      swing: 112,
      long: 0.4344,
      thick: 0.584,
      round: 0.1448,
    };
    const { part, brake } = thin(0.200579, 0.050925, 90, bar, leaf);
    const { contact, seat } = judgeStep(part, brake, { bendsDone: 0, bend: 0, clamped: "end" }, 0.5);
    expect(contact?.member).toBe("clamp");
    const { sheet } = sceneAt(part, brake, { bendsDone: 0, bend: 0, clamped: "end" }, contact!.leafAngleRad);
    expect(rim(contact!.point, sheet)).toBeGreaterThan(0.02);
    expect(outlineHolds(sheet, contact!.point)).toBe(true);
    // Along the leaf from the apex the moving flat starts at d(φ) (src/model.md, section 5), or where the zone ends.
    const { x, y } = contact!.point;
    const [c, s] = [Math.cos(contact!.leafAngleRad), Math.sin(contact!.leafAngleRad)];
    const along = c * (x - leaf.pivot[0]) + s * (y - leaf.pivot[1]);
    const half = Math.tan(contact!.leafAngleRad / 2);
    const a = (h: number) => leaf.pivot[0] + leaf.pivot[1] * h;
    const theta = Math.tan(seat.angleRad / 2);
    const { allowanceMm, bendSetbackMm } = part.bends[0]!;
    const r = 0.050925;
    const d =
      allowanceMm -
      bendSetbackMm +
      2 * (r + 0.200579) * half -
      contact!.leafAngleRad * (r + 0.259 * 0.200579) +
      a(theta) -
      a(half);
    const start = Math.max(d, (r + 0.200579) * half);
    // The apex lies pivot.y·tan(φ/2) before the pivot's foot on the leaf.
    expect(along).toBeCloseTo(start - leaf.pivot[1] * half, 6);
  });

  it("keeps the clamped flat to its tangent line for contact, which the picture at rest shows", () => {
    const bar = { type: "bar", noseRadius: 0.0855, noseAngle: 90, thickness: 0.54, depth: 2.36 };
    const leaf = {
      pivot: [0.448235, 0.584037] as [number, number],
      swing: 117,
      long: 0.3585,
      thick: 0.3569,
      round: 0.1195,
    };
    const { part, brake } = thin(0.223109, 0.293726, 149.851, bar, leaf);
    const { contact, seat } = judgeStep(part, brake, { bendsDone: 0, bend: 0, clamped: "start" }, 0.5);
    expect(contact?.member).toBe("leaf");
    const at = (leafAngleRad: number) =>
      sceneAt(part, brake, { bendsDone: 0, bend: 0, clamped: "start" }, leafAngleRad).sheet;
    expect(contact!.point.x).toBeLessThan(seat.clampedTangentX + 1e-6);
    expect(contact!.point.y).toBeCloseTo(0.01, 6);
    expect(rim(contact!.point, at(0))).toBeLessThan(0.0101);
    // The picture at that angle bends the sheet up before the tangent line, and no further than this.
    expect(rim(contact!.point, at(contact!.leafAngleRad))).toBeLessThan(0.045);
  });
});
