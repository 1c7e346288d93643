/**
 * Counts of the mutation run: a row a file, a row a room, one for all; and the survivors with their judgement, where someone
 * has judged them (judged.json). A mutant judged harmless still counts as survived.
 */
import { readFileSync } from "node:fs";
import type { Mutant } from "./instrument.ts";

export type Fate = "noticed" | "timed out" | "survived" | "not covered";

export interface Tried extends Mutant {
  readonly fate: Fate;
  /** The truth that noticed it. */
  readonly by?: string;
}

/** Found again by its text, not its line: lines move. */
export interface Judged {
  readonly file: string;
  readonly original: string;
  readonly replacement: string;
  readonly reason: string;
}

export interface Row {
  readonly name: string;
  readonly mutants: number;
  readonly noticed: number;
  readonly timedOut: number;
  readonly survived: number;
  readonly notCovered: number;
  readonly judged: number;
  /** Noticed and timed out over all, in per cent. */
  readonly score: number;
}

export function readJudged(): readonly Judged[] {
  return JSON.parse(readFileSync("test/mutants/judged.json", "utf8")) as Judged[];
}

export function reasonFor(mutant: Mutant, judged: readonly Judged[]): string | undefined {
  return judged.find(
    ({ file, original, replacement }) =>
      file === mutant.file && original === mutant.original && replacement === mutant.replacement,
  )?.reason;
}

export const isLeft = ({ fate }: Tried) => fate === "survived" || fate === "not covered";

export function rowOf(name: string, tried: readonly Tried[], judged: readonly Judged[]): Row {
  const count = (fate: Fate) => tried.filter((mutant) => mutant.fate === fate).length;
  const [noticed, timedOut] = [count("noticed"), count("timed out")];
  return {
    name,
    mutants: tried.length,
    noticed,
    timedOut,
    survived: count("survived"),
    notCovered: count("not covered"),
    judged: tried.filter((mutant) => isLeft(mutant) && reasonFor(mutant, judged) !== undefined).length,
    score: tried.length === 0 ? 100 : (100 * (noticed + timedOut)) / tried.length,
  };
}

/** The rows as text, one line each under a head. */
export function table(rows: readonly Row[]): string {
  const head = ["", "mutants", "noticed", "timed out", "survived", "not covered", "judged", "score"];
  const cells = rows.map(({ name, mutants, noticed, timedOut, survived, notCovered, judged, score }) => [
    name,
    ...[mutants, noticed, timedOut, survived, notCovered, judged].map(String),
    `${score.toFixed(1)} %`,
  ]);
  const wide = head.map((word, i) => Math.max(word.length, ...cells.map((row) => row[i]!.length)));
  return [head, ...cells]
    .map((row) =>
      row.map((cell, i) => (i === 0 ? cell.padEnd(wide[i]!) : cell.padStart(wide[i]!))).join("  "),
    )
    .join("\n");
}
