/**
 * A coil spring that pushes at least so hard at its longest and still goes down to its shortest: wire, coils and free length.
 * Rate k = G·d⁴/(8·D³·n), stress τ = K·8·F·D/(π·d³) with K = (4·C + 2)/(4·C − 3), C = D/d; music wire of G 80 GPa and strength 2211/d^0.145 MPa,
 * 45 % of it in shear: Shigley's Mechanical Engineering Design, eq. 10-5, 10-9, tables 10-4 to 10-6 (from memory).
 * Ends squared: two coils that give nothing. Bound: within 10 % of a bought spring, whose wire and coils are told to a tenth.
 */
import type { Mm } from "../../units/quantity.ts";

export interface Spring {
  readonly wireMm: Mm;
  readonly activeCoils: number;
  readonly freeMm: Mm;
  readonly rateNPerMm: number;
  /** Where its wire would begin to stay bent, N. */
  readonly mostN: number;
}

const SHEAR_MODULUS_MPA = 80_000;
const DEAD_COILS = 2;
/** Coils stand so far apart when it is shut. */
const SOLID_SHARE = 0.9;

/** @example springOf(11.11, 0.94, 10.5).rateNPerMm // 0.71 */
export function springOf(outsideMm: Mm, wireMm: Mm, activeCoils: number, freeMm: Mm = 0): Spring {
  const coil = outsideMm - wireMm;
  const index = coil / wireMm;
  const factor = (4 * index + 2) / (4 * index - 3);
  const strength = 0.45 * (2211 / wireMm ** 0.145);
  return {
    wireMm,
    activeCoils,
    freeMm,
    rateNPerMm: (SHEAR_MODULUS_MPA * wireMm ** 4) / (8 * coil ** 3 * activeCoils),
    mostN: (strength * Math.PI * wireMm ** 3) / (8 * coil * factor),
  };
}

/** The softest spring of these wires, or undefined where none pushes so hard and goes so short. */
export function springFor(
  { outsideMm, wiresMm }: { readonly outsideMm: Mm; readonly wiresMm: readonly Mm[] },
  { openN, openMm, shutMm }: { readonly openN: number; readonly openMm: Mm; readonly shutMm: Mm },
): Spring | undefined {
  for (const wireMm of wiresMm) {
    // As many half coils as go solid just short of shut: the most give.
    const activeCoils = Math.floor(2 * ((SOLID_SHARE * shutMm) / wireMm - DEAD_COILS)) / 2;
    if (activeCoils < 2) continue;
    const { rateNPerMm, mostN } = springOf(outsideMm, wireMm, activeCoils);
    if (openN + rateNPerMm * (openMm - shutMm) > mostN) continue;
    return springOf(outsideMm, wireMm, activeCoils, openMm + openN / rateNPerMm);
  }
  return undefined;
}
