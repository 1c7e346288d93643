/**
 * Page and command agree on every example: same verdict, same order and ends, same angles, same clearances.
 * Both run the one engine; what is checked here is that the page's worker, reader and file keep it so.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import type { Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Answer } from "../../src/jobFile/answer.ts";
import { DESKTOP, launch } from "./browser.ts";
import { openShop, saved, settled, verdict, visit } from "./shop.ts";

let browser: Browser;
let server: Server;
let page: Page;

beforeAll(async () => {
  const [started, shop] = await Promise.all([launch(), openShop()]);
  browser = started;
  server = shop.server;
  page = await visit(browser, DESKTOP, shop.address);
});
afterAll(async () => {
  await browser?.close();
  server?.close();
});

function command(path: string): Answer {
  try {
    return JSON.parse(
      execFileSync("node", ["dist/noseroom.mjs", "check", path, "--json"], { encoding: "utf8" }),
    );
  } catch (ended) {
    return JSON.parse((ended as { stdout: string }).stdout);
  }
}

const FOLDER = "examples";
const NAMES = readdirSync(FOLDER).filter((name) => name.endsWith(".json"));

describe("page and command", () => {
  it("find the examples", () => expect(NAMES.length).toBeGreaterThanOrEqual(8));

  it.each(NAMES)("agree on %s", async (name) => {
    const path = join(FOLDER, name);
    const text = readFileSync(path, "utf8");
    const jobs = page.locator(".jobs li");
    const before = await jobs.count();
    await page
      .getByLabel("Open a file", { exact: true })
      .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
    // Several examples are called the same: the new job is one more.
    await expect.poll(() => jobs.count()).toBe(before + 1);
    await page.locator(".jobs li.on", { hasText: JSON.parse(text).part.name }).waitFor();
    await settled(page);
    const expected = command(path);
    expect(await verdict(page)).toBe(expected.verdict);

    const steps = await page.locator(".steps .step").evaluateAll((cards) =>
      cards.map((card) => {
        const words = card.querySelector(".what p")?.textContent ?? "";
        const outcome = card.querySelector(".outcome")?.textContent ?? "";
        return { words, outcome, verdict: card.classList[1] };
      }),
    );
    expect(steps.length).toBe(expected.order.length);
    const last = expected.order.length + 1;
    expected.order.forEach((step, i) => {
      const shown = steps[i]!;
      const first = step.clamped === "start" ? 1 : step.bend + 1;
      const until = step.clamped === "start" ? step.bend : last;
      expect(shown.verdict).toBe(step.verdict);
      expect(shown.words).toContain(`Bend ${step.bend}`);
      expect(shown.words).toMatch(
        new RegExp(`, flats? ${first}${until > first ? ` (to|and) ${until}` : ""} in the throat`),
      );
      expect(shown.words).toContain(step.markedFaceUp ? "marked face up" : "marked face down");
      expect(shown.words).toContain(`leaf to ${Number(step.overbend.toFixed(1))}°`);
      if (step.contact && step.contact.angle > 0) {
        expect(shown.outcome).toContain(`${Number(step.contact.angle.toFixed(1))}°`);
        expect(shown.outcome).toContain(step.contact.part);
      }
    });

    // The saved file gives the command the same answer to the last figure.
    const file = await saved(page, () => page.getByRole("button", { name: "Save as a file" }).click());
    const kept = join(mkdtempSync(join(tmpdir(), "noseroom-")), "job.json");
    writeFileSync(kept, file.text);
    expect(command(kept)).toEqual(expected);
  });
});
