/**
 * What a face of a whole part is called, as plain data: words/faceNameWords.ts makes words of it. Flats and lips count from 0.
 */
export type BoxSide = "left" | "right" | "front" | "back";

export type FaceName =
  | { readonly kind: "flat"; readonly flat: number }
  | { readonly kind: "end"; readonly flat: number; readonly at: "start" | "finish" }
  | { readonly kind: "bottom" }
  | { readonly kind: "wall"; readonly side: BoxSide }
  /** A lip of a wall or of an end, the first next to it; a tab at a wall's corner toward `toward`. */
  | { readonly kind: "lip"; readonly of: FaceName; readonly number: number }
  | { readonly kind: "tab"; readonly of: FaceName; readonly toward: BoxSide }
  /** A face of a drawn pattern, counted outward from the largest. */
  | { readonly kind: "face"; readonly number: number };

/** A face in a few words. @example faceNameWords({ kind: "wall", side: "left" }) // "left wall" */
export function faceNameWords(name: FaceName): string {
  switch (name.kind) {
    case "flat":
      return `flat ${name.flat + 1}`;
    case "end":
      return `end wall at the ${name.at} of flat ${name.flat + 1}`;
    case "bottom":
      return "bottom";
    case "wall":
      return `${name.side} wall`;
    case "lip":
      return `${name.number === 0 ? "lip" : `lip ${name.number + 1}`} of the ${faceNameWords(name.of)}`;
    case "tab":
      return `${name.toward} tab of the ${faceNameWords(name.of)}`;
    default:
      return `face ${name.number + 1}`;
  }
}
