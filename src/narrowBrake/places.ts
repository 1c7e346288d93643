/**
 * Where everything of a narrow brake stands, from its sizes: distances back from the bed's edge, heights, places along the bend.
 * Section frame, w from the middle. What a saw or drill needs is on the sixteenth or the whole millimetre.
 * Plain arithmetic; the pieces (assemble.ts) and the checks read these and nothing else.
 */
import { type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { BendToFold, ResolvedRequirements } from "./requirements.ts";
import { upToMark } from "./shopMark.ts";
import type { BrakeSizes } from "./sizes.ts";
import type { FlatHead, Stock } from "./stockSize.ts";

/** The bar outlasts the longest part by this at each end. */
const BAR_SPARE_MM = 5;
/** Sheet and bolt keep this apart. */
const BOLT_CLEAR_MM = 6;
/** Bolts farther behind the nose than this would want a holder and bed too thick to lift: they stand beyond the ends. */
const DEEPEST_THROAT_MM = 90;
/** Travel of the bar beyond the spread of setbacks, for wear, shims and the test strip. */
const SPARE_TRAVEL_MM = 3;
/** What the bar presses on behind its bolts. */
const HEEL_MM = 10;
/** With a shorter lever behind the bolts the heel takes all of their pull. */
const LEAST_HEEL_LEVER_MM = 8;
/** Fingers pull a slotted washer out between its neighbours: common practice, no source. */
const WASHERS_APART_MM = 6;
/** A thicker washer is no longer pulled out by a thumb; the nut makes up the rest of the opening. */
const THICKEST_WASHER_MM = 25.4;
/** Across the corners of a hexagon that is 1.5 diameters across its flats. */
export const NUT_CORNERS = Math.sqrt(3);
/** Height of a nut in diameters. */
export const NUT_HIGH = 0.875;
/** The end of a handle stands out so far beyond the middle of the hand. */
const GRIP_MM = 50;
/** Handles shorter than this give the hand no room; longer than that no one person swings. */
const SHORTEST_HANDLE_MM = 150;
/** Metal around a hole: one and a half diameters from its middle, common practice, no source. */
const EDGE_IN_DIAMETERS = 1.5;
/** Jaws keep this below the leaf. */
const JAW_CLEAR_MM = 6;
/** Depth that a moving jaw takes in front of the spine: a guess, measure your vise. */
const FRONT_JAW_MM = 40;

export type Places = NonNullable<ReturnType<typeof placesOf>>;

/** True where the bolts can stand behind the sheet, inside its length. */
export function boltsInside({ parts }: Pick<ResolvedRequirements, "parts">): boolean {
  return Math.max(...parts.map((part) => part.deepestClampedMm)) + BOLT_CLEAR_MM <= DEEPEST_THROAT_MM;
}

/** The nose setback that the brake is drawn at: the least of those with the largest leaf angle. */
export function drawnAt(bends: readonly BendToFold[]): Mm {
  const most = Math.max(...bends.map(({ overbendDeg }) => overbendDeg));
  return Math.min(...bends.filter((bend) => bend.overbendDeg === most).map((bend) => bend.noseSetbackMm));
}

/** Length of the bar. @example barLength(305, "mm") // 315 */
export function barLength(longestPartMm: Mm, units: LengthUnit): Mm {
  return upToMark(longestPartMm + 2 * BAR_SPARE_MM, units);
}

/** Whether every washer clears the next, and every bolt's hole the flat head beside it. */
export function boltsClear({ pitchMm, washerMm, boltHoleMm, flatHead }: Places): boolean {
  return pitchMm >= Math.max(washerMm + WASHERS_APART_MM, boltHoleMm + flatHead.headMm + WASHERS_APART_MM);
}

/** Places, or undefined where the rack has nothing wide enough. */
export function placesOf(
  requirements: ResolvedRequirements,
  sizes: BrakeSizes,
  stock: Stock,
  turningNmm: number,
) {
  const { units, parts, overhangMm, liftMm, handForceN } = requirements;
  const mark = (mm: Mm) => upToMark(mm, units);
  const width = (mm: Mm) => stock.flatWidthsMm.find((one) => one >= mm - 1e-6) ?? Number.NaN;
  const thick = (mm: Mm) => stock.flatThicknessesMm.find((one) => one >= mm - 1e-6) ?? Number.NaN;
  const markMm = units === "in" ? MM_PER_INCH / 16 : 1;
  const gapMm = units === "in" ? MM_PER_INCH / 64 : 0.5;
  const inside = boltsInside(requirements);
  const sheetMm = Math.min(...parts.map((part) => part.thicknessMm));
  const bends = parts.flatMap((part) => part.bends);
  const noseSetbacksMm = bends.map(({ noseSetbackMm }) => noseSetbackMm);
  const [leastNoseSetback, mostNoseSetback] = [Math.min(...noseSetbacksMm), Math.max(...noseSetbacksMm)];
  const drawnNoseSetback = drawnAt(bends);
  const middleNoseSetback = (leastNoseSetback + mostNoseSetback) / 2;
  const spread = mostNoseSetback - leastNoseSetback;
  const d = sizes.bolt.diameterMm;

  // Clamp: bar under holder, bolts through both.
  const boltHoleMm = mark(d + spread + SPARE_TRAVEL_MM + markMm);
  const washerMm = width(boltHoleMm + 0.8 * d);
  // A washer as thick as the clamp must open, but for half a turn: pulled out, it opens the clamp.
  const washerThickMm = thick(
    Math.max(sizes.washerMm, Math.min(liftMm - sizes.bolt.pitchMm / 2, THICKEST_WASHER_MM)),
  );
  const openingTurns = Math.max(
    0.5,
    Math.ceil((2 * (liftMm - washerThickMm)) / sizes.bolt.pitchMm - 1e-6) / 2,
  );
  const deepestMm = Math.max(...parts.map((part) => part.deepestClampedMm));
  const boltFromHolderFront = mark(
    Math.max(
      EDGE_IN_DIAMETERS * boltHoleMm,
      washerMm / 2,
      inside ? deepestMm + BOLT_CLEAR_MM + d / 2 - overhangMm : 0,
    ),
  );
  const frontMm = overhangMm + boltFromHolderFront;
  // As deep as the heel wants it, or as the parts let it.
  const { holderDepthMaxMm = Number.POSITIVE_INFINITY } = requirements;
  const wantedDepthMm = width(
    frontMm + Math.max(sizes.heelShare * frontMm + HEEL_MM / 2, EDGE_IN_DIAMETERS * boltHoleMm),
  );
  const fitting = stock.flatWidthsMm.filter((mm) => mm <= overhangMm + holderDepthMaxMm);
  const barDepthMm = fitting.includes(wantedDepthMm) ? wantedDepthMm : (fitting.at(-1) ?? Number.NaN);
  const ribRoomMm = sizes.ribHighMm > 0 ? washerMm / 2 + 3 + sizes.ribMm + 3 : 0;
  const holderDepthMm = width(Math.max(barDepthMm - overhangMm, boltFromHolderFront + ribRoomMm));
  const barBackMm = drawnNoseSetback + barDepthMm;
  const backMm = barDepthMm - HEEL_MM / 2 - frontMm;
  if (backMm < LEAST_HEEL_LEVER_MM || holderDepthMm > holderDepthMaxMm) return undefined;
  const holderUnderY = sheetMm + sizes.barMm;
  const holderTopY = holderUnderY + sizes.holderMm;

  // Bed: cap, spine, rail.
  const boltFromEdge = mark(middleNoseSetback + frontMm);
  const screwY = Math.round((holderUnderY + sizes.holderMm / 2) / markMm) * markMm;
  const railMm = thick(Math.max(sizes.screw.diameterMm, sizes.railMm));
  const railHighMm = width(screwY + EDGE_IN_DIAMETERS * sizes.screw.diameterMm);
  const holderBackMost = mostNoseSetback + SPARE_TRAVEL_MM / 2 + overhangMm + holderDepthMm;
  const railBackMm = mark(holderBackMost + 2 + railMm);
  const capDepthMm = width(Math.max(railBackMm + sizes.railWeldMm + 2, sizes.capDepthMm));
  // A reamed running fit.
  const earHoleMm = sizes.pinMm + 0.1;
  const earWideMm = width(2 * EDGE_IN_DIAMETERS * earHoleMm);
  const earRadiusMm = earWideMm / 2;
  const spineFrontMm = mark(
    Math.max(boltFromEdge + (NUT_CORNERS / 2) * d + 1, earRadiusMm + sizes.restMm + 4),
  );
  // What hangs before the leaf or under it must clear the handles: they stand beyond the ends of the part, in a leaf as low as it must be.
  const handlesBeyond = requirements.leafFaceMaxMm !== undefined || requirements.leafHighMaxMm !== undefined;
  const leafHighMm = width(
    Math.max(sizes.leafHighMm, (handlesBeyond ? 1.5 : 2 * EDGE_IN_DIAMETERS) * sizes.handleMm),
  );
  // Hinge: leaf ear beside bed ear.
  const restX = -earRadiusMm - sizes.restMm / 2;
  const restY = -mark(earRadiusMm + sizes.restMm / 2 + 6);
  const leafEarLowY = -mark(Math.max(-restY + sizes.restMm / 2 + 5, leafHighMm));
  const bedEarHighMm = width(
    Math.max(
      sizes.bedEarHighMm,
      earRadiusMm - restY + EDGE_IN_DIAMETERS * sizes.restMm,
      earRadiusMm + sizes.capMm + 30,
    ),
  );
  // The spine reaches down behind the ear, so that the whole ear is welded to it.
  const { jawHeightMm } = requirements.vise;
  const spineHighMm = width(
    Math.max(
      sizes.spineHighMm,
      bedEarHighMm - earRadiusMm - sizes.capMm,
      sizes.held === "vise" ? leafHighMm + JAW_CLEAR_MM - sizes.capMm + jawHeightMm : 0,
    ),
  );
  const spineBottomY = -sizes.capMm - spineHighMm;
  const bedEarLongMm = mark(earRadiusMm + spineFrontMm + sizes.spineMm + sizes.weldMm + 3);

  // Along the bend.
  const longestPartMm = Math.max(...parts.map((part) => part.lengthMm));
  const barLongMm = barLength(longestPartMm, units);
  const inset = Math.max(EDGE_IN_DIAMETERS * boltHoleMm, Math.min(40, 0.2 * barLongMm));
  const pitchMm = inside
    ? Math.floor((barLongMm - 2 * inset) / sizes.boltGaps / (2 * markMm)) * 2 * markMm
    : 2 * mark(barLongMm / 2 + Math.max(boltHoleMm, washerMm) / 2 + 3);
  const boltSpanMm = pitchMm * sizes.boltGaps;
  const springMm = units === "in" ? (MM_PER_INCH * 7) / 16 : 12;
  const pocketMm = units === "in" ? MM_PER_INCH / 2 : 13;
  const springW = inside ? mark(barLongMm / 2 + 1 + pocketMm / 2) : boltSpanMm / 2;
  // As far behind the holder's front as the bolts, or further where a bolt stands there.
  const springX =
    drawnNoseSetback + frontMm + (inside ? 0 : mark(Math.max(boltHoleMm, washerMm) / 2 + pocketMm / 2 + 4));
  const holderLongMm =
    2 * mark(inside ? barLongMm / 2 + 20 : boltSpanMm / 2 + EDGE_IN_DIAMETERS * boltHoleMm);
  const handleOutMm = mark(barLongMm / 2 + sizes.handleMm / 2 + 1);
  const leafLongMm = Math.max(
    holderLongMm + 4 * mark(1.5),
    handlesBeyond ? 2 * (handleOutMm + mark(EDGE_IN_DIAMETERS * sizes.handleMm)) : 0,
  );
  const leafEndW = leafLongMm / 2;
  const capLongMm = leafLongMm - 2 * mark(sizes.weldMm + 3);
  const bedEarW = leafEndW + sizes.leafEarMm + gapMm;

  // Handles: as long as the turning asks for.
  const reachMm = mark(Math.max(SHORTEST_HANDLE_MM, turningNmm / (sizes.people * handForceN)));
  const handleW = handlesBeyond ? handleOutMm : mark(0.3 * leafLongMm);
  const fromBottomMm = Math.min(EDGE_IN_DIAMETERS * sizes.handleMm, leafHighMm / 2);
  const handleY = -Math.floor((leafHighMm - fromBottomMm) / markMm + 1e-4) * markMm;
  const handleRootX = markMm;
  const screwInset = units === "in" ? MM_PER_INCH : 25;
  // Beyond the ends there is room for one screw each.
  const screws = inside ? sizes.screws : 2;
  const railEndMm = Math.min(holderLongMm, capLongMm) / 2;
  const screwPitchMm = inside
    ? Math.floor((holderLongMm - 2 * screwInset) / (screws - 1) / (2 * markMm)) * 2 * markMm
    : 2 * mark((railEndMm + barLongMm / 2 + 2) / 2);
  const flatHead: FlatHead =
    stock.flatHeads.filter(({ headHighMm }) => headHighMm <= sizes.barMm - 0.1).at(-1) ?? stock.flatHeads[0]!;
  const down = (mm: Mm) => Math.floor(mm / markMm + 1e-4) * markMm;
  const pocketDeepMm = Math.max(0, down(Math.min(14 - holderUnderY, sizes.holderMm - 4)));
  const fineMm = units === "in" ? MM_PER_INCH / 64 : 0.5;

  return {
    inside,
    sheetMm,
    noseX: -drawnNoseSetback,
    travelMm: mark(spread + SPARE_TRAVEL_MM),
    deepestMm,
    boltHoleMm,
    washerMm,
    washerThickMm,
    openingTurns,
    boltFromHolderFront,
    frontMm,
    backMm,
    heelMm: HEEL_MM,
    barDepthMm,
    barBackMm,
    holderDepthMm,
    holderUnderY,
    holderTopY,
    boltFromEdge,
    screwY,
    railMm,
    railHighMm,
    railBackMm,
    capDepthMm,
    stripFrontMm: mark(middleNoseSetback + barDepthMm - HEEL_MM),
    earHoleMm,
    earRadiusMm,
    earWideMm,
    spineFrontMm,
    spineHighMm,
    spineBottomY,
    legHighMm: Math.min(sizes.legHighMm, spineHighMm),
    leafHighMm,
    restX,
    restY,
    leafEarLowY,
    bedEarHighMm,
    bedEarLongMm,
    bedEarLowY: earRadiusMm - bedEarHighMm,
    longestPartMm,
    barLongMm,
    pitchMm,
    boltSpanMm,
    springW,
    springX,
    springMm,
    pocketMm,
    pocketDeepMm,
    flatHeadHoleMm: Math.ceil((flatHead.diameterMm + 0.3) / fineMm) * fineMm,
    washerHoleMm: Math.ceil((d + 0.6) / fineMm) * fineMm,
    footHoleMm: Math.ceil((sizes.footBolt.diameterMm + 0.6) / fineMm) * fineMm,
    flatHeadDeepMm: Math.min(mark(1.5 * flatHead.diameterMm), down(sizes.holderMm - 1)),
    handlesBeyond,
    holderLongMm,
    leafLongMm,
    leafEndW,
    capLongMm,
    gapMm,
    bedEarW,
    reachMm,
    handleEndX: mark(reachMm + GRIP_MM),
    handleW,
    handleY,
    handleRootX,
    screws,
    screwPitchMm,
    flatHead,
    jawTopY: spineBottomY + jawHeightMm,
    frontJawMm: FRONT_JAW_MM,
    // The feet stand back from the bench's front edge, which is below the cap's.
    footFrontMm: units === "in" ? 3 * markMm : 5,
    footW: Math.round((0.3 * leafLongMm) / markMm) * markMm,
    footWideMm: width(75),
    footLongMm: mark(Math.max(160, spineFrontMm + sizes.spineMm + 60)),
    liftMm,
    markMm,
  };
}

/** Places along the bend of n things that stand evenly around the middle. @example evenly(3, 100) // [-100, 0, 100] */
export function evenly(count: number, pitchMm: Mm): Mm[] {
  return Array.from({ length: count }, (_, i) => (i - (count - 1) / 2) * pitchMm);
}

/** How far a foot bolt is longer than the bench is thick: through the foot and its nut, two threads over it. */
export function footBoltOver({ footMm, footBolt }: BrakeSizes, units: LengthUnit): Mm {
  return upToMark(footMm + NUT_HIGH * footBolt.diameterMm + 2 * footBolt.pitchMm, units);
}
