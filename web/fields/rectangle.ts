/**
 * Beds and leaves are mostly plain rectangles: recognised here, so that they can be entered as two measures
 * (a face and a depth) and still be kept in the file as the profile that the contract wants.
 */
import type { Profile, Typed } from "../store/jobFile.ts";

/** The same figure with the other sign, as typed. @example opposite("1/2") // "-1/2" */
function opposite(value: Typed): Typed {
  if (typeof value === "number") return value === 0 ? 0 : -value;
  const text = value.trim();
  if (text.startsWith("-")) return text.slice(1);
  return text === "" ? "" : `-${text}`;
}

const isZero = (value: Typed) => value === 0 || value === "0";
const plain = (profile: Profile) => profile.length === 4 && profile.every((vertex) => vertex.length === 2);

/** Leaf [[0,−d],[face,−d],[face,0],[0,0]]: its face and its edge thickness d; null for another shape. */
export function leafMeasures(profile: Profile): { readonly face: Typed; readonly edge: Typed } | null {
  if (!plain(profile)) return null;
  const [a, b, c, d] = profile as [Profile[0], Profile[0], Profile[0], Profile[0]];
  const square =
    isZero(a![0]) && isZero(d![0]) && isZero(d![1]) && isZero(c![1]) && b![0] === c![0] && a![1] === b![1];
  return square ? { face: b![0], edge: opposite(a![1]) } : null;
}

/** The leaf's profile from its measures. */
export function leafProfile(face: Typed, edge: Typed): Profile {
  const low = opposite(edge);
  return [
    [0, low],
    [face, low],
    [face, 0],
    [0, 0],
  ];
}

/** Bed [[−w,−h],[0,−h],[0,0],[−w,0]]: its width from the front edge and its height; null for another shape. */
export function bedMeasures(profile: Profile): { readonly width: Typed; readonly height: Typed } | null {
  if (!plain(profile)) return null;
  const [a, b, c, d] = profile as [Profile[0], Profile[0], Profile[0], Profile[0]];
  const square =
    isZero(b![0]) && isZero(c![0]) && isZero(c![1]) && isZero(d![1]) && a![0] === d![0] && a![1] === b![1];
  return square ? { width: opposite(a![0]), height: opposite(a![1]) } : null;
}

/** The bed's profile from its measures. */
export function bedProfile(width: Typed, height: Typed): Profile {
  const [left, low] = [opposite(width), opposite(height)];
  return [
    [left, low],
    [0, low],
    [0, 0],
    [left, 0],
  ];
}
