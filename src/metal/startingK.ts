/**
 * K-factors to start with, where the neutral line lies in a bend: of the shop formulas for a right angle, by kind of metal.
 * Machinery's Handbook, 28th edition, and FAA-H-8083-31. 0.05 of K is 0.08 T in a 90° bend.
 */
export interface StartingK {
  readonly kFactor: number;
  readonly kSource: string;
}

/** Machinery's Handbook, length of metal for a right-angle bend: 0.64 T + 1.57 R, so K = 0.64/1.5708. */
export const SOFT_K: StartingK = {
  kFactor: 0.41,
  kSource:
    "Machinery's Handbook, 28th edition, length of a 90° bend in aluminum, soft steel, half-hard copper and brass: 0.64 T + 1.57 R",
};
/** Machinery's Handbook: 0.71 T + 1.57 R, so K = 0.71/1.5708. */
export const HARD_K: StartingK = {
  kFactor: 0.45,
  kSource:
    "Machinery's Handbook, 28th edition, length of a 90° bend in cold-rolled steel, hard copper, bronze: 0.71 T + 1.57 R",
};
/** The aircraft formula (0.01743·R + 0.0078·T) per degree has its neutral line at 0.0078/0.01743 of T. */
export const AIRCRAFT_K: StartingK = {
  kFactor: 0.45,
  kSource: "FAA-H-8083-31, empirical bend allowance (0.01743 R + 0.0078 T) per degree: K = 0.0078/0.01743",
};
export const MILD_K: StartingK = {
  kFactor: 0.44,
  kSource:
    "common practice; between 0.41 and 0.45 of Machinery's Handbook's formulas (28th edition) for soft and cold-rolled steel",
};
