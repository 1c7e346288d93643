/**
 * The whole examples answer as examples/README.md says.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";

function answered(name: string) {
  const text = readFileSync(new URL(`../../examples/whole/${name}.json`, import.meta.url), "utf8");
  const read = readAnyJob(text);
  if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
  return { answer: checkWhole(read.job) };
}

describe("the whole examples", () => {
  it("lens-box-lips folds, each lip bent with the marked face down", () => {
    const { answer } = answered("lens-box-lips");
    expect(answer.verdict).not.toBe("hits");
    // Lips turned out are bends 2, 4, 6 and 8.
    const steps = answer.order.map(({ bends: [bend], markedFaceUp }) => ({ bend: bend!, markedFaceUp }));
    expect(steps.every(({ bend, markedFaceUp }) => markedFaceUp === (bend % 2 === 1))).toBe(true);
    expect(answer.folded.size.map((mm) => Math.round(mm * 100) / 100)).toEqual([178, 128, 30]);
  });

  it("switch-box-tabs is met by the leaf", () => {
    const { contact } = answered("switch-box-tabs").answer.order.at(-1)!;
    expect(contact!.member).toBe("leaf");
  });

  it.each(["cable-trough-ends", "end-cap", "corner-bracket"])("%s folds", (name) => {
    expect(answered(name).answer.verdict).not.toBe("hits");
  });
});
