/**
 * The one drawing model: lines, arcs, filled outlines, text and dimensions on named layers, in millimetres, y up.
 * Pens (svg, dxf, pdf, the page's stage) turn it into marks and know no sheet metal.
 */
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm, Rad } from "../units/quantity.ts";

/** What a mark stands for; the pen chooses weight, hatch and colour. */
export type Layer =
  | "bed"
  | "clamp"
  | "leaf"
  | "frame"
  | "part"
  | "partBefore"
  | "swept"
  | "contact"
  | "clearance"
  | "dimension"
  | "cut"
  | "bendUp"
  | "bendDown"
  | "bendTangent"
  | "sightLine"
  | "note"
  | "grain"
  | "waste"
  /** A piece seen from outside, and its visible edges, hidden edges and centre lines. */
  | "face"
  | "edge"
  | "hidden"
  | "centre";

export type Mark =
  | { readonly kind: "outline"; readonly layer: Layer; readonly outline: Outline; readonly caption?: string }
  | { readonly kind: "line"; readonly layer: Layer; readonly from: Point; readonly to: Point }
  | {
      readonly kind: "arc";
      readonly layer: Layer;
      readonly center: Point;
      readonly radius: Mm;
      readonly startRad: Rad;
      readonly sweepRad: Rad;
    }
  | {
      readonly kind: "text";
      readonly layer: Layer;
      readonly at: Point;
      readonly words: string;
      readonly heightMm: Mm;
      readonly anchor: "start" | "middle" | "end";
      readonly angleRad?: Rad;
    }
  | {
      /** A measured distance with arrowheads; `words` is the figure in the user's unit. */
      readonly kind: "dimension";
      readonly layer: Layer;
      readonly from: Point;
      readonly to: Point;
      readonly words: string;
      /** How far the dimension line stands off the measured points, to the left of from→to; 0 draws it between them. */
      readonly offsetMm: Mm;
    }
  | {
      /** A cross (contact) or dot pair; drawn at a constant size on the page. */
      readonly kind: "cross";
      readonly layer: Layer;
      readonly at: Point;
    };

export interface Drawing {
  /** One sentence that says what is to be seen, for those who hear it. */
  readonly sentence: string;
  /** What to show; marks outside are cut off by the pen. */
  readonly window: { readonly min: Point; readonly max: Point };
  readonly marks: readonly Mark[];
}
