/**
 * Parts for the tests of the narrow brake: a cable trough of a roll-off roof, web 3/8 in, flanges 1/2 in, mild steel.
 * Thickest bar by the closed form of the model: T + h < W − T.
 */
import type { NarrowBrakeRequirements, SheetToFold } from "../../src/narrowBrake/requirements.ts";

export const MILD_STEEL = { name: "mild steel", yieldMpa: 240, modulusMpa: 200_000, ultimateMpa: 340 };

export const TROUGH: SheetToFold = {
  name: "cable trough",
  metal: MILD_STEEL,
  thicknessMm: 0.8128,
  lengthMm: 304.8,
  shortestFlangeMm: 12.7,
  shortestClampedMm: 9.525,
  deepestClampedMm: 9.525,
  bends: [
    { overbendDeg: 92, noseSetbackMm: 0.8 },
    { overbendDeg: 92, noseSetbackMm: 0.9 },
  ],
};

export const TROUGH_BRAKE: NarrowBrakeRequirements = {
  units: "in",
  parts: [TROUGH],
  thickestByClearanceMm: 9.525 - 2 * 0.8128,
  overhangMm: 14,
  noseRadiusMm: 0.8,
  frontBevelDeg: 4,
};

/** A deep tray: its clamped side reaches past the bolts, which then stand beyond the ends. */
export const TRAY: SheetToFold = { ...TROUGH, name: "lens-box tray", deepestClampedMm: 180 };
