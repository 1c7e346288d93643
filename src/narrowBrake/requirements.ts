/**
 * What a shop-made narrow brake is asked to do, and what is taken where nothing is said.
 * Safety factors: 1.67 on yield is that of allowable-stress steel design (AISC); the others are common practice, no source.
 * All of them are open to change; the result repeats those that were used.
 */
import type { Metal } from "../metal/metal.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";

/** One part that the brake must make, as far as strength goes. */
export interface SheetToFold {
  readonly name: string;
  readonly metal: Metal;
  readonly thicknessMm: Mm;
  /** Along the bend lines. */
  readonly lengthMm: Mm;
  /** Shortest flange that the leaf has to turn, from its bend tangent line on: the shorter, the more force. */
  readonly shortestFlangeMm: Mm;
  /** Shortest flat that the bar has to hold, between bend tangent lines. */
  readonly shortestClampedMm: Mm;
  /** How far the deepest clamped side reaches back from the nose. */
  readonly deepestClampedMm: Mm;
  readonly bends: readonly BendToFold[];
}

/** How far a bend wants the leaf to go, and with the nose how far back. */
export interface BendToFold {
  readonly overbendDeg: Deg;
  readonly noseSetbackMm: Mm;
}

export interface SafetyFactors {
  /** On the folding moment: sheet is often stronger than the book says. */
  readonly load: number;
  /** On the yield of bar, holder, bed, leaf, handle, tongue. */
  readonly yield: number;
  /** How far the nuts are tightened past what the folding pulls, for torque that makes too little of it. */
  readonly bolt: number;
  /** On hinge pins, over their yield. */
  readonly pin: number;
}

/** How far things may give way at the full load. */
export interface GiveLimits {
  /** Nose of the bar off the sheet, in front of the holder. */
  readonly noseMm: Mm;
  /** Bend angle lost at mid-length by the leaf's bow, again by the bed's, again by the holder's between its bolts. */
  readonly angleDeg: Deg;
}

export interface Vise {
  readonly jawWidthMm: Mm;
  readonly jawHeightMm: Mm;
  readonly forceN: number;
}

/** What a person may want otherwise than taken: every factor, limit and strength is open. */
export interface NarrowBrakeWishes {
  /** Both hands on the handles together. */
  readonly handForceN?: number;
  readonly safety?: Partial<SafetyFactors>;
  readonly give?: Partial<GiveLimits>;
  /** What welded and hot rolled pieces are made of. */
  readonly steel?: Metal;
  readonly vise?: Partial<Vise>;
}

export interface NarrowBrakeRequirements extends NarrowBrakeWishes {
  /** Whose stock list and whose figures. */
  readonly units: LengthUnit;
  readonly parts: readonly SheetToFold[];
  /** Thickest bar that every part clears, from the contact engine. */
  readonly thickestByClearanceMm: Mm;
  /** How far the bar must stand out in front of its holder. */
  readonly overhangMm: Mm;
  readonly noseRadiusMm: Mm;
  /** How far the bar's front leans back from upright; at least the overbend over 90°. */
  readonly frontBevelDeg: Deg;
  /** Tallest leaf face that every part clears; leave out where none limits it. */
  readonly leafFaceMaxMm?: Mm;
  /** Highest leaf that every part clears: a flange that is bent down hangs in front of it or wraps under it. */
  readonly leafHighMaxMm?: Mm;
  /** Deepest holder that every part clears, from its front back: a box stands around it. */
  readonly holderDepthMaxMm?: Mm;
  /** How far the bar must open; the deepest lip to be lifted out decides. */
  readonly liftMm?: Mm;
}

export interface ResolvedRequirements extends NarrowBrakeRequirements {
  readonly handForceN: number;
  readonly liftMm: Mm;
  readonly safety: SafetyFactors;
  readonly give: GiveLimits;
  readonly steel: Metal;
  /** What bar, holder, bed, leaf and pins are made of. */
  readonly coldFinished: Metal;
  readonly vise: Vise;
}

/** Hinges, bolts and screws find no room on a shorter brake: shorter parts are folded on one of this length. */
export const SHORTEST_MM = { in: 76.2, mm: 80 } as const;

/** All that may be lost at mid-length together, in shares of what one of them may lose. */
export const MOST_LOST_IN_ALL = 2;

/** What may give way, as wished or as taken. */
export function resolvedGive({ give }: NarrowBrakeWishes): GiveLimits {
  return { noseMm: 0.05, angleDeg: 1, ...give };
}

/** Structural steel as bought by the bar: 250 MPa yield (ASTM A36; S275 has more). */
export const STOCK_STEEL: Metal = {
  name: "structural steel bar",
  yieldMpa: 250,
  modulusMpa: 200_000,
  ultimateMpa: 400,
};

/** Cold-finished bar: 370 MPa (54 ksi) yield, Shigley's table A-20, 1018 cold drawn. */
const COLD_FINISHED: Metal = {
  name: "cold-finished 1018 bar",
  yieldMpa: 370,
  modulusMpa: 200_000,
  ultimateMpa: 440,
};

/**
 * Fills in what was left out. A steel that the person names is taken for every piece.
 * @throws RangeError where there is no part to make, or a size or factor is not above zero; the text names it
 */
export function resolveRequirements(asked: NarrowBrakeRequirements): ResolvedRequirements {
  const resolved: ResolvedRequirements = {
    ...asked,
    parts: asked.parts.map((part) => ({
      ...part,
      lengthMm: part.lengthMm > 0 ? Math.max(part.lengthMm, SHORTEST_MM[asked.units]) : part.lengthMm,
    })),
    handForceN: asked.handForceN ?? 200,
    liftMm: asked.liftMm ?? 20,
    safety: { load: 1.25, yield: 1.67, bolt: 1.4, pin: 2, ...asked.safety },
    give: resolvedGive(asked),
    steel: asked.steel ?? STOCK_STEEL,
    coldFinished: asked.steel ?? COLD_FINISHED,
    vise: { jawWidthMm: 100, jawHeightMm: 40, forceN: 15_000, ...asked.vise },
  };
  if (resolved.parts.length === 0) throw new RangeError("a narrow brake needs at least one part to make");
  const sizes: Record<string, number> = {
    thickestByClearanceMm: resolved.thickestByClearanceMm,
    overhangMm: resolved.overhangMm,
    noseRadiusMm: resolved.noseRadiusMm,
    handForceN: resolved.handForceN,
    liftMm: resolved.liftMm,
    leafFaceMaxMm: resolved.leafFaceMaxMm ?? 1,
    leafHighMaxMm: resolved.leafHighMaxMm ?? 1,
    holderDepthMaxMm: resolved.holderDepthMaxMm ?? 1,
    ...resolved.safety,
    ...resolved.give,
    ...resolved.vise,
  };
  for (const part of resolved.parts) {
    const { thicknessMm, lengthMm, shortestFlangeMm, shortestClampedMm, deepestClampedMm } = part;
    Object.assign(sizes, {
      [`thicknessMm of ${part.name}`]: thicknessMm,
      [`lengthMm of ${part.name}`]: lengthMm,
      [`shortestFlangeMm of ${part.name}`]: shortestFlangeMm,
      [`shortestClampedMm of ${part.name}`]: shortestClampedMm,
      [`deepestClampedMm of ${part.name}`]: deepestClampedMm,
      [`count of bends of ${part.name}`]: part.bends.length,
    });
  }
  for (const [name, value] of Object.entries(sizes)) {
    if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`${name} must be above 0, found ${value}`);
    }
  }
  return resolved;
}
