/**
 * Clamp profiles from a DXF drawing (ASCII; lines, arcs, circles, polylines with bulge), parsed by dxf-parser.
 * Arcs tangent to straight sides become corner radii; others are flattened to within 0.005 mm of the arc.
 */
import DxfParser from "dxf-parser";
import { MM_PER_INCH } from "../../src/units/length.ts";
import type { Profile } from "../store/jobFile.ts";
import { asProfile, inNoseFrame, noseCorner } from "../trace/place.ts";
import { cornersOf } from "./corners.ts";
import { type DxfEdge, ringsOf } from "./rings.ts";

export type DxfProfiles =
  | {
      readonly ok: true;
      readonly profiles: readonly Profile[];
      readonly noseRadiusMm: number | null;
      /** What the person should know about how it was read. */
      readonly remarks: readonly string[];
    }
  | { readonly ok: false; readonly sentence: string };

const LONGEST_TEXT = 2_000_000;
const MOST_EDGES = 5000;
const MOST_PROFILES = 20;

/** Millimetres of a drawing unit, by $INSUNITS (DXF reference, header variables: 1 inch, 2 foot, 4 mm, 5 cm, 6 m). */
const MM_OF: Readonly<Record<number, number>> = { 1: MM_PER_INCH, 2: 12 * MM_PER_INCH, 4: 1, 5: 10, 6: 1000 };

interface Vertex {
  readonly x?: unknown;
  readonly y?: unknown;
  readonly bulge?: unknown;
}

interface Shape {
  readonly type: string;
  readonly vertices?: readonly Vertex[];
  readonly shape?: boolean;
  readonly center?: Vertex;
  readonly radius?: unknown;
  readonly startAngle?: unknown;
  readonly endAngle?: unknown;
}

const refused = (sentence: string): DxfProfiles => ({ ok: false, sentence });

/** Reads the text of a DXF file; never throws. Figures are written in `units`. */
export function profilesFromDxf(text: string, units: "mm" | "in"): DxfProfiles {
  if (text.length > LONGEST_TEXT) return refused("The drawing is larger than 2 MB: save the profile alone.");
  let drawing: {
    readonly header?: Readonly<Record<string, unknown>>;
    readonly entities?: readonly unknown[];
  } | null;
  try {
    drawing = new DxfParser().parseSync(text) as typeof drawing;
  } catch {
    return refused("The drawing is cut off or is not a DXF file in text form.");
  }
  const shapes = (drawing?.entities ?? []) as readonly Shape[];
  if (shapes.length === 0) return refused("The drawing holds no lines, arcs or polylines.");
  const remarks: string[] = [];
  const declared = MM_OF[Number(drawing?.header?.$INSUNITS)];
  if (declared === undefined)
    remarks.push(
      `The drawing does not say its unit, so ${units === "in" ? "inches" : "millimetres"} were taken.`,
    );
  const mm = declared ?? (units === "in" ? MM_PER_INCH : 1);

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
  const placed = inNoseFrame(rings.map(cornersOf));
  if (placed === null) return refused("An outline of the drawing crosses itself or goes around nothing.");
  const front = placed.reduce((best, corners) => (nearness(corners) < nearness(best) ? corners : best));
  const radius = front[noseCorner(front)]?.radius ?? null;
  if (radius === null) remarks.push("The nose has no rounding in the drawing: give its radius.");
  return {
    ok: true,
    profiles: placed.map((corners) => asProfile(corners, units)),
    noseRadiusMm: radius,
    remarks,
  };
}

function nearness(corners: readonly { readonly x: number; readonly y: number }[]): number {
  return Math.min(...corners.map((c) => Math.hypot(c.x, c.y)));
}

const isPlain = (v: unknown): v is number => typeof v === "number" && Number.isFinite(v) && Math.abs(v) < 1e7;

/** A shape's edges in mm; none where its kind is not read or a figure is missing. */
function edgesOf(shape: Shape, mm: number): readonly DxfEdge[] {
  const spot = (v: Vertex | undefined) =>
    isPlain(v?.x) && isPlain(v.y) ? { x: v.x * mm, y: v.y * mm } : null;
  if (shape.type === "LINE" || shape.type === "LWPOLYLINE" || shape.type === "POLYLINE") {
    const vertices = shape.vertices ?? [];
    const spots = vertices.map(spot);
    const bulges = vertices.map((v) => v.bulge ?? 0);
    if (spots.some((s) => s === null) || !bulges.every(isPlain)) return [];
    const closed = shape.type !== "LINE" && shape.shape === true;
    const count = closed ? spots.length : spots.length - 1;
    return Array.from({ length: Math.max(0, count) }, (_, i): DxfEdge => {
      return { from: spots[i]!, to: spots[(i + 1) % spots.length]!, bulge: bulges[i] as number };
    });
  }
  const center = spot(shape.center);
  if ((shape.type !== "ARC" && shape.type !== "CIRCLE") || center === null || !isPlain(shape.radius))
    return [];
  const radius = shape.radius * mm;
  const at = (angle: number) => ({
    x: center.x + radius * Math.cos(angle),
    y: center.y + radius * Math.sin(angle),
  });
  if (shape.type === "CIRCLE") {
    return [
      { from: at(0), to: at(Math.PI), bulge: 1 },
      { from: at(Math.PI), to: at(2 * Math.PI), bulge: 1 },
    ];
  }
  const { startAngle, endAngle } = shape;
  if (!isPlain(startAngle) || !isPlain(endAngle)) return [];
  const sweep = (((endAngle - startAngle) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  // Bulge is the tangent of a quarter of the swept angle (DXF reference, LWPOLYLINE code 42); halves keep it finite.
  const half = startAngle + sweep / 2;
  const bulge = Math.tan(sweep / 8);
  return [
    { from: at(startAngle), to: at(half), bulge },
    { from: at(half), to: at(endAngle), bulge },
  ];
}
