/**
 * The examples answer as examples/README.md says. The trough's figures are those of test/reference, which shares no line
 * with this engine: a 45° finger stops the second bend near 74.9°, a 1/4 in bar bevelled to 86° closes it with about
 * 0.98 mm to spare, the bar left square is met near 90.6°. Counts come from trying every order bend by bend (8, 384 and
 * 10,321,920 of them); elsewhere only the verdict that the example is for.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import type { Answer } from "../../src/jobFile/answer.ts";
import { jobOfText } from "../jobFile/jobs.ts";

const folder = new URL("../../examples/", import.meta.url);

function answerOf(name: string): Answer {
  return check(jobOfText(readFileSync(new URL(`${name}.json`, folder), "utf8")));
}

describe("the examples", () => {
  it("are each told in one line of the README, and no others", () => {
    const names = readdirSync(folder).filter((name) => name.endsWith(".json"));
    const readme = readFileSync(new URL("README.md", folder), "utf8");
    const told = [...readme.matchAll(/^\| `([\w-]+\.json)` +\| [^|]+\. +\|$/gmu)].map((line) => line[1]);
    expect([...told].sort()).toEqual([...names].sort());
    expect(names.length).toBeGreaterThanOrEqual(9);
  });

  it("cable-trough-finger stops near 74.9°", () => {
    const answer = answerOf("cable-trough-finger");
    expect([answer.verdict, answer.viableOrders]).toEqual(["hits", 0]);
    expect(answer.order.at(-1)?.contact?.member).toBe("clamp");
    expect(Math.abs(answer.order.at(-1)!.reached - 74.94)).toBeLessThan(0.06);
  });

  it("cable-trough-bar closes with about 0.98 mm to spare", () => {
    const answer = answerOf("cable-trough-bar");
    expect(answer.verdict).toBe("clear");
    expect(Math.min(...answer.order.map((step) => step.clearance ?? Infinity))).toBeCloseTo(0.98, 2);
  });

  it("cable-trough-square-bar is met in the overbend, near 90.6°", () => {
    const answer = answerOf("cable-trough-square-bar");
    expect(answer.verdict).toBe("hits");
    expect(Math.abs(answer.order.at(-1)!.reached - 90.6)).toBeLessThan(0.06);
  });

  it("hat-stiffener folds in 16 of 384 orders", () => {
    const answer = answerOf("hat-stiffener");
    expect([answer.verdict, answer.viableOrders]).toEqual(["clear", 16]);
  });

  it("hat-own-order meets the bed in its last step only", () => {
    const answer = answerOf("hat-own-order");
    expect(answer.order.map((step) => step.verdict)).toEqual(["clear", "clear", "clear", "hits"]);
    expect(answer.order.at(-1)?.contact?.member).toBe("bed");
    expect(answer.viableOrders).toBe(16);
  });

  it("z-clip meets leaf or bed with its flange that hangs down", () => {
    const answer = answerOf("z-clip");
    expect([answer.verdict, answer.viableOrders]).toEqual(["hits", 0]);
    expect(answer.order.at(-1)?.contact?.member).toMatch(/^(leaf|bed)$/u);
  });

  it("drip-edge folds", () => {
    expect(answerOf("drip-edge").verdict).toBe("clear");
  });

  it("lens-box-tray folds in 4 of 384 orders, its low side first", () => {
    const answer = answerOf("lens-box-tray");
    expect([answer.verdict, answer.viableOrders]).toEqual(["clear", 4]);
    expect(answer.order.map((step) => step.bend)).toEqual([4, 3, 1, 2]);
  });

  it("measured-setback forms what 3 mm behind the edge leave room for, more in the milder bend", () => {
    const answer = answerOf("measured-setback");
    expect(answer.verdict).toBe("clear");
    expect(answer.order.map((step) => step.setback)).toEqual([3, 3]);
    const text = readFileSync(new URL("measured-setback.json", folder), "utf8");
    const { bends } = jobOfText(text).part;
    // (r + T)·tan(θo/2) = s + Rn = 3 + 1, with T 1.6.
    for (const { insideRadiusMm, overbendDeg } of bends)
      expect((insideRadiusMm + 1.6) * Math.tan((overbendDeg * Math.PI) / 360)).toBeCloseTo(4, 9);
    expect(bends[1]!.insideRadiusMm).toBeGreaterThan(3 * bends[0]!.insideRadiusMm);
  });

  it("no-way is proved to have no way", () => {
    const answer = answerOf("no-way");
    expect([answer.verdict, answer.viableOrders]).toEqual(["hits", 0]);
    expect(answer.order.at(-1)?.verdict).toBe("hits");
  });

  it("eight-bends folds in 248 of 10,321,920 orders", () => {
    const answer = answerOf("eight-bends");
    expect([answer.verdict, answer.viableOrders]).toEqual(["clear", 248]);
    expect(answer.order).toHaveLength(8);
  });
});
