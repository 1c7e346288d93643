/**
 * How the brake stands to a stroke: where along it the part is placed, and which rows of fingers can hold its lines down.
 */
import type { Brake } from "../brake/brake.ts";
import type { Mm } from "../units/quantity.ts";
import type { FingerStock, RowQuestion } from "./fingerRows.ts";
import { brakeInterval, type Tooling } from "./strokeBodies.ts";
import type { Interval, StrokePlan } from "./strokePlan.ts";

/** What the brake has along its length. */
export interface Along {
  /** Undefined: one clamp, no fingers. */
  readonly fingers?: readonly FingerStock[];
  /** The longest bare length that still folds straight. */
  readonly fingerGapMm: Mm;
  readonly clampLengthMm?: Mm;
  readonly brakeLengthMm?: Mm;
  readonly leastGripMm?: Mm;
  readonly leastFlangeMm?: Mm;
}

/**
 * The brake without fingers, placed so that its middle, its left end or its right end stands at that of the bend lines; of
 * a brake as long as need be there is one.
 */
export function placedBrakes({ lines }: StrokePlan, along: Along): Tooling[] {
  const { clampLengthMm, brakeLengthMm, fingers } = along;
  const lengthMm = clampLengthMm ?? brakeLengthMm;
  const base: Tooling = {
    ...(fingers && { fingers: [] }),
    ...(clampLengthMm !== undefined && { clampLengthMm }),
    ...(brakeLengthMm !== undefined && { brakeLengthMm }),
  };
  if (lengthMm === undefined) return [base];
  const [from, to] = [lines[0]!.from, Math.max(...lines.map((line) => line.to))];
  const places = [(from + to - lengthMm) / 2, from, to - lengthMm];
  return [...new Set(places)].map((placedMm) => ({ ...base, placedMm }));
}

/** Whether the brake is too short for the stroke's lines. */
export function tooShort({ lines }: Pick<StrokePlan, "lines">, tooling: Tooling): boolean {
  const { from, to } = brakeInterval(tooling);
  return lines.some((line) => line.from < from - 0.02 || line.to > to + 0.02);
}

/** A question after the rows that hold a stroke's lines down with some stations blocked. */
export function rowQuestion(
  { lines }: StrokePlan,
  along: Along,
  tooling: Tooling,
  blocked: readonly Interval[],
): RowQuestion {
  const brake = brakeInterval(tooling);
  return { stock: along.fingers ?? [], lines, blocked, gapMm: along.fingerGapMm, brake };
}

/** Depth of a finger from its foremost point to its back, for taking it out by hand. */
export function fingerDepth({ clamp }: Brake): Mm {
  const xs = clamp.outlines[0]!.edges.flatMap(({ from, to }) => [from.x, to.x]);
  return Math.max(...xs) - Math.min(...xs);
}
