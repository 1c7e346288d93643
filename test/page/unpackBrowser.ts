/**
 * Unpacks the Chromium that comes from npm once, before the test files start side by side: two of them unpacking at
 * the same time would start each other's half-written file.
 */
import packed from "@sparticuz/chromium";

/** Runs once before all tests; where there is nothing to unpack, launch() says so in the page's tests. */
export async function setup(): Promise<void> {
  await packed.executablePath().catch(() => undefined);
}
