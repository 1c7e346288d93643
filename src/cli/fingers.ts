/**
 * `noseroom fingers --set "4, 3, 2 x2, 1, 1/2" --inside "8 1/4 in"`: which fingers to put between the walls of a pan.
 */
import { chooseFingers, type FingerStock, gapBesideWalls } from "../blank/fingers.ts";
import { CAUTIONS } from "../drawing/cautions.ts";
import { lengthWords } from "../drawing/lengthWords.ts";
import { type LengthUnit, nearestSixtyFourth, parseLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { inkFor } from "./ink.ts";
import { Refusal } from "./refusal.ts";

export interface FingersOptions {
  readonly set: string;
  readonly inside: string;
  readonly radius?: string;
  readonly units?: string;
}

/**
 * Prints the choice and gives the exit status: 0, or 1 where no choice fills the length.
 * @throws Refusal for input that cannot be worked with
 */
export function runFingers(options: FingersOptions): number {
  const units = unitsOf(options.units);
  const insideMm = above0(options.inside, "--inside", units);
  const radiusMm = options.radius === undefined ? 0 : lengthOf(options.radius, "--radius", units);
  const gap = gapBesideWalls(radiusMm);
  const choice = chooseFingers(stockOf(options.set, units), insideMm, gap);
  const ink = inkFor(process.stdout, process.env);
  const room = `${lengthWords(gap.leastMm, units)} to ${lengthWords(gap.mostMm, units)}`;
  const inside = lengthWords(insideMm, units);
  const lines =
    choice === undefined
      ? [ink.strong(`No choice of these fingers fills ${inside} and leaves ${room} beside the walls.`)]
      : [
          ink.strong(`${choice.widthsMm.map((width) => widthWords(width, units)).join(" + ")} ${units}.`),
          `They fill ${lengthWords(choice.filledMm, units)} of ${inside} and leave ${lengthWords(choice.gapMm, units)}, half at each end.`,
          `Asked for: ${room} beside the walls, clear of both inside radii.`,
        ];
  process.stdout.write(`${[...lines, ink.faint(CAUTIONS)].join("\n")}\n`);
  return choice === undefined ? 1 : 0;
}

/** The nearest 64th in inches, since fingers are cut to fractions; in mm as given. */
function widthWords(widthMm: Mm, units: LengthUnit): string {
  return units === "in" ? nearestSixtyFourth(widthMm).words : `${Math.round(widthMm * 1000) / 1000}`;
}

function unitsOf(written: string | undefined): LengthUnit {
  if (written === undefined || written === "in") return "in";
  if (written === "mm") return "mm";
  throw new Refusal(`--units is "${written}"; it may be mm or in.`);
}

/** "4, 3, 2 x2, 1 1/2": widths with commas between, each with how many there are. */
function stockOf(written: string, units: LengthUnit): readonly FingerStock[] {
  return written
    .split(",")
    .filter((one) => one.trim() !== "")
    .map((one) => {
      const [width = "", times] = one.split(/\s*[x×]\s*/iu);
      const count = times === undefined ? 1 : Number(times);
      if (!(Number.isInteger(count) && count > 0)) {
        throw new Refusal(`--set has "${one.trim()}"; it may be a width, or a width and how many: "2 x3".`);
      }
      return { widthMm: above0(width, "--set", units), count };
    });
}

function above0(written: string, option: string, units: LengthUnit): Mm {
  const lengthMm = lengthOf(written, option, units);
  if (lengthMm > 0) return lengthMm;
  throw new Refusal(`${option} has "${written.trim()}"; it may be a length greater than 0.`);
}

function lengthOf(written: string, option: string, units: LengthUnit): Mm {
  const lengthMm = parseLength(written, units);
  if (lengthMm !== undefined && lengthMm >= 0) return lengthMm;
  throw new Refusal(`${option} has "${written.trim()}"; it may be a length of 0 or more.`);
}
