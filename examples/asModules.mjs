// Hands the files of this folder to whoever imports "noseroom:examples" and its like (src/cli/examples.d.ts): a plugin for
// esbuild, which builds command and page, and one for Vite, which runs the tests. Order and lines: the table in README.md.
import { readdir, readFile } from "node:fs/promises";

const here = new URL("./", import.meta.url);
const textOf = (path) => readFile(new URL(path, here), "utf8");

/** The files of a folder as text, and what each teaches. */
async function examplesIn(folder) {
  const table = await textOf("README.md");
  const rows = [...table.matchAll(/^\| `((?:(?:shop|whole)\/)?)([\w-]+)\.json` +\| (.+?) +\|$/gm)];
  const lines = rows.flatMap(([, place, name, line]) => (place === folder ? [[name, line]] : []));
  const files = (await readdir(new URL(`./${folder}`, here))).filter((name) => name.endsWith(".json"));
  const missing = files.filter((file) => !lines.some(([name]) => `${name}.json` === file));
  if (missing.length > 0) throw new Error(`examples/README.md has no line for ${missing.join(", ")}`);
  const texts = await Promise.all(lines.map(async ([name]) => [name, await textOf(`${folder}${name}.json`)]));
  return { texts: Object.fromEntries(texts), lines: Object.fromEntries(lines) };
}

const MODULES = {
  "noseroom:examples": async () => (await examplesIn("")).texts,
  "noseroom:example-lines": async () => (await examplesIn("")).lines,
  "noseroom:example-shops": () => examplesIn("shop/"),
  "noseroom:example-wholes": () => examplesIn("whole/"),
};

export const examplesForEsbuild = {
  name: "examples",
  setup(esbuild) {
    esbuild.onResolve({ filter: /^noseroom:example/ }, ({ path }) => ({ path, namespace: "examples" }));
    esbuild.onLoad({ filter: /.*/, namespace: "examples" }, async ({ path }) => ({
      contents: JSON.stringify(await MODULES[path]()),
      loader: "json",
    }));
  },
};

export const examplesForVite = {
  name: "examples",
  resolveId: (id) => (id in MODULES ? `\0${id}` : undefined),
  load: async (id) =>
    id.startsWith("\0noseroom:")
      ? `export default ${JSON.stringify(await MODULES[id.slice(1)]())}`
      : undefined,
};
