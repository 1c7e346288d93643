/**
 * Designs the shop-made narrow brake: the smallest sizes on the rack, put together, checked, and whatever fails made larger
 * until nothing does. What it ends in is an assembly that passes every check, or the true reason why there is none.
 * Bound: each check's own.
 */
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { barWindow, windowSentence } from "./barWindow.ts";
import { weightOf } from "./checks/mountChecks.ts";
import { swingCheck } from "./checks/swingCheck.ts";
import type { UnderLoad } from "./checks/under.ts";
import { cutList } from "./cutList.ts";
import { freeSwing, freeSwingBefore, inOnePlace } from "./freeSwing.ts";
import { governingLoads } from "./governingLoads.ts";
import { lightest } from "./lightest.ts";
import type { NarrowBrake, Refused } from "./narrowBrake.ts";
import { barLength, boltsInside } from "./places.ts";
import {
  type NarrowBrakeRequirements,
  type ResolvedRequirements,
  resolveRequirements,
} from "./requirements.ts";
import { failureWords } from "./shopFigures.ts";
import { firstSizes } from "./sizes.ts";
import { stockIn } from "./stockSize.ts";
import type { StrengthCheck } from "./strengthCheck.ts";
import { checksOf, underLoad } from "./tried.ts";
import { shopWords } from "./words/shopWords.ts";

/** Far more than there are sizes on the rack. */
const MOST_ROUNDS = 400;
/** Shorter beds are stiff enough on their spine. */
const LEAST_WITH_LEG_MM = 300;

interface Sound {
  readonly under: UnderLoad;
  readonly swing: Deg;
  readonly checks: readonly StrengthCheck[];
}

/**
 * The narrow brake for a set of parts.
 * @throws RangeError where a requirement is missing or not above zero
 */
export function designNarrowBrake(asked: NarrowBrakeRequirements): NarrowBrake {
  const requirements = resolveRequirements(asked);
  const made = soundest(requirements);
  const stock = stockIn(requirements.units);
  const loads =
    typeof made === "string" ? governingLoads(requirements, faceWanted(requirements)) : made.under.loads;
  const window = barWindow(requirements, loads, stock);
  const base = {
    requirements,
    loads,
    window,
    windowSentence: windowSentence(window, requirements.units),
  };
  if (typeof made === "string") {
    return { ...base, plan: null, refused: { why: made, longestMm: longestThatDoes(requirements) } };
  }
  const { under, checks, swing } = made;
  const { pieces, pivot, vise } = under.assembly;
  const assembly = { pieces, pivot, swing, vise };
  const cuts = cutList(assembly, under);
  return {
    ...base,
    refused: null,
    plan: {
      sizes: under.sizes,
      places: under.places,
      assembly,
      checks,
      cutList: cuts,
      weightKg: weightOf({ assembly }),
      ...shopWords({ ...under, assembly }),
    },
  };
}

/** The lighter brake of a bed on its spine alone and one with a back leg too, or one sentence on what stands against both. */
function soundest(requirements: ResolvedRequirements): Sound | string {
  const alone = soundWith(requirements, false);
  if (longestPart(requirements) < LEAST_WITH_LEG_MM) return alone;
  const withLeg = soundWith(requirements, true);
  if (typeof withLeg === "string") return alone;
  return typeof alone === "string" || weightOf(withLeg.under) < weightOf(alone.under) ? withLeg : alone;
}

function longestPart({ parts }: Pick<ResolvedRequirements, "parts">): Mm {
  return Math.max(...parts.map(({ lengthMm }) => lengthMm));
}

/** Sizes that pass every check, or one sentence on what stands against them. */
function soundWith(requirements: ResolvedRequirements, backLeg: boolean): Sound | string {
  const { units } = requirements;
  const stock = stockIn(units);
  const wantedFaceMm = faceWanted(requirements);
  const firstLoads = governingLoads(requirements, Math.min(wantedFaceMm, 12.7));
  const window = barWindow(requirements, firstLoads, stock);
  // The thinnest bar of the rack within the window; where none is, one that is planed down to it.
  const barMm = window.stockInsideMm[0] ?? window.planedMm;
  if (barMm === undefined) return windowSentence(window, units);
  const barMmLong = barLength(firstLoads.longestPartMm, units);
  let sizes = firstSizes({ ...requirements, boltsInside: boltsInside(requirements), backLeg }, stock, barMm, {
    barMm: barMmLong,
    wantedFaceMm,
  });
  let failed: StrengthCheck | undefined;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const under = underLoad(requirements, sizes, stock);
    if (under === undefined) {
      if (sizes.held === "bench") return rackEnds(failed, roomSentence(requirements), units);
      // So deep a leaf leaves no room for jaws under it.
      sizes = { ...sizes, held: "bench" };
      continue;
    }
    const checks = checksOf(under);
    failed = checks.find(({ passes }) => !passes);
    if (failed === undefined) return goesTogether(under, checks);
    const next = lightest(failed, under);
    if (next === undefined) return rackEnds(failed, leafRoom(failed, requirements), units);
    sizes = next;
  }
  return rackEnds(failed, "no set of sizes came out", units);
}

/** Why nothing larger would do: what hangs before the leaf, or the rack. */
function leafRoom({ member }: StrengthCheck, requirements: ResolvedRequirements): string {
  const { leafHighMaxMm, leafFaceMaxMm, units } = requirements;
  if (member !== "leaf" || leafHighMaxMm === undefined) return "nothing larger is on the rack";
  const high = `${formatLength(leafHighMaxMm, units)} ${units} high`;
  const wide = leafFaceMaxMm === undefined ? "" : ` and ${formatLength(leafFaceMaxMm, units)} ${units} wide`;
  return `the part wraps round the leaf, which may be ${high}${wide} at the most; longer flats there leave room for a stiffer one`;
}

function roomSentence({ holderDepthMaxMm, overhangMm, units }: ResolvedRequirements): string {
  if (holderDepthMaxMm === undefined) return "no stock flat is wide enough";
  const room = formatLength(overhangMm + holderDepthMaxMm, units);
  return `the part leaves ${room} ${units} from the nose back for bar and holder, too little for bolts and heel`;
}

/** Whether strong pieces also go together, and the leaf turns as far as the parts ask. */
function goesTogether(under: UnderLoad, checks: readonly StrengthCheck[]): Sound | string {
  const { pieces } = under.assembly;
  const [clash] = inOnePlace(pieces);
  if (clash) return `Put together, ${clash[0]} and ${clash[1]} would stand in one place.`;
  const whole = freeSwing(pieces);
  const turns = swingsAsked(under).map(({ askedDeg, forwardMm }) => {
    const free = forwardMm === 0 ? whole : freeSwingBefore(pieces, forwardMm);
    return { askedDeg, forwardMm, ...free };
  });
  const short = turns.find(({ deg, askedDeg }) => deg < askedDeg);
  if (short === undefined) {
    const [drawn, ...further] = turns;
    const closest = further.sort((a, b) => a.deg - a.askedDeg - b.deg + b.askedDeg).slice(0, 1);
    const swings = [drawn!, ...closest].map((turn) => swingCheck(turn));
    return { under, checks: [...checks, ...swings], swing: whole.deg };
  }
  const where = short.meet ? `, where its ${short.meet[0]} meets the ${short.meet[1]}` : "";
  return `The leaf would turn to ${short.deg}° only${where}; a bend asks for ${Number(short.askedDeg.toFixed(1))}°.`;
}

/** The largest leaf angle at the place where the brake is drawn, and where the bar stands foremost for another bend. */
function swingsAsked({ requirements: { parts }, places }: UnderLoad) {
  const bends = parts.flatMap((part) => part.bends);
  const drawn = { askedDeg: Math.max(...bends.map(({ overbendDeg }) => overbendDeg)), forwardMm: 0 };
  const further = bends
    .map(({ overbendDeg, noseSetbackMm }) => ({
      askedDeg: overbendDeg,
      forwardMm: -noseSetbackMm - places.noseX,
    }))
    .filter(({ forwardMm }) => forwardMm > 0);
  return [drawn, ...further];
}

function rackEnds(failed: StrengthCheck | undefined, why: string, units: LengthUnit): string {
  return `${failed === undefined ? "This brake can't be planned" : failureWords(failed, units)}: ${why}.`;
}

/** Face that the leaf should have: the longest of the shortest flanges, as far as the parts clear it. */
function faceWanted({ parts, leafFaceMaxMm = Number.POSITIVE_INFINITY }: ResolvedRequirements): Mm {
  return Math.min(Math.max(...parts.map((part) => part.shortestFlangeMm)), leafFaceMaxMm);
}

/** The longest brake for the same sheet and flats that can be planned, to half an inch or ten millimetres; 0 where none can. */
function longestThatDoes(requirements: ResolvedRequirements): Mm {
  const stepMm = requirements.units === "in" ? 12.7 : 10;
  const does = (steps: number) =>
    typeof soundest({
      ...requirements,
      parts: requirements.parts.map((part) => ({
        ...part,
        lengthMm: Math.min(part.lengthMm, steps * stepMm),
      })),
    }) !== "string";
  let low = 0;
  let high = Math.ceil(longestPart(requirements) / stepMm);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (does(middle)) low = middle;
    else high = middle;
  }
  return low * stepMm;
}

/** A refusal in words, with the longest that would do. */
export function refusalSentence({ why, longestMm }: Refused, units: "mm" | "in"): string {
  return longestMm > 0
    ? `${why} The longest that would do is ${formatLength(longestMm, units)} ${units}.`
    : `${why} No length would do.`;
}
