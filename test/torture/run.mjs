// npm run torture -- [--cases N] [--seed S] [--seconds T] [--whole N] [--grazes N] [--threads N]
// Bundles the torture run and starts it; disagreements are printed as job files, and written to dist/torture/.
import { mkdir } from "node:fs/promises";
import { build } from "esbuild";

await mkdir("dist/torture", { recursive: true });
await build({
  entryPoints: ["test/torture/command.ts"],
  outfile: "dist/torture/command.mjs",
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  logLevel: "warning",
});
await import("../../dist/torture/command.mjs");
