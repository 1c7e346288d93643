// npm run fuzz -- [job|shop|drawing|opened|link|stored …] [--runs N] [--seconds T] [--seed S]
// Bundles the fuzzer and starts it; findings are kept in dist/fuzz/.
import { build } from "esbuild";

await build({
  entryPoints: ["test/fuzz/command.ts", "test/fuzz/worker.ts"],
  outdir: "dist/fuzz",
  outExtension: { ".js": ".mjs" },
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  logLevel: "warning",
  banner: {
    js: 'import { createRequire as nodeRequire } from "node:module"; const require = nodeRequire(import.meta.url);',
  },
});
await import("../../dist/fuzz/command.mjs");
