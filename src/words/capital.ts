/**
 * How a sentence begins: other words of the house are made to stand within one.
 * No formula; letters without a capital stay as they are.
 */

/** @example capital("flat 1") // "Flat 1" */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
