/**
 * What the project stands on: each direct dependency has its line in DEVELOPERS.md, every package in the lock has a
 * licence that a shop may use and ship, and nothing is fetched but what the lock names by its hash.
 * Source: package.json, package-lock.json (npm's lockfile version 3), licence names after SPDX.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const read = (name: string) => readFileSync(new URL(`../${name}`, import.meta.url), "utf8");
const own = JSON.parse(read("package.json")) as {
  readonly dependencies?: Record<string, string>;
  readonly devDependencies: Record<string, string>;
};

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly dependencies?: Record<string, string>;
}
const lock = JSON.parse(read("package-lock.json")) as { readonly packages: Record<string, Locked> };
const locked = Object.entries(lock.packages).filter(([path]) => path !== "");

/** May be shipped in the bundle. */
const SHIPPED = [
  "MIT",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "0BSD",
  "Zlib",
  "Unlicense",
  "CC0-1.0",
];
/** May be used to build and test besides. */
const USED = [
  ...SHIPPED,
  "MPL-2.0",
  "EPL-1.0",
  "EPL-2.0",
  "EDL-1.0",
  "BlueOak-1.0.0",
  "CC-BY-4.0",
  "Python-2.0",
];

/** Whether an SPDX expression can be met from a list: any side of OR, every side of AND. */
function allowed(expression: string, list: readonly string[]): boolean {
  const plain = expression.replace(/[()]/g, "");
  return plain.split(" OR ").some((side) => side.split(" AND ").every((name) => list.includes(name.trim())));
}

/** Old packages that name their licence in a file of their own, not in the field: read there by hand. */
const READ_BY_HAND: Readonly<Record<string, string>> = {};

/** Packages that src and web import, and all that these need in turn. */
function bundled(): Set<string> {
  const names = new Set<string>();
  const add = (name: string): void => {
    const entry = lock.packages[`node_modules/${name}`];
    if (names.has(name) || entry === undefined) return;
    names.add(name);
    for (const needed of Object.keys(entry.dependencies ?? {})) add(needed);
  };
  for (const folder of ["src", "web"])
    for (const file of readdirSync(new URL(`../${folder}/`, import.meta.url), {
      recursive: true,
      encoding: "utf8",
    }))
      if (/\.tsx?$/.test(file))
        for (const [, name] of read(`${folder}/${file}`).matchAll(/from "((?:@[^/"]+\/)?[^./"][^/"]*)/g))
          add(name!);
  return names;
}

function licenceOf(path: string, entry: Locked): string {
  return entry.license ?? READ_BY_HAND[path.replace(/^.*node_modules\//, "")] ?? "none named";
}

describe("dependencies", () => {
  it("have a reason each", () => {
    const reasons = read("DEVELOPERS.md").split("## Dependencies")[1] ?? "";
    expect(Object.keys(own.devDependencies).filter((name) => !reasons.includes(`\`${name}\``))).toEqual([]);
  });

  it("are all for building and testing: what is shipped is bundled, so that who installs needs nothing else", () => {
    expect(own.dependencies).toBeUndefined();
  });

  it("are named by an exact version", () => {
    const versions = Object.values(own.devDependencies);
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  it("are locked with a hash each", () => {
    expect(locked.length).toBeGreaterThan(50);
    expect(locked.filter(([, entry]) => entry.integrity === undefined).map(([path]) => path)).toEqual([]);
  });

  it("that are shipped have a licence that lets them be", () => {
    const inBundles = bundled();
    const shipped = locked.filter(([path]) => inBundles.has(path.replace(/^.*node_modules\//, "")));
    expect(shipped.length).toBeGreaterThan(8);
    const wrong = shipped.filter(([path, entry]) => !allowed(licenceOf(path, entry), SHIPPED));
    expect(wrong.map(([path, entry]) => `${path}: ${licenceOf(path, entry)}`)).toEqual([]);
  });

  it("that build and test have a licence that lets them be used", () => {
    const wrong = locked.filter(([path, entry]) => !allowed(licenceOf(path, entry), USED));
    expect(wrong.map(([path, entry]) => `${path}: ${licenceOf(path, entry)}`)).toEqual([]);
  });

  it("are told apart by licence", () => {
    expect(allowed("(MPL-2.0 OR Apache-2.0)", SHIPPED)).toBe(true);
    expect(allowed("MPL-2.0", SHIPPED)).toBe(false);
    expect(allowed("MIT AND GPL-3.0", USED)).toBe(false);
  });
});
