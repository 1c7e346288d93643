/**
 * Worked values for bends, as printed in handbooks and a standard. Lengths in inches unless the name says mm.
 */

/** FAA AC 43.13-1B, table 4-7, K-chart for bend setback of bends other than 90 degrees: degrees, K. */
export const faaBendSetbackChart: readonly (readonly [angleDeg: number, k: number])[] = [
  [1, 0.0087],
  [5, 0.0436],
  [10, 0.0874],
  [15, 0.1316],
  [20, 0.1763],
  [30, 0.2679],
  [36, 0.3249],
  [45, 0.4142],
  [57, 0.5429],
  [60, 0.5773],
  [72, 0.7265],
  [75, 0.7673],
  [90, 1.0],
  [92, 1.035],
  [100, 1.191],
  [108, 1.376],
  [120, 1.732],
  [135, 2.414],
  [150, 3.732],
  [165, 7.595],
  [170, 11.43],
];

/** FAA AC 43.13-1B, paragraph 4-56 b: .064 sheet, radius .25, bent 45 and 135 degrees. */
export const faaBendSetbackExamples = {
  thicknessIn: 0.064,
  radiusIn: 0.25,
  open: { angleDeg: 45, bendSetbackIn: 0.13 },
  closed: { angleDeg: 135, bendSetbackIn: 0.758 },
};

/** FAA-H-8083-31, bending a U-channel of .040 2024-T3, radius .16; bend allowance .27 read from the chart at R .156. */
export const faaChannel = {
  thicknessIn: 0.04,
  radiusIn: 0.16,
  chartRadiusIn: 0.156,
  moldLinesIn: [1, 2, 1],
  bendSetbackIn: 0.2,
  flatsIn: [0.8, 1.6, 0.8],
  chartAllowanceIn: 0.27,
  developedWidthIn: 3.74,
};

/** FAA-H-8083-31, L-bracket of 60 degrees: bend allowance chart at T .040, R .156. */
export const faaBracket = {
  thicknessIn: 0.04,
  chartRadiusIn: 0.156,
  angleDeg: 60,
  perDegreeIn: 0.003034,
  allowanceIn: 0.18204,
};

/**
 * Tabellenbuch Metall, bent parts after DIN 6935: opening angle 60°, a = 16 mm, b = 21 mm, r = 6 mm,
 * s = 5 mm. By formula k = 0.689; the book goes on with k = 0.7 from its diagram and finds v = 5.77 mm.
 */
export const dinExample = {
  beta: 60,
  radiusMm: 6,
  thicknessMm: 5,
  k: 0.689,
  kOfDiagram: 0.7,
  correctionMm: 5.77,
};

/**
 * Tabellenbuch Metall, springback factor k_R, finished angle over bent angle, for DC01 sheet by r/s.
 * The factors as printed; the headings r/s are from memory (a Renard series from 1 to 100).
 */
export const dc01Springback: readonly (readonly [radiusOverThickness: number, factor: number])[] = [
  [1, 0.99],
  [1.6, 0.99],
  [2.5, 0.99],
  [4, 0.97],
  [6.3, 0.96],
  [10, 0.96],
  [16, 0.93],
  [25, 0.9],
  [40, 0.85],
  [63, 0.77],
  [100, 0.66],
];

/** Machinery's Handbook, developed length of a 90° bend, from memory: factor of T where the factor of R is 1.57. */
export const machineryRightAngle = { softOfT: 0.64, hardOfT: 0.71, ofR: 1.57 };

/** FAA AC 43.13-1B, table 4-6: alloy, then "least-easy" in T at .016 .032 .064 .128 .182 .258 in. */
export const faaRadii: Readonly<Record<string, string>> = {
  "2024-O": "0 0-1 0-1 0-1 0-1 0-1",
  "2024-T3": "1.5-3 2-4 3-5 4-6 4-6 5-7",
  "5052-H32": "0 0 0.5-1 0.5-1.5 0.5-1.5 0.5-1.5",
  "6061-O": "0 0-1 0-1 0-1 0-1 0-1",
  "6061-T4": "0-1 0-1 0.5-1.5 1-2 1.5-3 2.5-4",
  "6061-T6": "0-1 0.5-1.5 1-2 1.5-3 2-4 3-4",
  "7075-O": "0 0-1 0-1 0.5-1.5 1-2 1.5-3",
};
export const faaRadiiThicknessesIn = [0.016, 0.032, 0.064, 0.128, 0.182, 0.258];

/**
 * Aluminum Association, Aluminum Standards and Data, minimum radii for 90° cold bends: in T at 1/64 1/32 1/16 1/8 3/16
 * 1/4 3/8 1/2 in.
 */
export const associationRadii: Readonly<Record<string, readonly number[]>> = {
  "1100-O": [0, 0, 0, 0, 0.5, 1, 1, 1.5],
  "1100-H14": [0, 0, 0, 1, 1, 1.5, 2, 2.5],
  "3003-H14": [0, 0, 0, 1, 1, 1.5, 2, 2.5],
};
export const associationThicknessesIn = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2];

/**
 * Aluminum Association typical properties, ksi: ultimate, yield, modulus in 1000 ksi. 1100, 2024 and 3003 as printed in the
 * Handbook of Materials Selection, aluminum chapter, table 5; the others from memory of the same table.
 */
export const aluminumTypical: Readonly<Record<string, readonly [number, number, number]>> = {
  "1100-O": [13, 5, 10],
  "1100-H14": [18, 17, 10],
  "3003-H14": [22, 21, 10],
  "2024-O": [27, 11, 10.6],
  "2024-T3": [70, 50, 10.6],
  "5052-H32": [33, 28, 10.2],
  "6061-O": [18, 8, 10],
  "6061-T4": [35, 21, 10],
  "6061-T6": [45, 40, 10],
  "7075-O": [33, 15, 10.4],
};
