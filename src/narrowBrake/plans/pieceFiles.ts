/**
 * Files of the pieces for machines: a DXF for each flat piece with its holes at true size, and an STL of the assembly to turn around.
 * The DXF shows the face that the piece's drawing shows; holes that are tapped are drawn at their thread's size, and said so.
 * STL: triangles of every piece, holes left out, arcs within 0.01 mm; ASCII, millimetres, y up.
 */
import { MADE_BY } from "../../drawing/madeBy.ts";
import { polylineDxf } from "../../drawing/polylineDxf.ts";
import type { NarrowBrakePlan } from "../narrowBrake.ts";
import { type Assembly, isRound, type Piece, type Prism, type Round, type Xyw } from "../solid.ts";
import { faceOf, holeKinds } from "./pieceFace.ts";

const ROUND_SIDES = 48;

/** One DXF for each sawn flat piece, named by its number and name: "04-bed-cap.dxf". */
export function pieceFiles({
  cutList,
  assembly,
}: NarrowBrakePlan): { readonly name: string; readonly text: string }[] {
  return cutList.flatMap((cut) => {
    const piece = assembly.pieces.find(({ item }) => item === cut.item)!;
    if (cut.bought || isRound(piece.shape)) return [];
    const face = faceOf(piece);
    const height = Math.max(2.5, face.wideMm / 12);
    const at = (along: number, across: number) => ({ x: along, y: face.wideMm - across });
    const notes = [
      `${cut.item} ${cut.piece}, ${cut.count} off: ${cut.stock}`,
      ...holeKinds(face).map(({ letter, holes }) => {
        const [one] = holes;
        return `${letter}: ${one!.tapped ? `tap ${one!.tapped}` : (one!.reason ?? "drill")}, ${holes.length} holes`;
      }),
    ];
    const text = polylineDxf({
      outlines: [face.outline.map(([along, across]) => at(along, across))],
      holes: face.holes
        .filter(({ slot }) => !slot)
        .map(({ alongMm, acrossMm, diameterMm }) => ({
          center: at(alongMm, acrossMm),
          diameterMm,
        })),
      words: notes.map((words, i) => ({
        at: { x: 0, y: -(i + 2) * 1.6 * height },
        text: words,
        heightMm: height,
      })),
    });
    return [{ name: `${String(cut.item).padStart(2, "0")}-${cut.piece.replaceAll(" ", "-")}.dxf`, text }];
  });
}

type Triangle = readonly [Xyw, Xyw, Xyw];

/** The assembly as ASCII STL, one solid for each piece. */
export function assemblyStl({ pieces }: Pick<Assembly, "pieces">): string {
  return pieces
    .map((piece) => {
      const facets = trianglesOf(piece).map(facetOf);
      return `solid ${piece.id}, ${MADE_BY}\n${facets.join("\n")}\nendsolid ${piece.id}, ${MADE_BY}\n`;
    })
    .join("");
}

/** Right-handed for those who look at it: x out, y up, so w runs to the operator's left there, which turns every triangle round. */
function facetOf([a, b, c]: Triangle): string {
  const [p, q, r] = [a, c, b].map(([x, y, w]): Xyw => [x, y, -w]) as [Xyw, Xyw, Xyw];
  const [u, v] = [q, r].map((to): Xyw => [to[0] - p[0], to[1] - p[1], to[2] - p[2]]) as [Xyw, Xyw];
  const n: Xyw = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const length = Math.hypot(...n) || 1;
  const normal = figures([n[0] / length, n[1] / length, n[2] / length]);
  const corners = [p, q, r].map((corner) => `vertex ${figures(corner)}`).join("\n");
  return `facet normal ${normal}\nouter loop\n${corners}\nendloop\nendfacet`;
}

function figures(vector: Xyw): string {
  return vector.map((one) => one.toFixed(4)).join(" ");
}

function trianglesOf({ shape }: Piece): Triangle[] {
  return isRound(shape) ? roundTriangles(shape) : prismTriangles(shape);
}

/** All profiles are convex: a fan does for both ends. */
function prismTriangles({ profile, from, to }: Prism): Triangle[] {
  const near = profile.map(([x, y]): Xyw => [x, y, to]);
  const far = profile.map(([x, y]): Xyw => [x, y, from]);
  return closed(far, near);
}

function roundTriangles({ diameter, from, to }: Round): Triangle[] {
  const along = [0, 1, 2].find((i) => Math.abs(to[i as 0] - from[i as 0]) > 1e-9) ?? 2;
  const ring = (center: Xyw) =>
    Array.from({ length: ROUND_SIDES }, (_, i): Xyw => {
      const angle = (2 * Math.PI * i) / ROUND_SIDES;
      const at: [number, number, number] = [...center];
      at[(along + 1) % 3]! += (diameter / 2) * Math.cos(angle);
      at[(along + 2) % 3]! += (diameter / 2) * Math.sin(angle);
      return at;
    });
  return closed(ring(from), ring(to));
}

function closed(far: readonly Xyw[], near: readonly Xyw[]): Triangle[] {
  const count = far.length;
  const ends = Array.from({ length: count - 2 }, (_, i): Triangle[] => [
    [near[0]!, near[i + 1]!, near[i + 2]!],
    [far[0]!, far[i + 2]!, far[i + 1]!],
  ]);
  const sides = far.map((a, i): Triangle[] => {
    const k = (i + 1) % count;
    return [
      [a, far[k]!, near[k]!],
      [a, near[k]!, near[i]!],
    ];
  });
  return [...ends.flat(), ...sides.flat()];
}
