/**
 * How wide words are in the drawing's lettering, in points, before they are set.
 */

/** The lettering of figures on drawings; the style sheet's `.dim` names the same. */
export const LETTERING = "600 13px system-ui, sans-serif";

/** A measure of words in the drawing's lettering: by the browser where there is one, else by a usual width of a character. */
export function textMeasure(): (words: string) => number {
  const known = new Map<string, number>();
  // Made at the first words: the worker runs the same script and has no canvas.
  let pen: CanvasRenderingContext2D | null | undefined;
  return (words) => {
    const before = known.get(words);
    if (before !== undefined) return before;
    pen ??= document.createElement("canvas").getContext("2d");
    if (pen === null) return words.length * 7.6;
    pen.font = LETTERING;
    const wide = pen.measureText(words).width;
    known.set(words, wide);
    return wide;
  };
}
