/**
 * Flat patterns from drawings: written by another library (dxf-writer) and by hand after the DXF reference, and held against
 * what was drawn. Curves against their closed forms: an ellipse's equation, a circle as a rational quadratic (from memory).
 */
import { readFileSync } from "node:fs";
import Drawing from "dxf-writer";
import { describe, expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { toDxf } from "../../src/drawing/dxfPen.ts";
import { angleList, angleOf } from "../../src/jobFile/drawnAngles.ts";
import { type DrawingAsked, drawnPattern } from "../../src/jobFile/drawnPattern.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { regionArea } from "../../src/pattern/ring.ts";
import { drawWholeBlank } from "../../src/pictures/wholeBlankDrawing.ts";
import { drawing, line, lwpolyline, onLayer, words } from "../page/dxfText.ts";

type Corners = readonly (readonly number[])[];

const square = (x: number, y: number, wide: number, high: number) =>
  lwpolyline(
    [
      [x, y, 0],
      [x + wide, y, 0],
      [x + wide, y + high, 0],
      [x, y + high, 0],
    ],
    true,
  );

/** A plate of 60 by 40 with a bend up its middle. */
const plate = [square(0, 0, 60, 40), onLayer("BEND", line(30, 0, 30, 40))];
const said = words(31, 20, "90 up");

function read(text: string, units: "mm" | "in" = "mm", asked: DrawingAsked = {}) {
  const drawn = drawnPattern(text, units, asked);
  if (!drawn.ok) throw new Error(drawn.sentences.join(" "));
  return { ...drawn, holes: (drawn.pattern.holes ?? []) as readonly Corners[] };
}

function refused(text: string, asked: DrawingAsked = {}): string {
  const drawn = drawnPattern(text, "mm", asked);
  return drawn.ok ? "read" : drawn.sentences.join(" ");
}

describe("drawnPattern", () => {
  it("a drawing of dxf-writer is the pattern that was drawn", () => {
    const file = JSON.parse(
      readFileSync(new URL("../../examples/whole/corner-bracket.json", import.meta.url), "utf8"),
    );
    const { outline, bends } = file.part.pattern;
    const d = new Drawing();
    d.setUnits("Millimeters");
    d.addLayer("CUT", 3, "CONTINUOUS").addLayer("FOLDS", 1, "DASHED");
    d.setActiveLayer("CUT");
    // Every other edge the wrong way round, as people draw.
    for (const [i, [x, y]] of outline.entries()) {
      const [nextX, nextY] = outline[(i + 1) % outline.length];
      if (i % 2 === 0) d.drawLine(x, y, nextX, nextY);
      else d.drawLine(nextX, nextY, x, y);
    }
    d.setActiveLayer("FOLDS");
    for (const {
      line: [[x1, y1], [x2, y2]],
      angle,
      turn,
    } of bends) {
      d.drawLine(x1, y1, x2, y2);
      d.drawText((x1 + x2) / 2 + 1, (y1 + y2) / 2, 3, 90, `${turn} ${angle}%%d`);
    }
    const { pattern, remarks } = read(d.toDxfString(), "mm", { bends: "folds" });
    expect(remarks).toEqual([]);
    expect(pattern.bends).toEqual(bends);
    const sorted = (corners: Corners) => corners.map((corner) => corner.join()).toSorted();
    expect(sorted(pattern.outline as Corners)).toEqual(sorted(outline));
  });

  it("inches of a drawing are the job's millimetres, a rounding drawn as a bulge is a corner's radius", () => {
    const rounded = lwpolyline(
      [
        [0, 0, 0],
        [1.75, 0, Math.tan(Math.PI / 8)],
        [2, 0.25, 0],
        [2, 1, 0],
        [0, 1, 0],
      ],
      true,
    );
    const text = drawing(1, [rounded, onLayer("BEND", line(1, 0, 1, 1)), words(1.05, 0.5, "45 DOWN")]);
    const { pattern } = read(text);
    expect(pattern.outline).toContainEqual([50.8, 0, 6.35]);
    expect(pattern.bends).toEqual([
      {
        line: [
          [25.4, 0],
          [25.4, 25.4],
        ],
        angle: 45,
        turn: "down",
      },
    ]);
    // The same in a job in inches, as the shop writes it.
    expect(read(text, "in").pattern.bends[0]!.line).toEqual([
      ["1", "0"],
      ["1", "1"],
    ]);
  });

  it("lines are bends by their linetype too, and other layers are left out where the cut layer is named", () => {
    const dashed = line(30, 0, 30, 40).replace("8\n0\n", "8\n0\n6\nHIDDEN\n");
    const frame = onLayer("FRAME", square(-100, -100, 400, 300));
    const text = drawing(4, [plate[0]!, dashed, frame, said]);
    expect(read(text, "mm", { bends: "hidden", cut: "0" }).pattern.outline).toHaveLength(4);
    expect(refused(text, { bends: "hidden" })).toMatch(
      /bend line at x 30(\.00)?, y 20(\.00)? mm lies in a hole: if a frame is drawn round the part/u,
    );
  });

  it("a bend line that a hole parts is one bend", () => {
    const pieces = [onLayer("BEND", line(30, 40, 30, 25)), onLayer("BEND", line(30, 0, 30, 15))];
    const { pattern } = read(drawing(4, [plate[0]!, square(25, 15, 10, 10), ...pieces, said]));
    expect(pattern.bends).toHaveLength(1);
    const ends = (pattern.bends[0]!.line as Corners).map(([, y]) => y);
    expect(ends.toSorted()).toEqual([0, 40]);
  });

  it("chords of an ellipse stray no more than 0.01 mm", () => {
    const ellipse =
      "0\nELLIPSE\n8\n0\n10\n30\n20\n20\n30\n0\n11\n0\n21\n12\n31\n0\n40\n0.4\n41\n0\n42\n6.283185307179586\n";
    const [hole] = read(
      drawing(4, [
        square(0, 0, 90, 40),
        onLayer("BEND", line(60, 0, 60, 40)),
        ellipse,
        words(61, 20, "90 up"),
      ]),
    ).holes;
    const level = ([x, y]: readonly number[]) => Math.hypot((x! - 30) / 4.8, (y! - 20) / 12);
    for (const [i, corner] of hole!.entries()) {
      expect(Math.abs(level(corner) - 1)).toBeLessThan(1e-4);
      const next = hole![(i + 1) % hole!.length]!;
      const middle = [0, 1].map((k) => (corner[k]! + next[k]!) / 2);
      expect((1 - level(middle)) * 4.8).toBeLessThan(0.01);
    }
  });

  it("chords of a spline that is a circle stray no more than 0.01 mm", () => {
    const w = Math.SQRT1_2;
    const control = [
      [10, 0],
      [10, 10],
      [0, 10],
      [-10, 10],
      [-10, 0],
      [-10, -10],
      [0, -10],
      [10, -10],
      [10, 0],
    ].map(([x, y]) => [x! + 20, y! + 20]);
    const knots = [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4];
    const spline = [
      "0\nSPLINE\n8\n0\n70\n13\n71\n2\n72\n12\n73\n9\n",
      ...knots.map((knot) => `40\n${knot}\n`),
      ...control.map((_, i) => `41\n${i % 2 === 0 ? 1 : w}\n`),
      ...control.map(([x, y]) => `10\n${x}\n20\n${y}\n30\n0\n`),
    ].join("");
    const [hole] = read(
      drawing(4, [
        square(0, 0, 90, 40),
        onLayer("BEND", line(60, 0, 60, 40)),
        spline,
        words(61, 20, "90 up"),
      ]),
    ).holes;
    expect(hole!.length).toBeGreaterThan(30);
    for (const [i, [x, y]] of hole!.entries()) {
      expect(Math.hypot(x! - 20, y! - 20)).toBeCloseTo(10, 3);
      const [nextX, nextY] = hole![(i + 1) % hole!.length]!;
      expect(10 - Math.hypot((x! + nextX!) / 2 - 20, (y! + nextY!) / 2 - 20)).toBeLessThan(0.01);
    }
  });

  it.each(["corner-bracket", "end-cap", "cable-trough-ends", "lens-box-lips"])(
    "the blank of %s, written as a drawing, is read back as the same part",
    (name) => {
      const text = readFileSync(new URL(`../../examples/whole/${name}.json`, import.meta.url), "utf8");
      const of = (json: string) => {
        const job = readAnyJob(json);
        if (!job.ok || job.kind !== "whole") throw new Error(JSON.stringify(job));
        return job.job;
      };
      const job = of(text);
      const { pattern } = read(toDxf(drawWholeBlank(job, checkWhole({ ...job, order: [] }))));
      const {
        box: _box,
        ends: _ends,
        flats: _flats,
        bends: _bends,
        dimensions: _,
        length: __,
        ...part
      } = JSON.parse(text).part;
      const again = of(JSON.stringify({ ...JSON.parse(text), part: { ...part, pattern } }));
      const lengths = ({ part: { sheet } }: typeof job) =>
        sheet.pattern.bends.map(({ allowanceMm }) => allowanceMm.toFixed(3)).toSorted();
      expect(lengths(again)).toEqual(lengths(job));
      const areas = ({ part: { sheet } }: typeof job) =>
        sheet.faces.map(regionArea).toSorted((a, b) => a - b);
      expect(areas(again).length).toBe(areas(job).length);
      for (const [i, mm2] of areas(again).entries()) expect(mm2).toBeCloseTo(areas(job)[i]!, 1);
    },
  );

  it("a circle drawn on the back of the plane lies where it is seen", () => {
    const behind = "0\nCIRCLE\n8\n0\n10\n-12\n20\n8\n40\n2\n210\n0\n220\n0\n230\n-1\n";
    const [hole] = read(drawing(4, [...plate, behind, said])).holes;
    expect(Math.max(...hole!.map(([x]) => x!))).toBeCloseTo(14, 3);
  });

  it.each<[string, string, DrawingAsked, RegExp]>([
    ["no unit", drawing(0, [...plate, said]), {}, /does not say its unit: add --drawn-in mm or/],
    ["cut off", drawing(4, plate).slice(0, 200), {}, /is cut off or is not a DXF file/],
    [
      "no such layer",
      drawing(4, plate),
      { bends: "FOLD" },
      /--bends has "FOLD"; it may be one of the layers "0", "BEND"/,
    ],
    [
      "no layer named",
      drawing(4, [plate[0]!, line(30, 0, 30, 40)]),
      {},
      /add --bends with their layer, one of "0"/,
    ],
    [
      "no such cut layer",
      drawing(4, plate),
      { cut: "OUT" },
      /--cut is "OUT"; it may be one of the layers "0"/,
    ],
    [
      "no angle",
      drawing(4, plate),
      {},
      /Bend 1, from x 30(\.00)?, y 0(\.00)? mm to .+ has no angle: write "90 up" beside it/,
    ],
    [
      "two angles",
      drawing(4, [...plate, said, words(29, 20, "45 up")]),
      {},
      /more than one angle beside it, 90 up and 45 up: add --angles "1: 90 up"/,
    ],
    [
      "a bend too many",
      drawing(4, [...plate, said]),
      { angles: { byNumber: new Map([[2, { angle: 90, turn: "up" }]]) } },
      /names bend 2; the drawing has 1 bend lines/,
    ],
    [
      "open outline",
      drawing(4, [line(0, 0, 60, 0), line(60, 0, 60, 40), plate[1]!, said]),
      {},
      /no closed outline: the line that ends at x 60(\.00)?, y 40(\.00)? mm meets no other/,
    ],
    [
      "two parts",
      drawing(4, [...plate, square(100, 0, 10, 10), said]),
      {},
      /a second outline, at x 1[01]0.+: save one part alone, or name its layer with --cut/,
    ],
    [
      "a bend that is an arc",
      drawing(4, [plate[0]!, onLayer("BEND", "0\nARC\n8\n0\n10\n0\n20\n0\n40\n20\n50\n0\n51\n90\n"), said]),
      {},
      /A bend line is an arc, at x .+: draw bend lines straight/,
    ],
    ["nothing", drawing(4, []), {}, /holds no lines, arcs or polylines/],
  ])("refuses with its place: %s", (_, text, asked, sentence) => {
    expect(refused(text, asked)).toMatch(sentence);
  });

  it("tells what was left out", () => {
    const { remarks } = read(
      drawing(4, [...plate, line(70, 0, 80, 0), "0\nPOINT\n8\n0\n10\n1\n20\n1\n", said]),
    );
    expect(remarks).toEqual([
      "1 loose line was left out: an outline or a hole is a closed line.",
      "Passed over: POINT.",
    ]);
  });
});

describe("angles", () => {
  it.each<[string, ReturnType<typeof angleOf>]>([
    ["90 up", { angle: 90, turn: "up" }],
    ["UP 90%%d R1.2", { angle: 90, turn: "up" }],
    ["Bend down 45.5°", { angle: 45.5, turn: "down" }],
    ["90deg DN", { angle: 90, turn: "down" }],
    ["190 up", undefined],
    ["up", undefined],
    ["60 x 40", undefined],
  ])("%s", (written, angle) => {
    expect(angleOf(written)).toEqual(angle);
  });

  it("a list gives one for all, or one for each", () => {
    expect(angleList("90 up; 2: 45 down")).toEqual({
      all: { angle: 90, turn: "up" },
      byNumber: new Map([[2, { angle: 45, turn: "down" }]]),
    });
    expect(angleList("1: 90 up, square")).toEqual({ wrong: "square" });
  });
});
