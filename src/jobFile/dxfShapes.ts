/**
 * Shapes of a DXF drawing in text form, parsed by the dxf library: edges in millimetres with their layer and linetype, and
 * words with their place. Arcs stay arcs; ellipses and splines become chords within 0.01 mm (dxfCurves.ts). Never throws.
 */
import { parseString } from "dxf";
import type { Point } from "../plane/point.ts";
import { MM_PER_INCH } from "../units/length.ts";
import { ellipseCurve, flattened, splineCurve } from "./dxfCurves.ts";
import type { DxfEdge } from "./dxfRings.ts";

export interface DxfShape {
  readonly type: string;
  readonly layer: string;
  readonly linetype: string;
  /** None where its kind is not read or a figure is missing. */
  readonly edges: readonly DxfEdge[];
  /** Of words. */
  readonly text?: { readonly at: Point; readonly words: string };
}

export type DxfRead =
  | {
      readonly ok: true;
      readonly shapes: readonly DxfShape[];
      /** Whether the drawing says its unit; else it was taken as `drawnIn` or mm. */
      readonly saysUnit: boolean;
    }
  | { readonly ok: false; readonly sentence: string };

const LONGEST_TEXT = 2_000_000;
const MOST_EDGES = 5000;

/** Millimetres of a drawing unit, by $INSUNITS (DXF reference, header variables: 1 inch, 2 foot, 4 mm, 5 cm, 6 m). */
const MM_OF: Readonly<Record<number, number>> = { 1: MM_PER_INCH, 2: 12 * MM_PER_INCH, 4: 1, 5: 10, 6: 1000 };

/** A shape as the library hands it over; any figure may be missing or spoilt. */
interface Entity {
  readonly [key: string]: unknown;
}

const refused = (sentence: string): DxfRead => ({ ok: false, sentence });

/** All shapes of a drawing. @example dxfShapes("0\nEOF\n").sentence // "The drawing holds no lines, arcs or polylines." */
export function dxfShapes(text: string, drawnIn?: "mm" | "in"): DxfRead {
  if (text.length > LONGEST_TEXT) return refused("The drawing is larger than 2 MB: save the outline alone.");
  if (!/^\s*0\s*\r?\n\s*EOF\s*$/m.test(text.slice(-40))) {
    return refused("The drawing is cut off or is not a DXF file in text form.");
  }
  let drawing: ReturnType<typeof parseString>;
  try {
    drawing = parseString(text);
  } catch {
    return refused("The drawing is spoilt: it could not be read.");
  }
  const declared = MM_OF[Number(drawing.header.insUnits)];
  const mm = declared ?? (drawnIn === "in" ? MM_PER_INCH : 1);
  const shapes = (drawing.entities as readonly Entity[])
    .filter(({ paperSpace }) => paperSpace === undefined)
    .map((entity) => shapeOf(entity, mm));
  if (shapes.length === 0) return refused("The drawing holds no lines, arcs or polylines.");
  if (shapes.reduce((sum, { edges }) => sum + edges.length, 0) > MOST_EDGES)
    return refused(`The drawing has more than ${MOST_EDGES} lines: save the outline alone.`);
  return { ok: true, shapes, saysUnit: declared !== undefined };
}

/** Kinds of shapes of which nothing was read, words left out. */
export function passedOver(shapes: readonly DxfShape[]): string[] {
  const kinds = shapes.filter(({ edges, text }) => edges.length === 0 && !text).map(({ type }) => type);
  return [...new Set(kinds)].slice(0, 5);
}

const isPlain = (v: unknown): v is number => typeof v === "number" && Number.isFinite(v) && Math.abs(v) < 1e7;
const nameOf = (v: unknown): string => (typeof v === "string" ? v.trim().slice(0, 80) : "");

type Spot = (x: unknown, y: unknown) => Point | undefined;

function shapeOf(entity: Entity, mm: number): DxfShape {
  const spot: Spot = (x, y) => (isPlain(x) && isPlain(y) ? { x: x * mm, y: y * mm } : undefined);
  const type = nameOf(entity.type).slice(0, 20);
  const edges = edgesOf(type, entity, spot, mm);
  const at = spot(entity.x, entity.y);
  const words = type === "TEXT" || type === "MTEXT" ? nameOf(entity.string) : "";
  return {
    type,
    layer: nameOf(entity.layer),
    linetype: nameOf(entity.lineTypeName),
    edges: entity.extrusionZ === -1 && type !== "LINE" && type !== "SPLINE" ? edges.map(fromBehind) : edges,
    ...(at && words !== "" && { text: { at, words } }),
  };
}

/** A shape drawn on the back of the sheet's plane (extrusion -1) has its x the other way round. */
function fromBehind({ from, to, bulge }: DxfEdge): DxfEdge {
  return { from: { x: -from.x, y: from.y }, to: { x: -to.x, y: to.y }, bulge: -bulge };
}

function edgesOf(type: string, entity: Entity, spot: Spot, mm: number): readonly DxfEdge[] {
  switch (type) {
    case "LINE": {
      const [start, end] = [entity.start as Entity, entity.end as Entity];
      return chords([spot(start.x, start.y), spot(end.x, end.y)]);
    }
    case "LWPOLYLINE":
    case "POLYLINE":
      return polylineEdges(entity, spot);
    case "ARC":
    case "CIRCLE":
      return arcEdges(type, entity, spot, mm);
    case "ELLIPSE":
      return chords(flattened(ellipseCurve(entity, mm)));
    case "SPLINE":
      return chords(flattened(splineCurve(entity, mm)));
    default:
      return [];
  }
}

/** Straight edges from point to point; none where a point is missing. */
function chords(points: readonly (Point | undefined)[]): DxfEdge[] {
  if (points.some((point) => point === undefined)) return [];
  return points.slice(1).map((to, i) => ({ from: points[i]!, to: to!, bulge: 0 }));
}

function arcEdges(type: "ARC" | "CIRCLE", entity: Entity, spot: Spot, mm: number): readonly DxfEdge[] {
  const center = spot(entity.x, entity.y);
  if (!center || !isPlain(entity.r)) return [];
  const radius = entity.r * mm;
  const turn = 2 * Math.PI;
  const [start, end] = type === "CIRCLE" ? [0, turn] : [entity.startAngle, entity.endAngle];
  if (!isPlain(start) || !isPlain(end)) return [];
  const sweep = type === "CIRCLE" ? turn : (((end - start) % turn) + turn) % turn;
  const at = (angle: number) => ({
    x: center.x + radius * Math.cos(angle),
    y: center.y + radius * Math.sin(angle),
  });
  // Bulge is the tangent of a quarter of the swept angle (DXF reference, LWPOLYLINE code 42); halves keep it finite.
  const half = start + sweep / 2;
  const bulge = Math.tan(sweep / 8);
  return [
    { from: at(start), to: at(half), bulge },
    { from: at(half), to: at(start + sweep), bulge },
  ];
}

function polylineEdges(entity: Entity, spot: Spot): readonly DxfEdge[] {
  const vertices = (entity.vertices ?? []) as readonly Entity[];
  const spots = vertices.map(({ x, y }) => spot(x, y));
  const bulges = vertices.map((v) => v.bulge ?? 0);
  if (spots.some((s) => s === undefined) || !bulges.every(isPlain)) return [];
  const count = entity.closed === true ? spots.length : spots.length - 1;
  return Array.from({ length: Math.max(0, count) }, (_, i): DxfEdge => {
    return { from: spots[i]!, to: spots[(i + 1) % spots.length]!, bulge: bulges[i]! };
  });
}
