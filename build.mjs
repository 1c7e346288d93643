// Bundles the command (dist/noseroom.mjs), the engine (dist/index.mjs) and the page (dist/page/, dist/noseroom.html);
// with --bench the benchmark too.
// The command keeps no install step of its own: Node built-ins only from outside. It starts from dist/noseroom.mjs, and all that it
// runs lies in dist/command/.
import { execFileSync } from "node:child_process";
import { chmod, readFile, rm } from "node:fs/promises";
import { build } from "esbuild";
import { examplesForEsbuild } from "./examples/asModules.mjs";
import { buildPage } from "./web/build.mjs";

const node = { bundle: true, platform: "node", target: "node20", format: "esm", logLevel: "warning" };
// commander is CommonJS inside; in an ESM bundle it needs a require of its own for Node built-ins.
const requireBanner =
  'import { createRequire as nodeRequire } from "node:module"; const require = nodeRequire(import.meta.url);';
const { version } = JSON.parse(await readFile("package.json", "utf8"));

/** Runs the command once on an example, in the way of start.ts, and keeps for that what V8 has compiled by then. */
function keepCompiled(path, compiledPath) {
  const run = `
    import { readFileSync, writeFileSync } from "node:fs";
    import { createRequire } from "node:module";
    import { resolve } from "node:path";
    import { pathToFileURL } from "node:url";
    import { Script } from "node:vm";
    const path = resolve(${JSON.stringify(path)});
    const script = new Script(readFileSync(path, "utf8"), { filename: path });
    process.execArgv = [];
    process.argv = [process.execPath, "noseroom", "check", "examples/cable-trough-bar.json"];
    process.on("exit", () => writeFileSync(${JSON.stringify(compiledPath)}, script.createCachedData()));
    script.runInThisContext()(createRequire(pathToFileURL(path)), pathToFileURL(path).href);`;
  execFileSync(process.execPath, ["--input-type=module", "-e", run]);
}

/** The command starts no other program; to be able to would cost every start of its own four thousandths of a second. */
const noOtherProgram = {
  name: "no-other-program",
  setup(esbuild) {
    esbuild.onResolve({ filter: /^node:child_process$/ }, () => ({
      path: "none",
      namespace: "no-other-program",
    }));
    esbuild.onLoad({ filter: /.*/, namespace: "no-other-program" }, () => ({
      contents: "module.exports = {};",
    }));
  },
};

await rm("dist/command", { recursive: true, force: true });
const command = { ...node, minify: true, define: { NOSEROOM_VERSION: JSON.stringify(version) } };
await build({ ...command, entryPoints: ["src/cli/start.ts"], outfile: "dist/noseroom.mjs" });
await build({
  ...command,
  entryPoints: ["src/cli/searchThread.ts"],
  outfile: "dist/command/searchThread.mjs",
});
// Run by start.ts, which hands it these two names.
await build({
  ...command,
  format: "cjs",
  supported: { "dynamic-import": false },
  entryPoints: ["src/cli/main.ts"],
  outfile: "dist/command/noseroom.cjs",
  define: { ...command.define, "import.meta.url": "commandUrl" },
  plugins: [examplesForEsbuild, noOtherProgram],
  banner: { js: "(function (require, commandUrl) { const module = { exports: {} };" },
  footer: { js: "})" },
});
keepCompiled("dist/command/noseroom.cjs", "dist/command/noseroom.compiled");
await build({
  ...node,
  platform: "neutral",
  mainFields: ["module", "main"],
  entryPoints: ["src/index.ts"],
  outfile: "dist/index.mjs",
});
await buildPage(examplesForEsbuild);
await chmod("dist/noseroom.mjs", 0o755);
if (process.argv.includes("--bench")) {
  await build({
    ...node,
    entryPoints: ["test/bench/bench.ts"],
    outfile: "dist/bench.mjs",
    external: ["paper"],
    banner: { js: requireBanner },
  });
}
