/**
 * Stress areas and loads of threads.
 * ISO 898-1, coarse pitch threads: nominal stress area (mm²) and proof load of class 8.8 (N), as reprinted by bolt makers.
 * Unified threads: tensile stress area (in²), ASME B1.1 values as reprinted; torque of SAE grade 5, dry, at 75 % of proof.
 */
export const METRIC_THREADS: readonly (readonly [d: number, pitch: number, area: number, proof88: number])[] =
  [
    [6, 1, 20.1, 11_600],
    [8, 1.25, 36.6, 21_200],
    [10, 1.5, 58, 33_700],
    [12, 1.75, 84.3, 48_900],
    [14, 2, 115, 66_700],
    [16, 2, 157, 91_000],
  ];

/** Areas beyond the class 8.8 table above. */
export const LARGER_METRIC_AREAS: readonly (readonly [d: number, pitch: number, area: number])[] = [
  [20, 2.5, 245],
  [24, 3, 353],
  [30, 3.5, 561],
  [36, 4, 817],
];

export const UNIFIED_AREAS: readonly (readonly [d: number, perInch: number, area: number])[] = [
  [0.25, 20, 0.0318],
  [0.25, 28, 0.0364],
  [0.3125, 18, 0.0524],
  [0.375, 16, 0.0775],
  [0.5, 13, 0.1419],
  [0.625, 11, 0.226],
  [0.75, 10, 0.334],
  [0.75, 16, 0.373],
  [1, 8, 0.606],
];

/** Torque table "clamp load 75 % of proof load as in SAE J429", grade 5, dry: lbf·ft. */
export const GRADE_5_DRY_TORQUE: readonly (readonly [d: number, perInch: number, lbfFt: number])[] = [
  [0.25, 20, 101 / 12],
  [0.3125, 18, 209 / 12],
  [0.375, 16, 372 / 12],
  [0.5, 13, 75],
  [0.625, 11, 150],
  [0.75, 10, 267],
];
