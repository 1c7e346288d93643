/**
 * The sizes that a narrow brake is built from: one figure for each thing that may be chosen thicker, deeper or larger.
 * The smallest sensible ones to begin with, and the next on the rack for each. All in mm.
 */
import type { Mm } from "../units/quantity.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import type { Stock, TappedThread } from "./stockSize.ts";

export interface BrakeSizes {
  readonly barMm: Mm;
  readonly holderMm: Mm;
  /** Least share of the nose's lever that the heel has behind the bolts. */
  readonly heelShare: number;
  /** A rib on edge on the holder, where two bolts stand far apart; 0 without. */
  readonly ribMm: Mm;
  readonly ribHighMm: Mm;
  readonly bolt: TappedThread;
  /** Spaces between bolts along the bend; 1 where they stand beyond the ends of the part. */
  readonly boltGaps: number;
  readonly washerMm: Mm;
  readonly capMm: Mm;
  readonly capDepthMm: Mm;
  readonly spineMm: Mm;
  readonly spineHighMm: Mm;
  /** A second leg under the cap's back edge, that keeps a long bed from twisting; 0 without. */
  readonly legHighMm: Mm;
  readonly leafMm: Mm;
  readonly leafHighMm: Mm;
  readonly pinMm: Mm;
  readonly leafEarMm: Mm;
  readonly bedEarMm: Mm;
  readonly bedEarHighMm: Mm;
  readonly weldMm: Mm;
  readonly railMm: Mm;
  readonly railWeldMm: Mm;
  readonly restMm: Mm;
  readonly handleMm: Mm;
  readonly people: 1 | 2;
  readonly screw: TappedThread;
  readonly screws: number;
  readonly footBolt: TappedThread;
  readonly footMm: Mm;
  readonly held: "vise" | "bench";
}

/** What a failed check may ask to be made larger. */
export type Growth = Exclude<keyof BrakeSizes, "heelShare" | "held" | "ribMm" | "barMm"> | "mounting";

/** How wide and how high the leaf may be for what hangs before it. */
type LeafLimits = Pick<ResolvedRequirements, "leafFaceMaxMm" | "leafHighMaxMm">;

/** Bolts stand about this far apart: common practice, no source. */
const BOLT_PITCH_MM = 152.4;
const LOWEST_LEG_MM = 75;
const LARGEST_SCREW_PITCH_MM = 200;
const LEAST_LEAF_HIGH_MM = 38;

/** The first trial for a bar of this thickness; what is too weak grows from there. */
export function firstSizes(
  {
    boltsInside,
    backLeg,
    leafFaceMaxMm = Number.POSITIVE_INFINITY,
    leafHighMaxMm = Number.POSITIVE_INFINITY,
    holderDepthMaxMm,
  }: LeafLimits &
    Pick<ResolvedRequirements, "holderDepthMaxMm"> & {
      readonly boltsInside: boolean;
      readonly backLeg: boolean;
    },
  stock: Stock,
  barMm: Mm,
  lengths: { readonly barMm: Mm; readonly wantedFaceMm: Mm },
): BrakeSizes {
  const atLeast = (list: readonly Mm[], mm: Mm) => list.find((one) => one >= mm) ?? list.at(-1)!;
  const heights = stock.flatWidthsMm.filter((mm) => mm <= leafHighMaxMm);
  const faces = stock.flatThicknessesMm.filter((t) => t <= leafFaceMaxMm);
  // A face as wide as the flange is worth having, but no wider than a bar that one can lift.
  const face = Math.min(lengths.wantedFaceMm, 12.7);
  return {
    barMm,
    holderMm: atLeast(stock.flatThicknessesMm, 12),
    heelShare: 0.9,
    ribMm: atLeast(stock.flatThicknessesMm, holderDepthMaxMm === undefined ? 12 : 7.9),
    ribHighMm: boltsInside ? 0 : atLeast(stock.flatWidthsMm, 30),
    bolt: stock.bolts[0]!,
    boltGaps: boltsInside ? Math.max(1, Math.ceil((lengths.barMm - 80) / BOLT_PITCH_MM)) : 1,
    washerMm: atLeast(stock.flatThicknessesMm, 6),
    capMm: atLeast(stock.flatThicknessesMm, 12),
    capDepthMm: 0,
    spineMm: atLeast(stock.flatThicknessesMm, 9.5),
    spineHighMm: atLeast(stock.flatWidthsMm, 50),
    legHighMm: backLeg ? atLeast(stock.flatWidthsMm, LOWEST_LEG_MM) : 0,
    leafMm: faces.find((t) => t >= face) ?? faces.at(-1) ?? leafFaceMaxMm,
    leafHighMm: atLeast(heights.length > 0 ? heights : stock.flatWidthsMm.slice(0, 1), LEAST_LEAF_HIGH_MM),
    pinMm: stock.roundsMm.find((d) => d >= 10)!,
    leafEarMm: atLeast(stock.flatThicknessesMm, 9.5),
    bedEarMm: atLeast(stock.flatThicknessesMm, 12),
    bedEarHighMm: atLeast(stock.flatWidthsMm, 60),
    weldMm: stock.units === "in" ? 4.7625 : 5,
    railMm: 0,
    railWeldMm: stock.units === "in" ? 3.175 : 3,
    restMm: stock.roundsMm.find((d) => d >= 9.5)!,
    handleMm: stock.roundsMm.find((d) => d >= 12)!,
    people: 1,
    screw: stock.screws[0]!,
    screws: Math.max(2, Math.ceil(lengths.barMm / LARGEST_SCREW_PITCH_MM) + 1),
    footBolt: stock.bolts[1]!,
    footMm: atLeast(stock.flatThicknessesMm, 9.5),
    held: "vise",
  };
}

/** Where the leaf's height, the cap's depth and the rest end: more than this is no hand brake any more. */
const MOST: Partial<Record<Growth, number>> = {
  leafMm: 51,
  leafHighMm: 305,
  spineHighMm: 305,
  legHighMm: 305,
  ribHighMm: 205,
  bedEarHighMm: 305,
  capDepthMm: 305,
  weldMm: 13,
  railWeldMm: 9,
  screws: 24,
};
const WELD_STEP = { in: 1.5875, mm: 1 } as const;

/** The next size up, or undefined where the rack or sense ends. */
export function grown(
  sizes: BrakeSizes,
  growth: Growth,
  stock: Stock,
  limits: LeafLimits,
): BrakeSizes | undefined {
  const { leafFaceMaxMm = Number.POSITIVE_INFINITY, leafHighMaxMm = Number.POSITIVE_INFINITY } = limits;
  if (growth === "mounting") return sizes.held === "bench" ? undefined : { ...sizes, held: "bench" };
  if (growth === "people") return sizes.people === 2 ? undefined : { ...sizes, people: 2 };
  const mayBe = { leafMm: leafFaceMaxMm, leafHighMm: leafHighMaxMm } as Partial<Record<Growth, Mm>>;
  const most = Math.min(MOST[growth] ?? Number.POSITIVE_INFINITY, mayBe[growth] ?? Number.POSITIVE_INFINITY);
  const next = nextOf(sizes, growth, stock);
  if (next === undefined || (typeof next === "number" && next > most))
    return instead(sizes, growth, stock, limits);
  return { ...sizes, [growth]: next };
}

function nextOf(sizes: BrakeSizes, growth: Exclude<Growth, "mounting" | "people">, stock: Stock) {
  const after = (list: readonly Mm[], mm: Mm) => list.find((one) => one > mm + 1e-6);
  switch (growth) {
    case "bolt":
    case "footBolt":
      return stock.bolts.find(({ diameterMm }) => diameterMm > sizes[growth].diameterMm);
    case "screw":
      return stock.screws.find(({ diameterMm }) => diameterMm > sizes.screw.diameterMm);
    case "boltGaps":
    case "screws":
      return sizes[growth] + 1;
    case "weldMm":
    case "railWeldMm":
      return sizes[growth] + WELD_STEP[stock.units];
    case "pinMm":
    case "restMm":
    case "handleMm":
      return after(stock.roundsMm, sizes[growth]);
    case "legHighMm":
      // A bed is begun with a back leg or without.
      return sizes.legHighMm > 0 ? after(stock.flatWidthsMm, sizes.legHighMm) : undefined;
    case "capDepthMm":
    case "spineHighMm":
    case "leafHighMm":
    case "ribHighMm":
    case "bedEarHighMm":
      return after(stock.flatWidthsMm, sizes[growth]);
    default:
      return after(stock.flatThicknessesMm, sizes[growth]);
  }
}

/** What else helps where a size is at its end. */
const INSTEAD: Partial<Record<Growth, Growth>> = {
  leafHighMm: "leafMm",
  spineHighMm: "spineMm",
  ribHighMm: "holderMm",
  bedEarHighMm: "bedEarMm",
  screw: "screws",
};

function instead(
  sizes: BrakeSizes,
  growth: Growth,
  stock: Stock,
  limits: LeafLimits,
): BrakeSizes | undefined {
  const other = INSTEAD[growth];
  return other && grown(sizes, other, stock, limits);
}
