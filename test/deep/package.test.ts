/**
 * The package as a stranger gets it: packed, installed in an empty folder with nothing else and without a network, its command
 * run, its types compiled and its functions called by a small program. Source: npm's and TypeScript's own resolution.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));
const TSC = join(root, "node_modules/typescript/bin/tsc");
const LARGEST_BYTES = 3_000_000;
/** What npm may not do here: ask the registry, or tell of updates. */
const env = { ...process.env, npm_config_offline: "true", npm_config_update_notifier: "false" };

const CONSUMER = `import { check, type Job, type JobFile, readJob, verdictSentence, writeJob } from "noseroom";

export function answered(text: string): string {
  const result = readJob(text);
  if (!result.ok) return result.problems.map(({ path, found, allowed }) => [path, found, allowed].join()).join();
  const job: Job = result.job;
  const file: JobFile = { ...result.file, units: "mm" };
  const bends: number = file.part.bends.length;
  const { verdict, order } = check(job);
  const ends: ("start" | "end")[] = order.map(({ clamped }) => clamped);
  return [verdict satisfies "clear" | "tight" | "hits", verdictSentence(job, check(job)), ...ends, bends, writeJob(file)].join();
}
// @ts-expect-error a job is no text: the types are there, not any
check("text");
`;
const PROGRAM = `import { readFileSync } from "node:fs";
import { check, drawBlank, readJob, writeSvg } from "noseroom";
const read = readJob(readFileSync(process.argv[2], "utf8"));
console.log(read.ok && check(read.job).verdict);
console.log(writeSvg(drawBlank(read.job, check(read.job))).slice(0, 4));
`;

let folder = "";
let tarball = "";
const run = (program: string, ...args: string[]) =>
  execFileSync(program, args, { cwd: folder, env, encoding: "utf8" });

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-package-"));
  execFileSync("npm", ["pack", "--ignore-scripts", "--pack-destination", folder], { cwd: root, env });
  tarball = readdirSync(folder).find((name) => name.endsWith(".tgz"))!;
  writeFileSync(join(folder, "package.json"), '{ "name": "consumer", "private": true, "type": "module" }');
  run("npm", "install", "--no-audit", "--no-fund", `./${tarball}`);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it("is under 3 MB, and brings no other package along", () => {
  expect(statSync(join(folder, tarball)).size).toBeLessThan(LARGEST_BYTES);
  const installed = readdirSync(join(folder, "node_modules")).filter((name) => !name.startsWith("."));
  expect(installed).toEqual(["noseroom"]);
});

it("runs its command", () => {
  const example = "node_modules/noseroom/examples/cable-trough-bar.json";
  expect(run("npx", "noseroom", "check", example)).toMatch(/^Folds\./u);
});

it.each([
  ["nodenext", "nodenext"],
  ["bundler", "esnext"],
])("compiles in a program that resolves as %s", (moduleResolution, module) => {
  const compilerOptions = {
    ...{ module, moduleResolution, target: "es2022", lib: ["es2023"], types: [], noEmit: true },
    ...{ strict: true, exactOptionalPropertyTypes: true, skipLibCheck: false },
  };
  writeFileSync(join(folder, "consumer.ts"), CONSUMER);
  writeFileSync(join(folder, "tsconfig.json"), JSON.stringify({ compilerOptions, files: ["consumer.ts"] }));
  expect(run(process.execPath, TSC, "-p", ".")).toBe("");
});

it("answers a job and draws its blank", () => {
  writeFileSync(join(folder, "program.js"), PROGRAM);
  const example = "node_modules/noseroom/examples/cable-trough-bar.json";
  expect(run(process.execPath, "program.js", example)).toBe("clear\n<svg\n");
});

it("holds a page that any static host can serve", () => {
  const site = join(folder, "node_modules/noseroom/dist/site");
  const page = readFileSync(join(site, "index.html"), "utf8");
  const named = [...page.matchAll(/(?:src|href)="([^":]+)"/gu)].map(([, name]) => name!);
  expect(named.length).toBeGreaterThan(2);
  expect(readdirSync(site)).toEqual(expect.arrayContaining([...named, "offline.js"]));
});
