/**
 * Clamp profiles from a DXF drawing (jobFile/dxfShapes.ts).
 * Arcs tangent to straight sides become corner radii; others are flattened to within 0.005 mm of the arc.
 */
import { cornersOf } from "../../src/jobFile/dxfCorners.ts";
import { ringsOf } from "../../src/jobFile/dxfRings.ts";
import { dxfShapes, passedOver } from "../../src/jobFile/dxfShapes.ts";
import type { Profile } from "../store/jobFile.ts";
import { asProfile, inNoseFrame, noseCorner } from "../trace/place.ts";
import { facesLeft, turnedRound, withoutHoles } from "./readable.ts";

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

const MOST_PROFILES = 20;

const refused = (sentence: string): DxfProfiles => ({ ok: false, sentence });

/**
 * Reads the text of a DXF file; never throws. Figures are written in `units`. Where the drawing does not say its unit it is
 * taken to be `drawnIn`, or asked for.
 */
export function profilesFromDxf(text: string, units: "mm" | "in", drawnIn?: "mm" | "in"): DxfProfiles {
  const drawing = dxfShapes(text, drawnIn);
  if (!drawing.ok) return drawing;
  const { shapes, saysUnit } = drawing;
  const remarks: string[] = [];
  const kinds = passedOver(shapes);
  if (kinds.length > 0) remarks.push(`Passed over: ${kinds.join(", ")}.`);
  const { rings, loose } = ringsOf(shapes.flatMap(({ edges }) => edges));
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
  if (!saysUnit && drawnIn === undefined)
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
