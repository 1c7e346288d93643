/**
 * The page's own words for the keys of a whole part and of the fingers, so that a slip is told by the name of its field.
 */

/** A key's pattern and how it is called; $1 and on are what the pattern takes, counted numbers raised by one. */
const NAMES: readonly (readonly [RegExp, string])[] = [
  [/^part\.box\.width/, "Width of the box"],
  [/^part\.box\.depth/, "Depth of the box"],
  [/^part\.box\.gap/, "Gap between lips"],
  [/^part\.box\.corners/, "Corners"],
  [/^part\.box\.walls\.(\w+)\.lips\[(\d+)\]/, "Lip $2 of the $1 wall"],
  [/^part\.box\.walls\.(\w+)/, "The $1 wall"],
  [/^part\.box/, "The box"],
  [/^part\.ends\[(\d+)\]\.lips\[(\d+)\]/, "Lip $2 of end $1"],
  [/^part\.ends\[(\d+)\]/, "End $1"],
  [/^part\.spans\[(\d+)\]/, "Span $1"],
  [/^part\.pattern\.bends\[(\d+)\]/, "Bend $1"],
  [/^part\.pattern\.holes\[(\d+)\]/, "Hole $1"],
  [/^part\.pattern/, "The flat pattern"],
  [/^brake\.clamp\.fingers\[(\d+)\]/, "Fingers, row $1"],
  [/^brake\.clamp\.fingers/, "Fingers"],
  [/^brake\.clamp\.fingerGap/, "Longest bare length"],
  [/^brake\.clamp\.length/, "Length of the clamp"],
];

/** @example wholePathWords("part.box.walls.left.lips[0].size") // "Lip 1 of the left wall" */
export function wholePathWords(path: string): string | undefined {
  for (const [pattern, words] of NAMES) {
    const found = pattern.exec(path);
    if (found)
      return words.replace(/\$(\d)/g, (_, place) => {
        const taken = found[Number(place)] ?? "";
        return /^\d+$/.test(taken) ? `${Number(taken) + 1}` : taken;
      });
  }
  return undefined;
}
