/**
 * Pictures of whole parts: what is hidden of a cube, the flat pattern as DXF read back by another library, a row a stroke.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import dxf from "dxf";
import { describe, expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { toDxf } from "../../src/drawing/dxfPen.ts";
import { A4 } from "../../src/drawing/pageSize.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { convexOf, cutAt } from "../../src/pattern/convex.ts";
import type { Segment } from "../../src/pattern/inBrake.ts";
import type { Spot } from "../../src/pattern/space.ts";
import { fromFrontLeft, seenLines } from "../../src/pictures/seenFrom.ts";
import { drawWholeBlank } from "../../src/pictures/wholeBlankDrawing.ts";
import { wholeSheet } from "../../src/pictures/wholeSheet.ts";

function answered(name: string) {
  const text = readFileSync(fileURLToPath(new URL(`../wholeCases/${name}.json`, import.meta.url)), "utf8");
  const read = readAnyJob(text);
  if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
  return { job: read.job, answer: checkWhole(read.job) };
}

function cube(size: number, at: Spot) {
  const [x, y, w] = at;
  const ring = (level: number): Spot[] => [
    [x, level, w],
    [x + size, level, w],
    [x + size, level, w + size],
    [x, level, w + size],
  ];
  const [low, high] = [ring(y), ring(y + size)];
  const round = (spots: Spot[]) => spots.map((spot, i): Segment => [spot, spots[(i + 1) % 4]!]);
  const edges = [...round(low), ...round(high), ...low.map((spot, i): Segment => [spot, high[i]!])];
  return { member: "part" as const, solids: [convexOf(low, high)], edges };
}

describe("seenLines", () => {
  const view = fromFrontLeft(30, 30);

  it("shows nine of a cube's twelve edges, the three that meet in its far corner left out", () => {
    expect(seenLines([cube(10, [0, 0, 0])], view, 1).length).toBe(9);
  });

  it("shows nothing of a cube right behind a larger one", () => {
    const behind = seenLines([cube(10, [0, 0, 0]), cube(60, [30, -6, -56])], view, 1);
    expect(behind.filter(({ body }) => body.solids[0]!.corners.some(([x]) => x === 0)).length).toBe(0);
  });

  it("cuts a cube in a square", () => {
    const xs = cutAt(cube(10, [0, 0, 0]).solids[0]!, 5).map(({ x }) => Math.round(x * 1e6) / 1e6);
    expect(xs.toSorted((a, b) => a - b)).toEqual([0, 0, 10, 10]);
  });
});

describe("drawWholeBlank", () => {
  const { job, answer } = answered("tray-last-wall-fits");
  const read = dxf.parseString(toDxf(drawWholeBlank(job, answer)));
  const entities = read.entities as {
    type: string;
    layer: string;
    start?: Spotted;
    end?: Spotted;
    r?: number;
  }[];

  it("puts a closed outline and the relief holes as circles on the layer to cut", () => {
    const cut = entities.filter(({ layer, type }) => layer === "CUT" && type === "LINE");
    const ends = new Map<string, number>();
    for (const { start, end } of cut)
      for (const at of [start!, end!]) {
        const key = `${at.x.toFixed(3)},${at.y.toFixed(3)}`;
        ends.set(key, (ends.get(key) ?? 0) + 1);
      }
    expect(cut.length).toBe(answer.blank.outline.length);
    expect([...ends.values()].every((count) => count === 2)).toBe(true);
    const circles = entities.filter(({ layer, type }) => layer === "CUT" && type === "CIRCLE");
    expect(circles.map(({ r }) => r)).toEqual(answer.blank.reliefHoles.map(({ diameter }) => diameter / 2));
  });

  it("puts every bend line on a layer of its own, by its turn", () => {
    expect(entities.filter(({ layer }) => layer === "BEND_UP").length).toBeGreaterThanOrEqual(4);
    expect(entities.filter(({ layer }) => layer === "BEND_DOWN").length).toBe(0);
  });
});

interface Spotted {
  readonly x: number;
  readonly y: number;
}

describe("wholeSheet", () => {
  it("tells every stroke in a row with three pictures", () => {
    const { job, answer } = answered("cover-outward-lips");
    const pages = wholeSheet(job, answer, A4);
    const placed = pages.flatMap((page) => page.placed);
    const words = placed.flatMap(({ drawing }) =>
      drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.words] : [])),
    );
    for (const [i, { bends }] of answer.order.entries())
      expect(words.some((line) => line.startsWith(`${i + 1}. Bend`) && line.includes(String(bends[0])))).toBe(
        true,
      );
    const pictures = placed.filter(({ drawing }) =>
      /front left|worst station|row of fingers/u.test(drawing.sentence),
    );
    expect(pictures.length).toBe(3 * answer.order.length);
    // No picture is empty.
    expect(pictures.every(({ drawing }) => drawing.marks.length > 3)).toBe(true);
  });
});
