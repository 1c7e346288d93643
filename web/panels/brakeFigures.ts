/**
 * The figures of a brake as they stand in its picture, not to scale: their names, where their dimension lines run, and where
 * their words stand. Coordinates are those of the picture, 720 points wide, y down.
 */
import type { KeyPath } from "../store/jobFile.ts";

export type Where = readonly [x: number, y: number];

export interface Figure {
  readonly name: string;
  readonly path: KeyPath;
  /** What stands where the key is left out. */
  readonly usual?: string;
  readonly unit?: string;
  /** Dimension and extension lines as path data. */
  readonly lines: string;
  /** Arrowheads: tip, and which way it points, in degrees clockwise from the right. */
  readonly tips: readonly (readonly [...Where, number])[];
  readonly at: Where;
  readonly anchor: "start" | "middle" | "end";
  /** How far off it may be. */
  readonly doubt?: KeyPath;
  /** Seen only while its field is filled in, or once it holds something. */
  readonly hidden?: boolean;
}

/** A dimension across, at height `y`, its extension lines from and to these heights. */
const level = (x1: number, x2: number, y: number, [from, to]: Where): Pick<Figure, "lines" | "tips"> => ({
  lines: `M${x1} ${from}V${to}M${x2} ${from}V${to}M${x1} ${y}H${x2}`,
  tips: [
    [x1, y, 180],
    [x2, y, 0],
  ],
});

/** A dimension up and down, at `x`, its extension lines from and to these places across. */
const upright = (y1: number, y2: number, x: number, [from, to]: Where): Pick<Figure, "lines" | "tips"> => ({
  lines: `M${from} ${y1}H${to}M${from} ${y2}H${to}M${x} ${y1}V${y2}`,
  tips: [
    [x, y1, 270],
    [x, y2, 90],
  ],
});

const clampKey = (key: string) => ["brake", "clamp", key] as const;

export const LEAF_AND_BED: readonly Figure[] = [
  {
    name: "Leaf face",
    path: ["brake", "leaf", "profile", 1, 0],
    ...level(390, 510, 266, [244, 272]),
    at: [450, 282],
    anchor: "middle",
  },
  {
    name: "Leaf thickness",
    path: ["brake", "leaf", "profile", 0, 1],
    ...upright(200, 240, 532, [514, 538]),
    at: [542, 222],
    anchor: "start",
  },
  {
    name: "Bed depth",
    path: ["brake", "bed", "profile", 0, 0],
    ...level(130, 390, 326, [304, 332]),
    at: [260, 342],
    anchor: "middle",
  },
  {
    name: "Bed height",
    path: ["brake", "bed", "profile", 0, 1],
    ...upright(200, 300, 110, [126, 104]),
    at: [102, 250],
    anchor: "end",
  },
  {
    name: "Leaf swing",
    path: ["brake", "leaf", "swing"],
    unit: "°",
    lines: "M560 200A170 170 0 0 0 475 53",
    tips: [[475, 53, 210]],
    at: [556, 130],
    anchor: "start",
  },
  {
    name: "Lift",
    path: ["brake", "lift"],
    ...upright(140, 191, 504, [484, 510]),
    at: [512, 168],
    anchor: "start",
  },
  {
    name: "Nose setback",
    path: ["brake", "setback"],
    doubt: ["brake", "doubts", "setback"],
    usual: "auto",
    lines: "M390 198V108M376 182V108M350 114H376M390 114H408",
    tips: [
      [376, 114, 0],
      [390, 114, 180],
    ],
    at: [412, 115],
    anchor: "start",
  },
  {
    name: "Pivot x, y",
    path: ["brake", "leaf", "pivot", 0],
    usual: "at the bed’s edge",
    lines: "M380 200H400M390 190V210M391 201L424 306",
    tips: [],
    at: [426, 312],
    anchor: "start",
  },
  {
    name: "Least grip",
    path: ["brake", "leastGrip"],
    usual: "usual",
    ...level(290, 372, 174, [188, 168]),
    at: [331, 160],
    anchor: "middle",
    hidden: true,
  },
  {
    name: "Least flange",
    path: ["brake", "leastFlange"],
    usual: "usual",
    ...level(396, 450, 174, [188, 168]),
    at: [456, 184],
    anchor: "start",
    hidden: true,
  },
];

const HOLDER: readonly Figure[] = [
  {
    name: "Holder height",
    path: clampKey("holderHeight"),
    usual: "none",
    ...upright(30, 92, 160, [176, 154]),
    at: [152, 60],
    anchor: "end",
  },
  {
    name: "Holder depth",
    path: clampKey("holderDepth"),
    usual: "none",
    ...level(180, 260, 12, [26, 6]),
    at: [216, -2],
    anchor: "middle",
  },
  {
    name: "Holder set back",
    path: clampKey("holderBack"),
    usual: "none",
    lines: "M260 26V6M376 100V6M260 12H376",
    tips: [
      [260, 12, 180],
      [376, 12, 0],
    ],
    at: [382, 12],
    anchor: "start",
  },
];

const NOSE: readonly Figure[] = [
  {
    name: "Nose angle",
    path: clampKey("noseAngle"),
    usual: "90",
    unit: "°",
    lines: "M330 192A46 46 0 0 1 343 159",
    tips: [],
    at: [326, 172],
    anchor: "end",
  },
  {
    name: "Nose radius",
    path: clampKey("noseRadius"),
    doubt: ["brake", "doubts", "noseRadius"],
    lines: "M372 183L402 150",
    tips: [[372, 183, 133]],
    at: [404, 146],
    anchor: "start",
  },
  {
    name: "Shim",
    path: clampKey("shim"),
    usual: "none",
    lines: "M378 187L412 176",
    tips: [],
    at: [414, 178],
    anchor: "start",
    hidden: true,
  },
];

const underside = (name: string, key: string): Figure => ({
  name,
  path: clampKey(key),
  ...level(210, 376, 224, [194, 230]),
  at: [293, 240],
  anchor: "middle",
});

const height = (name: string, key: string): Figure => ({
  name,
  path: clampKey(key),
  ...upright(92, 192, 190, [206, 184]),
  at: [182, 142],
  anchor: "end",
});

const topRadius = (lines: string, at: Where): Figure => ({
  name: "Top edge radius",
  path: clampKey("topRadius"),
  usual: "sharp",
  lines,
  tips: [],
  at,
  anchor: "start",
});

export const SHAPES = {
  finger: {
    body: "M210 192V92H280Q288 92 294 98L372 176Q380 192 366 192Z",
    figures: [
      ...NOSE,
      height("Finger height", "height"),
      underside("Foot depth", "footDepth"),
      topRadius("M289 94L306 66", [308, 62]),
      ...HOLDER,
    ],
  },
  bar: {
    body: "M210 192V92H364Q376 92 376 104V180Q376 192 364 192Z",
    figures: [
      { ...NOSE[0]!, lines: "M330 192A46 46 0 0 1 376 146", at: [324, 166] as Where },
      { ...NOSE[1]!, lines: "M374 186L402 150" },
      NOSE[2]!,
      height("Bar thickness", "thickness"),
      underside("Bar depth", "depth"),
      topRadius("M373 95L392 66", [394, 62]),
      ...HOLDER,
    ],
  },
  profile: {
    body: "M210 192V100L270 84L330 120Q352 150 372 176Q380 192 366 192Z",
    figures: [NOSE[1]!, NOSE[2]!],
  },
} as const;
