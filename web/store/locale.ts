/**
 * Metric or inch at first, by the browser's language; the switch on the page has the last word.
 * Inch regions: the United States, Liberia and Myanmar (CIA World Factbook, appendix on weights and measures, from memory).
 */

const INCH_REGIONS = ["US", "LR", "MM"];

/** @example usualUnits("en-US") // "in" */
export function usualUnits(language: string): "mm" | "in" {
  try {
    const region = new Intl.Locale(language).maximize().region;
    return region !== undefined && INCH_REGIONS.includes(region) ? "in" : "mm";
  } catch {
    return "mm";
  }
}
