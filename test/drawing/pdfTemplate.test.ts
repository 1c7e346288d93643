/**
 * The printed template, measured as a person would: check square with a rule, pages joined by their crosses, blank
 * measured across the joined pages. Read back by pdfjs-dist, which knows nothing of the pen. Paper sizes: ISO 216 and
 * ANSI/ASME Y14.1.
 */
import { describe, expect, test } from "vitest";
import type { Drawing, Mark } from "../../src/drawing/model.ts";
import { A4, LETTER, type PageSize } from "../../src/drawing/pageSize.ts";
import { writePdf } from "../../src/drawing/pdfPen.ts";
import { templatePages } from "../../src/drawing/template.ts";
import { bounds, type InkRun, type ReadPage, readPdf } from "../pictures/readPdf.ts";

type Xy = readonly [number, number];

const RULE_MM = 0.1;

function rectangle(width: number, height: number): Mark {
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  const edges = corners.map((from, i) => ({ kind: "line" as const, from, to: corners[(i + 1) % 4] ?? from }));
  return { kind: "outline", layer: "cut", outline: { edges } };
}

function blank(width: number, height: number): Drawing {
  const window = { min: { x: -12, y: -9 }, max: { x: width + 7, y: height + 11 } };
  const center = { x: width / 2, y: height / 2 };
  const hole: Mark = { kind: "arc", layer: "cut", center, radius: 20, startRad: 0, sweepRad: 2 * Math.PI };
  return { sentence: "A blank with a hole.", window, marks: [rectangle(width, height), hole] };
}

const straight = (run: InkRun) => run.points.length === 2;
const ends = (run: InkRun) => [run.points[0] as Xy, run.points.at(-1) as Xy] as const;

/** Middles of the small diagonal crosses. */
function crosses(page: ReadPage): readonly Xy[] {
  const middles = page.runs.filter(straight).flatMap((run) => {
    const [a, b] = ends(run);
    const [w, h] = [b[0] - a[0], b[1] - a[1]];
    const rising = w > 0 && Math.abs(w - h) < 1e-3 && w < 8;
    return rising && run.clip.right - run.clip.left < page.widthMm - 1
      ? [[(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] as const]
      : [];
  });
  return middles;
}

/** How far the second page must be moved to lie on the first, from the crosses that both have at their common seam. */
function join(first: ReadPage, second: ReadPage, axis: 0 | 1, sign: 1 | -1): Xy {
  const outermost = (page: ReadPage, way: number) => {
    const all = crosses(page);
    const far = Math.max(...all.map((cross) => cross[axis] * way));
    return all
      .filter((cross) => Math.abs(cross[axis] * way - far) < 0.01)
      .sort((p, q) => p[1 - axis]! - q[1 - axis]!);
  };
  const [a, b] = [outermost(first, sign), outermost(second, -sign)];
  expect(a.length).toBe(2);
  expect(b.length).toBe(2);
  const moves = a.map((cross, i) => [cross[0] - b[i]![0], cross[1] - b[i]![1]] as const);
  // Both pairs of crosses ask for the same move, or the pages don't join.
  expect(Math.hypot(moves[0]![0] - moves[1]![0], moves[0]![1] - moves[1]![1])).toBeLessThan(RULE_MM / 10);
  return moves[0]!;
}

/** Ink of the blank on a page: full lines of the template's own window, cut off at it. */
function blankInk(page: ReadPage): readonly (readonly Xy[])[] {
  return page.runs
    .filter(
      (run) => run.painted === "stroke" && !run.dashed && run.clip.right - run.clip.left < page.widthMm - 1,
    )
    .filter(
      (run) =>
        run.curved ||
        Math.abs(ends(run)[0][0] - ends(run)[1][0]) < 1e-3 ||
        Math.abs(ends(run)[0][1] - ends(run)[1][1]) < 1e-3,
    )
    .flatMap((run) => {
      const { left, right, bottom, top } = run.clip;
      if (run.curved) {
        const seen = run.points.filter(([x, y]) => x >= left && x <= right && y >= bottom && y <= top);
        return seen.length > 0 ? [seen] : [];
      }
      const [a, b] = ends(run);
      const box = bounds(run.points);
      if (box.right < left || box.left > right || box.top < bottom || box.bottom > top) return [];
      const inside = ([x, y]: Xy): Xy => [
        Math.min(Math.max(x, left), right),
        Math.min(Math.max(y, bottom), top),
      ];
      return [[inside(a), inside(b)]];
    });
}

async function printed(drawing: Drawing, size: PageSize, units: "mm" | "in") {
  const pages = templatePages(drawing, size, "Drip edge", units);
  return readPdf(await writePdf(pages, "Drip edge"));
}

function placeOf(page: ReadPage): readonly [row: number, column: number] {
  const said = page.words.map((one) => one.words).join(" ");
  const found = /Row (\d+) of \d+, column (\d+) of \d+/u.exec(said);
  return found ? [Number(found[1]) - 1, Number(found[2]) - 1] : [0, 0];
}

/** All ink of the blank in the frame of the first page, the pages joined along the first column and then each row. */
function assembled(pages: readonly ReadPage[]): readonly (readonly Xy[])[] {
  const at = new Map(pages.map((page) => [placeOf(page).join(), page]));
  const moved = new Map<string, Xy>([["0,0", [0, 0]]]);
  const ink: (readonly Xy[])[] = [];
  for (const page of pages) {
    const [row, column] = placeOf(page);
    const here = `${row},${column}`;
    if (here !== "0,0") {
      const beside = column > 0 ? `${row},${column - 1}` : `${row - 1},0`;
      const step = column > 0 ? join(at.get(beside)!, page, 0, 1) : join(at.get(beside)!, page, 1, -1);
      const base = moved.get(beside)!;
      moved.set(here, [base[0] + step[0], base[1] + step[1]]);
    }
    const [dx, dy] = moved.get(here)!;
    ink.push(...blankInk(page).map((run) => run.map(([x, y]) => [x + dx, y + dy] as const)));
  }
  return ink;
}

describe("templatePages", () => {
  test.each([
    ["A4", A4, "mm", 210, 297, 50],
    ["Letter", LETTER, "in", 215.9, 279.4, 50.8],
    ["A4 in a shop that works in inches", A4, "in", 210, 297, 50.8],
  ] as const)(
    "%s: every page has its true size and a true check square",
    async (_, size, units, width, height, side) => {
      const pages = await printed(blank(300, 380), size, units);
      expect(pages.length).toBeGreaterThan(1);
      for (const page of pages) {
        const sizes = [page.widthMm, page.heightMm].sort((a, b) => a - b);
        expect(Math.abs(sizes[0]! - width)).toBeLessThan(RULE_MM);
        expect(Math.abs(sizes[1]! - height)).toBeLessThan(RULE_MM);
        const label = page.words.find((one) => one.words === "check square")!;
        const onPage = page.runs.filter((run) => run.clip.right - run.clip.left > page.widthMm - 1);
        const sides = onPage.filter((run) => {
          const box = bounds(run.points);
          return box.left < label.left && box.right < label.right + side && box.top < label.bottom + side;
        });
        const square = bounds(
          sides.filter((run) => bounds(run.points).left < label.left).flatMap((run) => run.points),
        );
        expect(Math.abs(square.right - square.left - side)).toBeLessThan(RULE_MM);
        expect(Math.abs(square.top - square.bottom - side)).toBeLessThan(RULE_MM);
        expect(page.words.map((one) => one.words).join(" ")).toContain("Print at 100 %");
      }
    },
  );

  test.each([
    ["one page", 120, 90, A4, 1],
    ["two columns", 300, 120, A4, 2],
    ["rows and columns on A4", 420, 610, A4, 9],
    ["rows and columns on Letter", 420, 610, LETTER, 10],
  ] as const)("%s: joined by the crosses the blank measures right", async (_, width, height, size, most) => {
    const pages = await printed(blank(width, height), size, "mm");
    // Counted by hand: paper less margins and foot, less the overlap, into the window; upright or on its side.
    expect(pages.length).toBeLessThanOrEqual(most);
    const ink = assembled(pages);
    const box = bounds(ink.flat());
    expect(Math.abs(box.right - box.left - width)).toBeLessThan(RULE_MM);
    expect(Math.abs(box.top - box.bottom - height)).toBeLessThan(RULE_MM);
    for (const edge of ["left", "right", "bottom", "top"] as const) {
      const axis = edge === "left" || edge === "right" ? 0 : 1;
      const pieces = ink
        .filter(
          (run) => run.length === 2 && run.every((point) => Math.abs(point[axis] - box[edge]) < RULE_MM),
        )
        .map((run) => run.map((point) => point[1 - axis]!).sort((a, b) => a - b))
        .sort((a, b) => a[0]! - b[0]!);
      let reached = axis === 0 ? box.bottom : box.left;
      for (const [start, end] of pieces) {
        expect(start).toBeLessThan(reached + RULE_MM);
        reached = Math.max(reached, end!);
      }
      expect(Math.abs(reached - (axis === 0 ? box.top : box.right))).toBeLessThan(RULE_MM);
    }
    const center = [(box.left + box.right) / 2, (box.bottom + box.top) / 2] as const;
    const hole = ink.filter((run) => run.length > 2).flat();
    expect(hole.length).toBeGreaterThan(40);
    for (const [x, y] of hole)
      expect(Math.abs(Math.hypot(x - center[0], y - center[1]) - 20)).toBeLessThan(RULE_MM / 10);
  });

  test("no ink comes nearer to the edge of the paper than 10 mm", async () => {
    for (const page of await printed(blank(420, 610), A4, "mm")) {
      for (const run of page.runs) {
        const box = bounds(run.points);
        expect(Math.max(box.left, run.clip.left)).toBeGreaterThan(9.99);
        expect(Math.min(box.right, run.clip.right)).toBeLessThan(page.widthMm - 9.99);
        expect(Math.max(box.bottom, run.clip.bottom)).toBeGreaterThan(9.99);
        expect(Math.min(box.top, run.clip.top)).toBeLessThan(page.heightMm - 9.99);
      }
      for (const one of page.words) expect(one.right).toBeLessThan(page.widthMm - 9.9);
    }
  });

  test("the same drawing gives the same bytes", async () => {
    const once = await writePdf(templatePages(blank(90, 60), A4, "Tray", "mm"), "Tray");
    const again = await writePdf(templatePages(blank(90, 60), A4, "Tray", "mm"), "Tray");
    expect(Buffer.from(once).equals(Buffer.from(again))).toBe(true);
  });
});
