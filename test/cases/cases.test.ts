/**
 * The engine over every case of this folder, told four ways: as it is, from the other end, in inches, and at other sizes.
 * Source: NAME.expected.json, made by an independent brute-force program of the same model (handed to the project);
 * pivot-off-edge, once a false hit at 0°, by test/reference.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { End } from "../../src/part/part.ts";
import { furthestOf, heldAnswerOf, rankOf } from "./answers.ts";
import { atScale, fromOtherEnd, inInches, type NumbersJob } from "./sameJob.ts";

const folder = new URL("./", import.meta.url);

interface ExpectedBend {
  readonly bend: number;
  readonly clamped: End;
  readonly markedFaceUp: boolean;
  readonly angle: number;
  readonly overbend: number;
  readonly reached: number;
  readonly relaxesTo: number;
  readonly verdict: string;
  readonly clearance: number | null;
  readonly contact: {
    readonly angle: number;
    readonly member: string;
    readonly point: [number, number];
  } | null;
  readonly load: string;
  readonly unload: string;
  readonly setback: number;
}

interface Expected {
  readonly verdict: string;
  readonly viableOrders: number;
  readonly developedWidth: number;
  readonly given: boolean;
  readonly rank: {
    readonly verdict: string;
    readonly changes: number;
    readonly swung: number;
    readonly clearance: number | null;
  };
  readonly furthest: number;
  readonly order: readonly ExpectedBend[];
}

function read<T>(name: string): T {
  return JSON.parse(readFileSync(new URL(name, folder), "utf8")) as T;
}

const names = readdirSync(folder)
  .filter((name) => name.endsWith(".expected.json"))
  .map((name) => name.replace(".expected.json", ""));

/** Allowed: degrees of a contact angle, mm of a clearance at the case's own size. */
const ANGLE_DEG = 0.01;
const CLEARANCE_MM = 0.002;

interface Telling {
  readonly name: string;
  readonly tell: (job: NumbersJob) => NumbersJob;
  readonly scale: number;
  readonly mirrored: boolean;
  /** The inset of the part's faces keeps its 0.01 mm at every size, so a contact comes that much earlier or later. */
  readonly angleDeg: number;
}

const tellings: readonly Telling[] = [
  { name: "as it is", tell: (job) => job, scale: 1, mirrored: false, angleDeg: ANGLE_DEG },
  { name: "from the other end", tell: fromOtherEnd, scale: 1, mirrored: true, angleDeg: ANGLE_DEG },
  { name: "in inches", tell: inInches, scale: 1, mirrored: false, angleDeg: ANGLE_DEG },
  {
    name: "from the other end, in inches",
    tell: (job) => inInches(fromOtherEnd(job)),
    scale: 1,
    mirrored: true,
    angleDeg: ANGLE_DEG,
  },
  { name: "3 times as big", tell: (job) => atScale(job, 3), scale: 3, mirrored: false, angleDeg: 0.06 },
  { name: "half as big", tell: (job) => atScale(job, 0.5), scale: 0.5, mirrored: false, angleDeg: 0.06 },
];

function expectClose(found: number | null, wanted: number | null, within: number): void {
  expect(found === null).toBe(wanted === null);
  expect(Math.abs((found ?? 0) - (wanted ?? 0))).toBeLessThan(within);
}

/** The job with the expected order written into it. */
function ordered(job: NumbersJob, expected: Expected): NumbersJob {
  return { ...job, order: expected.order.map(({ bend, clamped }) => ({ bend, clamped })) };
}

function expectBends(answer: Answer, expected: Expected, telling: Telling): void {
  const { scale, mirrored, angleDeg } = telling;
  const count = answer.blank.bends.length;
  expected.order.forEach((wanted, i) => {
    const step = answer.order[i]!;
    expect(step.bend).toBe(mirrored ? count + 1 - wanted.bend : wanted.bend);
    expect([step.markedFaceUp, step.verdict, step.load, step.unload]).toEqual([
      wanted.markedFaceUp,
      wanted.verdict,
      wanted.load,
      wanted.unload,
    ]);
    expectClose(step.angle, wanted.angle, 1e-9);
    expectClose(step.overbend, wanted.overbend, 1e-9);
    expectClose(step.reached, wanted.reached, angleDeg);
    expectClose(step.relaxesTo, wanted.relaxesTo, angleDeg);
    expectClose(step.clearance, wanted.clearance && scale * wanted.clearance, CLEARANCE_MM * scale);
    expectClose(step.setback, scale * wanted.setback, 1e-5);
    expect(step.contact === null).toBe(wanted.contact === null);
    if (step.contact && wanted.contact) {
      expect(step.contact.member).toBe(wanted.contact.member);
      expectClose(step.contact.angle, wanted.contact.angle, angleDeg);
    }
    if (!step.clearancePoints) return;
    const [[ax, ay], [bx, by]] = step.clearancePoints;
    expectClose(Math.hypot(ax - bx, ay - by), step.clearance, 1e-9);
  });
}

it("finds cases to run", () => {
  expect(names.length).toBeGreaterThanOrEqual(12);
});

describe.each(names)("case %s", (name) => {
  const job = read<NumbersJob>(`${name}.json`);
  const expected = read<Expected>(`${name}.expected.json`);

  describe.each(tellings)("$name", (telling) => {
    const { tell, scale } = telling;

    it("gets the verdict, the count, the width, how far and how good", () => {
      const answer = heldAnswerOf(tell(job));
      expect([answer.verdict, answer.viableOrders]).toEqual([expected.verdict, expected.viableOrders]);
      expectClose(answer.blank.developedWidth, scale * expected.developedWidth, 1e-5 * scale);
      const { order: _, ...open } = job;
      const searched = heldAnswerOf(tell(open as NumbersJob));
      expect(furthestOf(searched)).toBe(expected.furthest);
      expect(searched.viableOrders).toBe(expected.viableOrders);
      const rank = rankOf(answer);
      expect(rank.verdict).toBe(expected.rank.verdict);
      // An order that ends blocked is chosen by how far it gets; its changes are no part of that.
      if (expected.viableOrders > 0) {
        expect(rank.changes).toBe(expected.rank.changes);
        expectClose(rank.swung, scale * expected.rank.swung, 0.02 * scale);
      }
      expectClose(
        rank.clearance,
        expected.rank.clearance && scale * expected.rank.clearance,
        CLEARANCE_MM * scale,
      );
    });

    it("answers for each bend of the expected order", () => {
      const answer = heldAnswerOf(tell(ordered(job, expected)));
      expectBends(answer, expected, telling);
      expectClose(rankOf(answer).swung, scale * expected.rank.swung, 0.02 * scale);
    });
  });
});
