/**
 * Where the formulas of the narrow brake come from, worded once.
 * Handbooks and standards by title; what could not be looked up again is marked "from memory".
 * Formulas are written in the handbook's letters, the code's own names stand in the strength files.
 */

export const STATICS = "statics";
export const TIMOSHENKO_PLATE =
  "Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, cylindrical bending (from memory); shear part from Timoshenko's beam";
export const GERE_BEAM =
  "Gere & Goodno, Mechanics of Materials, app. H-2, case 1, loaded on its middle stretch";
export const SHIGLEY_WELD =
  "Shigley's Mechanical Engineering Design, table 9-6, throat of E70; AWS D1.1, clause 2: 0.30 of the electrode; weld as a line, Blodgett (from memory)";
export const SHIGLEY_BOLT =
  "Shigley's Mechanical Engineering Design, eq. 8-27 and table 8-15; 75 % of proof for bolts used again";
export const ISO_898 = "ISO 898-1 and ASME B1.1, tensile stress area";
export const SHIGLEY_SHEAR = "Shigley's Mechanical Engineering Design, shear yield 0.577·Sy";
export const MOTT_SECTION = "Mott, Machine Elements in Mechanical Design, app. 1";
export const MIDDLE_THIRD = "middle third rule for a pressed pad (from memory)";
export const ROARK_TORSION =
  "Roark's Formulas for Stress and Strain, torsion of flats and thin shapes; Bredt for tube (from memory)";
