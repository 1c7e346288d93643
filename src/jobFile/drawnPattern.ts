/**
 * A flat pattern from a DXF drawing: outline and holes from closed lines, bend lines from a layer or linetype that is named,
 * angles from words beside them or a list. Places stay those of the drawing. What is wrong is told with its place.
 */
import type { Corner } from "../plane/fillet.ts";
import type { Point } from "../plane/point.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { type AngleList, saidOfLines } from "./drawnAngles.ts";
import { cornersOf } from "./dxfCorners.ts";
import { type DxfEdge, ringsOf } from "./dxfRings.ts";
import { type DxfShape, dxfShapes, passedOver } from "./dxfShapes.ts";
import { LIMITS } from "./shapes.ts";
import type { WholeFile } from "./wholeSchema.ts";
import { writtenLength } from "./writtenLength.ts";

export interface DrawingAsked {
  /** Layers or linetypes of the bend lines, commas between; left out: the layers whose names have "bend" in them. */
  readonly bends?: string;
  /** Layer of outline and holes; left out: the one called "cut", else all that are no bend lines. */
  readonly cut?: string;
  readonly angles?: AngleList;
  /** The drawing's unit, where it doesn't say it. */
  readonly drawnIn?: LengthUnit;
}

type PatternFile = NonNullable<WholeFile["part"]["pattern"]>;

export type DrawnPattern =
  | { readonly ok: true; readonly pattern: PatternFile; readonly remarks: readonly string[] }
  | { readonly ok: false; readonly sentences: readonly string[] };

interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** Lines of one bend lie on one line to this, and their ends meet to this. */
const IN_LINE_MM: Mm = 0.02;

/** Reads a drawing into a pattern whose figures are in `units`; never throws. */
export function drawnPattern(text: string, units: LengthUnit, asked: DrawingAsked = {}): DrawnPattern {
  const drawing = dxfShapes(text, asked.drawnIn);
  if (!drawing.ok) return refused(drawing.sentence);
  const { shapes, saysUnit } = drawing;
  if (!saysUnit && asked.drawnIn === undefined)
    return refused("The drawing does not say its unit: add --drawn-in mm or --drawn-in in.");
  const bendShapes = bendShapesOf(shapes, asked.bends);
  if (typeof bendShapes === "string") return refused(bendShapes);
  const cutShapes = shapes.filter((one) => !bendShapes.includes(one));
  const called = asked.cut ?? layersOf(cutShapes).find((layer) => isName(layer, "cut"));
  const onCut = called === undefined ? cutShapes : cutShapes.filter(({ layer }) => isName(layer, called));
  if (asked.cut !== undefined && onCut.length === 0)
    return refused(`--cut is "${asked.cut}"; it may be one of the layers ${listed(layersOf(cutShapes))}.`);
  const say: Say = ({ x, y }) => `x ${formatLength(x, units)}, y ${formatLength(y, units)} ${units}`;
  const cut = outlineAndHoles(onCut, say);
  if (!cut.ok) return cut;
  const lines = bendLines(bendShapes, cut.holes, say);
  if (!lines.ok) return lines;
  const angles = anglesOf(lines.lines, shapes, asked.angles, say);
  if (!angles.ok) return angles;
  const written = (mm: Mm) => writtenLength(mm, units);
  const corner = ({ x, y, radius }: Corner) =>
    radius === undefined ? [written(x), written(y)] : [written(x), written(y), written(radius)];
  const pattern = {
    outline: cut.outline.map(corner),
    ...(cut.holes.length > 0 && { holes: cut.holes.map((hole) => hole.map(corner)) }),
    bends: lines.lines.map(({ from, to }, i) => ({
      line: [corner(from), corner(to)],
      ...angles.angles[i]!,
    })),
  } as PatternFile;
  return { ok: true, pattern, remarks: remarksOf(shapes, cut) };
}

type Say = (point: Point) => string;
type Refused = Extract<DrawnPattern, { ok: false }>;

const refused = (...sentences: string[]): Refused => ({ ok: false, sentences });
const isName = (a: string, b: string) => a.toLowerCase() === b.trim().toLowerCase();
const layersOf = (shapes: readonly DxfShape[]) => [
  ...new Set(shapes.filter(({ edges }) => edges.length > 0).map(({ layer }) => layer)),
];
const listed = (names: readonly string[]) => names.map((name) => `"${name}"`).join(", ");

/** The shapes that are bend lines, or why none are. */
function bendShapesOf(shapes: readonly DxfShape[], named: string | undefined): readonly DxfShape[] | string {
  const drawn = shapes.filter(({ edges }) => edges.length > 0);
  const layers = layersOf(shapes);
  if (named === undefined) {
    const like = layers.filter((layer) => /bend/iu.test(layer) && !/tangent/iu.test(layer));
    if (like.length > 0) return drawn.filter(({ layer }) => like.includes(layer));
    return `Which lines are bends: add --bends with their layer, one of ${listed(layers)}, or their linetype.`;
  }
  const found: DxfShape[] = [];
  for (const name of named.split(",")) {
    const onLayer = drawn.filter(({ layer }) => isName(layer, name));
    const meant = onLayer.length > 0 ? onLayer : drawn.filter(({ linetype }) => isName(linetype, name));
    if (meant.length === 0) {
      const types = [...new Set(drawn.map(({ linetype }) => linetype))].filter((type) => type !== "");
      const orType = types.length === 0 ? "" : `, or of the linetypes ${listed(types)}`;
      return `--bends has "${name.trim()}"; it may be one of the layers ${listed(layers)}${orType}.`;
    }
    found.push(...meant);
  }
  return found;
}

type Cut =
  | {
      readonly ok: true;
      readonly outline: readonly Corner[];
      readonly holes: readonly (readonly Corner[])[];
      readonly loose: number;
      /** Holes that cut into the outline. */
      readonly onEdge: number;
    }
  | Refused;

function outlineAndHoles(shapes: readonly DxfShape[], say: Say): Cut {
  const { rings, loose, open } = ringsOf(shapes.flatMap(({ edges }) => edges));
  if (rings.length === 0) {
    const where = open ? `: the line that ends at ${say(open)} meets no other` : "";
    return refused(`The drawing has no closed outline${where}.`);
  }
  if (rings.length > LIMITS.holes + 1)
    return refused(
      `The drawing has ${rings.length} closed lines; an outline and ${LIMITS.holes} holes are read.`,
    );
  const [outline, ...holes] = rings.map(cornersOf).sort((a, b) => areaOf(b) - areaOf(a));
  const astray = holes.find((hole) => !hole.some((corner) => inside(corner, outline!)));
  if (astray)
    return refused(
      `The drawing has a second outline, at ${say(astray[0]!)}: save one part alone, or name its layer with --cut.`,
    );
  // A relief hole stands half outside; the check does without it, as it does without those that we work out.
  const whole = holes.filter((hole) => hole.every((corner) => inside(corner, outline!)));
  return { ok: true, outline: outline!, holes: whole, loose, onEdge: holes.length - whole.length };
}

function areaOf(corners: readonly Corner[]): number {
  const twice = corners.reduce((sum, { x, y }, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return sum + x * next.y - next.x * y;
  }, 0);
  return Math.abs(twice) / 2;
}

function inside({ x, y }: Point, ring: readonly Corner[]): boolean {
  return ring.reduce((within, a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    return a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x) ? !within : within;
  }, false);
}

/** Bend lines from the left, then from below; pieces that a hole parts are one line. */
function bendLines(
  shapes: readonly DxfShape[],
  holes: readonly (readonly Corner[])[],
  say: Say,
): { readonly ok: true; readonly lines: readonly Line[] } | Refused {
  const edges = shapes.flatMap((shape) => shape.edges);
  const bent = edges.find(({ bulge }) => bulge !== 0);
  if (bent) return refused(`A bend line is an arc, at ${say(bent.from)}: draw bend lines straight.`);
  const lines = edges.filter(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y) > IN_LINE_MM);
  const joined: Line[] = [];
  for (const line of lines) {
    const at = joined.findIndex((other) => partedByHole(other, line, holes));
    if (at < 0) joined.push(line);
    else joined[at] = longest([joined[at]!, line]);
  }
  if (joined.length === 0) return refused("There are no bend lines on that layer.");
  const inHole = joined.find((one) =>
    holes.some((hole) => [0.05, 0.95].every((share) => inside(along(one, share), hole))),
  );
  if (inHole)
    return refused(
      `The bend line at ${say(along(inHole, 0.5))} lies in a hole: if a frame is drawn round the part, name the part's own layer with --cut.`,
    );
  if (joined.length > LIMITS.bends)
    return refused(`The drawing has ${joined.length} bend lines; up to ${LIMITS.bends} are read.`);
  const middle = ({ from, to }: Line) => [from.x + to.x, from.y + to.y] as const;
  const inOrder = joined.sort((a, b) => {
    const [[ax, ay], [bx, by]] = [middle(a), middle(b)];
    return Math.abs(ax - bx) > IN_LINE_MM ? ax - bx : ay - by;
  });
  return { ok: true, lines: inOrder };
}

/** Whether two lines are one that a hole parts, or that was drawn in two pieces end to end. */
function partedByHole(a: Line, b: DxfEdge, holes: readonly (readonly Corner[])[]): boolean {
  const long = Math.hypot(a.to.x - a.from.x, a.to.y - a.from.y);
  const off = ({ x, y }: Point) =>
    Math.abs((x - a.from.x) * (a.to.y - a.from.y) - (y - a.from.y) * (a.to.x - a.from.x)) / long;
  if (off(b.from) > IN_LINE_MM || off(b.to) > IN_LINE_MM) return false;
  const ends = [a.from, a.to].flatMap((one) => [b.from, b.to].map((other) => [one, other] as const));
  const gap = (pair: readonly [Point, Point]) => Math.hypot(pair[0].x - pair[1].x, pair[0].y - pair[1].y);
  const [near] = ends.sort((one, other) => gap(one) - gap(other));
  if (gap(near!) <= IN_LINE_MM) return true;
  const middle = { x: (near![0].x + near![1].x) / 2, y: (near![0].y + near![1].y) / 2 };
  return holes.some((hole) => inside(middle, hole));
}

function along({ from, to }: Line, share: number): Point {
  return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
}

function longest(lines: readonly Line[]): Line {
  const ends = lines.flatMap(({ from, to }) => [from, to]);
  const pairs = ends.flatMap((from, i) => ends.slice(i + 1).map((to) => ({ from, to })));
  const long = ({ from, to }: Line) => Math.hypot(to.x - from.x, to.y - from.y);
  return pairs.reduce((best, pair) => (long(pair) > long(best) ? pair : best));
}

function anglesOf(
  lines: readonly Line[],
  shapes: readonly DxfShape[],
  list: AngleList | undefined,
  say: Say,
): { readonly ok: true; readonly angles: readonly { angle: number; turn: "up" | "down" }[] } | Refused {
  const said = saidOfLines(
    lines,
    shapes.flatMap(({ text }) => (text ? [text] : [])),
  );
  const past = [...(list?.byNumber.keys() ?? [])].find((number) => number < 1 || number > lines.length);
  if (past !== undefined)
    return refused(
      `--angles names bend ${past}; the drawing has ${lines.length} bend lines, counted from the left.`,
    );
  const wrong = lines.flatMap(({ from, to }, i): string[] => {
    const which = `Bend ${i + 1}, from ${say(from)} to ${say(to)},`;
    if (list?.byNumber.has(i + 1)) return [];
    const own = [...new Set(said[i]!.map(({ angle, turn }) => `${angle} ${turn}`))];
    if (own.length > 1)
      return [
        `${which} has more than one angle beside it, ${own.join(" and ")}: add --angles "${i + 1}: ${own[0]}".`,
      ];
    if (own.length === 0 && !list?.all)
      return [
        `${which} has no angle: write "90 up" beside it in the drawing, or add --angles "${i + 1}: 90 up".`,
      ];
    return [];
  });
  if (wrong.length > 0) return refused(...wrong);
  return { ok: true, angles: lines.map((_, i) => list?.byNumber.get(i + 1) ?? said[i]![0] ?? list!.all!) };
}

function remarksOf(
  shapes: readonly DxfShape[],
  { loose, onEdge }: { readonly loose: number; readonly onEdge: number },
): string[] {
  const kinds = passedOver(shapes);
  const lines = loose === 1 ? "1 loose line was" : `${loose} loose lines were`;
  return [
    ...(loose > 0 ? [`${lines} left out: an outline or a hole is a closed line.`] : []),
    ...(onEdge > 0
      ? [
          `${onEdge} ${onEdge === 1 ? "hole" : "holes"} at the edge left out, as relief holes are: drill them all the same.`,
        ]
      : []),
    ...(kinds.length > 0 ? [`Passed over: ${kinds.join(", ")}.`] : []),
  ];
}
