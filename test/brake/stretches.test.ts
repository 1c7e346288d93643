/**
 * Where a section is laid along a brake with ears and springs at its ends. Answers by a look at the numbers: no computation stands behind them.
 */
import { expect, test } from "vitest";
import type { Brake } from "../../src/brake/brake.ts";
import { brakeForPart } from "../../src/brake/stretches.ts";

const at = (name: string, fromMm: number, toMm: number) => ({ name, fromMm, toMm, outline: [] });
const brake = {
  frame: [],
  lengthMm: 200,
  stretches: [
    at("left ear", -20, 0),
    at("left spring", 10, 20),
    at("right spring", 180, 190),
    at("right ear", 200, 220),
  ],
} as unknown as Brake;
const met = (lengthMm: number) => brakeForPart(brake, lengthMm).frameNames ?? [];

test("brakeForPart: what fits between the springs meets nothing, a longer part one spring, then both, then an ear too", () => {
  expect(met(160)).toEqual([]);
  expect(met(161)).toHaveLength(1);
  expect(met(161)[0]).toMatch(/spring$/u);
  expect(met(181)).toEqual(["left spring", "right spring"]);
  expect(met(200)).toEqual(["left spring", "right spring"]);
  expect(met(201)).toHaveLength(3);
  expect(met(201).filter((name) => name?.endsWith("ear"))).toHaveLength(1);
  // However long, it can stand out over one end only.
  expect(met(300).filter((name) => name?.endsWith("ear"))).toHaveLength(1);
});
