/**
 * The sign of third-angle projection (ISO 5456-2): a cut cone, its small end toward its end view.
 */
import type { Mark } from "../../drawing/model.ts";
import type { Point } from "../../plane/point.ts";

/** The sign with its middle line at `at`, about 26 mm wide. */
export function projectionSign({ x, y }: Point): Mark[] {
  const ring = (radius: number): Mark => ({
    kind: "arc",
    layer: "cut",
    center: { x: x + 4, y },
    radius,
    startRad: 0,
    sweepRad: 2 * Math.PI,
  });
  const corners = [
    { x: x + 11, y: y - 2 },
    { x: x + 20, y: y - 3.5 },
    { x: x + 20, y: y + 3.5 },
    { x: x + 11, y: y + 2 },
  ];
  return [
    ring(2),
    ring(3.5),
    ...corners.map((from, i): Mark => ({ kind: "line", layer: "cut", from, to: corners[(i + 1) % 4]! })),
    { kind: "line", layer: "centre", from: { x: x - 1, y }, to: { x: x + 22, y } },
    {
      kind: "text",
      layer: "note",
      at: { x: x + 10, y: y - 8 },
      words: "third angle",
      heightMm: 3,
      anchor: "middle",
    },
  ];
}
