/**
 * Whether the brake is rated for the sheet: full plastic moment σy·T²/4 per unit length of bend, and times the length, against the
 * same for the rated sheet (plastic bending of a rectangle, textbook mechanics; from memory). A hundredth over is let pass.
 */
import type { Brake } from "../brake/brake.ts";
import type { Part } from "../part/part.ts";

/** Ratings and yields are no finer than this. */
const TOLERANCE = 1.01;

export type Overload =
  /** The part is longer than the brake. */
  | { readonly kind: "length" }
  /** Share of the rated moment, per unit length of the bend or over its whole length. */
  | { readonly kind: "rated"; readonly share: number; readonly over: "unit" | "length" };

/** What the brake is not rated for in this part; undefined where it is, or where the job gives no rating. */
export function overloadOf(
  { metal, thicknessMm, lengthMm }: Pick<Part, "metal" | "thicknessMm" | "lengthMm">,
  { rating }: Pick<Brake, "rating">,
): Overload | undefined {
  if (rating === undefined) return undefined;
  if (lengthMm !== undefined && lengthMm > rating.lengthMm * TOLERANCE) return { kind: "length" };
  const share = (metal.yieldMpa * thicknessMm ** 2) / (rating.yieldMpa * rating.thicknessMm ** 2);
  if (share > TOLERANCE) return { kind: "rated", share, over: "unit" };
  const whole = lengthMm === undefined ? 0 : (share * lengthMm) / rating.lengthMm;
  return whole > TOLERANCE ? { kind: "rated", share: whole, over: "length" } : undefined;
}
