/**
 * The printed plans read back: every piece, bolt, check and caution on paper (pdfjs-dist), the drawing as DXF (dxf),
 * a tube's outline against the section's own area.
 */
import { describe, expect, test } from "vitest";
import { toDxf } from "../../src/drawing/dxfPen.ts";
import { A4, LETTER } from "../../src/drawing/pageSize.ts";
import { writePdf } from "../../src/drawing/pdfPen.ts";
import { designNarrowBrake } from "../../src/narrowBrake/designNarrowBrake.ts";
import { drawNarrowBrake } from "../../src/narrowBrake/plans/narrowBrakeDrawing.ts";
import { narrowBrakePlans } from "../../src/narrowBrake/plans/narrowBrakePlans.ts";
import { tubeOutline } from "../../src/narrowBrake/plans/stockView.ts";
import { sectionOf } from "../../src/narrowBrake/strength/section.ts";
import { readDxf } from "../pictures/readDxf.ts";
import { readPdf } from "../pictures/readPdf.ts";
import { TROUGH_BRAKE } from "./trough.ts";

describe.each([
  ["inches on Letter", "in", LETTER],
  ["mm on A4", "mm", A4],
] as const)("narrowBrakePlans: %s", (_, units, size) => {
  const brake = designNarrowBrake({ ...TROUGH_BRAKE, units });

  test("all lists and checks are on paper, nothing runs off it, no letter is missing", async () => {
    const pages = await readPdf(await writePdf(narrowBrakePlans(brake, size), "plans"));
    expect(pages[0]!.widthMm).toBeGreaterThan(pages[0]!.heightMm);
    const text = pages.map((page) => page.words.map(({ words }) => words).join(" ")).join(" ");
    const squeezed = (words: string) => words.replace(/\s+/gu, "");
    const paper = squeezed(text);
    for (const { piece } of brake.cutList) expect(paper).toContain(squeezed(piece));
    for (const { size: hardware } of brake.hardware) expect(paper).toContain(squeezed(hardware));
    for (const sentence of [...brake.makingOrder, ...brake.proving, ...brake.limits, ...brake.cautions]) {
      expect(paper).toContain(squeezed(sentence.replaceAll("−", "-")));
    }
    expect(paper).toContain(squeezed(brake.windowSentence));
    // Packing: holder and bed added up, in the middle of nine stations.
    const [holder, bed, leaf] = brake.bows.map(({ crown }) => crown[4]!.packingMm);
    expect(paper).toContain(`${(holder! + bed!).toFixed(2)}`);
    expect(paper).toMatch(new RegExp(`leafandfacestrip0\\.00.*${leaf!.toFixed(2)}`, "u"));
    expect(paper).toContain(squeezed("stress = 6·q·c/t²"));
    expect(text).not.toContain("?");
    for (const page of pages) {
      for (const { left, right, bottom } of page.words) {
        expect(left >= 0 && right <= page.widthMm && bottom >= 0).toBe(true);
      }
    }
  });

  test("the drawing as DXF has the bar's bend-wise length in it", () => {
    const { entities } = readDxf(toDxf(drawNarrowBrake(brake)));
    expect(entities.length).toBeGreaterThan(80);
    const { lengthMm } = brake.plan!.bar;
    const level = entities.some(({ start, end }) => {
      if (!start || !end || start.y !== end.y) return false;
      return Math.abs(Math.abs(start.x - end.x) - lengthMm) < 1e-3;
    });
    expect(level).toBe(true);
  });
});

test("tubeOutline encloses the tube's area and no more", () => {
  const corners = tubeOutline(-10, -5, 30, 25, 3).edges.map(({ from }) => from);
  const area = corners.reduce((sum, { x, y }, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);
  const tube = sectionOf({ kind: "tube", widthMm: 40, heightMm: 30, wallMm: 3 });
  expect(area).toBeCloseTo(tube.areaMm2, 9);
});

test("narrowBrakePlans: no plan, no paper", () => {
  const none = designNarrowBrake({ ...TROUGH_BRAKE, thickestByClearanceMm: 1 });
  expect(() => narrowBrakePlans(none, A4)).toThrow(RangeError);
});
