/**
 * Everything there is to see of one bend at one leaf angle: brake and sheet as outlines in the section frame.
 * Pictures are made from this; the contact kernel works from its own arrays (contact/).
 */
import type { Outline } from "../plane/outline.ts";

export interface Scene {
  readonly clamp: readonly Outline[];
  readonly bed: Outline;
  readonly leaf: Outline;
  readonly frame: readonly Outline[];
  /** The whole sheet, bend zone included, as one closed outline. */
  readonly sheet: Outline;
}
