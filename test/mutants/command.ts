/**
 * The mutation run from the command line: which files, all mutants or a seeded sample; prints a row a file and a room, and
 * writes every mutant left to reports/mutants.json.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { parseArgs } from "node:util";
import { type Campaign, tryFile } from "./campaign.ts";
import type { Mutant } from "./instrument.ts";
import { isLeft, type Row, readJudged, reasonFor, rowOf, type Tried, table } from "./tally.ts";
import { truthFilesFor } from "./truthFiles.ts";

const ROOMS = ["src/motion", "src/contact", "src/sequence"];

const { values } = parseArgs({
  options: {
    file: { type: "string", multiple: true },
    truths: { type: "string", multiple: true },
    left: { type: "string" },
    most: { type: "string", default: "Infinity" },
    out: { type: "string", default: "reports/mutants.json" },
  },
});
const again = values.left === undefined ? undefined : leftIn(values.left);
const files =
  values.file ??
  ROOMS.flatMap((room) =>
    readdirSync(room)
      .toSorted()
      .map((name) => `${room}/${name}`),
  ).filter((file) => again === undefined || [...again].some((text) => text.startsWith(`${file}\n`)));
const judged = readJudged();
const start = Date.now();
const tried: Tried[] = [];
let last: Campaign | undefined;
mkdirSync(dirname(values.out), { recursive: true });
for (const file of files) {
  last = await tryFile(
    file,
    values.truths ?? truthFilesFor(file),
    (mutant) => again?.has(textOf(mutant)) ?? true,
    Number(values.most),
  );
  tried.push(...last.tried);
  const row = rowOf(file, last.tried, judged);
  const seconds = ((Date.now() - start) / 1000).toFixed(0);
  console.error(
    `${file}: ${row.noticed + row.timedOut} of ${row.mutants}, ${row.score.toFixed(1)} %, ${seconds} s`,
  );
  write(last);
}
if (last) say(last);

/** What tells a mutant from others wherever its line has moved to. */
function textOf({ file, original, replacement }: Mutant): string {
  return [file, original, replacement].join("\n");
}

/** The mutants left by an earlier run. */
function leftIn(path: string): Set<string> {
  const { left } = JSON.parse(readFileSync(path, "utf8")) as { readonly left: readonly Tried[] };
  return new Set(left.map(textOf));
}

function rowsSoFar(): Row[] {
  const of = (start: string) => tried.filter(({ file }) => file.startsWith(start));
  return [
    ...files.map((file) => rowOf(file, of(file), judged)),
    ...ROOMS.map((room) => rowOf(room, of(`${room}/`), judged)),
    rowOf("all", tried, judged),
  ].filter(({ mutants }) => mutants > 0);
}

function write({ truths, slow }: Campaign): void {
  const left = tried
    .filter(isLeft)
    .map((mutant) => ({ ...mutant, judged: reasonFor(mutant, judged) ?? null }));
  writeFileSync(values.out, `${JSON.stringify({ rows: rowsSoFar(), left, tried, truths, slow }, null, 1)}\n`);
}

function say({ truths, slow, missed }: Campaign): void {
  console.log(table(rowsSoFar()));
  console.log(
    `${truths.length} truths; ${slow.length} too slow to ask; mutants left are listed in ${values.out}`,
  );
  for (const sentence of missed)
    console.log(`missed without a mutant, so not asked: ${sentence.slice(0, 300)}`);
}
