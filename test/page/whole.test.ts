/**
 * Boxes, patterns and channels with ends on the page: opened from an example, a file, a drop and a link, answered in the words
 * of the command, with strokes, ways out, blank and drawings to save. The command (dist/noseroom.mjs) is what is compared with.
 */
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { complaintsOf, pageTests, press, saved, sentence, settled, verdict, words } from "./shop.ts";

const tests = pageTests();
const FOLDER = "examples/whole";
const NAMES = readdirSync(FOLDER).filter((name) => name.endsWith(".json"));
const MEETS = "test/wholeCases/switch-box-meets-holder.json";

/** What the command prints, blanks run together. */
function printed(...command: readonly string[]): string {
  const told = () => {
    try {
      return execFileSync("node", ["dist/noseroom.mjs", ...command], { encoding: "utf8" });
    } catch (ended) {
      return (ended as { stdout: string }).stdout;
    }
  };
  return told().replace(/\s+/g, " ");
}

async function openFile(page: Page, path: string): Promise<void> {
  await page.getByLabel("Open a file", { exact: true }).setInputFiles(path);
  const { part } = JSON.parse(readFileSync(path, "utf8")) as { part: { name: string } };
  await page.locator(".jobs li.on", { hasText: part.name }).waitFor();
  await settled(page);
}

describe("a whole part on the page", () => {
  it("is answered in the words of the command, example by example", async () => {
    const page = await tests.visit();
    const complaints = complaintsOf(page);
    expect(NAMES.length).toBeGreaterThanOrEqual(5);
    for (const file of NAMES) {
      await page.getByLabel("Worked examples").selectOption(file.replace(".json", ""));
      await press(page, "Open the example");
      const path = `${FOLDER}/${file}`;
      const { part } = JSON.parse(readFileSync(path, "utf8")) as { part: { name: string } };
      await page.locator(".jobs li.on", { hasText: part.name }).waitFor();
      const said = await sentence(page);
      const told = printed("check", path);
      expect(told).toContain(said);
      for (const fact of await page.locator("#steps-heading ~ .hint").allTextContents())
        expect(told).toContain(fact);
      for (const mind of await page.locator(".warnings li").allTextContents()) expect(told).toContain(mind);
      const { order } = JSON.parse(printed("check", path, "--json")) as {
        order: readonly { bends: number[] }[];
      };
      const titles = await page.locator(".stroke strong").allTextContents();
      expect(titles.map((title) => title.match(/\d+/g)![1])).toEqual(
        order.map(({ bends }) => String(bends[0])),
      );
      expect(printed("blank", path)).toContain(await words(page.locator("#blank-heading + p")));
    }
    expect(complaints).toEqual([]);
  });

  it("comes back from its own link and from a drop", async () => {
    const page = await tests.visit();
    await openFile(page, `${FOLDER}/switch-box-tabs.json`);
    const before = await sentence(page);
    await press(page, "Make a link");
    const link = await page.getByLabel("The job is in the link itself:").inputValue();
    const other = await tests.visit();
    await other.goto(link);
    await other.locator(".stroke").first().waitFor();
    expect(await sentence(other)).toBe(before);
    const text = readFileSync(`${FOLDER}/corner-bracket.json`, "utf8");
    await other.evaluate((job) => {
      const data = new DataTransfer();
      data.items.add(new File([job], "corner-bracket.json", { type: "application/json" }));
      document.body.dispatchEvent(
        new DragEvent("drop", { bubbles: true, cancelable: true, dataTransfer: data }),
      );
    }, text);
    await other.locator(".jobs li.on", { hasText: "corner bracket" }).waitFor();
    expect(printed("check", `${FOLDER}/corner-bracket.json`)).toContain(await sentence(other));
  });

  it("is kept over a reload and saved as the command reads it", async () => {
    const page = await tests.visit();
    await openFile(page, `${FOLDER}/lens-box-lips.json`);
    const before = await sentence(page);
    await page.reload();
    expect(await sentence(page)).toBe(before);
    const { text } = await saved(page, () => press(page, "Save as a file"));
    expect(JSON.parse(text)).toEqual(JSON.parse(readFileSync(`${FOLDER}/lens-box-lips.json`, "utf8")));
  });

  it("is shown in the other unit and back, to the same answer", async () => {
    const page = await tests.visit();
    await openFile(page, `${FOLDER}/cable-trough-ends.json`);
    const before = await sentence(page);
    await page.getByRole("radio", { name: "in", exact: true }).check();
    await settled(page);
    await page.locator("#blank-heading + p", { hasText: " in by " }).waitFor();
    await page.getByRole("radio", { name: "mm", exact: true }).check();
    await page.locator("#blank-heading + p", { hasText: " mm by " }).waitFor();
    expect(await sentence(page)).toBe(before);
  });

  it("gets ways out where it does not fold, and one that is carried out lets it fold", async () => {
    const page = await tests.visit();
    await openFile(page, MEETS);
    expect(await verdict(page)).toBe("hits");
    expect(printed("check", MEETS)).toContain(await words(page.locator(".answer .to-moment")));
    const ways = page.locator(".ways-out li");
    await ways.first().waitFor();
    const told = printed("ways", MEETS);
    for (const way of await ways.locator("span").allTextContents()) expect(told).toContain(way);
    await page
      .getByRole("button", { name: /^Do it/ })
      .first()
      .click();
    await page.locator('.answer[data-working="no"]:not([data-verdict="hits"])').waitFor();
    expect(["clear", "tight"]).toContain(await verdict(page));
  });

  it("saves its blank as SVG and DXF, with the figures of the command's", async () => {
    const page = await tests.visit();
    await openFile(page, `${FOLDER}/end-cap.json`);
    const svg = await saved(page, () => press(page, "Blank as SVG"));
    const dxf = await saved(page, () => press(page, "Blank as DXF"));
    execFileSync("node", [
      "dist/noseroom.mjs",
      "blank",
      `${FOLDER}/end-cap.json`,
      "--svg",
      "dist/whole-blank.svg",
      "--dxf",
      "dist/whole-blank.dxf",
      "--force",
    ]);
    expect(svg.text).toBe(readFileSync("dist/whole-blank.svg", "utf8"));
    expect(dxf.text).toBe(readFileSync("dist/whole-blank.dxf", "utf8"));
  });

  it("never shows an old answer as good while a new one is worked out", async () => {
    const page = await tests.visit();
    await openFile(page, `${FOLDER}/lens-box-lips.json`);
    const seen = await page.evaluate(async () => {
      const answer = document.querySelector<HTMLElement>(".answer")!;
      const seen: string[] = [];
      const note = () => seen.push(`${answer.dataset.working} ${answer.dataset.verdict}`);
      new MutationObserver(note).observe(answer, { attributes: true });
      const field = [...document.querySelectorAll("label")].find((l) => l.textContent === "Inside radius")!;
      const box = document.getElementById(field.htmlFor) as HTMLInputElement;
      box.value = "1.3";
      box.dispatchEvent(new Event("input", { bubbles: true }));
      await new Promise((done) => {
        const wait = setInterval(() => {
          if (!seen.some((s) => s.startsWith("no"))) return;
          clearInterval(wait);
          done(undefined);
        }, 50);
      });
      return seen;
    });
    expect(seen[0]).toBe("yes waiting");
    expect(seen.filter((one) => one.startsWith("yes"))).not.toContain("yes clear");
  });
});
