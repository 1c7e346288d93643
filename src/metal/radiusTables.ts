/**
 * Recommended inside radii for 90° bends, in multiples of thickness, by thickness.
 * Aircraft aluminium: FAA AC 43.13-1B table 4-6 (a range each). 1100 and 3003: the Aluminum Association's table of
 * minimum radii. Steels and copper metals: as each says. Printed values, no rounding of ours.
 */
import { MM_PER_INCH } from "../units/length.ts";
import type { RadiusColumn, RadiusTable } from "./metal.ts";

const AC_SOURCE = "FAA AC 43.13-1B, table 4-6, recommended radii for 90-degree bends in aluminum alloys";
const AC_THICKNESSES_IN = [0.016, 0.032, 0.064, 0.128, 0.182, 0.258];

const AA_SOURCE =
  "Aluminum Association, Aluminum Standards and Data, table 3-1, recommended minimum bend radii for 90° cold bends of sheet and plate (January 2005, page VII-78)";
const AA_THICKNESSES_IN = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2];

type Range = readonly [least: number, easy: number];

export const radii2024O = faaTable([0, 0], [0, 1], [0, 1], [0, 1], [0, 1], [0, 1]);
export const radii2024T3 = faaTable([1.5, 3], [2, 4], [3, 5], [4, 6], [4, 6], [5, 7]);
export const radii5052H32 = faaTable([0, 0], [0, 0], [0.5, 1], [0.5, 1.5], [0.5, 1.5], [0.5, 1.5]);
export const radii6061O = faaTable([0, 0], [0, 1], [0, 1], [0, 1], [0, 1], [0, 1]);
export const radii6061T4 = faaTable([0, 1], [0, 1], [0.5, 1.5], [1, 2], [1.5, 3], [2.5, 4]);
export const radii6061T6 = faaTable([0, 1], [0.5, 1.5], [1, 2], [1.5, 3], [2, 4], [3, 4]);
export const radii7075O = faaTable([0, 0], [0, 1], [0, 1], [0.5, 1.5], [1, 2], [1.5, 3]);

// From memory: the stored copies end before 7075-T6 and begin after 5052-H34.
export const radii5052O = faaTable([0, 0], [0, 0], [0, 1], [0, 1], [0.5, 1], [0.5, 1.5]);
export const radii5052H34 = faaTable([0, 0], [0, 0.5], [0.5, 1.5], [1.5, 2.5], [2, 3], [2.5, 3.5]);
export const radii7075T6 = faaTable([2, 4], [3, 5], [4, 6], [5, 7], [5, 7], [6, 10]);

export const radii1100O = associationTable(0, 0, 0, 0, 0.5, 1, 1, 1.5);
export const radii1100H14 = associationTable(0, 0, 0, 1, 1, 1.5, 2, 2.5);
export const radii3003H14 = associationTable(0, 0, 0, 1, 1, 1.5, 2, 2.5);
export const radii3003O = associationTable(0, 0, 0, 0, 0.5, 1, 1, 1.5);
export const other2024O = associationTable(0, 0, 0, 0.5, 1, 1, 2.5, 4);
export const other2024T3 = associationTable(2.5, 3, 4, 5, 5, 6, 7, 7.5);
export const radii2024T4 = other2024T3;
export const other5052O = associationTable(0, 0, 0, 0.5, 1, 1, 1.5, 1.5);
export const other5052H32 = associationTable(0, 0, 1, 1.5, 1.5, 1.5, 1.5, 2);
export const other5052H34 = associationTable(0, 1, 1.5, 2, 2, 2.5, 2.5, 3);

const CHART_SOURCE =
  "sheet-metal design book, chart of bend radii after the Aluminum Association and the American Iron and Steel Institute";
export const other6061O = chartTable(0, 0, 0, 1, 1, 1, 1.5, 2);
export const other6061T4 = chartTable(0, 0, 1, 1.5, 2.5, 3, 3.5, 4);
export const other6061T6 = chartTable(1, 1, 1.5, 2.5, 3, 3.5, 4.5, 5);
/** .094 in for .063 sheet, .188 for .125; and .188 and .375 normalized. */
export const other4130Annealed = everywhere(1.5, 1.5, `${CHART_SOURCE}: 4130 annealed`);
export const other4130Normalized = everywhere(3, 3, `${CHART_SOURCE}: 4130 normalized`);

/** .090 in for .016 and .020 sheet, .120 for .025, .160 for .032. */
export const other7075T6: RadiusTable = {
  columns: columnsAt(
    [0.016, 0.02, 0.025, 0.032],
    [5.6, 4.5, 4.8, 5].map((multiple): Range => [multiple, multiple]),
  ),
  source: "aircraft extrusion supplier, minimum standard bend radius for aluminum alloy sheet: 7075-T6",
};

const EN_485 = "EN 485-2, sheet, recommended bend radius for 90°, from memory";
export const radii5754H22 = everywhere(1, 1.5, `${EN_485}: 5754 H22`);
export const radii6082T6: RadiusTable = {
  columns: columnsAt(
    [1, 2.5, 5].map((mm) => mm / MM_PER_INCH),
    [2.5, 3.5, 4.5].map((multiple): Range => [multiple, multiple]),
  ),
  source: `${EN_485}: 6082 T6`,
};

const BEND_RADIUS_TABLE = "Manufacturing Engineering and Technology, minimum bend radius at room temperature";

export const radiiLowCarbon = everywhere(
  0.5,
  1,
  `${BEND_RADIUS_TABLE}: low-carbon steel, soft, 0.5 T; easy at 1 T: common practice`,
);
export const radiiGalvanized = everywhere(
  0.5,
  1,
  `${BEND_RADIUS_TABLE}: low-carbon steel, soft, 0.5 T; easy at 1 T, where the zinc does not flake: common practice`,
);
export const radiiStainless = everywhere(
  0.5,
  1.5,
  `${BEND_RADIUS_TABLE}: austenitic stainless steel, soft, 0.5 T; easy at 1.5 T: common practice`,
);
export const radii4130Annealed = everywhere(1, 2, "common practice, no source: 1 T to 2 T");
export const radii4130Normalized = everywhere(2, 3, "common practice, no source: 2 T to 3 T");
export const radiiCopper = everywhere(
  0,
  0.5,
  "common practice, no source: cold-rolled roofing copper folds flat",
);
export const radiiBrass = everywhere(
  0.5,
  1,
  "common practice, no source: half-hard cartridge brass 0.5 T across the grain",
);

function faaTable(...ranges: readonly Range[]): RadiusTable {
  return { columns: columnsAt(AC_THICKNESSES_IN, ranges), source: AC_SOURCE };
}

function associationTable(...least: readonly number[]): RadiusTable {
  return {
    columns: columnsAt(
      AA_THICKNESSES_IN,
      least.map((multiple): Range => [multiple, multiple]),
    ),
    source: AA_SOURCE,
  };
}

function chartTable(...least: readonly number[]): RadiusTable {
  return { columns: associationTable(...least).columns, source: CHART_SOURCE };
}

function everywhere(least: number, easy: number, source: string): RadiusTable {
  return { columns: [{ thicknessMm: MM_PER_INCH / 16, least, easy }], source };
}

function columnsAt(thicknessesIn: readonly number[], ranges: readonly Range[]): readonly RadiusColumn[] {
  return ranges.map(([least, easy], i) => ({
    thicknessMm: (thicknessesIn[i] ?? 0) * MM_PER_INCH,
    least,
    easy,
  }));
}
