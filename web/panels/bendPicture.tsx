/**
 * What is typed of a bend, in a small picture: which angle, the gap of a hem, the height of an offset. Not to scale.
 */
import type { BendKind } from "../store/bendKinds.ts";

const PICTURES: Readonly<Record<BendKind, { readonly metal: string; readonly dim: string }>> = {
  angle: { metal: "M6 54H70L104 14", dim: "M72 54H114M102 54A32 32 0 0 0 92 28" },
  included: { metal: "M6 54H70L104 14", dim: "M38 54A32 32 0 0 1 92 28" },
  closed: { metal: "M6 52H98A4.5 4.5 0 0 0 98 43H62", dim: "M62 37V12M107 58V12M62 18H107" },
  open: { metal: "M6 54H96A11 11 0 0 0 96 32H62", dim: "M58 50H44M58 36H44M50 50V36" },
  teardrop: { metal: "M6 54H92C116 54 116 26 98 29L62 41", dim: "M58 50H44M58 46H44M50 60V50M50 36V46" },
  offset: { metal: "M6 52H44L74 26H118", dim: "M70 22H14M4 56H14M20 22V56" },
};

export function BendPicture({ kind }: { readonly kind: BendKind }) {
  const { metal, dim } = PICTURES[kind];
  return (
    <svg class="edge-picture" viewBox="0 0 124 64" aria-hidden="true">
      <path class="metal" d={metal} />
      <path class="dim" d={dim} />
    </svg>
  );
}
