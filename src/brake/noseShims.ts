/**
 * Sheet folded over the nose to bring its radius up to the part's: each layer adds its thickness to the radius.
 * The way of FAA-H-8083-31, radius shims on a leaf brake (from memory); off by what `reachedMm` shows.
 */
import type { Mm } from "../units/quantity.ts";

export interface NoseShims {
  readonly layers: number;
  readonly eachMm: Mm;
  /** Radius over the shims. */
  readonly reachedMm: Mm;
}

/** Sheet that shops have: common metric sizes, and the inch sizes that AC 43.13-1B's aluminium table lists. */
const STOCK_MM: readonly Mm[] = [0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.5, 2];
const STOCK_IN_MM: readonly Mm[] = [0.016, 0.02, 0.025, 0.032, 0.04, 0.05, 0.063].map((inch) => inch * 25.4);

/** Nearer than this to the part's radius is as good as on it. Common practice, no source. */
const NEAR_MM: Mm = 0.05;
/** A thicker pack slips. Common practice, no source. */
const MOST_LAYERS = 6;

/**
 * Fewest layers of one sheet that bring the nose to the inside radius, the nearest of them; where none comes near,
 * the nearest of all. Undefined where the nose is there already, is too round, or is nearer bare.
 * @example noseShims({ noseRadiusMm: 0.8, insideRadiusMm: 2.4 }, "mm").layers // 2
 */
export function noseShims(
  { noseRadiusMm, insideRadiusMm }: { readonly noseRadiusMm: Mm; readonly insideRadiusMm: Mm },
  units: "mm" | "in",
): NoseShims | undefined {
  if (insideRadiusMm - noseRadiusMm <= NEAR_MM) return undefined;
  const packs = (units === "in" ? STOCK_IN_MM : STOCK_MM).flatMap((eachMm) =>
    Array.from({ length: MOST_LAYERS }, (_, i): NoseShims => {
      return { layers: i + 1, eachMm, reachedMm: noseRadiusMm + (i + 1) * eachMm };
    }),
  );
  const off = (pack: NoseShims) => Math.abs(pack.reachedMm - insideRadiusMm);
  const near = packs.filter((pack) => off(pack) <= NEAR_MM);
  const fewest = Math.min(...near.map((pack) => pack.layers));
  const best = near.length > 0 ? near.filter((pack) => pack.layers === fewest) : packs;
  const nearest = best.reduce((so, pack) => (off(pack) < off(so) ? pack : so));
  return off(nearest) < insideRadiusMm - noseRadiusMm ? nearest : undefined;
}
