/**
 * Three suites by folder: `fast` is everything but test/deep and test/page. `npx vitest run PATH` finds the suite of any path.
 * Only the page's suite unpacks the Chromium that comes from npm.
 */
import { readFileSync } from "node:fs";
import { defineConfig } from "vitest/config";
import { examplesForVite } from "./examples/asModules.mjs";

const { version } = JSON.parse(readFileSync(new URL("package.json", import.meta.url), "utf8"));

const suite = (name: string, folder: string, more: object = {}) => ({
  extends: true as const,
  test: {
    name,
    include: [`test/${folder}/**/*.test.ts`],
    testTimeout: 600_000,
    hookTimeout: 600_000,
    ...more,
  },
});

export default defineConfig({
  plugins: [examplesForVite],
  define: { NOSEROOM_VERSION: JSON.stringify(version) },
  test: {
    projects: [
      // Loading the modules anew for each file took a third of the run; no test leaves anything behind in them.
      suite("fast", "**", { exclude: ["test/deep/**", "test/page/**"], isolate: false }),
      suite("deep", "deep", { isolate: false }),
      // A condition on the page is waited for, on a busy machine as long as PATIENCE_MS in test/page/browser.ts.
      suite("page", "page", {
        globalSetup: ["test/page/unpackBrowser.ts"],
        expect: { poll: { timeout: 100_000 } },
      }),
    ],
  },
});
