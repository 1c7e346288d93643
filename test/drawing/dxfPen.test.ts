/**
 * DXF files read back by an independent library (dxf): each line, arc, circle and word on its layer, within
 * 1e-4 mm. Group codes and the version mark AC1015 are those of the published DXF reference, release 2000.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dxfLayer, toDxf } from "../../src/drawing/dxfPen.ts";
import type { Drawing, Layer, Mark } from "../../src/drawing/model.ts";
import { readDxf } from "../pictures/readDxf.ts";

const LAYERS: readonly Layer[] = ["cut", "bendUp", "bendDown", "bendTangent", "sightLine", "grain", "waste"];
const CLOSE = 1e-4;

function drawing(marks: readonly Mark[]): Drawing {
  return { sentence: "Marks.", window: { min: { x: 0, y: 0 }, max: { x: 100, y: 100 } }, marks };
}

const coordinate = fc.double({ min: -4000, max: 4000, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate });
const layer = fc.constantFrom(...LAYERS);
const line = fc.record({ kind: fc.constant("line" as const), layer, from: point, to: point });
const arc = fc.record({
  kind: fc.constant("arc" as const),
  layer,
  center: point,
  radius: fc.double({ min: 0.01, max: 500, noNaN: true }),
  startRad: fc.double({ min: -7, max: 7, noNaN: true }),
  sweepRad: fc
    .tuple(fc.constantFrom(-1, 1), fc.double({ min: 0.01, max: 2 * Math.PI - 0.01, noNaN: true }))
    .map(([sign, size]) => sign * size),
});

function near(found: { x: number; y: number } | undefined, x: number, y: number): void {
  expect(Math.hypot((found?.x ?? Number.NaN) - x, (found?.y ?? Number.NaN) - y)).toBeLessThan(CLOSE);
}

describe("toDxf", () => {
  test("every line comes back within 1e-4 mm on its layer", () => {
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 30 }), (lines) => {
        const { entities } = readDxf(toDxf(drawing(lines)));
        expect(entities.length).toBe(lines.length);
        // The file gathers lines by layer; within a layer they keep their order.
        for (const name of new Set(lines.map((one) => one.layer))) {
          const found = entities.filter((entity) => entity.layer === dxfLayer(name));
          const given = lines.filter((one) => one.layer === name);
          expect(found.length).toBe(given.length);
          given.forEach((one, i) => {
            expect(found[i]?.type).toBe("LINE");
            near(found[i]?.start, one.from.x, one.from.y);
            near(found[i]?.end, one.to.x, one.to.y);
          });
        }
      }),
      { numRuns: 200, seed: 4 },
    );
  });

  test("every arc comes back with its centre, ends and side, whichever way it was drawn", () => {
    fc.assert(
      fc.property(arc, (one) => {
        const [found] = readDxf(toDxf(drawing([one]))).entities;
        expect(found?.type).toBe("ARC");
        expect(found?.layer).toBe(dxfLayer(one.layer));
        near({ x: found?.x ?? Number.NaN, y: found?.y ?? Number.NaN }, one.center.x, one.center.y);
        expect(Math.abs((found?.r ?? 0) - one.radius)).toBeLessThan(CLOSE);
        const on = (turn: number) =>
          [one.center.x + one.radius * Math.cos(turn), one.center.y + one.radius * Math.sin(turn)] as const;
        const start = found?.startAngle ?? Number.NaN;
        const end = found?.endAngle ?? Number.NaN;
        const middle = start + ((((end - start) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)) / 2;
        const [x, y] = on(middle);
        near({ x, y }, ...on(one.startRad + one.sweepRad / 2));
        const ends = [one.startRad, one.startRad + one.sweepRad].map(on);
        const [first, last] = one.sweepRad > 0 ? ends : ends.reverse();
        near({ x: on(start)[0], y: on(start)[1] }, ...first!);
        near({ x: on(end)[0], y: on(end)[1] }, ...last!);
      }),
      { numRuns: 300, seed: 4 },
    );
  });

  test("an outline comes back as its lines and arcs, a whole turn as a circle", () => {
    const slot: Mark = {
      kind: "outline",
      layer: "cut",
      outline: {
        edges: [
          { kind: "line", from: { x: 0, y: 0 }, to: { x: 10, y: 0 } },
          {
            kind: "arc",
            from: { x: 10, y: 0 },
            to: { x: 10, y: 6 },
            center: { x: 10, y: 3 },
            radius: 3,
            startRad: -Math.PI / 2,
            sweepRad: Math.PI,
          },
          { kind: "line", from: { x: 10, y: 6 }, to: { x: 0, y: 6 } },
          { kind: "line", from: { x: 0, y: 6 }, to: { x: 0, y: 0 } },
        ],
      },
    };
    const hole: Mark = {
      kind: "arc",
      layer: "cut",
      center: { x: 5, y: 3 },
      radius: 1.5875,
      startRad: 0,
      sweepRad: 2 * Math.PI,
    };
    const { entities } = readDxf(toDxf(drawing([slot, hole])));
    expect(entities.map((entity) => entity.type)).toEqual(["LINE", "ARC", "LINE", "LINE", "CIRCLE"]);
    expect(entities.every((entity) => entity.layer === "CUT")).toBe(true);
    expect(entities[4]?.r).toBeCloseTo(1.5875, 9);
  });

  test("says millimetres and AC1015, and names layers in capitals", () => {
    const marks = LAYERS.map(
      (name): Mark => ({ kind: "line", layer: name, from: { x: 0, y: 0 }, to: { x: 1, y: 0 } }),
    );
    const text = toDxf(drawing(marks));
    const { unit, entities } = readDxf(text);
    expect(unit).toBe(4);
    expect(text).toMatch(/\$ACADVER\n1\nAC1015\n/u);
    expect(new Set(entities.map((entity) => entity.layer))).toEqual(
      new Set(["CUT", "BEND_UP", "BEND_DOWN", "BEND_TANGENT", "SIGHT_LINE", "GRAIN", "WASTE"]),
    );
  });

  test("words keep their letters, place and turn; the file is plain ASCII without exponents", () => {
    const marks: Mark[] = [
      {
        kind: "text",
        layer: "note",
        at: { x: 1e-9, y: 20 },
        words: "bend 1 up 90° · 3⁄8",
        heightMm: 3,
        anchor: "start",
        angleRad: Math.PI / 2,
      },
      { kind: "line", layer: "cut", from: { x: 1e-12, y: -1e-12 }, to: { x: 3e-7, y: 1234567.891 } },
    ];
    const text = toDxf(drawing(marks));
    expect(/[^\n -~]/u.test(text)).toBe(false);
    expect(/^-?[\d.]+e[-+]?\d+$/mu.test(text)).toBe(false);
    const words = readDxf(text).entities.find((entity) => entity.type === "TEXT");
    const unescaped = words?.string?.replace(/\\U\+([0-9A-F]{4})/gu, (_, code) =>
      String.fromCodePoint(Number.parseInt(code, 16)),
    );
    expect(unescaped).toBe("bend 1 up 90° · 3⁄8");
    expect(words?.rotation).toBe(90);
    near({ x: words?.x ?? Number.NaN, y: words?.y ?? Number.NaN }, 0, 20);
  });

  test("a dimension comes back as its line, two extension lines, arrowheads and figure", () => {
    const mark: Mark = {
      kind: "dimension",
      layer: "dimension",
      from: { x: 0, y: 0 },
      to: { x: 80, y: 0 },
      words: "80.00",
      offsetMm: -10,
    };
    const { entities } = readDxf(toDxf(drawing([mark])));
    const level = entities.filter(
      (entity) =>
        Math.abs((entity.start?.y ?? 0) + 10) < CLOSE && Math.abs((entity.end?.y ?? 0) + 10) < CLOSE,
    );
    expect(level.length).toBe(1);
    const xs = [level[0]?.start?.x ?? Number.NaN, level[0]?.end?.x ?? Number.NaN].sort((a, b) => a - b);
    expect(xs[0]).toBeCloseTo(0, 6);
    expect(xs[1]).toBeCloseTo(80, 6);
    expect(entities.filter((entity) => entity.type === "TEXT").map((entity) => entity.string)).toEqual([
      "80.00",
    ]);
  });
});
