/**
 * What the page's tests share: the built page on a server of its own, a fresh visit, and waiting for the answer.
 * Waits are always for a condition on the page, never for a time.
 */
import { existsSync } from "node:fs";
import type { Server } from "node:http";
import type { Browser, BrowserContextOptions, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, onTestFinished } from "vitest";
import { serve } from "../../web/serve.mjs";
import { DESKTOP, launch, PATIENCE_MS } from "./browser.ts";

export const BUILT = new URL("../../dist/", import.meta.url);

/** Serves dist/site/. @throws with a sentence when it has not been built */
export async function openShop(): Promise<{ server: Server; address: string }> {
  if (!existsSync(new URL("site/index.html", BUILT))) {
    throw new Error("dist/site is missing: run `npm run build` before the page's tests.");
  }
  return serve(0);
}

export interface PageTests {
  readonly browser: Browser;
  readonly address: string;
  /** A fresh visitor's page with its first answer; one that a test asked for is closed when the test ends. */
  visit(options?: BrowserContextOptions): Promise<Page>;
}

/** One browser and the built page on a server, for all tests of a file: to be called once, outside of them. */
export function pageTests(): PageTests {
  let browser: Browser;
  let shop: Awaited<ReturnType<typeof openShop>>;
  beforeAll(async () => {
    [browser, shop] = await Promise.all([launch(), openShop()]);
  });
  afterAll(async () => {
    await browser?.close();
    shop?.server.close();
  });
  return {
    get browser() {
      return browser;
    },
    get address() {
      return shop.address;
    },
    async visit(options = DESKTOP) {
      const page = await visit(browser, options, shop.address);
      try {
        onTestFinished(() => page.context().close());
      } catch {
        // Asked for before all tests: it is closed with the browser.
      }
      return page;
    },
  };
}

/** Everything that went wrong on a page: script faults, console complaints, refused by the policy. */
export function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on("pageerror", (fault) => complaints.push(`fault: ${fault.message}`));
  page.on("console", (line) => {
    if (line.type() === "error" || line.type() === "warning")
      complaints.push(`${line.type()}: ${line.text()}`);
  });
  return complaints;
}

/** A fresh visitor's page, with its first answer standing. */
export async function visit(
  browser: Browser,
  options: BrowserContextOptions,
  address: string,
): Promise<Page> {
  const context = await browser.newContext({ acceptDownloads: true, ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  await page.goto(address);
  await settled(page);
  return page;
}

/** Waits until the answer belongs to what is typed. */
export async function settled(page: Page): Promise<void> {
  await page.locator('.answer[data-working="no"]').waitFor();
}

/** The words of an element, without the blanks round them. */
export async function words(place: Locator): Promise<string> {
  return ((await place.textContent()) ?? "").trim();
}

/** The answer's sentence. */
export async function sentence(page: Page): Promise<string> {
  await settled(page);
  return words(page.locator(".answer .said"));
}

export async function verdict(page: Page): Promise<string> {
  await settled(page);
  return (await page.locator(".answer").getAttribute("data-verdict")) ?? "";
}

/** Types into the field of that label as a person would, replacing what stands there. */
export async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill("");
  await field.pressSequentially(text);
}

/** Presses the button of that name. */
export async function press(page: Page, name: string | RegExp): Promise<void> {
  await page.getByRole("button", { name, exact: typeof name === "string" }).click();
}

/** Waits until `read` gives something that passes. */
export async function until(read: () => Promise<string>, pattern: RegExp): Promise<string> {
  await expect.poll(read).toMatch(pattern);
  return read();
}

/** The text of what the page saves when `act` is done. */
export async function saved(page: Page, act: () => Promise<void>): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent("download"), act()]);
  const stream = await download.createReadStream();
  const parts: Buffer[] = [];
  for await (const part of stream) parts.push(part as Buffer);
  return { name: download.suggestedFilename(), text: Buffer.concat(parts).toString("utf8") };
}

/** The browser's own print box can't be opened without a screen; that it was asked for is noted on the page. */
export const watchPrinting = (page: Page) =>
  page.evaluate(() => {
    window.print = () => {
      document.body.dataset.printBox = "open";
    };
  });
