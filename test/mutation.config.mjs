/** The tests that `npm run mutation FILE` runs against each fault put into the file: those of its room (test/mutation.mjs). */
import { defineConfig } from "vitest/config";
import { examplesForVite } from "../examples/asModules.mjs";

export default defineConfig({
  plugins: [examplesForVite],
  define: { NOSEROOM_VERSION: '"0"' },
  test: {
    include: [`test/${process.env.ROOM}/**/*.test.ts`, "test/recorded/**/*.test.ts"],
    testTimeout: 600_000,
  },
});
