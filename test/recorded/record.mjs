// npm run record -- [CASES.json]: asks the reference about every case in test/recorded/answers.json anew, or adds
// those of CASES.json, written alike with or without the answers; takes some minutes.
import { build } from "esbuild";

await build({
  entryPoints: ["test/recorded/record.ts"],
  outfile: "dist/record.mjs",
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  logLevel: "warning",
});
await import("../../dist/record.mjs");
