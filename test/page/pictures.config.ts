/**
 * Thousands of damaged pictures handed to the page, which takes long and runs alone: `npm run fuzz:pictures`.
 */
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/page/pictures.ts"],
    globalSetup: ["test/page/unpackBrowser.ts"],
    testTimeout: 7_200_000,
    hookTimeout: 120_000,
    silent: false,
  },
});
