/**
 * The blank's SVG file, written by the command and opened in a real browser: true millimetres on its screen.
 * A CSS inch is 96 px and 25.4 mm (CSS Values and Units Level 3, section 5.2). The figures are those of the answer.
 */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { EXAMPLES, noseroom } from "../cli/noseroom.ts";
import { DESKTOP, launch } from "./browser.ts";

const PX_PER_MM = 96 / 25.4;
const WITHIN_MM = 0.1;

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
});

/** Boxes of what is painted, in screen pixels, strokes left out. */
async function measured(svg: string) {
  const context = await browser.newContext(DESKTOP);
  const page = await context.newPage();
  await page.setContent(`<!doctype html><body style="margin:0">${svg}</body>`);
  const found = await page.evaluate(() => {
    const root = document.querySelector("svg")!;
    const box = (shape: SVGGraphicsElement) => {
      const own = shape.getBBox();
      const onto = shape.getScreenCTM()!;
      return {
        left: own.x * onto.a + onto.e,
        top: own.y * onto.d + onto.f,
        width: own.width * onto.a,
        height: own.height * onto.d,
      };
    };
    const all = (selector: string) => [...root.querySelectorAll<SVGGraphicsElement>(selector)].map(box);
    const { width, height } = root.getBoundingClientRect();
    return {
      page: { width, height },
      asked: [root.getAttribute("width"), root.getAttribute("height")],
      blank: all(".cut path.face"),
      tangents: all(".bendTangent path"),
      sights: all(".sightLine path"),
      bends: all(".bendUp path, .bendDown path"),
      square: [...root.querySelectorAll<SVGGraphicsElement>("path.face")]
        .filter((shape) => shape.querySelector("title")?.textContent === "check square")
        .map(box),
    };
  });
  await context.close();
  return found;
}

describe.each([
  ["lens-box-tray.json", 50],
  ["cable-trough-bar.json", 50.8],
])("the blank of %s", (name, sideMm) => {
  const reading = readJob(readFileSync(join(EXAMPLES, name), "utf8"));
  if (!reading.ok) throw new Error(name);
  const { job } = reading;
  const answer = check(job);
  let svg: string;
  beforeAll(async () => {
    const folder = mkdtempSync(join(tmpdir(), "blank-"));
    const file = join(folder, "blank.svg");
    const { status } = await noseroom(["blank", join(EXAMPLES, name), "--svg", file]);
    expect(status).toBe(0);
    svg = readFileSync(file, "utf8");
    rmSync(folder, { recursive: true });
  });

  it("is painted at true size, lines and check square within 0.1 mm", async () => {
    const found = await measured(svg);
    const near = (px: number, mm: number) => expect(Math.abs(px / PX_PER_MM - mm)).toBeLessThan(WITHIN_MM);
    const [width, height] = found.asked.map((words) => Number(/^([\d.]+)mm$/u.exec(words ?? "")?.[1]));
    near(found.page.width, width!);
    near(found.page.height, height!);
    const blank = found.blank[0]!;
    near(blank.width, answer.blank.developedWidth);
    if (job.part.lengthMm !== undefined) near(blank.height, job.part.lengthMm);
    const from = (box: { left: number }) => box.left - blank.left;
    const sorted = (boxes: readonly { left: number }[]) => boxes.map(from).sort((a, b) => a - b);
    const tangents = answer.blank.bends.flatMap((bend) => bend.tangents).sort((a, b) => a - b);
    expect(found.tangents.length).toBe(tangents.length);
    for (const [i, px] of sorted(found.tangents).entries()) near(px, tangents[i]!);
    expect(found.bends.length).toBe(answer.blank.bends.length);
    sorted(found.bends).forEach((px, i) => {
      const [a, b] = answer.blank.bends[i]!.tangents;
      near(px, (a + b) / 2);
    });
    expect(found.sights.length).toBe(answer.blank.bends.length);
    expect(found.square.length).toBe(1);
    near(found.square[0]!.width, sideMm);
    near(found.square[0]!.height, sideMm);
  });

  it("is found out where it is a fifth of a millimetre off", async () => {
    // The same file stretched as a printer might: 0.2 mm over the width of the blank.
    const wrong = 1 + 0.2 / answer.blank.developedWidth;
    const stretched = svg.replace(/width="([\d.]+)mm" height="([\d.]+)mm"/u, (_, w: string, h: string) => {
      return `width="${Number(w) * wrong}mm" height="${Number(h) * wrong}mm"`;
    });
    const [blank] = (await measured(stretched)).blank;
    expect(blank!.width / PX_PER_MM - answer.blank.developedWidth).toBeGreaterThan(WITHIN_MM);
  });
});
