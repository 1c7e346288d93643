/**
 * The truths and the engine in one file for a worker, with one file of the engine changed. All other files stay as they are,
 * so that they keep their speed.
 */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { build, type Plugin } from "esbuild";

const HERE = resolve("test/mutants");
export const SWITCH = `${HERE}/switch.ts`;

/** Writes the bundle to `outfile`; `cover` makes it note which mutants' places are passed. */
export async function bundleTruths(
  outfile: string,
  truthFiles: readonly string[],
  changed: { readonly file: string; readonly text: string },
  cover: boolean,
): Promise<void> {
  const changedPath = resolve(changed.file);
  const plugin: Plugin = {
    name: "mutants",
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^vitest$/ }, () => ({ path: `${HERE}/collect.ts` }));
      onLoad({ filter: /\.ts$/ }, ({ path }) => {
        if (path === changedPath) return { contents: changed.text, loader: "ts" };
        if (!path.startsWith(resolve("test"))) return undefined;
        // Files that lie beside a test are found where the test was written, not where its bundle is.
        const url = JSON.stringify(pathToFileURL(path).href);
        return { contents: readFileSync(path, "utf8").replaceAll("import.meta.url", url), loader: "ts" };
      });
    },
  };
  const imports = [SWITCH, ...truthFiles.map((file) => resolve(file)), `${HERE}/worker.ts`];
  await build({
    stdin: {
      contents: imports.map((path) => `import ${JSON.stringify(path)};`).join("\n"),
      resolveDir: HERE,
      loader: "ts",
    },
    outfile,
    bundle: true,
    platform: "node",
    target: "node20",
    format: "esm",
    minifySyntax: true,
    logLevel: "error",
    define: { LEARN_COVER: String(cover) },
    plugins: [plugin],
    banner: {
      js: 'import { createRequire as nodeRequire } from "node:module"; const require = nodeRequire(import.meta.url);',
    },
  });
}
