/**
 * Boxes with figures from public pages, as printed there. Lengths in the unit that the name ends in.
 */

/**
 * FAA-H-8083-31, chapter 4, folding a box: laid out as the U-channel of that chapter, both ways (mold lines 1, 2, 1 of .040
 * sheet at R .16; chart allowance .27, read at R .156, so .02 is the most that two bends may differ). Relief holes about twice
 * the bend radius, no less than 1/8 up to .064 sheet and 3/16 from .072 to .128, centred on the crossing of the inside bend
 * tangent lines; two opposite sides first, then the others on fingers between them.
 */
export const faaBox = {
  thicknessIn: 0.04,
  radiusIn: 0.16,
  bottomIn: 2,
  wallIn: 1,
  flatIn: 0.8,
  chartAllowanceIn: 0.27,
  developedIn: 3.74,
  chartReadsToIn: 0.02,
  leastHoles: [
    { thicknessIn: 0.064, diameterIn: 1 / 8 },
    { thicknessIn: 0.072, diameterIn: 3 / 16 },
    { thicknessIn: 0.128, diameterIn: 3 / 16 },
  ],
};

/** A public page on flat patterns of boxes, its worked tray: outside mold lines, bend lines measured from the blank's edges. */
export const publicTray = {
  baseMm: [300, 200],
  wallMm: 50,
  thicknessMm: 1.5,
  radiusMm: 1.5,
  kFactor: 0.33,
  deductionMm: 2.866,
  blankMm: [394.3, 294.3],
  bendLineMm: 48.57,
} as const;

/** A public page on flat blanks, its worked example: 300 mm of outside lengths over three square bends. */
export const publicChassis = {
  outsideMm: 300,
  bends: 3,
  thicknessMm: 2,
  radiusMm: 3,
  kFactor: 0.33,
  deductionMm: 4.25,
  blankMm: 287.25,
};
