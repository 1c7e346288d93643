/**
 * One stroke of a whole part set up in a brake: which faces lie clamped, which swing, and where everything is while the
 * leaf is at rest. Section frame with w along the bend line to the operator's right, 0 at the left end of the stroke's
 * middle lines. Seat and swing are those of a section with the stroke's bend alone (motion/seat).
 */
import type { Brake } from "../brake/brake.ts";
import { SeatPieces } from "../contact/seatPieces.ts";
import { type Seat, seatFor } from "../motion/seat.ts";
import type { Mm } from "../units/quantity.ts";
import { type FoldedStrip, folded, foldOf } from "./folding.ts";
import type { LineBend } from "./pattern.ts";
import type { Ring } from "./ring.ts";
import type { Hinge } from "./sheetPart.ts";
import { dot, type Placement, placed, type Spot, turned } from "./space.ts";
import type { WholePart } from "./wholePart.ts";

/** Bends made in one swing, from 0, and a face that lies clamped. */
export interface Stroke {
  readonly bends: readonly number[];
  readonly clampedFace: number;
}

export interface Interval {
  readonly from: number;
  readonly to: number;
}

export type StrokeSide = "clamped" | "moving";

export interface StrokeSeat {
  readonly part: WholePart;
  readonly stroke: Stroke;
  readonly made: ReadonlySet<number>;
  readonly bend: LineBend;
  readonly markedFaceUp: boolean;
  readonly seat: Seat;
  readonly pieces: SeatPieces;
  /** Placement of each face with the leaf at rest, and its side. */
  readonly placements: readonly Placement[];
  readonly sides: readonly StrokeSide[];
  /** Strips of other bends, made or flat, with the side that each is on. */
  readonly strips: readonly (FoldedStrip & { readonly side: StrokeSide })[];
  /** The stroke's own strips: their pieces where they lie flat, and the stretch of w of each. */
  readonly ownStrips: readonly {
    readonly hinge: Hinge;
    readonly placement: Placement;
    readonly stretch: Interval;
  }[];
  /** Middle lines of the stroke's bends in w, as far as there is sheet, from the left. */
  readonly lines: readonly (Interval & { readonly bend: number })[];
}

/** Why bends make no stroke; bends from 0. */
export type StrokeFault =
  /** Bends that differ in angle, turn, radius or overbend can't be made in one swing. */
  | { readonly kind: "unlike"; readonly bend: number; readonly other: number }
  /** Bends that don't lie on one line as the part stands then. */
  | { readonly kind: "oneLine"; readonly bend: number; readonly other: number };

export type StrokeSeatResult =
  | { readonly ok: true; readonly at: StrokeSeat }
  | { readonly ok: false; readonly fault: StrokeFault };

/** Two lines of one stroke lie this near each other. */
const ONE_LINE_MM: Mm = 0.01;
/** Directions whose cosine is off 1 by less are one. */
const ONE_WAY = 1e-6;

/** Sets up a stroke after the bends in `made`. */
export function strokeSeat(
  part: WholePart,
  brake: Brake,
  made: ReadonlySet<number>,
  stroke: Stroke,
): StrokeSeatResult {
  const { pattern, hinges } = part.sheet;
  const first = stroke.bends[0]!;
  const bend = pattern.bends[first]!;
  const unlike = stroke.bends.find((other) => !alike(bend, pattern.bends[other]!));
  if (unlike !== undefined) return { ok: false, fault: { kind: "unlike", bend: first, other: unlike } };
  const cut = new Set(hinges.filter((hinge) => stroke.bends.includes(hinge.bend)));
  const sides = sidesOf(part, stroke.clampedFace, cut);
  const own = [...cut].map((hinge) => {
    const side = sides[hinge.left[0]!] === "clamped" ? ("left" as const) : ("right" as const);
    return { hinge, side, face: hinge[side][0]! };
  });
  const anchor = own[0]!;
  const markedFaceUp = bend.turn === "up";
  const seatOf = (clampedMm: Mm, movingMm: Mm): Seat =>
    seatFor(
      {
        name: part.name,
        metal: part.metal,
        thicknessMm: part.thicknessMm,
        kFactor: part.kFactor,
        flatsMm: [clampedMm, movingMm],
        bends: [bend],
      },
      brake,
      0,
      "start",
    );
  const tangentX = seatOf(1, 1).clampedTangentX;
  const lay = (shiftW: Mm) =>
    folded(part.sheet, anchor.face, framed(part, anchor, markedFaceUp, tangentX, shiftW), (one) =>
      made.has(one),
    );
  const lines = (at: ReturnType<typeof lay>) =>
    own.flatMap(({ hinge, side, face }) => {
      const fold = foldOf(pattern.bends[hinge.bend]!, part.thicknessMm, side);
      return hinge.strips.map(({ outer }) => ({
        bend: hinge.bend,
        ...lineOf(outer, fold, at.faces[face]!),
      }));
    });
  const leftMost = Math.min(...lines(lay(0)).map(({ from }) => from));
  const at = lay(-leftMost);
  const astray = own.find(({ hinge, side, face }) => !onLine(part, hinge, side, at.faces[face]!, tangentX));
  if (astray) return { ok: false, fault: { kind: "oneLine", bend: first, other: astray.hinge.bend } };

  const placements = at.faces as readonly Placement[];
  const strips = at.strips
    .filter(({ hinge }) => !cut.has(hinge))
    .map((strip) => ({ ...strip, side: sides[strip.faces[0]]! }));
  const depth = depths(part, placements, sides, strips, tangentX, bend);
  const seat = seatOf(depth.clampedMm, depth.movingMm);
  return {
    ok: true,
    at: {
      part,
      stroke,
      made,
      bend,
      markedFaceUp,
      seat,
      pieces: new SeatPieces(seat),
      placements,
      sides,
      strips,
      ownStrips: own.flatMap(({ hinge, face }) =>
        hinge.strips.map(({ outer }) => {
          const placement = placements[face]!;
          return { hinge, placement, stretch: spanW(outer, placement) };
        }),
      ),
      lines: lines(at).sort((a, b) => a.from - b.from),
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

/** The clamped face beside a hinge laid on the bed: its tangent line at x = tangentX, the bend's way out along x. */
function framed(
  { sheet, thicknessMm }: WholePart,
  { hinge, side }: { readonly hinge: Hinge; readonly side: "left" | "right" },
  markedFaceUp: boolean,
  tangentX: Mm,
  shiftW: Mm,
): Placement {
  const { nx, ny, tangent } = foldOf(sheet.pattern.bends[hinge.bend]!, thicknessMm, side);
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
function lineOf(outer: Ring, fold: ReturnType<typeof foldOf>, placement: Placement): Interval {
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

function spanW(outer: Ring, placement: Placement): Interval {
  const ws = outer.map((point) => placed(placement, point, 0)[2]);
  return { from: Math.min(...ws), to: Math.max(...ws) };
}

/** Whether a hinge's clamped side lies flat on the bed with its tangent line where the stroke's is. */
function onLine(
  { sheet, thicknessMm }: WholePart,
  hinge: Hinge,
  side: "left" | "right",
  placement: Placement,
  tangentX: Mm,
): boolean {
  const { tangent, nx, ny } = foldOf(sheet.pattern.bends[hinge.bend]!, thicknessMm, side);
  const way = turned(placement, [nx, ny, 0]);
  const spot = placed(placement, tangent, 0);
  const [low, high] = [spot[1], placed(placement, tangent, thicknessMm)[1]];
  return (
    dot(way, [1, 0, 0]) > 1 - ONE_WAY &&
    Math.abs(spot[0] - tangentX) < ONE_LINE_MM &&
    Math.abs(Math.min(low, high)) < ONE_LINE_MM
  );
}

/** How far the coplanar run reaches from each tangent line: clamped into the throat, moving out along the leaf. */
function depths(
  part: WholePart,
  placements: readonly Placement[],
  sides: readonly StrokeSide[],
  strips: StrokeSeat["strips"],
  tangentX: Mm,
  bend: LineBend,
): { readonly clampedMm: Mm; readonly movingMm: Mm } {
  let [least, most] = [tangentX, tangentX + bend.allowanceMm];
  const up = bend.turn === "up";
  const reach = (ring: Ring, placement: Placement, side: StrokeSide) => {
    for (const point of ring) {
      const x = placed(placement, point, 0)[0];
      if (side === "clamped") least = Math.min(least, x);
      else most = Math.max(most, x);
    }
  };
  part.sheet.faces.forEach(({ outer }, face) => {
    if (inRun(placements[face]!, part.thicknessMm, up)) reach(outer, placements[face]!, sides[face]!);
  });
  for (const { hinge, made, before, side } of strips) {
    if (made || !inRun(before, part.thicknessMm, up)) continue;
    for (const { outer } of hinge.strips) reach(outer, before, side);
  }
  return { clampedMm: tangentX - least, movingMm: most - tangentX - bend.allowanceMm };
}

/** Sheet whose height and slope over the bed are less than this lies in the plane of the run. */
const COPLANAR = 1e-6;
const LEVEL_MM: Mm = 1e-4;

/** Whether a placement lays the sheet flat between y = 0 and y = T, with the face up that lies up in the brake. */
export function inRun(
  { origin, alongX, alongY, alongZ }: Placement,
  thicknessMm: Mm,
  markedFaceUp: boolean,
): boolean {
  if (alongZ[1] > 0 !== markedFaceUp) return false;
  const flat = Math.abs(alongX[1]) < COPLANAR && Math.abs(alongY[1]) < COPLANAR;
  return flat && Math.abs(origin[1] - (markedFaceUp ? 0 : thicknessMm)) < LEVEL_MM;
}
