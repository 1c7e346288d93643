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

/** Headings of the springback table, inside radius over thickness, from memory (a Renard series from 1 to 100). */
export const springbackHeadings = [1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40, 63, 100];

/**
 * Tabellenbuch Metall (Europa-Lehrmittel), manufacturing, bending: springback factor k_R, finished angle over bent angle,
 * by material, the factors as printed (read in a stored copy of the page).
 */
export const springbackFactors: Readonly<Record<string, readonly number[]>> = {
  DC04: [0.99, 0.99, 0.99, 0.98, 0.97, 0.97, 0.96, 0.94, 0.91, 0.87, 0.83],
  DC01: [0.99, 0.99, 0.99, 0.97, 0.96, 0.96, 0.93, 0.9, 0.85, 0.77, 0.66],
  "X12CrNi18-8": [0.99, 0.98, 0.97, 0.95, 0.93, 0.89, 0.84, 0.76, 0.63],
  "E-Cu": [0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.9, 0.85, 0.79, 0.72, 0.6],
  CuZn33: [0.97, 0.97, 0.96, 0.95, 0.94, 0.93, 0.89, 0.86, 0.83, 0.77, 0.73],
  "Al99.0": [0.99, 0.99, 0.99, 0.99, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93],
  AlCuMg1: [0.98, 0.98, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.91, 0.87],
  AlSiMgMn: [0.98, 0.98, 0.97, 0.96, 0.95, 0.93, 0.9, 0.86, 0.82, 0.76, 0.72],
};

/** Machinery's Handbook, 28th edition, developed length of a 90° bend: factor of T where the factor of R is 1.57. */
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
  "3003-O": [0, 0, 0, 0, 0.5, 1, 1, 1.5],
  "2024-T4": [2.5, 3, 4, 5, 5, 6, 7, 7.5],
  "3003-H14": [0, 0, 0, 1, 1, 1.5, 2, 2.5],
};
/** The same table for alloys that AC 43.13-1B has too; 6061 as a sheet-metal design book's chart after it prints them. */
export const associationRadiiBeside: Readonly<Record<string, readonly number[]>> = {
  "2024-O": [0, 0, 0, 0.5, 1, 1, 2.5, 4],
  "2024-T3": [2.5, 3, 4, 5, 5, 6, 7, 7.5],
  "5052-H32": [0, 0, 1, 1.5, 1.5, 1.5, 1.5, 2],
  "5052-H34": [0, 1, 1.5, 2, 2, 2.5, 2.5, 3],
  "6061-T4": [0, 0, 1, 1.5, 2.5, 3, 3.5, 4],
  "6061-T6": [1, 1, 1.5, 2.5, 3, 3.5, 4.5, 5],
};
export const associationThicknessesIn = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2];

/**
 * Aluminum Association typical properties, ksi: ultimate, yield, modulus in 1000 ksi. 1100, 2024 and 3003 as printed in the
 * Handbook of Materials Selection, aluminum chapter, table 5; the others from memory of the same table.
 */
export const aluminumTypical: Readonly<Record<string, readonly [number, number, number]>> = {
  "1100-O": [13, 5, 10],
  "1100-H14": [18, 17, 10],
  "3003-O": [16, 6, 10],
  "3003-H14": [22, 21, 10],
  "2024-O": [27, 11, 10.6],
  "2024-T3": [70, 50, 10.6],
  "2024-T4": [68, 47, 10.6],
  "5052-O": [28, 13, 10.2],
  "5052-H32": [33, 28, 10.2],
  "5052-H34": [38, 31, 10.2],
  "6061-O": [18, 8, 10],
  "6061-T4": [35, 21, 10],
  "6061-T6": [45, 40, 10],
  "7075-O": [33, 15, 10.4],
  "7075-T6": [83, 73, 10.4],
};
