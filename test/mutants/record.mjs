// node test/mutants/record.mjs: writes test/mutants/truths.json anew from the reference; takes some minutes.
import { build } from "esbuild";

await build({
  entryPoints: ["test/mutants/record.ts"],
  outfile: "dist/record.mjs",
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  logLevel: "warning",
});
await import("../../dist/record.mjs");
