/**
 * The page's geometry without a browser: traced photos, DXF rings, cameras, places of flats.
 * Each is held against what was drawn, or against the engine's own outline of the same sheet.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { distanceToEdge } from "../../src/plane/edge.ts";
import { profilesFromDxf } from "../../web/dxf/profileFromDxf.ts";
import { fitted, inSection, onCanvas, shifted, zoomed } from "../../web/stage/camera.ts";
import { flatPlaces } from "../../web/stage/flatPlaces.ts";
import { roundLength } from "../../web/stage/scaleRule.ts";
import { heldDeg, poseStep, sheetAtDeg, worstStep } from "../../web/stage/stepPose.ts";
import { SHAPES, withShape } from "../../web/store/chainEdits.ts";
import { firstJob } from "../../web/store/firstJob.ts";
import { fileText } from "../../web/store/jobFile.ts";
import { traced } from "../../web/trace/traced.ts";
import { arc, drawing, line, lwpolyline } from "./dxfText.ts";

describe("a traced outline", () => {
  const mm = [
    { x: 0, y: 0 },
    { x: -30, y: 30 },
    { x: -50, y: 30 },
    { x: -50, y: 0 },
  ];
  it("comes back whatever the photo's scale, tilt, place and side", () => {
    const photo = fc.record({
      scale: fc.double({ min: 2, max: 60, noNaN: true }),
      tiltDeg: fc.double({ min: -80, max: 80, noNaN: true }),
      left: fc.boolean(),
      x: fc.integer({ min: -500, max: 500 }),
    });
    fc.assert(
      fc.property(photo, ({ scale, tiltDeg, left, x }) => {
        const tilt = (tiltDeg * Math.PI) / 180;
        const shot = (p: { x: number; y: number }) => {
          const px = (p.x * Math.cos(tilt) - p.y * Math.sin(tilt)) * scale;
          return { x: (left ? -px : px) + x, y: -(p.x * Math.sin(tilt) + p.y * Math.cos(tilt)) * scale };
        };
        const result = traced({
          scale: [shot({ x: 5, y: -20 }), shot({ x: -45, y: -20 })],
          apartMm: 50,
          level: [shot({ x: -40, y: 0 }), shot({ x: -5, y: 0 })],
          outline: mm.map(shot),
          noseAt: left ? "left" : "right",
          noseRadiusMm: undefined,
        });
        if (!result.ok) throw new Error(result.missing);
        result.corners.forEach((corner, i) => {
          expect(corner.x).toBeCloseTo(mm[i]!.x, 6);
          expect(corner.y).toBeCloseTo(mm[i]!.y, 6);
        });
      }),
      { seed: 11 },
    );
  });

  it("says what is missing, one thing at a time", () => {
    const nothing = {
      scale: [],
      apartMm: undefined,
      level: [],
      outline: [],
      noseAt: "right",
      noseRadiusMm: undefined,
    } as const;
    expect(traced(nothing)).toMatchObject({
      ok: false,
      missing: "Mark two points on the ruler, or four corners of a rectangle.",
    });
    const two = [
      { x: 0, y: 0 },
      { x: 9, y: 0 },
    ];
    expect(traced({ ...nothing, scale: two })).toMatchObject({
      missing: "Say how far apart the two points are.",
    });
    expect(traced({ ...nothing, scale: two, apartMm: 5 })).toMatchObject({ ok: false });
  });
});

describe("DXF drawings", () => {
  it("give the same corners whichever way and in whichever order the pieces are drawn", () => {
    const pieces = [
      line(0, 0, 47, 0),
      arc(47, 3, 3, 270, 360),
      line(50, 3, 50, 12),
      line(50, 12, 0, 12),
      line(0, 12, 0, 0),
    ];
    const flipped = [
      line(47, 0, 0, 0),
      arc(47, 3, 3, 270, 360),
      line(50, 12, 50, 3),
      line(0, 12, 50, 12),
      line(0, 0, 0, 12),
    ];
    const wanted = JSON.stringify([
      [-50, 0],
      [-50, 12],
      [0, 0, 3],
      [0, 12],
    ]);
    const sorted = (text: string) => {
      const read = profilesFromDxf(text, "mm");
      if (!read.ok) throw new Error(read.sentence);
      return JSON.stringify([...read.profiles[0]!].map((v) => [...v]).sort());
    };
    const permuted = fc.shuffledSubarray([0, 1, 2, 3, 4], { minLength: 5 });
    fc.assert(
      fc.property(permuted, fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }), (places, turned) => {
        const text = drawing(
          4,
          places.map((i) => (turned[i] ? flipped : pieces)[i]!),
        );
        expect(sorted(text)).toBe(wanted);
      }),
      { seed: 2, numRuns: 40 },
    );
  });

  it("flatten an arc that is no rounding to within 0.005 mm of it", () => {
    // A half circle of radius 10 on a straight back: bulge 1.
    const read = profilesFromDxf(
      drawing(4, [
        lwpolyline(
          [
            [0, 0, 1],
            [0, 20, 0],
          ],
          true,
        ),
      ]),
      "mm",
    );
    if (!read.ok) throw new Error(read.sentence);
    const corners = read.profiles[0]!.map(([x, y]) => ({ x: Number(x), y: Number(y) }));
    expect(corners.length).toBeGreaterThan(40);
    const centre = { x: -10, y: 10 };
    const sharp = corners.map((c) => Math.abs(Math.hypot(c.x - centre.x, c.y - centre.y) - 10));
    expect(Math.max(...sharp)).toBeLessThan(0.002);
    const chords = corners.slice(0, -1).map((c, i) => [c, corners[i + 1]!] as const);
    const short = chords.filter(([a, b]) => Math.hypot(a.x - b.x, a.y - b.y) < 5);
    const depths = short.map(
      ([a, b]) => 10 - Math.hypot((a.x + b.x) / 2 - centre.x, (a.y + b.y) / 2 - centre.y),
    );
    expect(short.length).toBeGreaterThan(40);
    expect(Math.max(...depths)).toBeLessThan(0.0055);
  });

  it("know the vertex identifiers (code 91) that newer drawings carry", () => {
    const plain = drawing(4, [
      lwpolyline(
        [
          [0, 0, 0],
          [9, 0, 0],
          [9, 5, 0],
          [0, 5, 0],
        ],
        true,
      ),
    ]);
    expect(profilesFromDxf(plain.replaceAll("42\n0\n", "42\n0\n91\n0\n"), "mm")).toEqual(
      profilesFromDxf(plain, "mm"),
    );
    expect(profilesFromDxf(plain, "mm")).toMatchObject({ ok: true });
  });

  it("never throw, whatever the text", () => {
    const whole = drawing(4, [
      line(0, 0, 10, 0),
      lwpolyline(
        [
          [0, 0, 0.3],
          [5, 0, 0],
          [5, 5, -0.2],
        ],
        true,
      ),
    ]);
    fc.assert(
      fc.property(fc.nat(whole.length), fc.string({ maxLength: 8 }), (at, junk) => {
        const read = profilesFromDxf(whole.slice(0, at) + junk + whole.slice(at + junk.length), "in");
        if (!read.ok) expect(read.sentence).toMatch(/\.$/);
      }),
      { seed: 8, numRuns: 300 },
    );
  });
});

describe("the camera", () => {
  it("goes there and back, keeps the point under the pointer, and shows the window whole", () => {
    const window = { min: { x: -30, y: -10 }, max: { x: 50, y: 40 } };
    const camera = shifted(fitted(window, 700, 500, 20), 13, -7);
    const there = inSection(camera, onCanvas(camera, { x: 3.7, y: -2.1 }));
    expect(there.x).toBeCloseTo(3.7, 9);
    expect(there.y).toBeCloseTo(-2.1, 9);
    const under = inSection(camera, { x: 200, y: 120 });
    const after = onCanvas(zoomed(camera, 1.7, { x: 200, y: 120 }), under);
    expect(after.x).toBeCloseTo(200, 9);
    expect(after.y).toBeCloseTo(120, 9);
    const corners = [window.min, window.max].map((p) => onCanvas(fitted(window, 700, 500, 20), p));
    for (const p of corners) {
      expect(p.x).toBeGreaterThanOrEqual(19.9);
      expect(p.x).toBeLessThanOrEqual(680.1);
      expect(p.y).toBeGreaterThanOrEqual(19.9);
      expect(p.y).toBeLessThanOrEqual(480.1);
    }
  });

  it("has a scale bar of a round length", () => {
    expect(roundLength(13, "mm")).toEqual({ mm: 10, words: "10 mm" });
    expect(roundLength(13, "in")).toEqual({ mm: 12.7, words: "1/2 in" });
  });
});

describe("the places of flats", () => {
  it.each(SHAPES)("lie half a thickness under the faces of the engine's own sheet: $name", (shape) => {
    const read = readJob(fileText(withShape(firstJob("mm"), shape)));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const answer = check(read.job);
    answer.order.forEach((step, i) => {
      const pose = poseStep(read.job, answer, i);
      if (pose === null) throw new Error("no pose");
      for (const deg of [0, step.reached / 2, step.reached]) {
        const sheet = sheetAtDeg(pose, deg);
        const places = flatPlaces(pose, deg);
        expect(places.map((place) => place.flat).toSorted((a, b) => a - b)).toEqual(
          read.job.part.flatsMm.map((_, k) => k),
        );
        for (const { from, to } of places) {
          const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
          const off = Math.min(...sheet.edges.map((edge) => distanceToEdge(middle, edge)));
          expect(off).toBeCloseTo(read.job.part.thicknessMm / 2, 6);
        }
      }
      expect(heldDeg(pose, 180)).toBe(step.contact ? step.contact.angle : 180);
    });
    expect(worstStep(answer)).toBeLessThan(answer.order.length);
  });
});
