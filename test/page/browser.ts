/**
 * A real Chromium for the page's tests: the one named by NOSEROOM_BROWSER, the one that comes from npm, or an
 * installed one. None found is a failure with a sentence, never a skip.
 */
import { existsSync } from "node:fs";
import packed from "@sparticuz/chromium";
import { type Browser, type BrowserContextOptions, chromium } from "playwright-core";

/** How long a condition may take to come before it is given up: patient, for a machine that is busy with others. */
export const PATIENCE_MS = 100_000;

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const INSTALLED = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];

/** Candidates in order of preference. */
async function executables(): Promise<string[]> {
  const named = process.env.NOSEROOM_BROWSER;
  if (named) return [named];
  const fromNpm = await packed.executablePath().catch(() => null);
  return [fromNpm, ...INSTALLED].filter((path): path is string => path !== null && existsSync(path));
}

/** Starts a headless Chromium. @throws when none runs here, saying what was tried */
export async function launch(): Promise<Browser> {
  const tried: string[] = [];
  for (const executablePath of await executables()) {
    try {
      return await chromium.launch({ executablePath, headless: true, args: FLAGS });
    } catch (why) {
      tried.push(`${executablePath}: ${String(why).split("\n")[0]}`);
    }
  }
  throw new Error(
    `The page's tests need a Chromium and found none that runs. Name one with NOSEROOM_BROWSER. Tried: ${tried.join("; ") || "nothing"}.`,
  );
}

export const DESKTOP: BrowserContextOptions = { viewport: { width: 1440, height: 900 }, locale: "en-US" };
export const PHONE: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  hasTouch: true,
  isMobile: true,
  locale: "en-US",
};
