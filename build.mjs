// Bundles the command (dist/noseroom.mjs), the engine (dist/index.mjs) and the page (dist/page/, dist/noseroom.html);
// with --bench the benchmark too.
// The command keeps no install step of its own: one file, Node built-ins only from outside.
import { chmod, readdir, readFile } from "node:fs/promises";
import { build } from "esbuild";
import { buildPage } from "./web/build.mjs";

const node = { bundle: true, platform: "node", target: "node20", format: "esm", logLevel: "warning" };
// commander is CommonJS inside; in an ESM bundle it needs a require of its own for Node built-ins.
const requireBanner =
  'import { createRequire as nodeRequire } from "node:module"; const require = nodeRequire(import.meta.url);';
const { version } = JSON.parse(await readFile("package.json", "utf8"));

/** Gives the command the job files of examples/ as text; the folder is the list. */
const exampleFiles = {
  name: "example-files",
  setup(esbuild) {
    esbuild.onResolve({ filter: /^noseroom:examples$/ }, (args) => ({
      path: args.path,
      namespace: "example-files",
    }));
    esbuild.onLoad({ filter: /.*/, namespace: "example-files" }, async () => {
      const names = (await readdir("examples")).filter((name) => name.endsWith(".json")).sort();
      const texts = await Promise.all(
        names.map(async (name) => [name.slice(0, -5), await readFile(`examples/${name}`, "utf8")]),
      );
      return { contents: JSON.stringify(Object.fromEntries(texts)), loader: "json" };
    });
  },
};

await build({
  ...node,
  entryPoints: ["src/cli/main.ts"],
  outfile: "dist/noseroom.mjs",
  minify: true,
  define: { NOSEROOM_VERSION: JSON.stringify(version) },
  plugins: [exampleFiles],
  banner: { js: `#!/usr/bin/env node\n${requireBanner}` },
});
await build({
  ...node,
  platform: "neutral",
  mainFields: ["module", "main"],
  entryPoints: ["src/index.ts"],
  outfile: "dist/index.mjs",
});
await buildPage(exampleFiles);
await chmod("dist/noseroom.mjs", 0o755);
if (process.argv.includes("--bench")) {
  await build({
    ...node,
    entryPoints: ["test/bench/bench.ts"],
    outfile: "dist/bench.mjs",
    banner: { js: requireBanner },
  });
}
