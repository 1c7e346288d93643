// npm run mutation -- [--file src/contact/crossing.ts …] [--sample N] [--seed S]
// Bundles the mutation run and starts it; survivors are listed in reports/mutants.json.
import { build } from "esbuild";

await build({
  entryPoints: ["test/mutants/command.ts"],
  outfile: "dist/mutants/command.mjs",
  bundle: true,
  packages: "external",
  platform: "node",
  target: "node20",
  format: "esm",
  logLevel: "warning",
});
await import("../../dist/mutants/command.mjs");
