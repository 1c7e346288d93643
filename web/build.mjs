// Bundles the page twice from one source: dist/site/ (served, installs for use without a network) and
// dist/noseroom.html (one file, opened from disk). Both carry a strict Content-Security-Policy.
import { createHash } from "node:crypto";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { inflateSync } from "node:zlib";

const browser = {
  bundle: true,
  format: "iife",
  target: "es2022",
  minify: true,
  legalComments: "none",
  logLevel: "warning",
  write: false,
};
const script = { ...browser, jsx: "automatic", jsxImportSource: "preact", external: [] };

/** What the library packs with deflate and base64. */
const unpacked = (packed) => JSON.parse(inflateSync(Buffer.from(packed, "base64")).toString("utf8"));

/** Codes of the one encoding by the names of their letters; the names are long and go no further. */
const codesIn = (win1252) => new Map(Object.values(win1252).map(([code, name]) => [name, code]));

/**
 * Printed words are measured in two faces and one encoding only, and by the widths of their letters: these go into the
 * script as they are, so that the whole script is packed once and brings nothing to unpack with.
 */
const widthsOnly = {
  name: "widths-only",
  setup(esbuild) {
    const json = (value) => ({ contents: JSON.stringify(JSON.stringify(value)), loader: "json" });
    const all = async (path) => unpacked(JSON.parse(await readFile(path, "utf8")));
    esbuild.onLoad({ filter: /standard-fonts.+\.compressed\.json$/ }, async ({ path }) => {
      if (/all-encodings/.test(path)) {
        const { win1252 } = await all(path);
        const codes = codesIn(win1252);
        const letters = Object.entries(win1252).map(([letter, [code, name]]) => [
          letter,
          [code, codes.get(name)],
        ]);
        return json({ symbol: {}, zapfdingbats: {}, win1252: Object.fromEntries(letters) });
      }
      if (!/Helvetica(-Bold)?\.compressed/.test(path)) return json("");
      const codes = codesIn((await all(path.replace(/[^/\\]+$/, "all-encodings.compressed.json"))).win1252);
      const { CharMetrics } = await all(path);
      const widths = CharMetrics.filter(({ N }) => codes.has(N)).map(({ N, WX }) => ({
        N: codes.get(N),
        WX,
      }));
      return json({ CharMetrics: widths, KernPairs: [] });
    });
    esbuild.onLoad({ filter: /standard-fonts.es.utils\.js$/ }, async ({ path }) => {
      const whole = await readFile(path, "utf8");
      return {
        contents: `export const decompressJson = (json) => json;\n${whole.slice(whole.indexOf("export var padStart"))}`,
      };
    });
  },
};

/** Of the library that reads drawings only its reader, from its sources: its package is written for browsers long gone. */
export const readerOnly = {
  name: "reader-only",
  setup(esbuild) {
    esbuild.onResolve({ filter: /^dxf$/ }, ({ resolveDir }) => ({
      path: resolveDir,
      namespace: "reader-only",
    }));
    esbuild.onLoad({ filter: /.*/, namespace: "reader-only" }, ({ path }) => ({
      contents: 'export { default as parseString } from "dxf/src/parseString.js";',
      resolveDir: path,
    }));
  },
};

/** The reader of job files holds shapes against values; it writes no schema for others, and leaves out what would. */
const noSchemaForOthers = {
  name: "no-schema-for-others",
  setup(esbuild) {
    esbuild.onLoad(
      { filter: /zod.v4.core.(to-json-schema|json-schema-processors)\.js$/ },
      async ({ path }) => {
        const text = await readFile(path, "utf8");
        const names = [...text.matchAll(/^export (?:const|function|class) (\w+)/gm)].map(([, name]) => name);
        return { contents: names.map((name) => `export const ${name} = () => () => {};`).join("\n") };
      },
    );
    // Slips are told in our own words, not in the library's.
    esbuild.onLoad({ filter: /zod.v4.locales.en\.js$/ }, () => ({ contents: "export default () => ({});" }));
    // No key of ours is an address, a date or the like: their patterns match nothing.
    esbuild.onLoad({ filter: /zod.v4.core.regexes\.js$/ }, async ({ path }) => {
      const text = await readFile(path, "utf8");
      const long = /^((?:export )?const \w+ = )[/`].{40,}$/gm;
      return { contents: text.replace(long, "$1/(?!)/;") };
    });
    // Compiled readers are off (src/jobFile/shapes.ts).
    esbuild.onLoad({ filter: /zod.v4.core.doc\.js$/ }, () => ({ contents: "export class Doc {}" }));
  },
};

/** Of the libraries for drawings and job files what no page of ours reads or writes; shapes that are passed over keep their names. */
const unused = {
  name: "unused",
  setup(esbuild) {
    for (const filter of [
      /json5.lib.stringify\.js$/,
      /dxf-writer.src.(Cylinder|Ellipse|Face|Line3d|Point|Polyline3d|Spline)\.js$/,
    ])
      esbuild.onLoad({ filter }, () => ({ contents: "module.exports = null;" }));
    esbuild.onLoad({ filter: /dxf.src.handlers.objects\.js$/ }, () => ({
      contents: "export default () => ({ layouts: [] });",
    }));
    const passedOver =
      /dxf.src.handlers.entity.(attdef|attrib|dimension|hatch|ole2Frame|solid|threeDFace|viewport)\.js$/;
    esbuild.onLoad({ filter: passedOver }, async ({ path }) => {
      const type = /TYPE = .*?['"](\w+)['"]/.exec(await readFile(path, "utf8"))[1];
      const layer = "layer: tuples.find(([code]) => code === 8)?.[1]";
      return {
        contents: `export default { TYPE: "${type}", process: (tuples) => ({ type: "${type}", ${layer} }) };`,
      };
    });
  },
};

/** The examples without the blanks and line ends that are there for people; what each teaches stays with the command. */
const short = (examples) => ({
  name: "short-examples",
  setup(esbuild) {
    const shortened = (key, value) => {
      if (key === "lines") return {};
      return typeof value === "string" && value.startsWith("{") ? JSON.stringify(JSON.parse(value)) : value;
    };
    examples.setup({
      onResolve: (...more) => esbuild.onResolve(...more),
      onLoad: (which, load) =>
        esbuild.onLoad(which, async (args) => {
          const { contents, loader } = await load(args);
          return { contents: JSON.stringify(JSON.parse(contents, shortened)), loader };
        }),
    });
  },
});

/** Which letters a name may have: browsers know the classes that the library spells out letter by letter. */
const lettersByClass = {
  name: "letters-by-class",
  setup(esbuild) {
    const named = ["ID_Start", "ID_Continue"].map((name) => `export const ${name} = /\\p{${name}}/u;`);
    const contents = ["export const Space_Separator = /\\p{Zs}/u;", ...named].join("\n");
    esbuild.onLoad({ filter: /json5.lib.unicode\.js$/ }, () => ({ contents }));
  },
};

const hashOf = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
/** Inside a script element only the element's own end tag and comment openings matter. */
const asInlineScript = (code) => code.replaceAll("</script", "<\\/script").replaceAll("<!--", "<\\!--");
const policy = (rules) =>
  Object.entries(rules)
    .map(([name, value]) => `${name} ${value}`)
    .join("; ");
const withPolicy = (html, rules) =>
  html.replace(
    "<!--policy-->",
    () => `<meta http-equiv="Content-Security-Policy" content="${policy(rules)}">`,
  );

const closed = {
  "default-src": "'none'",
  "base-uri": "'none'",
  "form-action": "'none'",
  "object-src": "'none'",
  "require-trusted-types-for": "'script'",
  "trusted-types": "noseroom",
};
/** The policy of the served page; the server sends it as a header too, with frame-ancestors added. */
export const servedPolicy = {
  ...closed,
  "script-src": "'self'",
  "style-src": "'self'",
  "img-src": "'self' blob:",
  "worker-src": "'self'",
  "manifest-src": "'self'",
  "connect-src": "'self'",
};

/**
 * Writes dist/site/ and dist/noseroom.html. `examples` is the plugin that hands over the files of examples/, `build` esbuild's
 * or one that does more.
 */
export async function buildPage(examples, build) {
  const bundled = async (entry, plugins = []) => {
    const options = entry.endsWith(".css") ? browser : script;
    const result = await build({ ...options, entryPoints: [entry], plugins });
    return result.outputFiles[0].text;
  };
  const html = await readFile("web/index.html", "utf8");
  const icon = await readFile("web/icon.svg", "utf8");
  const manifest = await readFile("web/manifest.webmanifest", "utf8");
  const [style, code] = await Promise.all([
    bundled("web/style/style.css"),
    bundled("web/start.ts", [
      short(examples),
      widthsOnly,
      readerOnly,
      lettersByClass,
      noSchemaForOthers,
      unused,
    ]),
  ]);
  await mkdir("dist/site", { recursive: true });
  const page = withPolicy(html, servedPolicy)
    .replace("<!--style-->", '<link rel="stylesheet" href="style.css">')
    .replace(
      "<!--links-->",
      '<link rel="manifest" href="manifest.webmanifest"><link rel="icon" href="icon.svg">',
    )
    .replace("<!--script-->", '<script src="page.js"></script>');
  const files = {
    "index.html": page,
    "style.css": style,
    "page.js": code,
    "icon.svg": icon,
    "manifest.webmanifest": manifest,
  };
  const version = createHash("sha256").update(JSON.stringify(files)).digest("hex").slice(0, 12);
  const offline = (await bundled("web/worker/offline.ts")).replaceAll("VERSION_OF_THIS_BUILD", version);
  await Promise.all(
    Object.entries({ ...files, "offline.js": offline }).map(([name, text]) =>
      writeFile(`dist/site/${name}`, text),
    ),
  );

  const inline = asInlineScript(code);
  const single = withPolicy(html, {
    ...closed,
    "script-src": hashOf(inline),
    "style-src": hashOf(style),
    "img-src": "blob: data:",
    "worker-src": "blob:",
  })
    .replace("<!--style-->", () => `<style>${style}</style>`)
    .replace("<!--links-->", '<link rel="icon" href="data:,">')
    .replace("<!--script-->", () => `<script>${inline}</script>`);
  await writeFile("dist/noseroom.html", single);
}
