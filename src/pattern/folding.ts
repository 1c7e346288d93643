/**
 * The part with some of its bends made: where every face and strip is placed, seen from one face that stays. A made bend
 * is a sector of a cylinder in place of its strip, one not made lies flat (design: state is the set of bends made).
 */
import type { Point } from "../plane/point.ts";
import { toRad } from "../units/quantity.ts";
import type { LineBend } from "./pattern.ts";
import type { Hinge, SheetPart } from "./sheetPart.ts";
import { beyondFold, type Fold, type Placement } from "./space.ts";
import { wayOf } from "./strips.ts";

export interface FoldedStrip {
  readonly hinge: Hinge;
  readonly made: boolean;
  /** Placement of the sheet on the side from which the strip is seen to turn: flat, the strip lies in it too. */
  readonly before: Placement;
  /** The bend seen from there. */
  readonly fold: Fold;
  /** A face on that side and one beyond. */
  readonly faces: readonly [before: number, beyond: number];
}

export interface Folding {
  /** Placement of each face that hangs together with the one that stays; undefined for what is cut off. */
  readonly faces: readonly (Placement | undefined)[];
  readonly strips: readonly FoldedStrip[];
}

/** A bend seen from the faces on its left, or on its right. */
export function foldOf(bend: LineBend, thicknessMm: number, from: "left" | "right"): Fold {
  const { ux, uy } = wayOf(bend);
  const way = from === "left" ? 1 : -1;
  const [nx, ny] = [way * uy, -way * ux];
  const half = bend.allowanceMm / 2;
  const tangent: Point = { x: bend.from.x - half * nx, y: bend.from.y - half * ny };
  const up = bend.turn === "up" ? 1 : -1;
  return {
    tangent,
    nx,
    ny,
    allowanceMm: bend.allowanceMm,
    axisZ: up > 0 ? thicknessMm + bend.insideRadiusMm : -bend.insideRadiusMm,
    up,
    angleRad: toRad(bend.angleDeg),
  };
}

/**
 * Folds the part about `from`, which lies as `placement` says. `isMade` tells which bends are made, `cut` at which hinges
 * the part is taken apart: what lies beyond them is left out, their strips too.
 */
export function folded(
  part: SheetPart,
  from: number,
  placement: Placement,
  isMade: (bend: number) => boolean,
  cut: ReadonlySet<Hinge> = new Set(),
): Folding {
  const faces: (Placement | undefined)[] = part.faces.map(() => undefined);
  faces[from] = placement;
  const strips: FoldedStrip[] = [];
  const passed = new Set<Hinge>(cut);
  const waiting = [from];
  for (let face = waiting.shift(); face !== undefined; face = waiting.shift()) {
    const before = faces[face]!;
    for (const hinge of part.hinges) {
      if (passed.has(hinge)) continue;
      const side = hinge.left.includes(face) ? "left" : hinge.right.includes(face) ? "right" : undefined;
      if (side === undefined) continue;
      passed.add(hinge);
      const [near, far] = side === "left" ? [hinge.left, hinge.right] : [hinge.right, hinge.left];
      const fold = foldOf(part.pattern.bends[hinge.bend]!, part.pattern.thicknessMm, side);
      const made = isMade(hinge.bend);
      strips.push({ hinge, made, before, fold, faces: [face, far[0]!] });
      const beyond = made ? beyondFold(before, fold) : before;
      for (const [list, at] of [
        [near, before],
        [far, beyond],
      ] as const) {
        for (const next of list) {
          if (faces[next] !== undefined) continue;
          faces[next] = at;
          waiting.push(next);
        }
      }
    }
  }
  return { faces, strips };
}
