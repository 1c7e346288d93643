/**
 * One file for all: what the page saves it opens again, and the command's fit, check and sheet take; shop files open on
 * the page; a file may be dropped anywhere. The command is the built one, run on the very text that the page gave.
 */
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeEach, expect, it } from "vitest";
import { pageTests, press, saved, settled, type, until, verdict, words } from "./shop.ts";

const tests = pageTests();
let page: Page;
beforeEach(async () => {
  page = await tests.visit();
});

const json = (name: string, text: string) => ({
  name,
  mimeType: "application/json",
  buffer: Buffer.from(text),
});
const open = (of: Page, name: string, text: string) =>
  of.getByLabel("Open a file", { exact: true }).setInputFiles(json(name, text));
const jobNames = (of: Page) => of.locator(".jobs .job").allTextContents();

/** What the command prints, and how it ends. */
function command(...args: string[]): { readonly status: number; readonly out: string } {
  try {
    return { status: 0, out: execFileSync("node", ["dist/noseroom.mjs", ...args], { encoding: "utf8" }) };
  } catch (ended) {
    const { status, stdout } = ended as { status: number; stdout: string };
    return { status, out: stdout };
  }
}

it("saves all jobs and brakes as one file that the page opens and fit, check and sheet take", async () => {
  await type(page, "Brake’s name", "Bench brake");
  await press(page, "Keep this brake");
  await press(page, "New job");
  await type(page, "Name", "Corner strip");
  await page.getByRole("radio", { name: "mm" }).check();
  await settled(page);
  expect(await verdict(page)).toBe("clear");
  const file = await saved(page, () => press(page, "Save all"));

  const other = await tests.visit();
  await open(other, file.name, file.text);
  await until(async () => String(await jobNames(other)), /Corner strip/);
  expect(await jobNames(other)).toEqual(["Cable trough", "Cable trough 2", "Corner strip"]);
  expect(
    await other.getByLabel("Brake of this job", { exact: true }).locator("option").allTextContents(),
  ).toEqual(["Bench brake"]);

  const folder = mkdtempSync(join(tmpdir(), "noseroom-"));
  const path = join(folder, file.name);
  writeFileSync(path, file.text);
  const checked = command("check", path, "--json");
  expect(checked.status).toBe(1);
  expect(JSON.parse(checked.out).map((answer: { verdict: string }) => answer.verdict)).toEqual([
    "hits",
    "clear",
  ]);
  const fit = JSON.parse(command("fit", path, "--json").out);
  expect(fit.parts).toEqual(["Cable trough", "Corner strip"]);
  expect(fit.brakes).toEqual(["Bench brake"]);
  expect(fit.cells.map((row: { verdict: string }[]) => row[0]!.verdict)).toEqual(["hits", "clear"]);
  const pdf = join(folder, "sheets.pdf");
  expect(command("sheet", path, "--pdf", pdf).out).toMatch(
    /Shop sheet of Cable trough.*Shop sheet of Corner strip/s,
  );
  expect(existsSync(pdf)).toBe(true);
});

it("opens a shop file: its brakes on the shelf, its parts as jobs", async () => {
  const text = readFileSync("examples/shop/observatory.json", "utf8");
  const shop = JSON.parse(text);
  await open(page, "observatory.json", text);
  await page.locator(".jobs .job").nth(shop.parts.length).waitFor();
  expect((await jobNames(page)).slice(1)).toEqual(shop.parts.map((part: { name: string }) => part.name));
  const brakes = await page
    .getByLabel("Brake of this job", { exact: true })
    .locator("option")
    .allTextContents();
  expect(brakes).toEqual(shop.brakes.map((brake: { name: string }) => brake.name));
  expect(await words(page.locator(".notices"))).toMatch(/12 jobs and 3 brakes/);
  await page.getByRole("button", { name: /^Undo/ }).click();
  expect(await jobNames(page)).toEqual(["Cable trough"]);
});

it("opens what earlier pages saved, a list of jobs", async () => {
  const job = (name: string) => JSON.parse(readFileSync(`examples/${name}.json`, "utf8"));
  await open(page, "jobs.json", JSON.stringify([job("z-clip"), job("drip-edge")]));
  await page.locator(".jobs .job").nth(2).waitFor();
  expect((await jobNames(page)).slice(1)).toEqual([job("z-clip").part.name, job("drip-edge").part.name]);
});

it("takes a file that is dropped anywhere", async () => {
  const text = readFileSync("examples/z-clip.json", "utf8");
  const drop = (kind: string) =>
    page.locator("#blank-heading").evaluate(
      (place, [type, content]) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([content!], "z-clip.json", { type: "application/json" }));
        place.dispatchEvent(new DragEvent(type!, { dataTransfer, bubbles: true, cancelable: true }));
      },
      [kind, text],
    );
  await drop("dragover");
  expect(await page.evaluate(() => document.documentElement.dataset.dropping)).toBe("yes");
  await drop("drop");
  await until(
    () => page.getByLabel("Name", { exact: true }).inputValue(),
    new RegExp(JSON.parse(text).part.name),
  );
  expect(await page.evaluate(() => document.documentElement.dataset.dropping)).toBeUndefined();
});
