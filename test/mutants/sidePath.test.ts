/**
 * Sides told as one number: a 1, then a digit for each joint, the nearest first.
 * Source: the same written as strings of the digits 0 and 1, cut and turned round as strings.
 */
import { describe, expect, it } from "vitest";
import {
  FLAT_AT_BEND,
  formedOn,
  isFlat,
  jointsOf,
  pathOver,
  pathToEnd,
  pathToStart,
} from "../../src/sequence/sidePath.ts";

/** A path from its digits, the nearest joint first. */
const pathOf = (digits: string) => Number.parseInt(`1${digits}`, 2);

/** A set in so many digits, bend 1 last. */
const digitsOf = (set: number, count: number) => (count === 0 ? "" : set.toString(2).padStart(count, "0"));

const turnedRound = (digits: string) => [...digits].reverse().join("");

/** Every row of up to six digits, and some long ones. */
function rows(): string[] {
  const short = [0, 1, 2, 3, 4, 5, 6].flatMap((count) =>
    Array.from({ length: 1 << count }, (_, set) => digitsOf(set, count)),
  );
  return [...short, "0".repeat(20), "1".repeat(20), "00000000000000000001", "10000000000000000000"];
}

describe("a path", () => {
  it("is made of its joints, and tells them again", () => {
    for (const digits of rows()) {
      const path = pathOf(digits);
      const formed = Number.parseInt(`0${turnedRound(digits)}`, 2);
      expect(pathOver(digits.length, formed), digits).toBe(path);
      expect(jointsOf(path), digits).toBe(digits.length);
      expect(formedOn(path), digits).toBe(formed);
      expect(isFlat(path), digits).toBe(!digits.includes("1"));
    }
  });

  it("takes no joint in that lies farther out", () => {
    for (const digits of rows()) {
      const formed = Number.parseInt(`0${turnedRound(`${digits}101`)}`, 2);
      expect(pathOver(digits.length, formed), digits).toBe(pathOf(digits));
    }
  });

  it("of no joint is the flat at the bend", () => {
    expect(FLAT_AT_BEND).toBe(pathOf(""));
    expect([jointsOf(FLAT_AT_BEND), formedOn(FLAT_AT_BEND), isFlat(FLAT_AT_BEND)]).toEqual([0, 0, true]);
  });

  it("is halved by leaving its last joint out", () => {
    for (const digits of rows()) {
      for (const last of "01") expect(pathOf(digits + last) >>> 1, digits).toBe(pathOf(digits));
    }
  });
});

it.each([1, 2, 3, 6, 20])("cuts a part of %i bends into the two sides of each", (n) => {
  const sets = n > 6 ? [0, 0b1011, 0b10100000100100000000, 2 ** n - 1] : rows().map((row) => pathOf(row));
  for (const any of sets) {
    const set = any % 2 ** n;
    const digits = digitsOf(set, n);
    for (let bend = 0; bend < n; bend++) {
      const told = `bend ${bend} of ${digits}`;
      // Bend 1 is the last digit: what leads to the start stands behind the bend's own, the nearest first.
      expect(pathToStart(set, bend), told).toBe(pathOf(digits.slice(n - bend)));
      expect(pathToEnd(set, bend, n), told).toBe(pathOf(turnedRound(digits.slice(0, n - 1 - bend))));
    }
  }
});
