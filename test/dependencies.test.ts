/**
 * What the project stands on: each direct dependency has its line in DEVELOPERS.md, every package in the lock has a
 * licence that a shop may use and ship, and nothing is fetched but what the lock names by its hash.
 * Source: package.json, package-lock.json (npm's lockfile version 3), licence names after SPDX.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const read = (name: string) => readFileSync(new URL(`../${name}`, import.meta.url), "utf8");
const own = JSON.parse(read("package.json")) as Record<
  "dependencies" | "devDependencies",
  Record<string, string>
>;

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly dev?: boolean;
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

function licenceOf(path: string, entry: Locked): string {
  return entry.license ?? READ_BY_HAND[path.replace(/^.*node_modules\//, "")] ?? "none named";
}

describe("dependencies", () => {
  it.each(["dependencies", "devDependencies"] as const)("have a reason each (%s)", (kind) => {
    const reasons = read("DEVELOPERS.md").split("## Dependencies")[1] ?? "";
    const missing = Object.keys(own[kind]).filter((name) => !reasons.includes(`\`${name}\``));
    expect(missing).toEqual([]);
  });

  it("are named by an exact version", () => {
    const versions = Object.values({ ...own.dependencies, ...own.devDependencies });
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  it("are locked with a hash each", () => {
    expect(locked.length).toBeGreaterThan(50);
    expect(locked.filter(([, entry]) => entry.integrity === undefined).map(([path]) => path)).toEqual([]);
  });

  it("that are shipped have a licence that lets them be", () => {
    const shipped = locked.filter(([, entry]) => entry.dev !== true);
    expect(shipped.length).toBeGreaterThanOrEqual(Object.keys(own.dependencies).length);
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
