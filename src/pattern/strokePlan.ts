/**
 * A stroke of a whole part in a brake, as far as it is the same whatever was bent before: which faces lie clamped and which
 * swing, how each hangs on the bend, seat and swing (those of a section with the stroke's bend alone). Section frame with w
 * along the bend line to the operator's right, 0 at the left end of the stroke's middle lines.
 */
import type { Brake } from "../brake/brake.ts";
import { type Overload, overloadOf } from "../motion/rated.ts";
import { type Seat, seatFor } from "../motion/seat.ts";
import type { Mm } from "../units/quantity.ts";
import { foldOf } from "./folding.ts";
import type { LineBend } from "./pattern.ts";
import type { Ring } from "./ring.ts";
import type { Hinge } from "./sheetPart.ts";
import { type Fold, type Placement, placed, type Spot } from "./space.ts";
import type { WholePart } from "./wholePart.ts";

/** Bends made in one swing, from 0, and a face that lies clamped. */
export interface Stroke {
  readonly bends: readonly number[];
  readonly clampedFace: number;
}

/** Bends made, bend b (from 0) in bit b. */
export type BendSet = number;

export interface Interval {
  readonly from: number;
  readonly to: number;
}

export type StrokeSide = "clamped" | "moving";

/** One of the stroke's own hinges, seen from the face that lies clamped beside it. */
export interface OwnHinge {
  readonly hinge: Hinge;
  readonly face: number;
  readonly fold: Fold;
}

/** How a face hangs on one that is nearer to the stroke's bend. */
export interface Link {
  readonly hinge: Hinge;
  readonly from: number;
  readonly fold: Fold;
  /** Beyond the hinge, and not beside `from` on its near side. */
  readonly beyond: boolean;
  /** Of the faces beyond a hinge the first one carries its strips. */
  readonly ownsStrips: boolean;
  /** The hinge is one of the stroke's own: its strips are bend zone. */
  readonly own: boolean;
}

export interface StrokePlan {
  readonly part: WholePart;
  readonly stroke: Stroke;
  readonly bend: LineBend;
  readonly markedFaceUp: boolean;
  readonly sides: readonly StrokeSide[];
  /** The faces of each side. */
  readonly moving: readonly number[];
  readonly clamped: readonly number[];
  readonly own: readonly OwnHinge[];
  /** By face; the one that all others hang on has none. */
  readonly links: readonly (Link | undefined)[];
  /** By face: the bends that decide where it lies. */
  readonly deciding: readonly BendSet[];
  readonly anchor: number;
  /** The anchor face as it lies on the bed. */
  readonly laid: Placement;
  /** Middle lines of the stroke's bends in w, as far as there is sheet, from the left. */
  readonly lines: readonly (Interval & { readonly bend: number })[];
  /** What the brake is not rated for in this stroke: the sheet, or the length of its bend lines together. */
  readonly overload: Overload | undefined;
  /** The seat with runs of these depths. */
  seat(clampedMm: Mm, movingMm: Mm): Seat;
}

/** Why bends make no stroke whatever was bent before; bends from 0. */
export interface UnlikeBends {
  readonly kind: "unlike";
  readonly bend: number;
  readonly other: number;
}

export type PlanResult =
  | { readonly ok: true; readonly plan: StrokePlan }
  | { readonly ok: false; readonly fault: UnlikeBends };

/** Plans a stroke. */
export function strokePlan(part: WholePart, brake: Brake, stroke: Stroke): PlanResult {
  const { pattern, hinges } = part.sheet;
  const first = stroke.bends[0]!;
  const bend = pattern.bends[first]!;
  const unlike = stroke.bends.find((other) => !alike(bend, pattern.bends[other]!));
  if (unlike !== undefined) return { ok: false, fault: { kind: "unlike", bend: first, other: unlike } };
  const cut = new Set(hinges.filter((hinge) => stroke.bends.includes(hinge.bend)));
  const sides = sidesOf(part, stroke.clampedFace, cut);
  const own = [...cut].map((hinge): OwnHinge => {
    const side = sides[hinge.left[0]!] === "clamped" ? ("left" as const) : ("right" as const);
    return {
      hinge,
      face: hinge[side][0]!,
      fold: foldOf(pattern.bends[hinge.bend]!, part.thicknessMm, side),
    };
  });
  const markedFaceUp = bend.turn === "up";
  const { name, metal, thicknessMm, kFactor } = part;
  const seat = (clampedMm: Mm, movingMm: Mm) =>
    seatFor(
      { name, metal, thicknessMm, kFactor, flatsMm: [clampedMm, movingMm], bends: [bend] },
      brake,
      0,
      "start",
    );
  const { clampedTangentX } = seat(1, 1);
  const anchor = own[0]!;
  // Lines beside which nothing is bent lie in the anchor's plane: where they do not, the stroke can't be made (elements.ts).
  const linesIn = (laid: Placement) =>
    own
      .flatMap(({ hinge, fold }) =>
        hinge.strips.map(({ outer }) => ({ bend: hinge.bend, ...lineOf(outer, fold, laid) })),
      )
      .sort((a, b) => a.from - b.from);
  const unshifted = framed(anchor.fold, thicknessMm, markedFaceUp, clampedTangentX, 0);
  const laid = framed(anchor.fold, thicknessMm, markedFaceUp, clampedTangentX, -linesIn(unshifted)[0]!.from);
  const lines = linesIn(laid);
  const lengthMm = lines.reduce((sum, { from, to }) => sum + to - from, 0);
  return {
    ok: true,
    plan: {
      part,
      stroke,
      bend,
      markedFaceUp,
      sides,
      moving: [...sides.keys()].filter((face) => sides[face] === "moving"),
      clamped: [...sides.keys()].filter((face) => sides[face] === "clamped"),
      own,
      ...linked(part, anchor.face, cut),
      anchor: anchor.face,
      laid,
      lines,
      overload: overloadOf({ metal, thicknessMm, lengthMm }, brake),
      seat,
    },
  };
}

function alike(a: LineBend, b: LineBend): boolean {
  return (
    a.turn === b.turn &&
    a.angleDeg === b.angleDeg &&
    a.insideRadiusMm === b.insideRadiusMm &&
    a.overbendDeg === b.overbendDeg
  );
}

/** Which side each face is on when the part is parted at some hinges, every one between clamped and moving. */
function sidesOf({ sheet }: WholePart, clampedFace: number, cut: ReadonlySet<Hinge>): StrokeSide[] {
  const sides: StrokeSide[] = [];
  sides[clampedFace] = "clamped";
  const waiting = [clampedFace];
  for (let face = waiting.shift(); face !== undefined; face = waiting.shift()) {
    for (const hinge of sheet.hinges) {
      const near = hinge.left.includes(face)
        ? hinge.left
        : hinge.right.includes(face)
          ? hinge.right
          : undefined;
      if (!near) continue;
      const mine = sides[face]!;
      const other: StrokeSide = cut.has(hinge) ? (mine === "clamped" ? "moving" : "clamped") : mine;
      for (const next of [...hinge.left, ...hinge.right]) {
        if (sides[next] !== undefined) continue;
        sides[next] = near.includes(next) ? mine : other;
        waiting.push(next);
      }
    }
  }
  return sides;
}

/** How every face hangs on the anchor, and the bends on its way there. */
function linked(
  { sheet, thicknessMm }: WholePart,
  anchor: number,
  cut: ReadonlySet<Hinge>,
): Pick<StrokePlan, "links" | "deciding"> {
  const links: (Link | undefined)[] = sheet.faces.map(() => undefined);
  const deciding: BendSet[] = sheet.faces.map(() => 0);
  const seen = new Set([anchor]);
  const passed = new Set<Hinge>();
  const waiting = [anchor];
  for (let from = waiting.shift(); from !== undefined; from = waiting.shift()) {
    for (const hinge of sheet.hinges) {
      const side = hinge.left.includes(from) ? "left" : hinge.right.includes(from) ? "right" : undefined;
      if (passed.has(hinge) || side === undefined) continue;
      passed.add(hinge);
      const fold = foldOf(sheet.pattern.bends[hinge.bend]!, thicknessMm, side);
      const far = side === "left" ? hinge.right : hinge.left;
      const own = cut.has(hinge);
      for (const face of [...hinge[side], ...far]) {
        if (seen.has(face)) continue;
        seen.add(face);
        waiting.push(face);
        const beyond = far.includes(face);
        links[face] = { hinge, from, fold, beyond, ownsStrips: beyond && face === far[0] && !own, own };
        deciding[face] = deciding[from]! | (beyond && !own ? 1 << hinge.bend : 0);
      }
    }
  }
  return { links, deciding };
}

/** The clamped face beside a hinge laid on the bed: its tangent line at x = tangentX, the bend's way out along x. */
function framed(
  { nx, ny, tangent }: Fold,
  thicknessMm: Mm,
  markedFaceUp: boolean,
  tangentX: Mm,
  shiftW: Mm,
): Placement {
  const up = markedFaceUp ? 1 : -1;
  const alongX: Spot = [nx, 0, -ny * up];
  const alongY: Spot = [ny, 0, nx * up];
  return {
    origin: [
      tangentX - tangent.x * nx - tangent.y * ny,
      markedFaceUp ? 0 : thicknessMm,
      shiftW - tangent.x * alongX[2] - tangent.y * alongY[2],
    ],
    alongX,
    alongY,
    alongZ: [0, up, 0],
  };
}

/** The middle line of a strip, as far as there is sheet, in w. */
function lineOf(outer: Ring, fold: Fold, placement: Placement): Interval {
  const across = outer.map(({ x, y }) => (x - fold.tangent.x) * fold.nx + (y - fold.tangent.y) * fold.ny);
  const half = fold.allowanceMm / 2;
  const ws: number[] = [];
  outer.forEach((point, i) => {
    const [a, b] = [across[i]! - half, across[(i + 1) % outer.length]! - half];
    if (a > 0 === b > 0) return;
    const next = outer[(i + 1) % outer.length]!;
    const t = a / (a - b);
    const at = { x: point.x + t * (next.x - point.x), y: point.y + t * (next.y - point.y) };
    ws.push(placed(placement, at, 0)[2]);
  });
  return { from: Math.min(...ws), to: Math.max(...ws) };
}
