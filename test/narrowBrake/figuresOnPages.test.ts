/**
 * What a saw, a drill and a welder need stands on the drawing of its piece, drawn as long as it is told; and no figure of the pages is made
 * up there: each is found again in the JSON, or measured on the assembly that the JSON holds. Designs in inches and in millimetres, in a
 * vise and on feet. Sizes are read off the plain data here, not with the drawings' own means.
 */
import { describe, expect, test } from "vitest";
import type { Mark } from "../../src/drawing/model.ts";
import { A4, LETTER } from "../../src/drawing/pageSize.ts";
import { narrowBrakePlans, pieceDrawings } from "../../src/narrowBrake/plans/narrowBrakePlans.ts";
import { fewDesigns } from "./designs.ts";
import { boxOfPiece, one, type Piece, piecesOf, planOf } from "./pieceBox.ts";

const IN = 25.4;
const FIGURE = /\d+(?:\.\d+)?(?:[ -]\d+\/\d+|\/\d+)?/gu;

/** 1 23/32, 1-23/32, 3/8, 0.504. */
function readFigure(figure: string): number {
  const parts = figure.split(/[ -]/u).map((part) => {
    const [over, under = "1"] = part.split("/");
    return Number(over) / Number(under);
  });
  return parts.reduce((sum, part) => sum + part, 0);
}

/** Half of the last place that a figure is told to. */
function doubtOf(figure: string): number {
  if (figure.includes("/")) return 1 / 128;
  const decimals = figure.split(".")[1]?.length ?? 0;
  // Forces are told to three figures.
  if (decimals === 0 && figure.length > 3) return 0.501 * 10 ** (figure.length - 3);
  return 0.5 * 10 ** -decimals * 1.001;
}

const words = (marks: readonly Mark[]) =>
  marks.flatMap((mark) => (mark.kind === "text" || mark.kind === "dimension" ? [mark.words] : []));

/** Places of a piece along x, y and w that can be measured from: its ends, and what is drilled into it. */
function lengthsOf(piece: Piece): number[] {
  const { x0, x1, y0, y1, w0, w1 } = boxOfPiece(piece);
  const edges = [
    [x0, x1],
    [y0, y1],
    [w0, w1],
  ] as const;
  return edges.flatMap(([low, high], axis) => {
    const drilled = piece.holes.flatMap(({ from, to }) => [from[axis]!, to[axis]!]);
    const places = [...new Set([low, high, ...drilled])];
    return places.flatMap((a) => places.map((b) => Math.abs(a - b)));
  });
}

describe.each(fewDesigns())("$name", (of) => {
  const { design } = of;
  const plan = planOf(of);
  const pieces = piecesOf(of);
  const { units } = design.requirements;
  const unitMm = units === "in" ? IN : 1;
  const drawings = pieceDrawings(design, 190);
  const drawingOf = (item: number) => drawings.find(({ name }) => name.startsWith(`${item} `))!.drawing;
  const textOf = (item: number) => words(drawingOf(item).marks).join(" ; ");
  const tells = (text: string, mm: number) =>
    [...text.matchAll(FIGURE)].some(
      ([figure]) => Math.abs(readFigure(figure) - mm / unitMm) <= doubtOf(figure) + 1e-6,
    );
  const sawn = plan.cutList.filter(({ bought }) => !bought);

  test.each(sawn.map((cut) => ({ cut, piece: pieces.find(({ item }) => item === cut.item)! })))(
    "$cut.piece: its three sizes, every hole with its place, and where it is welded, on its own drawing",
    ({ cut, piece }) => {
      const text = textOf(cut.item);
      const box = boxOfPiece(piece);
      const sizes = [box.x1 - box.x0, box.y1 - box.y0, box.w1 - box.w0];
      for (const size of sizes) expect(tells(text, size), `${size} in: ${text}`).toBe(true);
      for (const { diameter, tapped, from, to } of piece.holes) {
        if (tapped) expect(text).toContain(`tap ${tapped}, drill`);
        else expect(tells(text, diameter), `hole of ${diameter}`).toBe(true);
        const drilled = [0, 1, 2].find((axis) => Math.abs(from[axis]! - to[axis]!) > 1e-9)!;
        const deep = Math.abs(from[drilled]! - to[drilled]!);
        if (deep < sizes[drilled]! - 1e-6 && !text.includes("countersink"))
          expect(tells(text, deep), `deep ${deep}`).toBe(true);
        for (const axis of [0, 1, 2].filter((other) => other !== drilled)) {
          const [low, high] = [
            [box.x0, box.x1],
            [box.y0, box.y1],
            [box.w0, box.w1],
          ][axis] as [number, number];
          const either = tells(text, from[axis]! - low) || tells(text, high - from[axis]!);
          expect(either, `hole at ${from[axis]} of ${low} to ${high}`).toBe(true);
        }
      }
      const mates = piece.weldedTo.map((id) => pieces.find((other) => other.id === id)!.item);
      if (mates.length > 0)
        expect([cut.item, ...mates].some((item) => /fillet[ ;]+[\d/]/iu.test(textOf(item)))).toBe(true);
    },
  );

  test("what is welded on stands where its drawing says", () => {
    const at = (id: string) => boxOfPiece(one(pieces, id));
    const itemOf = (id: string) => one(pieces, id).item;
    const rail = pieces.find(({ name }) => name === "screw rail")!;
    expect(tells(textOf(itemOf("spine")), -at("spine").x1)).toBe(true);
    expect(tells(textOf(itemOf("spine")), at("spine").w1 - at("cap").w1)).toBe(true);
    expect(tells(textOf(rail.item), -boxOfPiece(rail).x0)).toBe(true);
    expect(tells(textOf(itemOf("heel-strip")), -at("heel-strip").x1)).toBe(true);
    for (const ear of ["bed-ear-right", "leaf-ear-right"])
      expect(textOf(itemOf(ear))).toMatch(/radius of [\d/ .]+/u);
    expect(tells(textOf(itemOf("handle-1")), at("handle-1").x0)).toBe(true);
    if (plan.assembly.vise.held === "bench") {
      const foot = at("foot-2");
      expect(tells(textOf(itemOf("foot-2")), at("spine").w1 - (foot.w0 + foot.w1) / 2)).toBe(true);
      expect(tells(textOf(itemOf("foot-2")), -foot.x1)).toBe(true);
    }
    const nose = textOf(itemOf("bar"));
    expect(tells(nose, design.requirements.noseRadiusMm)).toBe(true);
    expect(nose).toContain(`${design.requirements.frontBevelDeg}°`);
  });

  test("every dimension is drawn as long as it is told, to the scale that stands beside it", () => {
    for (const { item } of sawn) {
      const { marks } = drawingOf(item);
      const ratios = [
        ...words(marks)
          .join(" ")
          .matchAll(/(?:Face|End), 1:(\d+)/gu),
      ].map(([, by]) => 1 / Number(by));
      expect(ratios.length).toBeGreaterThan(0);
      for (const mark of marks) {
        if (mark.kind !== "dimension") continue;
        const drawn = Math.hypot(mark.to.x - mark.from.x, mark.to.y - mark.from.y);
        const told = readFigure(mark.words) * unitMm;
        const off = Math.min(...ratios.map((ratio) => Math.abs(drawn - told * ratio)));
        expect(off, `${item}: ${mark.words}`).toBeLessThanOrEqual(doubtOf(mark.words) * unitMm + 1e-6);
      }
    }
  });

  test.each([A4, LETTER])(
    "$name: every figure of the pages is in the JSON, or measured on its assembly",
    (size) => {
      const json = JSON.parse(JSON.stringify(design)) as unknown;
      const numbers: number[] = [];
      const strings: string[] = [];
      const walk = (value: unknown): void => {
        if (typeof value === "number") numbers.push(value);
        else if (typeof value === "string") strings.push(value);
        else if (value !== null && typeof value === "object") Object.values(value).forEach(walk);
      };
      walk(json);
      const written = new Set(
        strings.flatMap((text) => [...text.matchAll(FIGURE)].map(([figure]) => figure)),
      );
      const places = (axis: "x" | "y" | "w") =>
        pieces.flatMap((piece) => {
          const b = boxOfPiece(piece);
          return axis === "x"
            ? [b.x0, b.x1, 0]
            : axis === "y"
              ? [b.y0, b.y1, 0]
              : [b.w0, b.w1, (b.w0 + b.w1) / 2];
        });
      // Of the whole: from piece to piece along one axis.
      const apart = (["x", "w"] as const).flatMap((axis) => {
        const all = [...new Set(places(axis).map((place) => Math.round(place * 1e4) / 1e4))];
        return all.flatMap((a) => all.map((b) => Math.abs(a - b)));
      });
      const lengths = [...pieces.flatMap(lengthsOf), ...apart, ...numbers].map((mm) => mm / unitMm);
      const factors = units === "in" ? [1, 6.894757, 4.448222, 0.45359237, 1 / 0.737562] : [1];
      const others = factors.flatMap((by) => numbers.map((number) => number / by));
      const near = (pool: readonly number[], figure: string, doubt: number) => {
        const value = readFigure(figure);
        return pool.some((number) => Math.abs(number - value) <= doubt);
      };
      const stray: string[] = [];
      for (const page of narrowBrakePlans(design, size)) {
        for (const mark of page.placed.flatMap(({ drawing }) => drawing.marks)) {
          if (mark.kind === "dimension" && !near(lengths, mark.words, doubtOf(mark.words) + 1e-6))
            stray.push(mark.words);
          if (mark.kind !== "text") continue;
          const text = mark.words.replace(/page \d+ of \d+|\d+:\d+|^\d+\. |Step \d+/gu, "");
          for (const [figure] of text.matchAll(FIGURE)) {
            if (written.has(figure) || near(lengths, figure, doubtOf(figure) + 1e-6)) continue;
            if (!near(others, figure, doubtOf(figure))) stray.push(`${figure} in: ${mark.words}`);
          }
        }
      }
      expect(stray).toEqual([]);
    },
  );
});
