import { defineConfig } from "vitest/config";

// The tests that take a moment and look at motion, contact and sequence: every mutant runs them.
export default defineConfig({
  test: {
    // On a busy machine a mutant must not be taken for noticed because a good test came late.
    testTimeout: 60_000,
    include: [
      "test/mutants/*.test.ts",
      "test/motion/*.test.ts",
      "test/contact/{bodies,crossing,handling}.test.ts",
    ],
  },
});
