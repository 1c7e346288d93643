/**
 * What is known of toy.ts. Asked by the mutation run in tool.test.ts, not by vitest.
 */
import { describe, expect, it } from "vitest";
import { countTo, ordered, six } from "./toy.ts";

it("six is six", () => {
  expect(six()).toBe(6);
});

describe("countTo", () => {
  it.each([0, 3, 7])("counts to %i", (n) => {
    expect(countTo(n)).toBe(n);
  });
});

it("ordered puts the larger first", () => {
  expect([ordered(1, 2), ordered(2, 1), ordered(2, 2)]).toEqual([
    [2, 1],
    [2, 1],
    [2, 2],
  ]);
});

it("is wrong about seven, mutant or not", () => {
  expect(six()).toBe(7);
});
