// npm run mutation -- --mutate src/contact/crossing.ts: changes the engine a little at a time and asks whether a test notices.
// Judged by the quick tests alone (test/mutants/vitest.config.ts), since each mutant runs them.
export default {
  testRunner: "vitest",
  vitest: { configFile: "test/mutants/vitest.config.ts" },
  mutate: ["src/motion/*.ts", "src/contact/*.ts", "src/sequence/*.ts"],
  coverageAnalysis: "off",
  concurrency: 1,
  timeoutMS: 10000,
  timeoutFactor: 2,
  reporters: ["clear-text", "json", "dots"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  disableTypeChecks: false,
  tempDirName: ".stryker-tmp",
  ignorePatterns: ["/dist", "/docs", "/coverage", "/reports", "/examples/pictures", "/web"],
  jsonReporter: { fileName: "reports/mutation.json" },
};
