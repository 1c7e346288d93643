/**
 * Malformed job files: each ends in one problem, told in one sentence with the key's path, in well under a second.
 * The contract is src/model.md, section 10: unknown keys, missing keys and impossible values name path, found, allowed.
 */
import { describe, expect, it } from "vitest";
import { problemSentence } from "../../src/jobFile/problem.ts";
import { changed, problemsOf, put, soundJob } from "./jobs.ts";
import { slips, texts } from "./slips.ts";

/** Runs and hands back the sentences, once it is sure that it was quick. */
function sentences(text: string): string[] {
  const begin = performance.now();
  const problems = problemsOf(text);
  expect(performance.now() - begin).toBeLessThan(1000);
  return problems.map(problemSentence);
}

describe("a malformed job file", () => {
  it("starts from one that reads", () => {
    expect(problemsOf(JSON.stringify(soundJob()))).toEqual([]);
    expect(slips.length + texts.length).toBeGreaterThanOrEqual(45);
  });

  it.each(slips)("%s: one problem at %s", (_, path, change) => {
    const text = changed(change);
    const problems = problemsOf(text);
    expect(problems.map((problem) => problem.path)).toEqual([path]);
    const said = sentences(text);
    expect(said).toHaveLength(1);
    expect(said[0]!.startsWith(path)).toBe(true);
    expect(said[0]).toMatch(/^[^\n]+: found [^\n]+; it should be [^\n]+\.$/u);
    expect(said[0]).not.toMatch(/undefined|NaN|\[object|Error|invalid/u);
  });

  it.each(texts)("%s: one sentence that says where", (_, text, place) => {
    const said = sentences(text);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(place);
    expect(said[0]!.length).toBeLessThan(300);
  });

  it("tells each of several slips once, and no more than twenty", () => {
    const three = changed((job) => {
      job.part.flats[0] = -1;
      job.part.bends[1]!.angle = 200;
      job.brake.lift = "high";
    });
    expect(
      problemsOf(three)
        .map((problem) => problem.path)
        .sort(),
    ).toEqual(["brake.lift", "part.bends[1].angle", "part.flats[0]"]);
    const many = changed((job) => {
      for (let i = 0; i < 1000; i++) Object.assign(job.part, { [`key${i}`]: i });
    });
    expect(problemsOf(many)).toHaveLength(20);
  });

  it("says where a shape stands that is drawn in the wrong place", () => {
    const leaf = put("brake.leaf.profile", [
      [0, -10],
      [25, -10],
      [25, 5],
      [0, 5],
    ]);
    expect(sentences(changed(leaf))).toEqual([
      "brake.leaf.profile: found a leaf that reaches up to y = 5 mm; it should be drawn at rest, with nothing above y = 0.",
    ]);
  });

  it.each([
    [put("part.bends", []), "part.bends: found an empty list; it should be a list of 1 to 20 bends."],
    [
      put("brake.bed.profile", [
        [-160, -80],
        [0, -80],
        [0, 0],
        [-160, 0],
        [-40, -90],
      ]),
      "brake.bed.profile: found a profile that crosses or touches itself, near corners 1 and 4; it should be one closed line around the metal.",
    ],
    [put("brake.clamp", "bar"), 'brake.clamp: found "bar"; it should be a clamp in braces.'],
    [
      put("brake.clamp.type", "roller"),
      'brake.clamp.type: found "roller"; it should be "finger", "bar" or "profile".',
    ],
    [
      put("part.bends[0].angle", null),
      "part.bends[0].angle (bend 1): found null; it should be an angle in degrees.",
    ],
  ])("words it for a person, %#", (change, sentence) => {
    expect(sentences(changed(change))).toEqual([sentence]);
  });

  it("counts flats, bends, steps and corners from 1 beside the path", () => {
    expect(sentences(changed(put("part.flats[2]", -3)))[0]).toMatch(
      /^part\.flats\[2\] \(flat 3\): found -3; it should be a length greater than 0/u,
    );
    expect(sentences(changed(put("order[1].clamped", "left")))[0]).toBe(
      'order[1].clamped (step 2): found "left"; it should be "start" or "end".',
    );
  });
});
