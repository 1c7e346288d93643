/**
 * What the person wants of a narrow brake otherwise than taken: safety factors, steel, hand force, vise, give.
 * Each an option of `bar`; what is left out stays as remedy/shopMade/requirements.ts has it.
 */

import type { NarrowBrakeWishes } from "../narrowBrake/requirements.ts";
import { STOCK_STEEL } from "../narrowBrake/requirements.ts";
import type { LengthUnit } from "../units/length.ts";
import { lengthOption, pairOption } from "./optionLengths.ts";
import { Refusal } from "./refusal.ts";

export interface WishOptions {
  readonly loadFactor?: string;
  readonly yieldFactor?: string;
  readonly boltFactor?: string;
  readonly pinFactor?: string;
  readonly steelYield?: string;
  readonly handForce?: string;
  readonly viseForce?: string;
  readonly viseJaws?: string;
  readonly noseGive?: string;
  readonly angleLost?: string;
}

/** @throws Refusal for a figure that can't be worked with */
export function barWishes(options: WishOptions, units: LengthUnit): NarrowBrakeWishes {
  const safety = given({
    load: above(options.loadFactor, "--load-factor", 1),
    yield: above(options.yieldFactor, "--yield-factor", 1),
    bolt: above(options.boltFactor, "--bolt-factor", 1),
    pin: above(options.pinFactor, "--pin-factor", 1),
  });
  const give = given({
    noseMm: options.noseGive === undefined ? undefined : giveOf(options.noseGive, units),
    angleDeg: above(options.angleLost, "--angle-lost", 0),
  });
  const jaws =
    options.viseJaws === undefined
      ? undefined
      : pairOption(options.viseJaws, "--vise-jaws", units, 'width x height, such as "4 x 1 1/2 in"');
  const vise = given({
    jawWidthMm: jaws?.[0],
    jawHeightMm: jaws?.[1],
    forceN: above(options.viseForce, "--vise-force", 0),
  });
  const yieldMpa = above(options.steelYield, "--steel-yield", 0);
  const handForceN = above(options.handForce, "--hand-force", 0);
  return {
    safety,
    give,
    vise,
    ...(handForceN !== undefined && { handForceN }),
    ...(yieldMpa !== undefined && { steel: { ...STOCK_STEEL, yieldMpa } }),
  };
}

function giveOf(written: string, units: LengthUnit): number {
  const giveMm = lengthOption(written, "--nose-give", units);
  if (giveMm > 0) return giveMm;
  throw new Refusal(`--nose-give is "${written}"; it may be a length above 0.`);
}

/** A figure of at least `least`, and above 0. */
function above(written: string | undefined, option: string, least: number): number | undefined {
  if (written === undefined) return undefined;
  const figure = written.trim() === "" ? Number.NaN : Number(written);
  if (figure > 0 && figure >= least && figure < Number.POSITIVE_INFINITY) return figure;
  const allowed = least > 0 ? `a number of ${least} or more` : "a number above 0";
  throw new Refusal(`${option} is "${written}"; it may be ${allowed}.`);
}

/** What was given, without the rest. */
function given<Key extends string>(figures: Record<Key, number | undefined>): Partial<Record<Key, number>> {
  return Object.fromEntries(Object.entries(figures).filter(([, figure]) => figure !== undefined)) as Partial<
    Record<Key, number>
  >;
}
