/**
 * How wide words are in the drawing's lettering, in points, before they are set.
 */

/** The lettering of figures on drawings; the style sheet's `.dim` names the same. */
export const LETTERING = "600 13px system-ui, sans-serif";

/** A measure of words in the drawing's lettering: by the browser where there is one, else by a usual width of a character. */
export function textMeasure(): (words: string) => number {
  const pen = document.createElement("canvas").getContext("2d");
  if (pen === null) return (words) => words.length * 7.6;
  pen.font = LETTERING;
  const known = new Map<string, number>();
  return (words) => {
    const before = known.get(words);
    if (before !== undefined) return before;
    const wide = pen.measureText(words).width;
    known.set(words, wide);
    return wide;
  };
}
