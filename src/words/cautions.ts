/**
 * What a person at the brake is told wherever an answer is shown: sheet cuts, brakes crush, and this is no approval.
 */
export const CAUTIONS =
  "Care: sheet edges cut, and a leaf brake crushes what lies under clamp or leaf. This is a shop aid and no approval: local codes and approved data decide for anything that carries load or flies.";
