/**
 * Clamp profiles from a DXF drawing (ASCII; lines, arcs, circles, polylines with bulge), parsed by the dxf library.
 * Arcs tangent to straight sides become corner radii; others are flattened to within 0.005 mm of the arc.
 */
import { parseString } from "dxf";
import type { Point as PlanePoint } from "../../src/plane/point.ts";
import { MM_PER_INCH } from "../../src/units/length.ts";
import type { Profile } from "../store/jobFile.ts";
import { asProfile, inNoseFrame, noseCorner } from "../trace/place.ts";
import { cornersOf } from "./corners.ts";
import { facesLeft, turnedRound, withoutHoles } from "./readable.ts";
import { type DxfEdge, ringsOf } from "./rings.ts";

export type DxfProfiles =
  | {
      readonly ok: true;
      readonly profiles: readonly Profile[];
      readonly noseRadiusMm: number | null;
      /** What the person should know about how it was read. */
      readonly remarks: readonly string[];
    }
  | {
      readonly ok: false;
      readonly sentence: string;
      /** Where all that is missing is the drawing's unit: how large it is, in units of its own. */
      readonly unitless?: { readonly wide: number; readonly high: number };
    };

const LONGEST_TEXT = 2_000_000;
const MOST_EDGES = 5000;
const MOST_PROFILES = 20;

/** Millimetres of a drawing unit, by $INSUNITS (DXF reference, header variables: 1 inch, 2 foot, 4 mm, 5 cm, 6 m). */
const MM_OF: Readonly<Record<number, number>> = { 1: MM_PER_INCH, 2: 12 * MM_PER_INCH, 4: 1, 5: 10, 6: 1000 };

interface Point {
  readonly x?: unknown;
  readonly y?: unknown;
}

interface Vertex extends Point {
  readonly bulge?: unknown;
}

/** A shape as the library hands it over: lines with their ends, arcs and circles with x, y and r. */
interface Shape extends Point {
  readonly type: string;
  readonly start?: Point;
  readonly end?: Point;
  readonly vertices?: readonly Vertex[];
  readonly closed?: boolean;
  readonly r?: unknown;
  readonly startAngle?: unknown;
  readonly endAngle?: unknown;
}

const refused = (sentence: string): DxfProfiles => ({ ok: false, sentence });

/**
 * Reads the text of a DXF file; never throws. Figures are written in `units`. Where the drawing does not say its unit it is
 * taken to be `drawnIn`, or asked for.
 */
export function profilesFromDxf(text: string, units: "mm" | "in", drawnIn?: "mm" | "in"): DxfProfiles {
  if (text.length > LONGEST_TEXT) return refused("The drawing is larger than 2 MB: save the profile alone.");
  if (!/^\s*0\s*\r?\n\s*EOF\s*$/m.test(text.slice(-40))) {
    return refused("The drawing is cut off or is not a DXF file in text form.");
  }
  let drawing: ReturnType<typeof parseString>;
  try {
    drawing = parseString(text);
  } catch {
    return refused("The drawing is spoilt: it could not be read.");
  }
  const shapes = drawing.entities as readonly Shape[];
  if (shapes.length === 0) return refused("The drawing holds no lines, arcs or polylines.");
  const remarks: string[] = [];
  const declared = MM_OF[Number(drawing.header.insUnits)];
  const mm = declared ?? (drawnIn === "in" ? MM_PER_INCH : 1);

  const edges = shapes.flatMap((shape) => edgesOf(shape, mm));
  const passedOver = new Set(
    shapes.filter((shape) => edgesOf(shape, mm).length === 0).map((shape) => String(shape.type).slice(0, 20)),
  );
  if (passedOver.size > 0) remarks.push(`Passed over: ${[...passedOver].slice(0, 5).join(", ")}.`);
  if (edges.length > MOST_EDGES)
    return refused(`The drawing has more than ${MOST_EDGES} lines: save the profile alone.`);
  const { rings, loose } = ringsOf(edges);
  if (rings.length === 0) return refused("No closed outline was found: the ends of its lines do not meet.");
  if (rings.length > MOST_PROFILES)
    return refused(`The drawing has ${rings.length} closed outlines; a clamp has at most ${MOST_PROFILES}.`);
  if (loose > 0) remarks.push(`${loose} loose lines were left out.`);
  const drawn = rings.map(cornersOf);
  const solid = withoutHoles(drawn);
  const holes = drawn.length - solid.length;
  if (holes > 0)
    remarks.push(
      `${holes === 1 ? "A hole was" : `${holes} holes were`} left out: the section is solid there.`,
    );
  const left = facesLeft(solid);
  if (left) remarks.push("The nose faced left in the drawing, so it was turned round.");
  const placed = inNoseFrame(left ? turnedRound(solid) : solid);
  if (placed === null) return refused("An outline of the drawing crosses itself or goes around nothing.");
  const front = placed.reduce((best, corners) => (nearness(corners) < nearness(best) ? corners : best));
  if (declared === undefined && drawnIn === undefined)
    return { ...refused("The drawing does not say its unit."), unitless: sizeOf(placed) } as DxfProfiles;
  const radius = front[noseCorner(front)]?.radius ?? null;
  if (radius === null) remarks.push("The nose has no rounding in the drawing: give its radius.");
  return {
    ok: true,
    profiles: placed.map((corners) => asProfile(corners, units)),
    noseRadiusMm: radius,
    remarks,
  };
}

function sizeOf(shapes: readonly (readonly { readonly x: number; readonly y: number }[])[]) {
  const [xs, ys] = [
    shapes.flatMap((all) => all.map((c) => c.x)),
    shapes.flatMap((all) => all.map((c) => c.y)),
  ];
  return { wide: Math.max(...xs) - Math.min(...xs), high: Math.max(...ys) - Math.min(...ys) };
}

function nearness(corners: readonly { readonly x: number; readonly y: number }[]): number {
  return Math.min(...corners.map((c) => Math.hypot(c.x, c.y)));
}

const isPlain = (v: unknown): v is number => typeof v === "number" && Number.isFinite(v) && Math.abs(v) < 1e7;

/** A shape's edges in mm; none where its kind is not read or a figure is missing. */
function edgesOf(shape: Shape, mm: number): readonly DxfEdge[] {
  const spot = (v: Point | undefined) =>
    isPlain(v?.x) && isPlain(v.y) ? { x: v.x * mm, y: v.y * mm } : null;
  if (shape.type === "LINE") {
    const [from, to] = [spot(shape.start), spot(shape.end)];
    return from && to ? [{ from, to, bulge: 0 }] : [];
  }
  if (shape.type === "LWPOLYLINE" || shape.type === "POLYLINE") return polylineEdges(shape, spot);
  const center = spot(shape);
  if ((shape.type !== "ARC" && shape.type !== "CIRCLE") || center === null || !isPlain(shape.r)) return [];
  const radius = shape.r * mm;
  const at = (angle: number) => ({
    x: center.x + radius * Math.cos(angle),
    y: center.y + radius * Math.sin(angle),
  });
  const [start, end] = shape.type === "CIRCLE" ? [0, 2 * Math.PI] : [shape.startAngle, shape.endAngle];
  if (!isPlain(start) || !isPlain(end)) return [];
  const turn = 2 * Math.PI;
  const sweep = shape.type === "CIRCLE" ? turn : (((end - start) % turn) + turn) % turn;
  // Bulge is the tangent of a quarter of the swept angle (DXF reference, LWPOLYLINE code 42); halves keep it finite.
  const half = start + sweep / 2;
  const bulge = Math.tan(sweep / 8);
  return [
    { from: at(start), to: at(half), bulge },
    { from: at(half), to: at(start + sweep), bulge },
  ];
}

function polylineEdges(shape: Shape, spot: (v: Point) => PlanePoint | null): readonly DxfEdge[] {
  const vertices = shape.vertices ?? [];
  const spots = vertices.map(spot);
  const bulges = vertices.map((v) => v.bulge ?? 0);
  if (spots.some((s) => s === null) || !bulges.every(isPlain)) return [];
  const count = shape.closed === true ? spots.length : spots.length - 1;
  return Array.from({ length: Math.max(0, count) }, (_, i): DxfEdge => {
    return { from: spots[i]!, to: spots[(i + 1) % spots.length]!, bulge: bulges[i]! };
  });
}
