/**
 * A weight as it is said in a shop: grams and kilograms, or ounces and pounds.
 * One pound is 0.45359237 kg exactly (international pound, 1959); two figures, since sheet varies by more.
 */
const KG_PER_POUND = 0.45359237;
const OUNCES_PER_POUND = 16;

/**
 * @example weightWords(0.4536, "in") // "about 1 lb"
 * @example weightWords(0.0123, "mm") // "about 12 g"
 */
export function weightWords(weightKg: number, units: "mm" | "in"): string {
  if (units === "mm") {
    return weightKg < 1 ? `about ${twoFigures(weightKg * 1000)} g` : `about ${twoFigures(weightKg)} kg`;
  }
  const pounds = weightKg / KG_PER_POUND;
  return pounds < 1 ? `about ${twoFigures(pounds * OUNCES_PER_POUND)} oz` : `about ${twoFigures(pounds)} lb`;
}

function twoFigures(amount: number): number {
  return Number(amount.toPrecision(2));
}
