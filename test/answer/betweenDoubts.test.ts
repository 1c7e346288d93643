/**
 * The doubts of a nose between their ends: an upright flange in the throat passes a peg of the frame that both ends of the doubt miss.
 * Source: plane geometry, worked here. The flange stands at its tangent line, −(s + Rn) − flat − (r + T) at its outer face, T thick; farther
 * back it goes with the setback, and r with it: r = s + Rn − T at 90° with the pivot on the bed's edge (src/model.md, section 4).
 */
import { expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { verdictSentence } from "../../src/words/verdictWords.ts";
import { rectangle } from "../rectangle.ts";

const [T, Rn, s, back] = [1, 1, 3, 1];

/** A channel on a bar, its first flange up in the throat beside a peg from `peg` to 0.2 mm behind it. */
function channel(peg: number, change: { brake?: object; flats?: number[] } = {}) {
  const read = readJob(
    JSON.stringify({
      noseroom: 1,
      units: "mm",
      part: {
        name: "channel",
        material: "mild steel",
        thickness: T,
        insideRadius: s + Rn - T,
        kFactor: 0.4,
        dimensions: "flat",
        flats: change.flats ?? [20, 40, 20],
        bends: [
          { angle: 90, turn: "up", overbend: 90 },
          { angle: 90, turn: "up", overbend: 90 },
        ],
      },
      brake: {
        name: "bar with a peg behind it",
        clamp: { type: "bar", thickness: 6, depth: 20, noseRadius: Rn },
        bed: { profile: rectangle(-120, -60, 0, 0) },
        leaf: { profile: rectangle(0, -8, 20, 0), swing: 135 },
        frame: [rectangle(peg - 0.2, 8, peg, 30)],
        lift: 40,
        openEnds: true,
        setback: s,
        ...change.brake,
      },
      order: [
        { bend: 1, clamped: "end" },
        { bend: 2, clamped: "start" },
      ],
    }),
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { read, answer: check(read.job) };
}

/** The flange's outer face with the nose `off` farther back: the flats give half of what each bend's arc takes up more. */
function outerFace(off: number): number {
  const r = s + off + Rn - T;
  const flat = 40 - (Math.PI / 2) * off;
  return -(s + off + Rn) - flat - (r + T);
}

const doubts = { setback: back };

test("a peg that both ends of the doubt and the likely setback miss is found between them, from its exact place on", () => {
  // Its face comes to the peg's front face, drawn in by 0.01 mm, at half of the doubt.
  const peg = outerFace(back / 2) + 0.01;
  for (const at of [-back, 0]) {
    const [outer, inner] = [outerFace(at), outerFace(at) + T];
    expect(outer! > peg || inner! < peg - 0.2).toBe(true);
  }
  const sure = channel(peg);
  expect(sure.answer.verdict).not.toBe("hits");
  const { read, answer } = channel(peg, { brake: { doubts } });
  expect(answer.verdict).toBe("hits");
  const step = answer.order[1];
  expect(step?.failsAt?.noseSetbackBy).toBeCloseTo(back / 2, 4);
  expect(verdictSentence(read.job, answer)).toContain(
    "once the nose is 0.5 mm farther back than you say, the end of flat 1 meets the frame",
  );
});
