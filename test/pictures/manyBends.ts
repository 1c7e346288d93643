/**
 * Jobs of our observatory with many bends, for the shop sheet: corrugated stiffeners, spirals, rows of hats, with orders
 * of their own so that no search is waited for. Some fold and some do not; hats carry the longest remarks.
 */
import { readFileSync } from "node:fs";

export type Units = "mm" | "in";

const folder = new URL("../../examples/", import.meta.url);

function brakeOf(example: string): unknown {
  return JSON.parse(readFileSync(new URL(`${example}.json`, folder), "utf8")).brake;
}

interface Bend {
  readonly angle: number;
  readonly turn: "up" | "down";
}

interface Shape {
  readonly name: string;
  readonly material: string;
  /** In mm and in inches. */
  readonly thickness: readonly [number, number | string];
  readonly insideRadius: readonly [number, number];
  readonly flatMm: (flat: number) => number;
  readonly bend: (bend: number, bends: number) => Bend;
}

export const SHAPES: Readonly<Record<string, Shape>> = {
  corrugated: {
    name: "corrugated stiffener of the roof's north wall",
    material: "3003-H14",
    thickness: [1, 0.032],
    insideRadius: [1, 0.032],
    flatMm: (flat) => (flat % 2 ? 20 : 26),
    bend: (bend) => ({ angle: bend % 3 ? 60 : 45, turn: ((bend + 1) >> 1) % 2 ? "up" : "down" }),
  },
  spiral: {
    name: "lens-shade spiral",
    material: "5052-H32",
    thickness: [1, 0.04],
    insideRadius: [1.6, 0.0625],
    flatMm: (flat) => 15 + 5.3 * flat,
    bend: (_, bends) => ({ angle: 540 / bends, turn: "up" }),
  },
  hats: {
    name: "row of hat stiffeners under the roll-off roof",
    material: "6061-T6",
    thickness: [1.6, "1/16"],
    insideRadius: [2.3, 0.09],
    flatMm: (flat) => 25 * (flat % 4 === 0 ? 1.2 : flat % 2 ? 0.8 : 1.5),
    bend: (bend) => ({
      angle: 90 - (bend % 5) * 0.5,
      turn: bend % 4 === 0 || bend % 4 === 3 ? "up" : "down",
    }),
  },
};

/** The text of a job file with so many bends. */
export function manyBends(shape: Shape, bends: number, units: Units): string {
  const inches = units === "in" ? 1 : 0;
  const length = (mm: number) => (inches ? Number((mm / 25.4).toFixed(3)) : mm);
  const made = Array.from({ length: bends }, (_, i) => shape.bend(i, bends));
  return JSON.stringify({
    noseroom: 1,
    units,
    part: {
      name: shape.name,
      material: shape.material,
      thickness: shape.thickness[inches],
      insideRadius: shape.insideRadius[inches],
      length: length(610),
      dimensions: "outside",
      flats: Array.from({ length: bends + 1 }, (_, i) => length(shape.flatMm(i))),
      bends: made,
    },
    brake: brakeOf(inches ? "cable-trough-bar" : "eight-bends"),
    order: made.map((_, i) => ({ bend: i + 1, clamped: i % 3 === 2 ? "end" : "start" })),
  });
}

/** The longest ways out that the command tells. */
export const LONGEST_WAYS = [1, 2, 3].map((bend) => ({
  change: `a way out of bend ${bend}`,
  sentence:
    "Make a brake with a clamp bar 3/16 to 1/4 in thick that stands out 1/2 in in front of its holder: folds, but only just, 0.011 in to spare.",
  because: "Thinner than 9/64 in is not strong enough, thicker than 19/64 in does not clear.",
}));
