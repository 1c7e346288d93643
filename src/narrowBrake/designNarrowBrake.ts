/**
 * Designs the shop-made narrow brake: the smallest sizes on the rack, put together, checked, and whatever fails made larger
 * until nothing does. What it ends in is an assembly that passes every check, or the true reason why there is none.
 * Bound: each check's own.
 */
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { assemble } from "./assemble.ts";
import { barWindow, windowSentence } from "./barWindow.ts";
import { bedChecks } from "./checks/bedChecks.ts";
import { clampChecks } from "./checks/clampChecks.ts";
import { hingeChecks } from "./checks/hingeChecks.ts";
import { leafChecks } from "./checks/leafChecks.ts";
import { mountChecks, weightOf } from "./checks/mountChecks.ts";
import { swingCheck } from "./checks/swingCheck.ts";
import type { UnderLoad } from "./checks/under.ts";
import { cutList } from "./cutList.ts";
import { freeSwing, freeSwingBefore, inOnePlace } from "./freeSwing.ts";
import { type GoverningLoads, governingLoads } from "./governingLoads.ts";
import type { NarrowBrake, Refused } from "./narrowBrake.ts";
import { barLength, boltsClear, boltsInside, placesOf } from "./places.ts";
import {
  MOST_LOST_IN_ALL,
  type NarrowBrakeRequirements,
  type ResolvedRequirements,
  resolveRequirements,
} from "./requirements.ts";
import { failureWords } from "./shopFigures.ts";
import { type BrakeSizes, firstSizes, type Growth, grown } from "./sizes.ts";
import { type Stock, stockIn } from "./stockSize.ts";
import { checkOf, type StrengthCheck } from "./strengthCheck.ts";
import { shopWords } from "./words/shopWords.ts";

/** Far more than there are sizes on the rack. */
const MOST_ROUNDS = 400;
/** Shorter beds are stiff enough on their spine. */
const LEAST_WITH_LEG_MM = 300;
/** What a bolt more or so weighs. */
const LEAST_KG = 0.05;

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
  const barMm = barThickness(requirements, firstLoads, stock);
  if (barMm === undefined) return windowSentence(barWindow(requirements, firstLoads, stock), units);
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

/** Of all that helps against a failed check what does so with the least weight. */
function lightest(failed: StrengthCheck, { requirements, places, stock, assembly, ...under }: UnderLoad) {
  // Grown from what stands there, which may be more than was asked for.
  const { capDepthMm, leafHighMm, bedEarHighMm } = places;
  const sizes = { ...under.sizes, capDepthMm, leafHighMm, bedEarHighMm };
  const larger = [failed.grows, ...(failed.orGrows ?? [])].flatMap((growth) => {
    const one = growth === null ? undefined : grown(sizes, growth, stock, requirements);
    return (growth && one && withRoomInRow(requirements, one, growth, stock)) ?? [];
  });
  if (larger.length < 2) return larger[0];
  const kg = weightOf({ assembly });
  const gain = (one: BrakeSizes) => {
    const under = underLoad(requirements, one, stock);
    const same = ({ member, check }: StrengthCheck) => member === failed.member && check === failed.check;
    const value = under && checksOf(under).find(same)?.value;
    if (value === undefined) return Number.NEGATIVE_INFINITY;
    return (failed.value - value) / Math.max(weightOf(under!) - kg, LEAST_KG);
  };
  const gains = larger.map(gain);
  return larger[gains.indexOf(Math.max(...gains))];
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

/** The same with so few bolts that each washer clears the next; undefined where one bolt more is what was asked and has no room. */
function withRoomInRow(
  requirements: ResolvedRequirements,
  larger: BrakeSizes,
  growth: Growth,
  stock: Stock,
): BrakeSizes | undefined {
  const fewest = growth === "boltGaps" ? larger.boltGaps : 1;
  for (let boltGaps = larger.boltGaps; boltGaps >= fewest; boltGaps--) {
    const fewer = { ...larger, boltGaps };
    const places = placesOf(requirements, fewer, stock, 0);
    if (places === undefined || boltsClear(places)) return fewer;
  }
  return undefined;
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

function underLoad(
  requirements: ResolvedRequirements,
  sizes: BrakeSizes,
  stock: Stock,
): UnderLoad | undefined {
  const loads = governingLoads(requirements, sizes.leafMm);
  const places = placesOf(requirements, sizes, stock, loads.turningNmm.value);
  if (places === undefined || Object.values(places).some((place) => Number.isNaN(place))) return undefined;
  const assembly = assemble(requirements, sizes, places, stock);
  return { requirements, loads, sizes, places, assembly, stock };
}

function checksOf(under: UnderLoad): StrengthCheck[] {
  const checks = [
    ...leafChecks(under),
    ...hingeChecks(under),
    ...clampChecks(under),
    ...bedChecks(under),
    ...mountChecks(under),
  ];
  return [...checks, lostInAll(checks, under)];
}

/** What leaf, bed and holder lose together: the bar's front leans back by as much. */
function lostInAll(checks: readonly StrengthCheck[], { requirements }: UnderLoad): StrengthCheck {
  const lost = checks.filter(({ check }) => check.startsWith("bend angle lost"));
  const of = (member: string) =>
    lost.filter((one) => one.member === member).reduce((a, b) => (b.value > a.value ? b : a));
  const worst = [of("leaf"), of("bed"), of("holder")].sort((a, b) => b.value - a.value);
  return checkOf({
    member: "brake",
    check: "bend angle lost in all at mid-length",
    value: worst.reduce((sum, { value }) => sum + value, 0),
    limit: MOST_LOST_IN_ALL * requirements.give.angleDeg,
    unit: "deg",
    formula: "sum of what leaf, bed and holder lose",
    source: "the checks above",
    assumptions: [
      "before the bar is set forward in the middle",
      "the bar's front leans back so far that it clears",
    ],
    pieces: [...new Set(worst.flatMap(({ pieces }) => pieces))],
    grows: worst[0]!.grows,
    orGrows: worst.flatMap(({ grows, orGrows = [] }) => [...(grows ? [grows] : []), ...orGrows]),
  });
}

/** The thinnest bar of the rack within the window; where none is, one that is planed down to it. */
function barThickness(
  requirements: ResolvedRequirements,
  loads: GoverningLoads,
  stock: Stock,
): Mm | undefined {
  const { thinnestMm, thickestMm, stockInsideMm } = barWindow(requirements, loads, stock);
  if (stockInsideMm[0] !== undefined) return stockInsideMm[0];
  const fine = requirements.units === "in" ? 25.4 / 64 : 0.1;
  const planedMm = Math.ceil(thinnestMm / fine - 1e-9) * fine;
  return planedMm <= thickestMm ? planedMm : undefined;
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
