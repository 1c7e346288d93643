/**
 * The page's bench runs alone and not with the tests: `npm run bench:page`.
 */
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/page/bench.ts"],
    globalSetup: ["test/page/unpackBrowser.ts"],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    silent: false,
  },
});
