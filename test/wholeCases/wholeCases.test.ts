/**
 * Worked cases of whole parts against an independent computation: plates and made bends as solids in space, the leaf moved
 * in steps of half a degree, common volumes, bisection (README.md beside this file; invented parts).
 */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import type { WholeAnswer, WholeStepAnswer } from "../../src/jobFile/wholeAnswer.ts";

type Pair = readonly [number, number];

interface ExpectedContact {
  readonly member: string;
  readonly finger?: number;
  readonly faces: readonly { readonly points: readonly Pair[] }[];
  readonly w: Pair;
}

interface ExpectedStep {
  readonly bends: readonly number[];
  readonly markedFaceUp: boolean;
  readonly reached: number;
  readonly verdict: string;
  readonly contact: { readonly angle: number; readonly any: readonly ExpectedContact[] } | null;
  readonly load: string;
  readonly unload: string;
  readonly bareLength: number;
  readonly setback: number;
  readonly exact?: { readonly clearance: number | null; readonly angle: number | null };
}

interface Expected {
  readonly teaches: string;
  readonly verdict: string;
  readonly order: readonly ExpectedStep[];
  readonly faces: readonly { readonly inner: Pair }[];
  readonly blank: {
    readonly outline: readonly Pair[];
    readonly holes: readonly (readonly Pair[])[];
    readonly bends: readonly {
      readonly bend: number;
      readonly line: readonly [Pair, Pair];
      readonly allowance: number;
      readonly deduction: number;
    }[];
  };
  readonly folded: {
    readonly size: readonly number[];
    readonly faces: readonly { readonly inner: Pair; readonly size: readonly number[] }[];
  };
}

const folder = fileURLToPath(new URL(".", import.meta.url));
const cases = readdirSync(folder)
  .filter((name) => name.endsWith(".expected.json"))
  .map((name) => name.replace(".expected.json", ""));

function holds(ring: readonly Pair[], [x, y]: Pair): boolean {
  return ring.reduce((inside, [ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    return ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay) ? !inside : inside;
  }, false);
}

/** How far two sets of points are from being the same. */
function apart(a: readonly Pair[], b: readonly Pair[]): number {
  const off = (from: readonly Pair[], to: readonly Pair[]) =>
    Math.max(0, ...from.map((p) => Math.min(...to.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1])))));
  return Math.max(off(a, b), off(b, a));
}

function faceAt(answer: WholeAnswer, point: Pair): number | undefined {
  return answer.faces.find(({ outline }) => holds(outline, point))?.face;
}

/** Whether a contact is one of those that may be told. */
function isOneOf(
  answer: WholeAnswer,
  { contact }: WholeStepAnswer,
  any: readonly ExpectedContact[],
): boolean {
  return any.some(({ member, finger, faces, w }) => {
    const [from, to] = w;
    const at = contact!.point[2];
    return (
      member === contact!.member &&
      finger === contact!.finger &&
      at > from - 1 &&
      at < to + 1 &&
      faces.some(({ points }) => points.some((point) => faceAt(answer, point) === contact!.face))
    );
  });
}

describe.each(cases)("%s", (name) => {
  const text = readFileSync(`${folder}${name}.json`, "utf8");
  const expected = JSON.parse(readFileSync(`${folder}${name}.expected.json`, "utf8")) as Expected;
  const read = readAnyJob(text);
  if (!read.ok || read.kind !== "whole") throw new Error(`${name} is no whole part`);
  const answer = checkWhole(read.job);

  it(`check: ${expected.teaches}`, () => {
    expect(answer.order.map(({ bends }) => bends)).toEqual(expected.order.map(({ bends }) => bends));
    expect(answer.verdict === "hits").toBe(expected.verdict === "hits");
    for (const [i, wanted] of expected.order.entries()) {
      const step = answer.order[i]!;
      expect(step.markedFaceUp).toBe(wanted.markedFaceUp);
      expect(step.verdict === "hits").toBe(wanted.verdict === "hits");
      expect(Math.abs(step.reached - wanted.reached)).toBeLessThan(0.05);
      expect(step.contact === null).toBe(wanted.contact === null);
      if (wanted.contact) {
        expect(Math.abs(step.contact!.angle - wanted.contact.angle)).toBeLessThan(0.05);
        expect(isOneOf(answer, step, wanted.contact.any)).toBe(true);
      }
      expect([step.load, step.unload]).toEqual([wanted.load, wanted.unload]);
      expect(step.bareLength).toBeCloseTo(wanted.bareLength, 3);
      expect(step.setback).toBeCloseTo(wanted.setback, 6);
      if (!wanted.exact) continue;
      expect(step.clearance === null).toBe(wanted.exact.clearance === null);
      expect(Math.abs((step.clearance ?? 0) - (wanted.exact.clearance ?? 0))).toBeLessThan(0.001);
      expect(Math.abs((step.contact?.angle ?? 0) - (wanted.exact.angle ?? 0))).toBeLessThan(0.001);
    }
  });

  it("check: the blank's outline, holes, bend lines and allowances", () => {
    const points = (corners: WholeAnswer["blank"]["outline"]) => corners.map(([x, y]): Pair => [x, y]);
    expect(apart(points(answer.blank.outline), expected.blank.outline)).toBeLessThan(0.02);
    expect(apart(answer.blank.holes.flatMap(points), expected.blank.holes.flat())).toBeLessThan(0.02);
    expect(answer.blank.bends.length).toBe(expected.blank.bends.length);
    for (const wanted of expected.blank.bends) {
      const bend = answer.blank.bends[wanted.bend - 1]!;
      expect(apart(bend.line, wanted.line)).toBeLessThan(0.02);
      expect(bend.allowance).toBeCloseTo(wanted.allowance, 4);
      expect(bend.deduction).toBeCloseTo(wanted.deduction, 4);
    }
  });

  it("check: outside sizes when folded, and every face", () => {
    expect(answer.faces.length).toBe(expected.faces.length);
    answer.folded.size.forEach((size, axis) => {
      expect(Math.abs(size - expected.folded.size[axis]!)).toBeLessThan(0.02);
    });
    for (const { inner, size } of expected.folded.faces) {
      const face = faceAt(answer, inner)!;
      const own = answer.folded.faces[face - 1]!.size;
      own.forEach((mm, axis) => {
        expect(Math.abs(mm - size[axis]!)).toBeLessThan(0.02);
      });
    }
  });
});
