/**
 * Steel angles: area in², weight lb/ft, second moments in⁴, section moduli in³, centroids in (from the heel).
 * Mott, Machine Elements in Mechanical Design, 4th ed., table A16-1 (sharp-cornered values, three figures).
 * The x read there for 4 × 3 × 1/4, 0.896, contradicts its own Iy and Sy (3 − 1.36/0.599 = 0.73): null here.
 */
export interface SteelAngle {
  readonly long: number;
  readonly short: number;
  readonly t: number;
  readonly area: number;
  readonly weight: number;
  readonly ix: number;
  readonly sx: number;
  readonly y: number;
  readonly iy: number;
  readonly sy: number;
  readonly x: number | null;
}

export const STEEL_ANGLES: readonly SteelAngle[] = [
  { long: 8, short: 8, t: 1, area: 15, weight: 51, ix: 89, sx: 15.8, y: 2.37, iy: 89, sy: 15.8, x: 2.37 },
  {
    long: 6,
    short: 4,
    t: 0.75,
    area: 6.94,
    weight: 23.6,
    ix: 24.5,
    sx: 6.25,
    y: 2.08,
    iy: 8.68,
    sy: 2.97,
    x: 1.08,
  },
  {
    long: 4,
    short: 4,
    t: 0.5,
    area: 3.75,
    weight: 12.8,
    ix: 5.56,
    sx: 1.97,
    y: 1.18,
    iy: 5.56,
    sy: 1.97,
    x: 1.18,
  },
  {
    long: 4,
    short: 4,
    t: 0.25,
    area: 1.94,
    weight: 6.6,
    ix: 3.04,
    sx: 1.05,
    y: 1.09,
    iy: 3.04,
    sy: 1.05,
    x: 1.09,
  },
  {
    long: 4,
    short: 3,
    t: 0.5,
    area: 3.25,
    weight: 11.1,
    ix: 5.05,
    sx: 1.89,
    y: 1.33,
    iy: 2.42,
    sy: 1.12,
    x: 0.827,
  },
  {
    long: 4,
    short: 3,
    t: 0.25,
    area: 1.69,
    weight: 5.8,
    ix: 2.77,
    sx: 1,
    y: 1.24,
    iy: 1.36,
    sy: 0.599,
    x: null,
  },
  {
    long: 3,
    short: 3,
    t: 0.5,
    area: 2.75,
    weight: 9.4,
    ix: 2.22,
    sx: 1.07,
    y: 0.932,
    iy: 2.22,
    sy: 1.07,
    x: 0.932,
  },
  {
    long: 3,
    short: 3,
    t: 0.25,
    area: 1.44,
    weight: 4.9,
    ix: 1.24,
    sx: 0.577,
    y: 0.842,
    iy: 1.24,
    sy: 0.577,
    x: 0.842,
  },
  {
    long: 2,
    short: 2,
    t: 0.375,
    area: 1.36,
    weight: 4.7,
    ix: 0.479,
    sx: 0.351,
    y: 0.636,
    iy: 0.479,
    sy: 0.351,
    x: 0.636,
  },
  {
    long: 2,
    short: 2,
    t: 0.25,
    area: 0.938,
    weight: 3.19,
    ix: 0.348,
    sx: 0.247,
    y: 0.592,
    iy: 0.348,
    sy: 0.247,
    x: 0.592,
  },
  {
    long: 2,
    short: 2,
    t: 0.125,
    area: 0.484,
    weight: 1.65,
    ix: 0.19,
    sx: 0.131,
    y: 0.546,
    iy: 0.19,
    sy: 0.131,
    x: 0.546,
  },
];
