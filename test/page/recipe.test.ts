/**
 * A way out is a recipe: what it asks of the hand stays in the job, in Steps, on the shop sheet and in the saved file, and
 * the dimensions stay those that were typed. A link made from a file on disk says that it is none.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { BUILT, complaintsOf, pageTests, press, saved, sentence, settled, until, words } from "./shop.ts";

const tests = pageTests();

it("keeps the part that the hand has to do, everywhere, and lets the leaf do it all again", async () => {
  const page = await tests.visit();
  await page.locator('.answer[data-ways="found"]').waitFor();
  await page.getByRole("button", { name: /^Do it: Stop bend/ }).click();
  expect(await sentence(page)).toMatch(/^Folds.* Then close bend \d by hand\./);
  expect(await page.getByLabel("Flat 1", { exact: true }).inputValue()).toBe("1/2");
  expect(await page.getByLabel("Bend 1 °", { exact: true }).inputValue()).toBe("90");
  expect(await page.getByLabel("Bend 2 °", { exact: true }).inputValue()).toBe("90");
  expect(await words(page.locator(".by-hand"))).toMatch(
    /Close the last 1\d.*° of bend \d by hand.*filler bar/s,
  );
  const { text } = await saved(page, () => press(page, "Save as a file"));
  const path = join(mkdtempSync(join(tmpdir(), "noseroom-")), "job.json");
  writeFileSync(path, text);
  expect(execFileSync("node", ["dist/noseroom.mjs", "check", path], { encoding: "utf8" })).toMatch(
    /By hand, off the brake\s+Close the last 1\d.*° of bend \d by hand/,
  );
  await page.reload();
  await settled(page);
  await press(page, /^Let the leaf make all of bend/);
  expect(await sentence(page)).toMatch(/^Does not fold/);
});

it("says of a link from a file on disk that it works on no other device, and offers the text", async () => {
  const context = await tests.browser.newContext();
  const page = await context.newPage();
  const complaints = complaintsOf(page);
  await page.goto(new URL("noseroom.html", BUILT).href);
  await settled(page);
  await press(page, "Make a link");
  expect(await until(() => words(page.locator(".link")), /file on disk/)).toMatch(
    /only where the page is served/,
  );
  expect(await page.locator(".link textarea").inputValue()).toContain('"noseroom": 1');
  expect(complaints).toEqual([]);
  await context.close();
});
