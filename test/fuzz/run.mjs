// npm run fuzz -- [job|whole|shop|drawing|pattern|opened|link|stored|photo …] [--runs N] [--seconds T] [--seed S]
// Bundles the fuzzer with a mark at every branch of the readers and starts it; findings are kept in dist/fuzz/.
import { build } from "esbuild";
import { counted, MARKS } from "./counted.mjs";

await build({
  entryPoints: ["test/fuzz/command.ts", "test/fuzz/worker.ts"],
  outdir: "dist/fuzz",
  outExtension: { ".js": ".mjs" },
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  logLevel: "warning",
  plugins: [counted(/\/(?:src|web)\/.*\.tsx?$|node_modules\/dxf\/.*\.js$/)],
  banner: {
    js:
      'import { createRequire as nodeRequire } from "node:module"; const require = nodeRequire(import.meta.url);' +
      `const noseroomReached = (globalThis.noseroomReached ??= new Uint8Array(${MARKS}));`,
  },
});
await import("../../dist/fuzz/command.mjs");
