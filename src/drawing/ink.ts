/**
 * How each layer prints in black on white: line weight and dashes, ground, hatch. Two weights; members of the brake
 * are told apart by the angle of their hatch, as in section drawings, so that a copy in grey still reads.
 */
import type { Deg, Mm } from "../units/quantity.ts";
import type { Layer } from "./model.ts";

export interface Ink {
  /** Width of the line on the page; 0 leaves the outline out. */
  readonly weightMm: Mm;
  /** Lengths of stroke and gap on the page in turn; none is a full line. */
  readonly dashMm: readonly Mm[];
  /** Grey of the ground inside an outline, 0 black to 1 white; absent: see-through. */
  readonly ground?: number;
  /** Angle from the body's main outline. */
  readonly hatch?: { readonly angleDeg: Deg; readonly spacingMm: Mm };
}

const HEAVY: Mm = 0.5;
const LIGHT: Mm = 0.18;
const MIDDLE: Mm = 0.3;
/** Heavy beside its bend tangent lines, yet thin enough to scribe along. */
const SIGHT: Mm = 0.4;

/** A hatched body on white ground. */
function body(angleDeg: Deg, spacingMm: Mm): Ink {
  return { weightMm: HEAVY, dashMm: [], ground: 1, hatch: { angleDeg, spacingMm } };
}

function line(weightMm: Mm, ...dashMm: readonly Mm[]): Ink {
  return { weightMm, dashMm };
}

const INKS: Readonly<Record<Layer, Ink>> = {
  bed: body(45, 2.2),
  clamp: body(-45, 1.7),
  leaf: body(45, 2.9),
  frame: body(60, 3.4),
  part: { weightMm: MIDDLE, dashMm: [], ground: 0 },
  partBefore: line(LIGHT, 2, 1.2),
  swept: { weightMm: 0, dashMm: [], ground: 0.88 },
  contact: { weightMm: HEAVY, dashMm: [], hatch: { angleDeg: 60, spacingMm: 0.9 } },
  clearance: line(LIGHT),
  dimension: line(LIGHT),
  cut: line(MIDDLE),
  bendUp: line(MIDDLE, 6, 1.2, 1, 1.2),
  bendDown: line(MIDDLE, 3, 1.5),
  bendTangent: line(LIGHT),
  sightLine: line(SIGHT),
  note: { weightMm: LIGHT, dashMm: [], ground: 1 },
  grain: line(LIGHT),
  face: { weightMm: MIDDLE, dashMm: [], ground: 1 },
  edge: line(MIDDLE),
  hidden: line(LIGHT, 2, 1.2),
  centre: line(LIGHT, 6, 1.2, 1, 1.2),
  waste: { weightMm: LIGHT, dashMm: [2, 1.2], hatch: { angleDeg: -15, spacingMm: 4 } },
};

/** How a layer prints. @example inkOf("bed").hatch?.angleDeg // 45 */
export function inkOf(layer: Layer): Ink {
  return INKS[layer];
}
