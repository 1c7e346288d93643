/**
 * Outlines of the engine as paths of paper, and the marks that the drawing is made of: hatch, cross, dimension.
 * The pen knows no sheet metal; everything is laid out in canvas points.
 */
import type { ArcEdge, Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";
import { type Camera, onCanvas } from "./camera.ts";

export type Scope = paper.PaperScope;

/**
 * An outline as a closed path. Arcs become cubic curves of at most a quarter turn, which stray from the circle by
 * 0.03 % of its radius at most: less than a point of the canvas.
 */
export function pathOf(scope: Scope, camera: Camera, outline: Outline): paper.Path {
  const at = (p: Point) => new scope.Point(onCanvas(camera, p));
  const path = new scope.Path();
  const first = outline.edges[0];
  if (first === undefined) return path;
  path.moveTo(at(first.from));
  for (const edge of outline.edges) {
    if (edge.kind === "line") path.lineTo(at(edge.to));
    else for (const [a, b, to] of curvesOf(edge)) path.cubicCurveTo(at(a), at(b), at(to));
  }
  path.closePath();
  return path;
}

/** Handles and end of each curve of an arc: handles of length 4/3·tan(sweep/4)·radius along the tangents. */
function curvesOf(edge: ArcEdge): (readonly [Point, Point, Point])[] {
  const count = Math.max(1, Math.ceil(Math.abs(edge.sweepRad) / (Math.PI / 2) - 1e-9));
  const piece = edge.sweepRad / count;
  const reach = (4 / 3) * Math.tan(piece / 4);
  const on = (angle: number, along: number): Point => ({
    x: edge.center.x + edge.radius * (Math.cos(angle) - along * Math.sin(angle)),
    y: edge.center.y + edge.radius * (Math.sin(angle) + along * Math.cos(angle)),
  });
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [edge.startRad + piece * i, edge.startRad + piece * (i + 1)];
    return [on(from, reach), on(to, -reach), i === count - 1 ? edge.to : on(to, 0)] as const;
  });
}

/** Parallel lines over a box, for a section's hatch; `angleDeg` counter-clockwise as on paper. */
function hatchLines(
  scope: Scope,
  bounds: paper.Rectangle,
  angleDeg: number,
  spacing: number,
): paper.CompoundPath {
  const { center } = bounds;
  const reach = Math.hypot(bounds.width, bounds.height) / 2 + spacing;
  const count = Math.min(400, Math.ceil(reach / spacing));
  const along = new scope.Point({ angle: -angleDeg, length: reach });
  const across = new scope.Point({ angle: -angleDeg + 90, length: 1 });
  // Lines stand on a fixed grid of the canvas, so that the hatch of two bodies side by side runs through.
  const phase = center.dot(across) % spacing;
  const lines: paper.Path[] = [];
  for (let i = -count; i <= count; i++) {
    const middle = center.add(across.multiply(i * spacing - phase));
    lines.push(new scope.Path.Line(middle.subtract(along), middle.add(along)));
  }
  return new scope.CompoundPath({ children: lines });
}

export interface BodyStyle {
  readonly fill: string;
  readonly line: string;
  readonly width: number;
  readonly hatch: string;
  readonly hatchAngleDeg: number;
  readonly hatchSpacing: number;
  readonly dash?: readonly number[];
}

/** A body as in a section drawing: ground, hatch, outline. Only the part inside `view` is hatched. */
export function bodyItem(
  scope: Scope,
  path: paper.PathItem,
  style: BodyStyle,
  view: paper.Rectangle,
): paper.Group {
  const ground = path.clone({ insert: false });
  ground.fillColor = new scope.Color(style.fill);
  const seen = path.bounds.intersect(view);
  const group = new scope.Group([ground]);
  if (seen.width > 0 && seen.height > 0) {
    const mask = path.clone({ insert: false });
    const lines = hatchLines(scope, seen, style.hatchAngleDeg, style.hatchSpacing);
    lines.strokeColor = new scope.Color(style.hatch);
    lines.strokeWidth = 0.9;
    const clipped = new scope.Group([mask, lines]);
    clipped.clipped = true;
    group.addChild(clipped);
  }
  const line = path.clone({ insert: false });
  line.fillColor = null;
  line.strokeColor = new scope.Color(style.line);
  line.strokeWidth = style.width;
  line.strokeJoin = "round";
  if (style.dash) line.dashArray = [...style.dash];
  group.addChild(line);
  return group;
}

/** The cross that marks a contact: shape, not colour alone. */
export function crossItem(scope: Scope, at: Point, colour: string, ground: string): paper.Group {
  const centre = new scope.Point(at);
  const arm = 9;
  const strokes = (width: number, paint: string) =>
    [45, 135].map((angle) => {
      const along = new scope.Point({ angle, length: arm });
      const line = new scope.Path.Line(centre.subtract(along), centre.add(along));
      line.strokeColor = new scope.Color(paint);
      line.strokeWidth = width;
      line.strokeCap = "round";
      return line;
    });
  const ring = new scope.Path.Circle(centre, 13);
  ring.strokeColor = new scope.Color(colour);
  ring.strokeWidth = 2;
  return new scope.Group([...strokes(6, ground), ...strokes(2.5, colour), ring]);
}

/** Words on the drawing, with the paper's colour round the letters so that they stand out from hatch. */
export function wordsItem(
  scope: Scope,
  at: Point,
  words: string,
  colour: string,
  ground: string,
  justification: "left" | "center" | "right",
): paper.Group {
  const make = (): paper.PointText => {
    const text = new scope.PointText(new scope.Point(at));
    text.content = words;
    text.fontFamily = "system-ui, sans-serif";
    text.fontSize = 13;
    text.fontWeight = 600;
    text.justification = justification;
    text.fillColor = new scope.Color(colour);
    return text;
  };
  const halo = make();
  halo.strokeColor = new scope.Color(ground);
  halo.strokeWidth = 5;
  halo.strokeJoin = "round";
  return new scope.Group([halo, make()]);
}

/** A measured distance: a line between two dots with its figure beside it. */
export function dimensionItem(
  scope: Scope,
  from: Point,
  to: Point,
  words: string,
  colour: string,
  ground: string,
): paper.Group {
  const a = new scope.Point(from);
  const b = new scope.Point(to);
  const line = new scope.Path.Line(a, b);
  line.strokeColor = new scope.Color(colour);
  line.strokeWidth = 1.5;
  const dots = [a, b].map((p) => {
    const dot = new scope.Path.Circle(p, 2.6);
    dot.fillColor = new scope.Color(colour);
    dot.strokeColor = new scope.Color(ground);
    return dot;
  });
  const middle = a.add(b).divide(2);
  const label = wordsItem(scope, { x: middle.x + 10, y: middle.y - 8 }, words, colour, ground, "left");
  return new scope.Group([line, ...dots, label]);
}
