/**
 * Thickness from a gauge number, by the rule of its family, not from a list: ASTM B258 for aluminium and brass (Brown
 * & Sharpe), the weights of 15 U.S.C. 206 over a weight per inch for steel (41.82), galvanized and stainless (40).
 * Published tables round to 4 decimals of an inch; the rules agree with them to 0.00006 in.
 */
import { type LengthUnit, MM_PER_INCH, parseLength } from "./length.ts";
import type { Mm } from "./quantity.ts";

export type GaugeFamily = "steel" | "galvanized" | "stainless" | "aluminum";

interface GaugeRule {
  /** First and last number of the gauge; 0 is "0", -1 is "00" and so on. */
  readonly from: number;
  readonly to: number;
  readonly thicknessIn: (number: number) => number;
  readonly source: string;
}

/** lb/ft² per inch of the Manufacturers' Standard Gauge: steel's 40.8, raised 2.5 % for crown and overwidth (reason from memory). */
const STEEL_LB_PER_INCH = 41.82;

/** lb/ft² of wrought iron one inch thick (480 lb/ft³), on which the law's "approximate thickness" rests. */
const IRON_LB_PER_INCH = 40;

/** Zinc of the old 2.50 oz class, both sides together, which the Galvanized Sheet Gauge counts in. */
const ZINC_OZ = 2.5;

/** 15 U.S.C. 206 as steps: from No. 7/0 (320 oz/ft²) each number takes off so many ounces, up to the number named. */
const HEAVIEST = { number: -6, oz: 320 };
const STEPS: readonly { readonly upTo: number; readonly oz: number }[] = [
  { upTo: 1, oz: 20 },
  { upTo: 14, oz: 10 },
  { upTo: 16, oz: 5 },
  { upTo: 20, oz: 4 },
  { upTo: 26, oz: 2 },
  { upTo: 31, oz: 1 },
  { upTo: 36, oz: 0.5 },
  { upTo: 38, oz: 0.25 },
];

const RULES: Readonly<Record<GaugeFamily, GaugeRule>> = {
  steel: {
    from: 3,
    to: 38,
    thicknessIn: (number) => ouncesPerSquareFoot(number) / 16 / STEEL_LB_PER_INCH,
    source: "Manufacturers' Standard Gauge: weights of 15 U.S.C. 206 over 41.82 lb/ft² per inch",
  },
  galvanized: {
    from: 8,
    to: 32,
    thicknessIn: (number) => (ouncesPerSquareFoot(number) + ZINC_OZ) / 16 / STEEL_LB_PER_INCH,
    source:
      "Galvanized Sheet Gauge: weights of 15 U.S.C. 206 plus 2.5 oz/ft² of zinc over 41.82 lb/ft² per inch (rule from memory; it gives the nominal weights and thicknesses of SMACNA's galvanized sheet table, after ASTM A924 and A653)",
  },
  stainless: {
    from: -6,
    to: 38,
    thicknessIn: (number) => ouncesPerSquareFoot(number) / 16 / IRON_LB_PER_INCH,
    source:
      "U.S. Standard Gauge: approximate thickness of 15 U.S.C. 206, its weights over 40 lb/ft² per inch",
  },
  aluminum: {
    from: -5,
    to: 40,
    thicknessIn: (number) => 0.005 * 92 ** ((36 - number) / 39),
    source: "ASTM B258 (Brown & Sharpe): 0.005 in × 92^((36 − n)/39)",
  },
};

/** Which words name which family; looked for in this order, so that "galvanized steel" is not taken for steel. */
const FAMILY_WORDS: readonly (readonly [RegExp, GaugeFamily])[] = [
  [/^(galvani[sz]ed|galv\.?)( steel)?( sheet)?$/u, "galvanized"],
  [/^(304 )?stainless( steel)?( sheet)?$/u, "stainless"],
  [/^(aluminum|aluminium|brass)( sheet)?$/u, "aluminum"],
  [/^(mild |cold[- ]rolled |hot[- ]rolled |carbon |sheet )*steel( sheet)?$/u, "steel"],
];

/** What a thickness may look like, for a message. */
export const thicknessHint =
  'a length such as "0.8 mm", "0.032" or "1/32 in", or a gauge with its family: "20 ga steel" (3 to 38), "22 ga galvanized" (8 to 32), "20 ga stainless" (7/0 to 38), "16 ga aluminum" (6/0 to 40)';

/**
 * Thickness of a gauge number in its family, or undefined where the family has no such number.
 * Heavier than No. 0 counts downward: -1 is 00, -2 is 000.
 * @example gaugeThickness(20, "steel") // 0.9110473457675752
 * @example gaugeThickness(11, "stainless") // 3.175
 * @example gaugeThickness(2, "steel") // undefined
 */
export function gaugeThickness(number: number, family: GaugeFamily): Mm | undefined {
  const rule = RULES[family];
  if (!Number.isInteger(number) || number < rule.from || number > rule.to) return undefined;
  return rule.thicknessIn(number) * MM_PER_INCH;
}

/**
 * A written thickness in mm: a length, or a gauge number with its family. Undefined where it is neither; a bare
 * "20 ga" is undefined too, since each family means another thickness by it. Negative lengths pass: callers judge.
 * @example parseThickness("16 ga aluminum", "in") // 1.2908459058322812
 * @example parseThickness("0.8 mm", "in") // 0.8
 * @example parseThickness("20 ga", "in") // undefined
 */
export function parseThickness(written: string | number, unit: LengthUnit): Mm | undefined {
  const gauge = parseGauge(written);
  return gauge === undefined ? parseLength(written, unit) : gaugeThickness(gauge.number, gauge.family);
}

/** A gauge number with its family; undefined for anything else. @example parseGauge("16 ga aluminum") // { number: 16, family: "aluminum" } */
export function parseGauge(
  written: string | number,
): { readonly number: number; readonly family: GaugeFamily } | undefined {
  if (typeof written === "number" || written.length > 60) return undefined;
  const text = written.trim().toLowerCase().replace(/\s+/gu, " ");
  const parts = /^(?:no\.? ?|# ?)?(\d{1,7}(?:\/0)?)[ -]?(?:gauge|gage|ga\.?) ?(.+)$/u.exec(text);
  const number = gaugeNumber(parts?.[1] ?? "");
  const family = FAMILY_WORDS.find(([words]) => words.test(parts?.[2] ?? ""))?.[1];
  return number === undefined || family === undefined ? undefined : { number, family };
}

/** "20", "0", "000" or "3/0" as a number that falls by one for each zero more. */
function gaugeNumber(written: string): number | undefined {
  const zeros = /^([1-9])\/0$/u.exec(written)?.[1];
  if (zeros !== undefined) return 1 - Number(zeros);
  if (/^0+$/u.test(written)) return 1 - written.length;
  return /^[1-9]\d?$/u.test(written) ? Number(written) : undefined;
}

/** Weight of the U.S. Standard Gauge, oz/ft², for numbers from -6 (7/0) to 38. */
function ouncesPerSquareFoot(number: number): number {
  let oz = HEAVIEST.oz;
  let reached = HEAVIEST.number;
  for (const step of STEPS) {
    const steps = Math.min(number, step.upTo) - reached;
    if (steps <= 0) break;
    oz -= steps * step.oz;
    reached += steps;
  }
  return oz;
}
