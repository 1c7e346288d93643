import { defineConfig } from "vitest/config";

// The tests that take a moment and look at motion, contact and sequence: every mutant runs them.
export default defineConfig({
  test: {
    include: [
      "test/mutants/*.test.ts",
      "test/motion/*.test.ts",
      "test/contact/{bodies,crossing,handling}.test.ts",
    ],
  },
});
