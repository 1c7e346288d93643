/**
 * Web Share where the device has one. The browser of the tests has none, so one stands in its place in the page, as a phone's would:
 * what it is handed is looked at. The rules are those of the Web Share API (W3C): files only where `canShare` takes them, and an
 * AbortError when the person thinks better of it.
 */
import type { BrowserContextOptions, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { readJob } from "../../src/jobFile/readJob.ts";
import { PHONE } from "./browser.ts";
import { pageTests, press, settled, until, words } from "./shop.ts";

const tests = pageTests();
const notices = (page: Page) => words(page.locator(".notices"));
const handed = (page: Page) => page.evaluate(() => JSON.parse(document.body.dataset.handed ?? "[]"));

/** A visit to a device that shares: with files or without, or that breaks off with an error of that name. */
async function sharing(
  device: { readonly files: boolean; readonly fails?: string },
  options: BrowserContextOptions = PHONE,
): Promise<Page> {
  const page = await tests.visit(options);
  await page.addInitScript(({ files, fails }) => {
    const share = async (data: ShareData) => {
      const texts = await Promise.all((data.files ?? []).map((file) => file.text()));
      const names = (data.files ?? []).map(({ name, type }) => `${name} ${type}`);
      const { title, text, url } = data;
      document.body.dataset.handed = JSON.stringify([{ title, text, url, names, texts }]);
      if (fails) throw new DOMException("no", fails);
    };
    Object.assign(navigator, { share, canShare: (data: ShareData) => files || data.files === undefined });
  }, device);
  await page.reload();
  await settled(page);
  return page;
}

describe("share this job", () => {
  it("is not offered where the device shares nothing", async () => {
    const page = await tests.visit();
    expect(await page.evaluate(() => "share" in navigator)).toBe(false);
    expect(await page.getByRole("button", { name: "Share this job" }).count()).toBe(0);
  });

  it("hands the job's file over where files are taken, and it reads as the job on the page", async () => {
    const page = await sharing({ files: true });
    await press(page, "Share this job");
    await expect.poll(() => handed(page)).toHaveLength(1);
    const [{ names, texts }] = await handed(page);
    expect(names).toEqual(["cable-trough.json application/json"]);
    const read = readJob(texts[0]);
    expect(read.ok && read.job.part.bends.length).toBe(2);
  });

  it("hands a link over where files are not taken, which opens as the job", async () => {
    const page = await sharing({ files: false });
    await press(page, "Share this job");
    await expect.poll(() => handed(page)).toHaveLength(1);
    const [{ url, text, names }] = await handed(page);
    expect(names).toEqual([]);
    const link = url ?? text;
    expect(link).toMatch(/^http:.*#/);
    const other = await tests.visit();
    await other.goto(link);
    await until(() => words(other.locator(".jobs")), /Cable trough.*Cable trough/);
  });

  it("says nothing when the person thinks better of it, and what to do instead when the device will not", async () => {
    const leaves = await sharing({ files: true, fails: "AbortError" });
    await press(leaves, "Share this job");
    await expect.poll(() => handed(leaves)).toHaveLength(1);
    expect(await notices(leaves)).not.toMatch(/would not share/);
    const refuses = await sharing({ files: true, fails: "NotAllowedError" });
    await press(refuses, "Share this job");
    await until(() => notices(refuses), /This device would not share the job: save it as a file instead\./);
  });
});
