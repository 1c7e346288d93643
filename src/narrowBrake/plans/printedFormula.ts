/**
 * A formula as the fonts that every reader has can print it: Greek letters as words, powers with ^.
 */
const PRINTED: readonly (readonly [letter: string, words: string])[] = [
  ["Δθ", "angle lost"],
  ["σ", "stress"],
  ["τ", "shear"],
  ["δ", "give"],
  ["ν", "Poisson"],
  ["π", "pi"],
  ["ℓ", "length"],
  ["√", "root of "],
  ["⁴", "^4"],
  ["₁", "1"],
  ["₂", "2"],
  ["≤", "at most"],
  ["−", "-"],
];

/** @example printedFormula("σ ≤ 2") // "stress at most 2" */
export function printedFormula(formula: string): string {
  return PRINTED.reduce((text, [letter, words]) => text.replaceAll(letter, words), formula);
}
