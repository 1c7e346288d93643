/**
 * The blank's outline and holes as one path of an SVG, in millimetres with y down; roundings are arcs.
 */
import { filletedOutline } from "../../src/plane/fillet.ts";
import type { Edge } from "../../src/plane/outline.ts";

type Ring = readonly (readonly number[])[];

/** @example planPath([[[0, 0], [10, 0], [10, 5]]]) // "M0 0L10 0L10 -5L0 0Z" */
export function planPath(rings: readonly Ring[]): string {
  return rings
    .map((ring) => {
      const made = filletedOutline(
        ring.map(([x, y, radius]) => ({ x: x!, y: y!, ...(radius !== undefined && { radius }) })),
      );
      if (!made.ok) return "";
      const [first] = made.outline.edges;
      return `M${spot(first!.from)}${made.outline.edges.map(step).join("")}Z`;
    })
    .join("");
}

function step(edge: Edge): string {
  if (edge.kind === "line") return `L${spot(edge.to)}`;
  const { radius, sweepRad, to } = edge;
  const far = Math.abs(sweepRad) > Math.PI ? 1 : 0;
  return `A${round(radius)} ${round(radius)} 0 ${far} ${sweepRad > 0 ? 0 : 1} ${spot(to)}`;
}

function spot({ x, y }: { readonly x: number; readonly y: number }): string {
  return `${round(x)} ${round(-y)}`;
}

function round(mm: number): number {
  return Math.round(mm * 1000) / 1000 + 0;
}
