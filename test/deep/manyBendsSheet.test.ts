/**
 * The shop sheet of parts with 9 to 20 bends: two pages of A4 and of Letter at most (three where 20 steps come with the
 * longest remarks), nothing cut off or overlapping, no
 * type under 7.5 points (common practice, no source), and each step whole. Read back from the PDF by pdfjs-dist.
 */
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { A4, LETTER } from "../../src/drawing/pageSize.ts";
import { writePdf } from "../../src/drawing/pdfPen.ts";
import type { Answer } from "../../src/jobFile/answer.ts";
import { type JobRead, readJob } from "../../src/jobFile/readJob.ts";
import { shopSheet } from "../../src/pictures/shopSheet.ts";
import { LONGEST_WAYS, manyBends, SHAPES, type Units } from "../pictures/manyBends.ts";
import { type ReadPage, type ReadWords, readPdf } from "../pictures/readPdf.ts";

const MARGIN_MM = 10;
const LEAST_TYPE_MM = (7.5 * 25.4) / 72;

function readOf(text: string): Extract<JobRead, { ok: true }> {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading;
}

/** Letters' box: capitals stand 0.72 of the type size over the line. */
function overlap(a: ReadWords, b: ReadWords): boolean {
  const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const tall =
    Math.min(a.bottom + 0.72 * a.height, b.bottom + 0.72 * b.height) - Math.max(a.bottom, b.bottom);
  return wide > 0.05 && tall > 0.05;
}

/** Frames of the pictures on a page: what fills are cut off at. */
function pictures(page: ReadPage): { left: number; right: number; bottom: number; top: number }[] {
  const clips = page.runs
    .filter((run) => run.painted === "fill" && run.clip.right - run.clip.left < page.widthMm - 1)
    .map(({ clip }) => clip);
  return [
    ...new Map(clips.map((clip) => [`${clip.left.toFixed(1)} ${clip.bottom.toFixed(1)}`, clip])).values(),
  ];
}

/** What is wrong with how a page is set: type too small, words over the margins, on words or on a picture. */
function slips(page: ReadPage): readonly string[] {
  const boxes = pictures(page);
  const right = page.widthMm - MARGIN_MM + 0.01;
  const top = page.heightMm - MARGIN_MM + 1;
  const words = page.words.flatMap((one, i) => {
    const { left, bottom, height } = one;
    const covered = boxes.some(
      (box) =>
        left < box.right && one.right > box.left && bottom < box.top && bottom + 0.72 * height > box.bottom,
    );
    const clash = page.words.slice(i + 1).find((other) => overlap(one, other));
    return [
      ...(height < LEAST_TYPE_MM ? [`${one.words}: small`] : []),
      ...(Math.min(left, bottom) < MARGIN_MM - 0.01 ? [`${one.words}: over the margin`] : []),
      ...(one.right > right || bottom + height > top ? [`${one.words}: over the margin`] : []),
      ...(covered ? [`${one.words}: on a picture`] : []),
      ...(clash ? [`${one.words}: on ${clash.words}`] : []),
    ];
  });
  const touching = boxes.filter((a, i) =>
    boxes.slice(i + 1).some((b) => {
      const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      return wide > 0.05 && Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom) > 0.05;
    }),
  );
  return [...words, ...touching.map(() => "a picture on a picture")];
}

const cases = Object.keys(SHAPES).flatMap((shape) =>
  // Each number of bends in each unit for one shape, the most bends for all: time is short.
  [9, 12, 16, 20].flatMap((bends) =>
    (["mm", "in"] as Units[])
      .filter((units) => bends === 20 || shape === (units === "mm" ? "hats" : "corrugated"))
      .map((units) => ({ shape, bends, units })),
  ),
);

describe.each(cases)("the sheet of $shape with $bends bends in $units", ({ shape, bends, units }) => {
  const { job } = readOf(manyBends(SHAPES[shape]!, bends, units));
  const bare = check(job);
  const answer = { ...bare, remedies: shape === "hats" ? LONGEST_WAYS : [] } as unknown as Answer;

  test.each([A4, LETTER])("is whole on few pages of $name", async (size) => {
    const pages = await readPdf(await writePdf(shopSheet(job, answer, size), job.part.name));
    expect(pages.length).toBeLessThanOrEqual(shape === "hats" && bends === 20 ? 3 : 2);
    expect(pages.flatMap(slips)).toEqual([]);
    const words = pages.flatMap((page) => page.words.map((one) => one.words)).join(" ");
    const said = words.replace(/\s+/gu, " ");
    const unit = units === "in" ? 25.4 : 1;
    answer.order.forEach((step, i) => {
      expect(said).toContain(`${i + 1}.`);
      expect(said).toContain(`Bend ${step.bend}`);
      expect(said).toContain(`${Number(step.overbend.toFixed(1))}°`);
      // The sight line lies one nose radius into the bend from the tangent line of the clamped side.
      const blank = answer.blank.bends[step.bend - 1]!;
      const radius = job.brake.clamp.noseRadiusMm;
      const sight = step.clamped === "end" ? blank.tangents[1] - radius : blank.tangents[0] + radius;
      // Once in the blank's table, once more in the step.
      const figure = (sight / unit).toFixed(units === "in" ? 3 : 2);
      expect(said.split(figure).length - 1, figure).toBeGreaterThanOrEqual(2);
    });
    const springs = answer.order.filter((step) => step.reached > 0.1 && step.relaxesTo < step.reached - 0.06);
    expect(said.split(/relaxes to/u).length - 1).toBe(springs.length);
    expect(pages.reduce((sum, page) => sum + pictures(page).length, 0)).toBe(2 * answer.order.length);
    const stops = answer.order.filter((step) => step.verdict === "hits").length;
    expect(said.split("Stops:").length - 1).toBe(stops);
    for (const warning of answer.warnings) {
      expect(said.replace(/\s/gu, "")).toContain(warning.slice(0, 60).replace(/\s/gu, ""));
    }
  });
});

test("these parts try what they should: some steps fold and some stop, remarks are long", () => {
  const answers = cases
    .filter(({ bends }) => bends === 20)
    .map(({ shape, bends, units }) => check(readOf(manyBends(SHAPES[shape]!, bends, units)).job));
  const steps = answers.flatMap((answer) => answer.order);
  expect(steps.filter((step) => step.verdict === "hits").length).toBeGreaterThan(20);
  expect(steps.filter((step) => step.verdict !== "hits").length).toBeGreaterThan(20);
  expect(Math.max(...answers.map((answer) => answer.warnings.join(" ").length))).toBeGreaterThan(500);
});
