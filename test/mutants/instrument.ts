/**
 * A file of the engine with all its mutants in it, each behind a switch. Mutants: the standard set of the Stryker
 * instrumenter; its calls are turned into comparisons with one number, so that the engine keeps nearly its speed.
 */
import { readFileSync } from "node:fs";
import { Instrumenter } from "@stryker-mutator/instrumenter";

export interface Mutant {
  /** From 0, in its file. */
  readonly number: number;
  readonly file: string;
  /** From 1. */
  readonly line: number;
  readonly mutator: string;
  /** What stands in the file, and what the mutant puts in its place. */
  readonly original: string;
  readonly replacement: string;
}

export interface Instrumented {
  readonly text: string;
  readonly mutants: readonly Mutant[];
}

const quiet = () => {};
const logger = {
  ...{ trace: quiet, debug: quiet, info: quiet, warn: quiet, error: quiet, fatal: quiet },
  ...{ isTraceEnabled: () => false, isDebugEnabled: () => false, isInfoEnabled: () => false },
  ...{ isWarnEnabled: () => false, isErrorEnabled: () => false, isFatalEnabled: () => false },
};

/** Puts the mutants into the file; `switchPath` is where the changed text imports the switch from. */
export async function instrumented(file: string, switchPath: string): Promise<Instrumented> {
  const content = readFileSync(file, "utf8");
  const lines = content.split("\n");
  const options = { plugins: null, excludedMutations: [], ignorers: [], noHeader: true };
  const done = await new Instrumenter(logger).instrument([{ name: file, mutate: true, content }], options);
  const text = done.files[0]!.content.replaceAll(
    /stryMutAct_9fa48\("(\d+)"\)/g,
    "(mutantAtWork === $1 && mutantHit())",
  ).replaceAll(/stryCov_9fa48\(((?:"\d+"(?:, )?)+)\)/g, (_, ids: string) => {
    const marks = ids.split(", ").map((id) => `mutantsPassed[${id.replaceAll('"', "")}] = `);
    return `LEARN_COVER && (${marks.join("")}1)`;
  });
  const from = JSON.stringify(switchPath);
  const head = `import { active as mutantAtWork, hit as mutantHit, passed as mutantsPassed } from ${from};\n`;
  const mutants = done.mutants.map((mutant): Mutant => {
    const { start, end } = mutant.location;
    const piece = lines.slice(start.line, end.line + 1);
    piece[piece.length - 1] = piece.at(-1)!.slice(0, end.column);
    piece[0] = piece[0]!.slice(start.column);
    return {
      number: Number(mutant.id),
      file,
      line: start.line + 1,
      mutator: mutant.mutatorName,
      original: oneLine(piece.join(" ")),
      replacement: oneLine(mutant.replacement),
    };
  });
  return { text: head + text, mutants };
}

function oneLine(text: string): string {
  return text.replaceAll(/\s+/g, " ").trim();
}
