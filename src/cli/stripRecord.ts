/**
 * The record of a test strip as a file: what was read, when, on which brake and of which metal, and what follows from
 * it. JSON, lengths in mm, angles in degrees; read back it gives the same readings, and the figures are worked out anew.
 */
import * as z from "zod";
import { dataOf } from "../jobFile/jsonText.ts";
import { problemSentence } from "../jobFile/problem.ts";
import { shapedBy } from "../jobFile/shape.ts";
import { group, oneOf } from "../jobFile/shapes.ts";
import { metalNamed } from "../metal/metals.ts";
import type { StripResult } from "../part/testStrip.ts";
import { jobText } from "./jobText.ts";
import { Refusal } from "./refusal.ts";
import type { StripReadings } from "./stripReadings.ts";

/** What follows from the readings; null for the half that was not read. */
export interface StripFound {
  readonly bend: StripResult | null;
  /** Part of the leaf angle that stays. */
  readonly springback: number | null;
}

/** More is no record of one strip. */
const MOST_TEXT = 10_000;

function figure(allowed: string, least: number, most: number) {
  const error = () => allowed;
  return z.number({ error }).min(least, { error }).max(most, { error });
}

function words(what: string) {
  const error = () => `${what}, plain text on one line`;
  return z
    .string({ error })
    .max(200, { error })
    .refine((text) => !/\p{Cc}/u.test(text), { error });
}

const size = figure("a length in mm, above 0", 1e-6, 100_000);
const radius = figure("a length in mm, 0 or more", 0, 100_000);
const angle = figure("degrees from flat, above 0 and under 180", 1e-6, 180 - 1e-6);
const strength = figure("a strength in MPa, above 0", 1e-6, 1e7);

const recordSchema = group("the record of a strip", {
  noseroomStrip: z.literal(1, { error: () => "1, the version of a strip's record" }),
  units: oneOf(["mm", "in"]),
  date: z.iso.date({ error: () => "a day such as 2026-05-30" }),
  brake: words("a brake's name").nullable(),
  metal: group("a metal", { name: words("a name"), yield: strength, modulus: strength }).nullable(),
  thickness: size,
  insideRadius: radius,
  angle,
  widths: group("the widths read", {
    before: size,
    flanges: z.tuple([size, size], { error: () => "a list of two lengths in mm" }),
  }).nullable(),
  spring: group("the springback read", { leaf: angle, relaxed: angle }).nullable(),
  found: z.unknown().optional(),
});

/** The record's text, ending with a line end. */
export function recordText(read: StripReadings, { bend, springback }: StripFound): string {
  const { units, date, brake, metal, thicknessMm, insideRadiusMm, angleDeg, widths, spring } = read;
  const record: z.output<typeof recordSchema> = {
    noseroomStrip: 1,
    units,
    date,
    brake,
    metal: metal && { name: metal.name, yield: metal.yieldMpa, modulus: metal.modulusMpa },
    thickness: thicknessMm,
    insideRadius: insideRadiusMm,
    angle: angleDeg,
    widths: widths && { before: widths.beforeMm, flanges: [...widths.flangesMm] },
    spring: spring && { leaf: spring.leafReadDeg, relaxed: spring.relaxedDeg },
    found: {
      deduction: bend?.deductionMm ?? null,
      allowance: bend?.allowanceMm ?? null,
      kFactor: bend?.kFactor ?? null,
      springback,
    },
  };
  return `${JSON.stringify(record, null, 2)}\n`;
}

/**
 * The readings that a record keeps.
 * @throws Refusal for a file that can't be read, or is no record
 */
export async function readRecord(path: string): Promise<StripReadings> {
  const text = await jobText(path);
  const data = dataOf(text, MOST_TEXT);
  const shape = data.ok ? shapedBy(recordSchema, data.value) : data;
  if (!shape.ok) {
    throw new Refusal(
      ...shape.problems.map(
        (one) => `${path}: ${problemSentence(one).replace("The job file", "The record")}`,
      ),
    );
  }
  const { units, date, brake, metal, thickness, insideRadius, angle: angleDeg, widths, spring } = shape.file;
  return {
    units,
    date,
    brake,
    metal:
      metal &&
      (metalNamed(metal.name) ?? { name: metal.name, yieldMpa: metal.yield, modulusMpa: metal.modulus }),
    thicknessMm: thickness,
    insideRadiusMm: insideRadius,
    angleDeg,
    widths: widths && { beforeMm: widths.before, flangesMm: widths.flanges },
    spring: spring && { leafReadDeg: spring.leaf, relaxedDeg: spring.relaxed },
  };
}
