/**
 * What a face of a whole part is called, as plain data: words/faceWords.ts makes words of it. Flats and lips count from 0.
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
