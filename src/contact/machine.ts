/**
 * The brake as the checks see it: bed, leaf, frame and, for each nose setback, the clamp, from the leaf's pivot.
 * The clamp is closed on the sheet: nose coordinates moved to (−s, T) (src/model.md, section 4).
 */
import type { Brake } from "../brake/brake.ts";
import { movedOutline } from "../plane/move.ts";
import type { Mm } from "../units/quantity.ts";
import { Features, featuresOf } from "./features.ts";
import { FACE_INSET_MM, LEAF_OFF_MM } from "./gaps.ts";
import { SolidBody } from "./solidBody.ts";

export class Machine {
  readonly bed: SolidBody;
  readonly leaf: SolidBody;
  /** The leaf drawn off bed and clamp, for its own contact with them: at rest, where profiles may be rounded … */
  readonly leafWellOff: Features;
  /** … and while it swings. */
  readonly leafJustOff: Features;
  readonly frame: readonly SolidBody[];
  /** Of the brake's stretches, in their order. */
  readonly stretches: readonly SolidBody[];
  /** Where pieces of sheet are laid out for one check at a time. Shared by all seats: making them costs more than a check. */
  readonly laidOut = {
    contact: [new Features(12, 12, 4), new Features(12, 12, 4)],
    clearance: new Features(16, 24, 4),
    loading: new Features(12, 12, 4),
  } as const;
  private readonly pieces: Features[] = [];
  private readonly clamps = new Map<Mm, readonly SolidBody[]>();

  constructor(
    readonly brake: Brake,
    private readonly thicknessMm: Mm,
  ) {
    const { pivot } = brake.leaf;
    this.bed = new SolidBody(brake.bed, pivot);
    this.leaf = new SolidBody(brake.leaf.outline, pivot);
    const leafOff = (mm: Mm) => featuresOf(brake.leaf.outline, { x: mm - pivot.x, y: -mm - pivot.y });
    this.leafWellOff = leafOff(FACE_INSET_MM);
    this.leafJustOff = leafOff(LEAF_OFF_MM);
    this.frame = brake.frame.map((outline) => new SolidBody(outline, pivot));
    this.stretches = (brake.stretches ?? []).map(({ outline }) => new SolidBody(outline, pivot));
  }

  /** Room for one of many pieces laid out at a time, by number. */
  laidOutPiece(number: number): Features {
    const known = this.pieces[number];
    if (known) return known;
    const made = new Features(16, 24, 4);
    this.pieces[number] = made;
    return made;
  }

  /** The clamp's bodies with the nose set back by `noseSetbackMm`. */
  clampAt(noseSetbackMm: Mm): readonly SolidBody[] {
    const known = this.clamps.get(noseSetbackMm);
    if (known) return known;
    const bodies = this.brake.clamp.outlines.map(
      (outline) =>
        new SolidBody(movedOutline(outline, -noseSetbackMm, this.thicknessMm), this.brake.leaf.pivot),
    );
    this.clamps.set(noseSetbackMm, bodies);
    return bodies;
  }
}
