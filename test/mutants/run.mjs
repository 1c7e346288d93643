// npm run mutation -- [--file src/contact/crossing.ts …] [--left reports/mutants.json] [--most MS] [--out FILE]
// Bundles the mutation run and starts it; mutants left are listed in reports/mutants.json. --left tries those of an earlier run
// alone; --most gives up on a mutant when truths of so many milliseconds have not noticed it.
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
