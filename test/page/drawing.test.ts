/**
 * The drawing by box geometry, in a real browser: on more than forty jobs, every step, three sizes and two leaf angles no label
 * covers the sheet or another label or is struck by a dimension line, every number in sight is there, and the contact lies
 * well inside. Judged by polygons and boxes made here, not by the drawing's own. Hatch: ISO 128-3, from memory; 10° ours.
 */
import { readdirSync, readFileSync } from "node:fs";
import { build } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { hatchOf } from "../../src/drawing/hatch.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { stageAt } from "../../src/jobFile/stageAt.ts";
import { stageScene } from "../../src/motion/scene.ts";
import { launch } from "./browser.ts";
import type { Drawn, Rect } from "./drawingPage.tsx";

/** What the stage measures on a phone, on a laptop beside the finished part, and on a large screen. */
const SIZES = [
  [390, 420],
  [515, 480],
  [1000, 900],
] as const;

const jobsIn = (folder: string): (readonly [string, string])[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".json") && !name.includes("expected"))
    .map((name) => [name, readFileSync(`${folder}/${name}`, "utf8")]);

/** The parts of the observatory's shop, each on its first and last brake. */
function shopJobs(): (readonly [string, string])[] {
  const { units, margin, parts, brakes } = JSON.parse(readFileSync("examples/shop/observatory.json", "utf8"));
  return parts.map((part: { name: string }, i: number) => {
    const brake = brakes[i % brakes.length];
    return [
      part.name,
      JSON.stringify({ noseroom: 1, units, part, brake, ...(margin === undefined ? {} : { margin }) }),
    ];
  });
}

/** Panels of the roof with more and more ribs: 6 to 12 bends, in millimetres and in inches, with other dimensions. */
function ribbedPanels(): (readonly [string, string])[] {
  const brake = JSON.parse(readFileSync("examples/eight-bends.json", "utf8")).brake;
  return [6, 7, 8, 9, 10, 11, 12].flatMap((count) =>
    (["outside", "inside", "flat"] as const).map((dimensions, k) => {
      const part = {
        name: `panel ${count} ${dimensions}`,
        material: "3003-H14",
        thickness: 1,
        insideRadius: 1,
        length: 400,
        dimensions,
        flats: Array.from({ length: count + 1 }, (_, i) => 16 + ((i * 7 + k * 5) % 23)),
        bends: Array.from({ length: count }, (_, i) => ({
          angle: [90, 45, 60, 30][(i + k) % 4],
          turn: i % 4 === 0 || i % 4 === 3 ? "up" : "down",
        })),
      };
      return [part.name, JSON.stringify({ noseroom: 1, units: "mm", part, brake })] as const;
    }),
  );
}

const isJob = ([, text]: readonly [string, string]) => readJob(text).ok;
const JOBS = [...jobsIn("test/cases"), ...jobsIn("examples"), ...shopJobs(), ...ribbedPanels()].filter(isJob);

type Spot = readonly [number, number];

/** Whether a piece of line runs through a box: halved until it is short, which needs no formula of its own. */
function strikes([ax, ay]: Spot, [bx, by]: Spot, box: Rect): boolean {
  const apart = (low: number, high: number, from: number, to: number) =>
    Math.max(from, to) < low || Math.min(from, to) > high;
  if (apart(box.left, box.right, ax, bx) || apart(box.top, box.bottom, ay, by)) return false;
  if (Math.hypot(ax - bx, ay - by) < 0.25) return true;
  const middle: Spot = [(ax + bx) / 2, (ay + by) / 2];
  return strikes([ax, ay], middle, box) || strikes(middle, [bx, by], box);
}

/** How much of a piece of line lies in a box, in points: counted on two hundred of its places. */
function seenOf([ax, ay]: Spot, [bx, by]: Spot, box: Rect): number {
  let seen = 0;
  for (let i = 0; i < 200; i++) {
    const spot: Spot = [ax + ((bx - ax) * (i + 0.5)) / 200, ay + ((by - ay) * (i + 0.5)) / 200];
    if (strikes(spot, spot, box)) seen++;
  }
  return (seen / 200) * Math.hypot(bx - ax, by - ay);
}

/** Even-odd. */
function insideOf([x, y]: Spot, outline: readonly Spot[]): boolean {
  let within = false;
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) within = !within;
  });
  return within;
}

const shrunk = (box: Rect, by: number): Rect => ({
  ...box,
  left: box.left + by,
  top: box.top + by,
  right: box.right - by,
  bottom: box.bottom - by,
});

function faultsOf({
  job,
  step,
  leafDeg,
  width,
  height,
  labels,
  sheet,
  flats,
  lines,
  contact,
}: Drawn): string[] {
  const where = `${job}, step ${step}, leaf ${leafDeg.toFixed(1)}°, ${width} wide`;
  const faults: string[] = [];
  const tell = (what: string) => faults.push(`${where}: ${what}`);
  labels.forEach((whole, i) => {
    const box = shrunk(whole, 0.6);
    const covers =
      sheet.some((spot, k) => strikes(spot, sheet[(k + 1) % sheet.length]!, box)) ||
      insideOf([box.left, box.top], sheet);
    if (covers) tell(`${box.name} covers the sheet`);
    if (box.left < 0 || box.top < 0 || box.right > width || box.bottom > height)
      tell(`${box.name} runs off the canvas`);
    for (const other of labels.slice(i + 1)) {
      const shares =
        box.left < other.right && other.left < box.right && box.top < other.bottom && other.top < box.bottom;
      if (shares) tell(`${box.name} covers ${other.name}`);
    }
    for (const { name, piece } of lines) {
      const own = name.replace(/\d+$/, (index) => `${Number(index) + 1}`) === box.name;
      if (!own && strikes(...piece, box)) tell(`a line of ${name} strikes ${box.name}`);
    }
  });
  const named = new Set(labels.map(({ name }) => name));
  const canvas: Rect = { name: "", left: 8, top: 8, right: width - 8, bottom: height - 8 };
  flats.forEach(([from, to], i) => {
    if (seenOf(from, to, canvas) > 16 && !named.has(`flat ${i + 1}`)) tell(`flat ${i + 1} has no number`);
    const next = flats[i + 1];
    if (next === undefined) return;
    const ends = [from, to].flatMap((a) => next.map((b) => [a, b] as const));
    const [a, b] = ends.toSorted(
      (p, q) =>
        Math.hypot(p[0][0] - p[1][0], p[0][1] - p[1][1]) - Math.hypot(q[0][0] - q[1][0], q[0][1] - q[1][1]),
    )[0]!;
    if ([a, b].every((end) => strikes(end, end, canvas)) && !named.has(`bend ${i + 1}`))
      tell(`bend ${i + 1} has no number`);
  });
  if (contact && !strikes(contact, contact, shrunk(canvas, 6))) tell("the contact lies outside of the frame");
  return faults;
}

describe(`the drawing of ${JOBS.length} jobs`, () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    const made = await build({
      entryPoints: ["test/page/drawingPage.tsx"],
      bundle: true,
      write: false,
      jsx: "automatic",
      jsxImportSource: "preact",
      target: "es2022",
    });
    const style = await build({ entryPoints: ["web/style/style.css"], bundle: true, write: false });
    browser = await launch();
    page = await browser.newPage({ viewport: { width: 1100, height: 900 } });
    await page.setContent(`<style>${style.outputFiles[0]!.text}</style><body></body>`);
    await page.addScriptTag({ content: made.outputFiles[0]!.text });
    await page.evaluate((sizes) => (window as unknown as Harness).setUp(sizes), SIZES);
  });
  afterAll(() => browser?.close());

  it("keeps every label off sheet, rim, labels and lines, and leaves out no number", async () => {
    expect(JOBS.length).toBeGreaterThanOrEqual(40);
    let seen = 0;
    const faults: string[] = [];
    for (const [name, text] of JOBS) {
      const drawings = await page.evaluate(([n, t]) => (window as unknown as Harness).drawJob(n, t), [
        name,
        text,
      ] as const);
      seen += drawings.length;
      for (const one of drawings) faults.push(...faultsOf(one));
    }
    expect(seen).toBeGreaterThan(600);
    expect(faults).toEqual([]);
  });

  it("hatches no body within 10° of one of its long edges, whatever way it is turned", () => {
    for (const [name, text] of JOBS) {
      const read = readJob(text);
      if (!read.ok) continue;
      const answer = check(read.job);
      answer.order.forEach((step, i) => {
        const scene = stageScene(stageAt(read.job, answer, i), (step.reached * Math.PI) / 180);
        const bodies = [
          ["bed", scene.bed],
          ["leaf", scene.leaf],
          ...scene.clamp.map((body) => ["clamp", body] as const),
          ...scene.frame.map((body) => ["frame", body] as const),
        ] as const;
        for (const [layer, body] of bodies) {
          const { angleDeg } = hatchOf(layer, body)!;
          const long = body.edges.map(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y));
          body.edges.forEach((edge, k) => {
            if (edge.kind !== "line" || long[k]! < 0.3 * Math.max(...long)) return;
            const edgeDeg = (Math.atan2(edge.to.y - edge.from.y, edge.to.x - edge.from.x) * 180) / Math.PI;
            const off = Math.abs(((((angleDeg - edgeDeg) % 180) + 270) % 180) - 90);
            expect(off, `${name}, step ${i + 1}, ${layer}`).toBeGreaterThan(10);
          });
        }
      });
    }
  });
});

interface Harness {
  setUp(sizes: readonly (readonly [number, number])[]): void;
  drawJob(name: string, text: string): Promise<readonly Drawn[]>;
}
