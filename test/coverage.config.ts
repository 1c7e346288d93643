/**
 * `npm run coverage`: which lines and branches of the engine its tests run, in one worker. Left out are the tests that start
 * the built command or a browser, whose code is not seen from here, and the long seeded runs, which repeat what others do.
 */
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    exclude: ["test/{page,cli,torture,fuzz,mutants}/**", "test/house.test.ts", "test/apiDocs.test.ts"],
    maxWorkers: 1,
    testTimeout: 600_000,
    hookTimeout: 600_000,
    coverage: {
      provider: "v8",
      include: ["src/**"],
      exclude: ["src/cli/**"],
      reporter: ["json-summary", "text"],
    },
  },
});
