/**
 * Narrow brakes to be looked at: 4 to 48 in long, .025 to .090 aluminium and 22 to 16 ga steel, in inches and millimetres, with sheet that
 * ends before the bolts and sheet that reaches past them.
 */
import { designNarrowBrake } from "../../src/narrowBrake/designNarrowBrake.ts";
import type { NarrowBrake } from "../../src/narrowBrake/narrowBrake.ts";
import type { NarrowBrakeRequirements } from "../../src/narrowBrake/requirements.ts";

const STEEL = { name: "mild steel", yieldMpa: 240, modulusMpa: 200_000, ultimateMpa: 340 };
const ALUMINIUM = { name: "5052-H32", yieldMpa: 193, modulusMpa: 70_000, ultimateMpa: 228 };
const IN = 25.4;

const LENGTHS_IN = [4, 8, 12, 18, 24, 36, 48];
const SHEETS = [
  { metal: ALUMINIUM, thicknessMm: 0.025 * IN },
  { metal: ALUMINIUM, thicknessMm: 0.032 * IN },
  { metal: ALUMINIUM, thicknessMm: 0.063 * IN },
  { metal: ALUMINIUM, thicknessMm: 0.09 * IN },
  { metal: STEEL, thicknessMm: 0.759 },
  { metal: STEEL, thicknessMm: 1.214 },
  { metal: STEEL, thicknessMm: 1.519 },
];

type Sheet = (typeof SHEETS)[number];

/** What a trough of this sheet asks for; `deep` has its sheet reach past any bolts. */
export function asked(
  sheet: Sheet,
  lengthIn: number,
  units: "in" | "mm",
  deep = false,
): NarrowBrakeRequirements {
  const { thicknessMm } = sheet;
  const flangeMm = Math.max(12.7, 12 * thicknessMm);
  const overhangMm = units === "in" ? 12.7 : 13;
  return {
    units,
    parts: [
      {
        name: "cable trough",
        ...sheet,
        lengthMm: lengthIn * IN,
        shortestFlangeMm: flangeMm - 2 * thicknessMm,
        shortestClampedMm: flangeMm - 2 * thicknessMm,
        deepestClampedMm: deep ? 180 : 2 * flangeMm,
        bends: [thicknessMm, thicknessMm + 0.6].map((noseSetbackMm) => ({ overbendDeg: 94, noseSetbackMm })),
      },
    ],
    thickestByClearanceMm: 25,
    overhangMm,
    noseRadiusMm: 0.8,
    frontBevelDeg: 5,
    liftMm: units === "in" ? 4.7625 : 5,
  };
}

/** A design under a name that says what it is. */
export interface Named {
  readonly name: string;
  readonly design: NarrowBrake;
}

/** Every length with every sheet, by turns in inches and millimetres, and four whose sheet reaches past the bolts. */
export function manyDesigns(): Named[] {
  const shallow = LENGTHS_IN.flatMap((length, i) =>
    SHEETS.filter((_, k) => (i + k) % 2 === 0 || length >= 36).map((sheet, k) => ({
      length,
      sheet,
      units: (i + k) % 2 === 0 ? ("in" as const) : ("mm" as const),
      deep: false,
    })),
  );
  const deep = [4, 12, 18].flatMap((length) =>
    [SHEETS[1]!, SHEETS[3]!, SHEETS[5]!].map((sheet) => ({
      length,
      sheet,
      units: "in" as const,
      deep: true,
    })),
  );
  return [...shallow, ...deep].map(({ length, sheet, units, deep: far }) => ({
    name: `${length} in of ${sheet.thicknessMm.toFixed(2)} mm ${sheet.metal.name}, ${units}${far ? ", deep" : ""}`,
    design: designNarrowBrake(asked(sheet, length, units, far)),
  }));
}

/** Two parts on one brake, one with a slight bend before the bed's edge, little room for leaf and holder; every factor, force and give otherwise than taken. */
function wished(): Named {
  const [thin, stiff] = [SHEETS[1]!, SHEETS[5]!];
  const base = asked(thin, 10, "in");
  return {
    name: "two parts, all wishes",
    design: designNarrowBrake({
      ...base,
      parts: [
        ...base.parts,
        ...asked(stiff, 6, "in").parts.map((part) => ({
          ...part,
          name: "Z clip",
          shortestFlangeMm: 9,
          bends: [...part.bends, { overbendDeg: 33, noseSetbackMm: -0.4 }],
        })),
      ],
      leafFaceMaxMm: 20,
      leafHighMaxMm: 60,
      holderDepthMaxMm: 80,
      handForceN: 260,
      safety: { load: 1.4, yield: 1.8, bolt: 1.5, pin: 2.5 },
      give: { noseMm: 0.08, angleDeg: 1.5 },
      steel: { name: "S355", yieldMpa: 355, modulusMpa: 200_000, ultimateMpa: 470 },
      vise: { jawWidthMm: 125, jawHeightMm: 45, forceN: 20_000 },
    }),
  };
}

/** A short one, the trough of the examples, one on feet, one whose sheet reaches past the bolts, and one wished otherwise. */
export function fewDesigns(): Named[] {
  const [, thin, , thick, , steel] = SHEETS as [Sheet, Sheet, Sheet, Sheet, Sheet, Sheet];
  return [
    { name: "4 in, two bolts", design: designNarrowBrake(asked(thick, 4, "mm")) },
    { name: "12 in", design: designNarrowBrake(asked(thin, 12, "in")) },
    { name: "28 in on feet, with a back leg", design: designNarrowBrake(asked(steel, 28, "mm")) },
    { name: "12 in, deep", design: designNarrowBrake(asked(steel, 12, "in", true)) },
    wished(),
  ];
}
