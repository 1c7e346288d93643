/**
 * The shop sheet of every example, read back from its PDF file by pdfjs-dist: nothing cut off, nothing on top of
 * something else, every figure of the answer on it. Outside lengths to measure are the job file's own.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { layOut } from "../../src/blank/blank.ts";
import { paperFor } from "../../src/drawing/pageSize.ts";
import { writePdf } from "../../src/drawing/pdfPen.ts";
import { printable } from "../../src/drawing/printWords.ts";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { type JobRead, readJob } from "../../src/jobFile/readJob.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import { shopSheet } from "../../src/pictures/shopSheet.ts";
import { waysOut } from "../../src/ways/waysOut.ts";
import { type ReadPage, type ReadWords, readPdf } from "./readPdf.ts";

const MARGIN_MM = 10;
const folder = new URL("../../examples/", import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith(".json"));

function readOf(text: string): Extract<JobRead, { ok: true }> {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading;
}

async function printed({
  job,
  file,
}: {
  job: Job;
  file: JobFile;
}): Promise<{ answer: Answer; pages: readonly ReadPage[]; words: string }> {
  const bare = check(job);
  const answer = { ...bare, remedies: waysOut(file, job, bare) };
  const pages = await readPdf(await writePdf(shopSheet(job, answer, paperFor(job.units)), job.part.name));
  const words = pages.map((page) => page.words.map((one) => one.words).join(" ")).join(" ");
  return { answer, pages, words };
}

/** Letters' box: capitals stand 0.72 of the type size over the line. */
function overlap(a: ReadWords, b: ReadWords): boolean {
  const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const tall =
    Math.min(a.bottom + 0.72 * a.height, b.bottom + 0.72 * b.height) - Math.max(a.bottom, b.bottom);
  return wide > 0.05 && tall > 0.05;
}

describe.each(names)("shopSheet of %s", (name) => {
  const read = readOf(readFileSync(new URL(name, folder), "utf8"));
  const { job } = read;
  const sheet = printed(read);

  test("keeps to the margins, and no words lie on words or on a picture", async () => {
    const { pages } = await sheet;
    expect(pages.length).toBeLessThanOrEqual(2);
    for (const page of pages) {
      const pictures = page.runs
        .map((run) => run.clip)
        .filter((clip) => clip.right - clip.left < page.widthMm - 1);
      for (const one of page.words) {
        expect(one.left).toBeGreaterThan(MARGIN_MM - 0.01);
        expect(one.right).toBeLessThan(page.widthMm - MARGIN_MM + 0.01);
        expect(one.bottom).toBeGreaterThan(MARGIN_MM - 0.01);
        expect(one.bottom + one.height).toBeLessThan(page.heightMm - MARGIN_MM + 1);
        const covered = pictures.some(
          (clip) =>
            one.left < clip.right &&
            one.right > clip.left &&
            one.bottom < clip.top &&
            one.bottom + 2 > clip.bottom,
        );
        expect([one.words, covered]).toEqual([one.words, false]);
      }
      const clashes = page.words.flatMap((a, i) =>
        page.words.slice(i + 1).flatMap((b) => (overlap(a, b) ? [`${a.words} | ${b.words}`] : [])),
      );
      expect(clashes).toEqual([]);
    }
  });

  test("says the figures of the answer: each bend's lines, leaf angle, and cautions on each page", async () => {
    const { answer, pages, words } = await sheet;
    const unit = job.units === "in" ? 25.4 : 1;
    const figure = (lengthMm: number) => (lengthMm / unit).toFixed(job.units === "in" ? 3 : 2);
    for (const bend of answer.blank.bends) {
      const step = answer.order.find((one) => one.bend === bend.bend);
      const sight = step?.sightLine ?? bend.sightLine;
      for (const line of [...bend.tangents, sight]) expect(words).toContain(figure(line));
      const side = step?.markedFaceUp === false ? ", drawn on the back" : "";
      if (step !== undefined) expect(words).toContain(`Sight line under the nose${side}: ${figure(sight)}`);
    }
    expect(words).toContain(figure(answer.blank.developedWidth));
    answer.order.forEach((step, i) => {
      expect(words).toContain(`${i + 1}. Bend ${step.bend},`);
      expect(words).toContain(`leaf at ${Number(step.reached.toFixed(1))}°`);
      expect(words).toContain(`bend ${step.bend} done`);
    });
    for (const page of pages) {
      const said = page.words.map((one) => one.words).join(" ");
      expect(said).toContain("sheet edges cut");
      expect(said).toContain("crushes");
    }
  });

  test("says the cheapest way out where there is one", async () => {
    const { answer, words } = await sheet;
    const [first] = answer.remedies as readonly { sentence: string }[];
    expect(words.includes("Ways out")).toBe(first !== undefined);
    expect(answer.verdict === "hits").toBe(words.includes("oes not fold"));
    const plain = (text: string) => printable(text).replace(/\s+/gu, "");
    if (first !== undefined) expect(plain(words)).toContain(plain(first.sentence));
  });

  test("two pictures a bend", async () => {
    const { answer, pages } = await sheet;
    const boxes = pages.map(
      (page) =>
        new Set(
          page.runs
            // Fills only: hatches are cut off at their bodies, and so say nothing of the picture's frame.
            .filter((run) => run.painted === "fill" && run.clip.right - run.clip.left < page.widthMm - 1)
            .map(({ clip }) => `${clip.left.toFixed(1)} ${clip.bottom.toFixed(1)}`),
        ).size,
    );
    expect(boxes.reduce((sum, count) => sum + count, 0)).toBe(2 * answer.order.length);
    const captions = pages.flatMap((page) => page.words.filter((one) => one.words === "before"));
    expect(captions.length).toBe(answer.order.length);
  });
});

test("many bends and a long name keep to the margins too", async () => {
  const text = readFileSync(new URL("eight-bends.json", folder), "utf8");
  const file = JSON.parse(text);
  file.part.name = `${"twin-rib-panel-".repeat(10)} 漢字 <b>`;
  file.part.flats = Array(16).fill(12);
  file.part.bends = Array.from({ length: 15 }, (_, i) => ({ angle: 20, turn: i % 2 ? "up" : "down" }));
  file.order = file.part.bends.map((_: unknown, i: number) => ({ bend: 15 - i, clamped: "start" }));
  const { job } = readOf(JSON.stringify(file));
  // What the sheet shows of an answer, without the search for the best of all orders.
  const bends = layOut(job.part).bends.map((bend, i) => {
    const { tangentsMm: tangents, allowanceMm: allowance, deductionMm: deduction } = bend;
    return { bend: i + 1, tangents, sightLine: tangents[0] + 1, allowance, deduction };
  });
  const blank = { developedWidth: layOut(job.part).developedWidthMm, bends };
  const answer: Answer = {
    verdict: "clear",
    order: [],
    viableOrders: 1,
    statesChecked: 1,
    blank,
    remedies: [],
    warnings: ["mind ".repeat(200)],
  };
  for (const page of await readPdf(await writePdf(shopSheet(job, answer, paperFor("mm")), "x"))) {
    for (const one of page.words) {
      expect(one.left).toBeGreaterThan(MARGIN_MM - 0.01);
      expect(one.right).toBeLessThan(page.widthMm - MARGIN_MM + 0.01);
    }
    expect(page.words.flatMap((a, i) => page.words.slice(i + 1).filter((b) => overlap(a, b)))).toEqual([]);
  }
});

test("each bend's length to measure is the job's own outside length of that flat", async () => {
  const text = readFileSync(new URL("lens-box-tray.json", folder), "utf8");
  const file = JSON.parse(text) as { part: { flats: number[]; dimensions: string } };
  expect(file.part.dimensions).toBe("outside");
  const { answer, words } = await printed(readOf(text));
  const done: number[] = [];
  for (const step of answer.order.filter((one) => one.verdict !== "hits")) {
    // The flat on the leaf; its far end must be free or bent already, else more than the flat hangs there.
    const flat = step.clamped === "start" ? step.bend : step.bend - 1;
    const far = step.clamped === "start" ? step.bend + 1 : step.bend - 1;
    const free = flat === 0 || flat === file.part.flats.length - 1;
    if (free || done.includes(far)) {
      const to = free ? "to the free end" : `to bend ${far}`;
      const sentence = `${file.part.flats[flat]!.toFixed(2)} mm outside, bend ${step.bend} ${to}`;
      expect(words.replace(/\s+/gu, " ")).toContain(sentence);
    }
    done.push(step.bend);
  }
  expect(done.length).toBeGreaterThan(1);
});
