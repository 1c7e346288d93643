/**
 * What a good foreman says before the sheet is cut: radii, setback, reach of the leaf, grip, grain, cut-outs.
 * One sentence each, lengths in the job's unit, the source or 'common practice' at its end.
 */
import type { Grain } from "../blank/grain.ts";
import type { SharpBend } from "../part/sharpBends.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";

const say = (mm: Mm, units: LengthUnit) => `${formatLength(mm, units)} ${units}`;

/** @example bendNames([1, 2, 3, 5]) // "Bends 1 to 3 and 5" */
export function bendNames(bends: readonly number[]): string {
  const runs: [first: number, last: number][] = [];
  for (const bend of bends) {
    const run = runs.at(-1);
    if (run?.[1] === bend - 1) run[1] = bend;
    else runs.push([bend, bend]);
  }
  const named = runs.flatMap(([first, last]) => {
    if (last - first < 2) return first === last ? [`${first}`] : [`${first}`, `${last}`];
    return [`${first} to ${last}`];
  });
  const last = named.pop();
  if (bends.length === 1) return `Bend ${last}`;
  return named.length === 0 ? `Bends ${last}` : `Bends ${named.join(", ")} and ${last}`;
}

/** The same words for several bends, counted from 0, said once. @example bendRemarks([{ bend: 0, words: "a." }, { bend: 1, words: "a." }]) // ["Bends 1 and 2: a."] */
export function bendRemarks(remarks: readonly { readonly bend: number; readonly words: string }[]): string[] {
  const bendsOf = new Map<string, Set<number>>();
  for (const { bend, words } of remarks) bendsOf.set(words, (bendsOf.get(words) ?? new Set()).add(bend + 1));
  return [...bendsOf].map(([words, bends]) => `${bendNames([...bends].sort((a, b) => a - b))}: ${words}`);
}

/**
 * A radius sharper than the metal takes, to stand after "Bend 2: ".
 * @example sharpBendWords({ bend: 0, insideRadiusMm: 0.5, leastMm: 2, easyMm: 4, angleDeg: 90, grade: "cracks", source: "a table" }, "2024-T3", "mm") // "inside radius 0.5 mm is under 2 mm, the least for 2024-T3 here: it is likely to crack (a table)."
 */
export function sharpBendWords(sharp: SharpBend, metalName: string, units: LengthUnit): string {
  const radius = `inside radius ${say(sharp.insideRadiusMm, units)}`;
  const other = sharp.stricter
    ? ` Another table asks for at least ${say(sharp.stricter.leastMm, units)} (${sharp.stricter.source}).`
    : "";
  if (sharp.grade === "cracks")
    return `${radius} is under ${say(sharp.leastMm, units)}, the least for ${metalName} here: it is likely to crack (${sharp.source}).${other}`;
  return `${radius} is on the tight side for ${metalName}: ${say(sharp.leastMm, units)} to ${say(sharp.easyMm, units)} is the range, so bend a scrap across the grain first (${sharp.source}).${other}`;
}

/** A nose setback that forms another radius than was asked for. */
export function formedRadiusWords(
  made: { readonly noseSetbackMm: Mm; readonly insideRadiusMm: Mm },
  askedMm: Mm,
  units: LengthUnit,
): string {
  return `the nose set back by ${say(made.noseSetbackMm, units)} forms an inside radius of ${say(made.insideRadiusMm, units)}, not the ${say(askedMm, units)} asked for; flats and blank are laid out for what is formed.`;
}

/** A given setback under the least: refused, or taken as the least. */
export function shortSetbackWords(
  noseSetbackMm: Mm,
  leastMm: Mm,
  pinched: boolean,
  units: LengthUnit,
): string {
  const set = `the nose set back by ${say(noseSetbackMm, units)} pinches the sheet`;
  const least = say(leastMm, units);
  return pinched
    ? `${set}. Set it back by ${least} or more.`
    : `${set} a little: the least is ${least}. Brakes spring that much, so the answer takes ${least}.`;
}

export function shortSwingWords(swingDeg: Deg, overbendDeg: Deg): string {
  return `the leaf swings to ${angleWords(swingDeg)} only, and the bend needs ${angleWords(overbendDeg)}.`;
}

/** A front too steep for a bend past 90°. */
export function steepFrontWords(noseAngleDeg: Deg, overbendDeg: Deg): string {
  return `the front of the clamp stands at ${angleWords(noseAngleDeg)}, so a flange taller than the clamp can't be swung past about ${angleWords(180 - noseAngleDeg)}, and this bend needs ${angleWords(overbendDeg)}; bevel the front (common practice, no source).`;
}

export function scantGripWords(runMm: Mm, leastMm: Mm, units: LengthUnit): string {
  return `the clamp grips only ${say(runMm, units)} of flat sheet; under ${say(2 * leastMm, units)} it may slip (common practice, no source).`;
}

export function scantFlangeWords(runMm: Mm, leastMm: Mm, units: LengthUnit): string {
  return `only ${say(runMm, units)} of flat sheet lies on the leaf; under ${say(2 * leastMm, units)} the leaf hardly catches it (common practice, no source).`;
}

/**
 * Warning where bends run along the grain, or the grain isn't known; undefined where all is well.
 * @example grainWarning("across", 2) // undefined
 */
export function grainWarning(grain: Grain, bendCount: number): string | undefined {
  if (bendCount === 0 || grain === "across") return undefined;
  const bends = bendCount === 1 ? "the bend" : `all ${bendCount} bends`;
  if (grain === "along") {
    return `The grain runs along ${bends}: turn the blank on the sheet, or take a larger inside radius, or the outside of the bend may crack.`;
  }
  return "Look which way the grain of the sheet runs and lay the blank so that the bends cross it.";
}

/** An edge of a cut-out in a bend zone; cut-out and bend counted from 1, places from the datum edge. */
export function cutOutInBendWords(
  at: {
    readonly cutOut: number;
    readonly edgeMm: Mm;
    readonly bend: number;
    readonly zoneMm: readonly [Mm, Mm];
  },
  clearMm: Mm,
  units: LengthUnit,
): string {
  const [near, far] = at.zoneMm;
  return `Cut-out ${at.cutOut}: its edge ${say(at.edgeMm, units)} from the datum edge lies in bend ${at.bend}, which runs from ${say(near, units)} to ${say(far, units)}, and would be pulled out of shape. End it on a bend tangent line, or keep it ${say(clearMm, units)} clear of the bend: the inside radius and two thicknesses (common practice, no source).`;
}
