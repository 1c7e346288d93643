// Bundles the command (dist/noseroom.mjs) and the engine (dist/index.mjs); with --bench the benchmark too.
// The command keeps no install step of its own: one file, Node built-ins only from outside.
import { chmod } from "node:fs/promises";
import { build } from "esbuild";

const node = { bundle: true, platform: "node", target: "node20", format: "esm", logLevel: "warning" };
// commander is CommonJS inside; in an ESM bundle it needs a require of its own for Node built-ins.
const requireBanner = 'import { createRequire as nodeRequire } from "node:module"; const require = nodeRequire(import.meta.url);';

await build({
  ...node,
  entryPoints: ["src/cli/main.ts"],
  outfile: "dist/noseroom.mjs",
  minifySyntax: true,
  banner: { js: `#!/usr/bin/env node\n${requireBanner}` },
});
await build({ ...node, platform: "neutral", mainFields: ["module", "main"], entryPoints: ["src/index.ts"], outfile: "dist/index.mjs" });
await chmod("dist/noseroom.mjs", 0o755);
if (process.argv.includes("--bench")) {
  await build({ ...node, entryPoints: ["test/bench/bench.ts"], outfile: "dist/bench.mjs", banner: { js: requireBanner } });
}
