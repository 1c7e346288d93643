/**
 * The house rules that a machine can hold: which room may import which, no circles, an engine that knows no machine it
 * runs on, short files with a header, and words that stay out. Source: the project's own rules (DEVELOPERS.md).
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { dirname, join, normalize } from "node:path/posix";
import { fileURLToPath } from "node:url";
import { runInNewContext } from "node:vm";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../", import.meta.url));

/** Rooms from left to right; a room imports from its left only, never from a neighbour in the same place. */
const PLACES = [
  ["units"],
  ["plane"],
  ["drawing"],
  ["metal"],
  ["part", "brake"],
  ["motion"],
  ["contact"],
  ["order"],
  ["section"],
  ["pattern"],
  ["blank"],
  ["jobFile"],
  ["words"],
  ["answer"],
  ["narrowBrake"],
  ["ways"],
  ["pictures"],
  ["index.ts"],
  ["cli", "web"],
];
const DOORS = ["cli", "web"];
/** Counted with every engine file, so that a rule over no files at all cannot pass. */
const LEAST_FILES = 60;

interface SourceFile {
  readonly path: string;
  readonly room: string;
  readonly text: string;
  readonly imports: readonly string[];
}

function listed(folder: string): string[] {
  return readdirSync(root + folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length));
}

function roomOf(path: string): string {
  const [top, room] = path.split("/");
  return top === "web" ? "web" : room!;
}

function sourceFile(path: string): SourceFile {
  const text = readFileSync(root + path, "utf8");
  const imports = ts.preProcessFile(text).importedFiles.map((file) => file.fileName);
  return { path, room: roomOf(path), text, imports };
}

const files = [...listed("src"), ...listed("web")]
  .filter((path) => /\.[cm]?tsx?$/.test(path))
  .map(sourceFile);
const engine = files.filter((file) => !DOORS.includes(file.room));

/** Files of the project that a file names, by their path from the root. */
function namedBy(file: SourceFile): string[] {
  return file.imports
    .filter((name) => name.startsWith("."))
    .map((name) => normalize(join(dirname(file.path), name)));
}

function placeOf(room: string): number {
  return PLACES.findIndex((rooms) => rooms.includes(room));
}

/** A circle of files that name each other, or undefined. */
function circleIn(naming: ReadonlyMap<string, readonly string[]>): string[] | undefined {
  const finished = new Set<string>();
  const walk = (path: string, way: readonly string[]): string[] | undefined => {
    if (way.includes(path)) return [...way.slice(way.indexOf(path)), path];
    if (finished.has(path)) return undefined;
    for (const next of naming.get(path) ?? []) {
      const circle = walk(next, [...way, path]);
      if (circle) return circle;
    }
    finished.add(path);
    return undefined;
  };
  for (const path of naming.keys()) {
    const circle = walk(path, []);
    if (circle) return circle;
  }
  return undefined;
}

/** What every JavaScript engine knows, and the types that come with the language. */
const LANGUAGE = new Set([
  ...(runInNewContext("Object.getOwnPropertyNames(globalThis)") as string[]).filter(
    (name) => name !== "console",
  ),
  ..."const Readonly Partial Record Pick Omit Exclude Extract NonNullable Parameters ReturnType".split(" "),
  ..."ReadonlyArray ReadonlyMap ReadonlySet Iterable Iterator IterableIterator Generator".split(" "),
  ..."ArrayLike PropertyKey PropertyDescriptor Required Awaited ArrayBufferLike".split(" "),
]);

/** Names that a text uses without having declared or imported them, and that the language does not bring. */
function strangersIn(text: string): string[] {
  const declared = new Set<string>();
  const used = new Set<string>();
  const walk = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) {
      const { parent } = node;
      const names = parent as { readonly name?: ts.Node; readonly propertyName?: ts.Node };
      if (ts.isPropertyAccessExpression(parent) || ts.isQualifiedName(parent)) {
        if ((ts.isQualifiedName(parent) ? parent.left : parent.expression) === node) used.add(node.text);
      } else if (names.name === node) {
        if (ts.isShorthandPropertyAssignment(parent)) used.add(node.text);
        else if (!ts.isPropertyAssignment(parent)) declared.add(node.text);
      } else if (names.propertyName !== node) used.add(node.text);
    }
    ts.forEachChild(node, walk);
  };
  walk(ts.createSourceFile("file.ts", text, ts.ScriptTarget.Latest, true));
  return [...used].filter((name) => !declared.has(name) && !LANGUAGE.has(name));
}

/** Functions that take more than five things one after the other: `place(a, b, c, d, e, f)`. */
function longLists({ path, text }: SourceFile): string[] {
  const found: string[] = [];
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const walk = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && node.parameters.length > 5)
      found.push(`${path}: ${node.name?.getText() ?? "a function"} takes ${node.parameters.length}`);
    ts.forEachChild(node, walk);
  };
  walk(tree);
  return found;
}

/** The text without comments and quoted words, so that names alone are left. */
function namesIn(text: string): string {
  return text
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/\/\/.*$/gm, "")
    .replace(/`[^`]*`|"[^"\n]*"|'[^'\n]*'/g, '""');
}

describe("rooms", () => {
  it("are all known, and there are files in them", () => {
    expect(files.filter((file) => placeOf(file.room) < 0).map((file) => file.path)).toEqual([]);
    expect(engine.length).toBeGreaterThan(LEAST_FILES);
  });

  it("import leftwards only", () => {
    const wrong = files.flatMap((file) =>
      namedBy(file)
        .filter((path) => roomOf(path) !== file.room && placeOf(roomOf(path)) >= placeOf(file.room))
        .map((path) => `${file.path} imports ${path}`),
    );
    expect(wrong).toEqual([]);
  });

  it("name no file outside src and web", () => {
    const outside = files.flatMap((file) =>
      namedBy(file)
        .filter((path) => !/^(src|web)\//.test(path))
        .map((path) => `${file.path} imports ${path}`),
    );
    expect(outside).toEqual([]);
  });

  it("hold no circle of files", () => {
    expect(circleIn(new Map(files.map((file) => [file.path, namedBy(file)])))).toBeUndefined();
    // The finder itself, on a circle that is there.
    const ring = new Map([
      ["a", ["b"]],
      ["b", ["c"]],
      ["c", ["b"]],
    ]);
    expect(circleIn(ring)).toEqual(["b", "c", "b"]);
  });
});

describe("the engine", () => {
  it("knows neither Node nor a page nor the page's paper", () => {
    const foreign = engine.flatMap((file) =>
      file.imports
        .filter(
          (name) =>
            name.startsWith("node:") || /^(paper|preact)(\/|$)/.test(name) || builtinModules.includes(name),
        )
        .map((name) => `${file.path} imports ${name}`),
    );
    expect(foreign).toEqual([]);
  });

  it("uses no name that only Node or a page gives it", () => {
    expect(
      engine.flatMap((file) => strangersIn(file.text).map((name) => `${file.path} uses ${name}`)),
    ).toEqual([]);
    // The finder itself: a value, a type, and what only looks like one.
    const text =
      "const at: Point = { x: 1 }; const el: Element = document.body; Math.abs(at.window, { close });";
    expect(strangersIn(text)).toEqual(["Point", "Element", "document", "close"]);
  });

  it("leaves the geometry library to the tests", () => {
    const users = files.filter((file) => file.imports.some((name) => name.startsWith("@flatten-js")));
    expect(users.map((file) => file.path)).toEqual([]);
  });
});

describe("files", () => {
  it("are at most 300 lines long, or say on top why not", () => {
    const long = [
      ...files,
      ...listed("web")
        .filter((path) => path.endsWith(".css"))
        .map(sourceFile),
    ].filter(
      (file) =>
        file.text.split("\n").length > 301 &&
        !file.text.slice(0, 1200).includes("Longer than 300 lines because"),
    );
    expect(long.map((file) => file.path)).toEqual([]);
  });

  it("hold no function of more than five parameters", () => {
    expect(engine.flatMap(longLists)).toEqual([]);
  });

  it("start with a header that says what they are", () => {
    const bare = files.filter((file) => !/^(#!.*\n)?\/\*\*(\n \*)? \S.{20,}/.test(file.text));
    expect(bare.map((file) => file.path)).toEqual([]);
  });

  it("are named for their work, not for their helpfulness", () => {
    const vague = /(^|\/)[^/]*(util|helper|manager)[^/]*$/i;
    expect(files.map((file) => file.path).filter((path) => vague.test(path))).toEqual([]);
  });
});

describe("words", () => {
  it("of other machines stay out", () => {
    const texts = [
      ...files,
      ...[...listed("examples"), "README.md", "CHANGELOG.md", "web/index.html"]
        .filter((path) => /\.(md|json|html)$/.test(path))
        .map(sourceFile),
    ];
    const found = texts.filter((file) => /\b(punch(es)?|dies?|rams?)\b/i.test(file.text));
    expect(found.map((file) => file.path)).toEqual([]);
  });

  it("say which setback is meant, but for the key of the job file", () => {
    const bare = files.filter((file) =>
      /\b(const|let|var|function|class)\s+setbacks?\b/.test(namesIn(file.text)),
    );
    expect(bare.map((file) => file.path)).toEqual([]);
  });

  it("that put work off stay out", () => {
    // Put together here, so that this file does not find itself.
    const later = new RegExp(`\\b(TO${"DO"}|FIX${"ME"})\\b|not ${"implemented"}`, "i");
    const found = [
      ...files,
      ...listed("test")
        .filter((path) => path.endsWith(".ts"))
        .map(sourceFile),
    ].filter((file) => later.test(file.text));
    expect(found.map((file) => file.path)).toEqual([]);
  });
});

describe("DEVELOPERS.md", () => {
  const map = readFileSync(join(root, "DEVELOPERS.md"), "utf8");

  it("names only files and folders that are there", () => {
    const named = [...map.matchAll(/`((?:[A-Za-z0-9]+\/)+[A-Za-z0-9.]*)`/gu)].map(([, path]) => path!);
    const gone = named.filter((path) => {
      const places = ["", "src", "test", "src/narrowBrake"].map((folder) => join(root, folder, path));
      return !places.some((place) => ["", ".ts", ".tsx", ".test.ts"].some((end) => existsSync(place + end)));
    });
    expect(named.length).toBeGreaterThan(20);
    expect(gone).toEqual([]);
  });

  it("names only scripts that the package has", () => {
    const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
    const named = [...map.matchAll(/npm run ([a-z:]+)/gu)].map(([, name]) => name!);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});
