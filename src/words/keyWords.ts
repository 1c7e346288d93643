/**
 * The keys of a brake in a job file: what each is, its unit, what holds where it is left out, and how to measure it.
 * The picture (pictures/keysDrawing.ts) has the same names on it.
 */
export interface KeyTold {
  readonly key: string;
  /** Unit and what may stand there. */
  readonly takes: string;
  /** What holds where it is left out; undefined where it must be given. */
  readonly otherwise?: string;
  readonly how: string;
}

const LENGTH = "length";

export const BRAKE_KEYS: readonly KeyTold[] = [
  { key: "name", takes: "text", how: "What you call the brake." },
  { key: "measured", takes: "day", otherwise: "not said", how: "The day on which you measured it." },
  {
    key: "clamp.type",
    takes: "finger, bar or profile",
    how: "Fingers lean back, a bar is square or bevelled, a profile is any shape that you trace.",
  },
  {
    key: "clamp.noseRadius",
    takes: LENGTH,
    how: "Radius of the rounded front edge that the sheet is bent around. Try radius gauges on it.",
  },
  {
    key: "clamp.noseAngle",
    takes: "degrees",
    otherwise: "90 for a bar",
    how: "Angle between underside and front. Lay a protractor on both.",
  },
  { key: "clamp.height", takes: LENGTH, how: "Finger: from its underside to the top of its front." },
  { key: "clamp.footDepth", takes: LENGTH, how: "Finger: from the nose back to its heel." },
  { key: "clamp.thickness", takes: LENGTH, how: "Bar: from underside to top, with callipers." },
  { key: "clamp.depth", takes: LENGTH, how: "Bar: from the nose back." },
  { key: "clamp.topRadius", takes: LENGTH, otherwise: "0, sharp", how: "Radius of the top front edge." },
  {
    key: "clamp.holderBack",
    takes: LENGTH,
    otherwise: "no holder",
    how: "From the nose back to the front of the iron that carries bar or fingers.",
  },
  {
    key: "clamp.holderHeight",
    takes: LENGTH,
    otherwise: "no holder",
    how: "How high that iron stands on bar or fingers.",
  },
  {
    key: "clamp.holderDepth",
    takes: LENGTH,
    otherwise: "no holder",
    how: "How deep that iron is, front to back.",
  },
  {
    key: "clamp.shim",
    takes: LENGTH,
    otherwise: "none",
    how: "Thickness of the sheet that you fold over the nose, all layers together.",
  },
  {
    key: "clamp.profiles",
    takes: "lists of corners",
    how: "Profile: each closed shape, [x, y] or [x, y, radius] a corner, from the nose: underside on y = 0, foremost point at x = 0.",
  },
  {
    key: "bed.profile",
    takes: "list of corners",
    how: "From the bed's front top edge at [0, 0]: x grows toward you, y up. Trace its end on paper.",
  },
  { key: "leaf.profile", takes: "list of corners", how: "The leaf at rest, from the same edge." },
  { key: "leaf.swing", takes: "degrees", how: "How far the leaf turns from rest until something stops it." },
  {
    key: "leaf.pivot",
    takes: "[x, y]",
    otherwise: "[0, 0]",
    how: "Middle of the hinge pin, from the same edge.",
  },
  {
    key: "frame",
    takes: "list of profiles",
    otherwise: "none",
    how: "Whatever else stands near the sheet: a profile, or {name, profile, along: [from, to]} for what stands only there.",
  },
  {
    key: "length",
    takes: LENGTH,
    otherwise: "as long as need be",
    how: "Bed and leaf, from end to end: what is told along the bend is measured from its left end.",
  },
  { key: "lift", takes: LENGTH, how: "How far the clamp opens above the bed." },
  { key: "openEnds", takes: "true or false", how: "True where a part can be slid out along the bend line." },
  {
    key: "setback",
    takes: '"auto", "one" or length',
    otherwise: '"auto"',
    how: "How far the nose stands back from the bed's front edge. auto sets it for each bend, one keeps the largest for all.",
  },
  {
    key: "leastGrip",
    takes: LENGTH,
    otherwise: "3 mm and 4 thicknesses",
    how: "Least flat sheet that the clamp can hold. 0 leaves it unchecked.",
  },
  {
    key: "leastFlange",
    takes: LENGTH,
    otherwise: "2 thicknesses and the radius, and to the leaf's face",
    how: "Least flat sheet that the leaf can push. 0 leaves it unchecked.",
  },
  {
    key: "doubts.overbend",
    takes: "degrees",
    otherwise: "the range of a reckoned springback, none of a given overbend",
    how: "How far the leaf angles may be off, either way. Bend a test strip to know them better.",
  },
  {
    key: "doubts.setback",
    takes: LENGTH,
    otherwise: "0",
    how: "How far off the nose may stand from where you set it, either way.",
  },
  {
    key: "doubts.noseRadius",
    takes: LENGTH,
    otherwise: "0",
    how: "How far off your reading of the nose radius may be, either way.",
  },
  {
    key: "rated.thickness",
    takes: "length or gauge",
    otherwise: "not checked",
    how: "From the maker's plate.",
  },
  { key: "rated.length", takes: LENGTH, otherwise: "not checked", how: "The same: how long a bend." },
  {
    key: "rated.yield",
    takes: "MPa",
    otherwise: "not checked",
    how: "The same: of which steel. Mild steel is about 250.",
  },
];

/** A key's heading and what it is. @example keyLines(BRAKE_KEYS[0]) // ["name: text", "What you call the brake."] */
export function keyLines({ key, takes, otherwise, how }: KeyTold): readonly [heading: string, how: string] {
  return [`${key}: ${takes}${otherwise === undefined ? "" : `; left out: ${otherwise}`}`, how];
}
