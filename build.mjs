// Builds all that the package holds: the command (dist/noseroom.mjs), the engine (dist/index.mjs) with its types (dist/types/),
// the page (dist/site/ for any static host, dist/noseroom.html alone) and the licences of what was bundled (dist/LICENCES.txt);
// with --bench the benchmark too.
// The command keeps no install step of its own: Node built-ins only from outside. It starts from dist/noseroom.mjs, and all that it
// runs lies in dist/command/.
import { execFileSync } from "node:child_process";
import { chmod, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { build as bundle } from "esbuild";
import ts from "typescript";
import { examplesForEsbuild } from "./examples/asModules.mjs";
import { buildPage, readerOnly } from "./web/build.mjs";

const node = { bundle: true, platform: "node", target: "node20", format: "esm", logLevel: "warning" };
// commander is CommonJS inside; in an ESM bundle it needs a require of its own for Node built-ins.
const requireBanner =
  'import { createRequire as nodeRequire } from "node:module"; const require = nodeRequire(import.meta.url);';
const { version } = JSON.parse(await readFile("package.json", "utf8"));

/** Packages that went into some bundle. */
const bundled = new Set();

async function build(options) {
  const result = await bundle({ ...options, metafile: true });
  for (const path of Object.keys(result.metafile.inputs)) {
    const name = /node_modules\/((?:@[^/]+\/)?[^/]+)\/(?!.*node_modules)/.exec(path)?.[1];
    if (name) bundled.add(name);
  }
  return result;
}

/** Their licences ask that their words go along with the code. */
async function writeLicences() {
  const texts = await Promise.all(
    [...bundled].toSorted().map(async (name) => {
      const folder = `node_modules/${name}/`;
      const file = (await readdir(folder)).find((one) => /^licen[cs]e/i.test(one));
      const { license } = JSON.parse(await readFile(`${folder}package.json`, "utf8"));
      return `${name} (${license})\n\n${file ? await readFile(folder + file, "utf8") : ""}`;
    }),
  );
  await writeFile("dist/LICENCES.txt", texts.join(`\n${"-".repeat(80)}\n\n`));
}

/**
 * The engine's types. A file whose types come out of a schema is written with these types spelled out, so that who installs
 * the package needs nothing else.
 */
function writeTypes() {
  const config = ts.getParsedCommandLineOfConfigFile("tsconfig.types.json", {}, ts.sys);
  const program = ts.createProgram(config.fileNames, config.options);
  const checker = program.getTypeChecker();
  const spelled = ts.TypeFormatFlags.NoTruncation | ts.TypeFormatFlags.InTypeAlias;
  const fromSchema = (file, text) => {
    const said = checker.getExportsOfModule(checker.getSymbolAtLocation(file)).map((symbol) => {
      if (symbol.flags & ts.SymbolFlags.Interface) return symbol.declarations[0].getText();
      if (!(symbol.flags & ts.SymbolFlags.TypeAlias)) return "";
      const type = checker.typeToString(checker.getDeclaredTypeOfSymbol(symbol), undefined, spelled);
      return `export type ${symbol.name} = ${type};`;
    });
    return [...(text.match(/^import .* from "\..*";$/gm) ?? []), ...said].join("\n");
  };
  const wrong = ts.getPreEmitDiagnostics(program);
  program.emit(undefined, (path, text, mark, _onError, [file]) => {
    const plain = /from "zod"/.test(text) ? fromSchema(file, text) : text;
    ts.sys.writeFile(path, plain.replaceAll(/(from |import\()"(\.[^"]+)\.ts"/g, '$1"$2.js"'), mark);
  });
  if (wrong.length > 0)
    throw new Error(
      ts.formatDiagnostics(wrong, {
        ...ts.sys,
        getCanonicalFileName: (name) => name,
        getNewLine: () => "\n",
      }),
    );
}

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

for (const old of ["command", "types", "site", "page"])
  await rm(`dist/${old}`, { recursive: true, force: true });
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
  entryPoints: ["src/cli/command.ts"],
  outfile: "dist/command/noseroom.cjs",
  define: { ...command.define, "import.meta.url": "commandUrl" },
  plugins: [examplesForEsbuild, noOtherProgram, readerOnly],
  banner: { js: "(function (require, commandUrl) { const module = { exports: {} };" },
  footer: { js: "})" },
});
keepCompiled("dist/command/noseroom.cjs", "dist/command/noseroom.compiled");
await build({
  ...node,
  platform: "neutral",
  mainFields: ["module", "main"],
  minifySyntax: true,
  minifyWhitespace: true,
  entryPoints: ["src/index.ts"],
  outfile: "dist/index.mjs",
});
await buildPage(examplesForEsbuild, build);
await writeLicences();
writeTypes();
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
