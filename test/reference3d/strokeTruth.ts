/**
 * One stroke of a whole part by brute force in space: the leaf moved to single angles, common volumes of solids. Shares the
 * faces and strips of the blank with the engine, but no line of how it folds, clips, projects or sweeps them.
 * Frame: x out, y up, z = −w.
 */
import type { Vec3 } from "manifold-3d";
import type { Brake } from "../../src/brake/brake.ts";
import type { Region } from "../../src/pattern/ring.ts";
import type { Hinge, SheetPart } from "../../src/pattern/sheetPart.ts";
import {
  after,
  at,
  common,
  freeing,
  hull,
  type Matrix,
  mapped,
  moved,
  placed,
  plate,
  prism,
  type Solid,
  union,
  without,
} from "./solids.ts";

const INSET = 0.01;
const TOUCH = 0.01;
/** A made bend is cut so that no chord leaves it by more. */
const SLICE_MM = 0.001;
/**
 * Common volumes in mm³: one over the first is more than rounding, so something is surely met; what is not even over the
 * second is surely free. A sharp corner that has gone in by a third of a thousandth stands between.
 */
const SURELY_MET = 1e-10;
const SURELY_FREE = 1e-16;

export interface Question {
  readonly sheet: SheetPart;
  readonly kFactor: number;
  readonly brake: Brake;
  readonly made: ReadonlySet<number>;
  readonly bend: number;
  /** A face that lies clamped. */
  readonly clampedFace: number;
  readonly fingers: readonly { readonly widthMm: number; readonly fromMm: number }[] | undefined;
}

interface Piece {
  readonly solid: Solid;
  readonly moving: boolean;
  /** In the plane of bed or leaf, the right way up. */
  readonly run: boolean;
}

export class StrokeTruth {
  private readonly clamped: Solid;
  private readonly clampedStanding: Solid;
  private readonly movingStanding: Solid;
  private readonly movingRun: readonly Solid[];
  private readonly fixed: Solid;
  private readonly leaf: Solid;
  private readonly tangentX: number;
  /** Stretches of z of the stroke's own strips. */
  private readonly stretches: readonly (readonly [number, number])[];

  constructor(private readonly ask: Question) {
    const { sheet, brake, bend, fingers } = ask;
    const { thicknessMm } = sheet.pattern;
    const line = sheet.pattern.bends[bend]!;
    this.tangentX = -(line.noseSetbackMm + brake.clamp.noseRunMm);
    const { pieces, stretches } = this.pieces();
    this.stretches = stretches;
    const of = (wanted: (piece: Piece) => boolean) => union(pieces.filter(wanted).map(({ solid }) => solid));
    this.clamped = of(({ moving }) => !moving);
    this.clampedStanding = of(({ moving, run }) => !moving && !run);
    this.movingStanding = of(({ moving, run }) => moving && !run);
    this.movingRun = pieces.filter(({ moving, run }) => moving && run).map(({ solid }) => solid);
    const [from, to] = [-2000, 2000];
    const lowest = Math.min(...brake.clamp.outlines.flatMap(({ edges }) => edges.map((edge) => edge.from.y)));
    const clamp = brake.clamp.outlines.flatMap((outline) => {
      const low = Math.min(...outline.edges.map((edge) => edge.from.y));
      const stands = fingers !== undefined && low < lowest + 0.01;
      const over = stands
        ? fingers.map(({ fromMm, widthMm }) => [fromMm + TOUCH, fromMm + widthMm - TOUCH] as const)
        : [[from, to] as const];
      return over.map(([a, b]) => moved(prism(outline, a, b), [-line.noseSetbackMm, thicknessMm, 0]));
    });
    this.fixed = union([
      ...clamp,
      prism(brake.bed, from, to),
      ...brake.frame.map((one) => prism(one, from, to)),
    ]);
    this.leaf = prism(brake.leaf.outline, from, to);
  }

  /** Whether something is surely met with the leaf at an angle (radians). */
  meets(phi: number): boolean {
    return this.shares(phi, SURELY_MET);
  }

  /** Whether surely nothing is. */
  isFree(phi: number): boolean {
    return !this.shares(phi, SURELY_FREE);
  }

  private shares(phi: number, volume: number): boolean {
    const { brake } = this.ask;
    const { x: px, y: py } = brake.leaf.pivot;
    const [c, s] = [Math.cos(phi), Math.sin(phi)];
    const swing = mapped([c, s, 0], [-s, c, 0], [0, 0, 1], [px - c * px + s * py, py - s * px - c * py, 0]);
    const slid = after(swing, mapped([1, 0, 0], [0, 1, 0], [0, 0, 1], [this.slide(phi), 0, 0]));
    return freeing(() => {
      const run = union(this.movingRun.map((one) => this.cut(one, phi)));
      const moving = placed(union([this.movingStanding, run]), slid);
      const standing = placed(this.movingStanding, slid);
      const leaf = placed(this.leaf, swing);
      return (
        common(moving, this.fixed) > volume ||
        common(moving, leaf) > volume ||
        common(this.clamped, leaf) > volume ||
        common(this.clamped, this.fixed) > volume ||
        common(standing, this.clamped) > volume ||
        common(moving, this.clampedStanding) > volume
      );
    });
  }

  /** How far the moving side has slid out since rest: d(φ) − d(0) measured from the pivot (design, section 5). */
  private slide(phi: number): number {
    const { sheet, kFactor, bend, brake } = this.ask;
    const { insideRadiusMm: r } = sheet.pattern.bends[bend]!;
    const T = sheet.pattern.thicknessMm;
    const { y: py } = brake.leaf.pivot;
    return 2 * (r + T) * Math.tan(phi / 2) - phi * (r + kFactor * T) - 2 * py * Math.tan(phi / 2);
  }

  /** The moving run at rest without what is bend zone at an angle. */
  private cut(solid: Solid, phi: number): Solid {
    const { sheet, bend, brake } = this.ask;
    const { insideRadiusMm: r } = sheet.pattern.bends[bend]!;
    const { x: px, y: py } = brake.leaf.pivot;
    const half = Math.tan(phi / 2);
    // From the apex along the leaf, led back to where it was at rest.
    const from = px - py * half + (r + sheet.pattern.thicknessMm) * half - this.slide(phi);
    const zones = this.stretches.map(([a, b]) => {
      const deep = 4 * sheet.pattern.thicknessMm;
      const box = plate(
        [
          { x: this.tangentX, y: -deep },
          { x: from, y: -deep },
          { x: from, y: deep },
          { x: this.tangentX, y: deep },
        ],
        [],
        a,
        b,
      );
      return box;
    });
    return from <= this.tangentX ? solid : without(solid, union(zones));
  }

  /** All the sheet with the leaf at rest, and the stretches of z of the stroke's own strips. */
  private pieces(): { pieces: Piece[]; stretches: (readonly [number, number])[] } {
    const { sheet, made, bend, clampedFace } = this.ask;
    const { thicknessMm: T, bends } = sheet.pattern;
    const pieces: Piece[] = [];
    const own = sheet.hinges.filter((hinge) => hinge.bend === bend);
    const moving = new Map<number, boolean>([[clampedFace, false]]);
    const order = [clampedFace];
    for (const face of order) {
      for (const hinge of sheet.hinges) {
        const side = sideOf(hinge, face);
        if (!side) continue;
        for (const next of [...hinge.left, ...hinge.right]) {
          if (moving.has(next)) continue;
          const across = sideOf(hinge, next) !== side && own.includes(hinge);
          moving.set(next, across !== moving.get(face)!);
          order.push(next);
        }
      }
    }
    const first = own[0]!;
    const clampedSide = moving.get(first.left[0]!) === false ? "left" : "right";
    const anchor = first[clampedSide][0]!;
    const maps = new Map<number, Matrix>([[anchor, this.laid(first, clampedSide, bend)]]);
    const strips: { hinge: Hinge; side: "left" | "right"; map: Matrix; moving: boolean }[] = [];
    const waiting = [anchor];
    for (const face of waiting) {
      for (const hinge of sheet.hinges) {
        const side = sideOf(hinge, face);
        if (!side || strips.some((strip) => strip.hinge === hinge)) continue;
        const map = maps.get(face)!;
        strips.push({ hinge, side, map, moving: moving.get(face)! });
        const beyond = made.has(hinge.bend) ? after(map, this.bent(hinge, side, 1)) : map;
        const far = side === "left" ? hinge.right : hinge.left;
        for (const [list, to] of [
          [hinge[side], map],
          [far, beyond],
        ] as const) {
          for (const next of list) {
            if (maps.has(next)) continue;
            maps.set(next, to);
            waiting.push(next);
          }
        }
      }
    }
    for (const [face, map] of maps) {
      pieces.push({
        solid: this.flat(sheet.faces[face]!, map),
        moving: moving.get(face)!,
        run: this.inRun(map),
      });
    }
    const stretches: (readonly [number, number])[] = [];
    for (const { hinge, side, map, moving: swings } of strips) {
      if (own.includes(hinge)) {
        for (const { outer } of hinge.strips) {
          const zs = outer.map(({ x, y }) => at(map, [x, y, 0])[2]);
          stretches.push([Math.min(...zs), Math.max(...zs)]);
        }
      } else if (!made.has(hinge.bend)) {
        for (const strip of hinge.strips)
          pieces.push({ solid: this.flat(strip, map), moving: swings, run: this.inRun(map) });
      } else {
        const { insideRadiusMm, allowanceMm, angleDeg } = bends[hinge.bend]!;
        const turn = (angleDeg * Math.PI) / 180;
        const count = Math.ceil(turn / (2 * Math.acos(1 - SLICE_MM / (insideRadiusMm + T))));
        for (const strip of hinge.strips) {
          for (let i = 0; i < count; i++) {
            const solid = this.slice(hinge, side, map, strip, [
              (allowanceMm * i) / count,
              (allowanceMm * (i + 1)) / count,
            ]);
            if (solid) pieces.push({ solid, moving: swings, run: false });
          }
        }
      }
    }
    return { pieces, stretches };
  }

  private flat({ outer, holes }: Region, map: Matrix): Solid {
    return placed(plate(outer, holes, INSET, this.ask.sheet.pattern.thicknessMm - INSET), map);
  }

  private inRun(map: Matrix): boolean {
    const T = this.ask.sheet.pattern.thicknessMm;
    const up = this.ask.sheet.pattern.bends[this.ask.bend]!.turn === "up";
    const spots = [at(map, [0, 0, up ? 0 : T]), at(map, [50, 0, up ? 0 : T]), at(map, [0, 50, up ? 0 : T])];
    const tops = [at(map, [0, 0, up ? T : 0])];
    return spots.every(([, y]) => Math.abs(y) < 1e-4) && tops.every(([, y]) => Math.abs(y - T) < 1e-4);
  }

  /** A thin slice of a made bend, between two distances over its strip. */
  private slice(
    hinge: Hinge,
    side: "left" | "right",
    map: Matrix,
    { outer }: Region,
    [from, to]: readonly [number, number],
  ): Solid | undefined {
    const T = this.ask.sheet.pattern.thicknessMm;
    const { tangent, way } = this.lineSide(hinge, side);
    const over = (p: { x: number; y: number }) => (p.x - tangent[0]) * way[0] + (p.y - tangent[1]) * way[1];
    let ring = [...outer];
    for (const keep of [
      (p: { x: number; y: number }) => over(p) - from,
      (p: { x: number; y: number }) => to - over(p),
    ]) {
      ring = ring.flatMap((p, i) => {
        const q = ring[(i + 1) % ring.length]!;
        const [a, b] = [keep(p), keep(q)];
        const kept = a >= 0 ? [p] : [];
        if (a >= 0 === b >= 0) return kept;
        const t = a / (a - b);
        return [...kept, { x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) }];
      });
    }
    if (ring.length < 3) return undefined;
    const points = ring.flatMap((p): Vec3[] => {
      const share = Math.min(1, Math.max(0, over(p) / this.ask.sheet.pattern.bends[hinge.bend]!.allowanceMm));
      // What has been passed of the strip is taken off, so the point lies on the tangent of what is made so far.
      const bent = after(map, this.bent(hinge, side, share));
      return [INSET, T - INSET].map((z) => at(bent, [p.x, p.y, z]));
    });
    return hull(points);
  }

  private lineSide(hinge: Hinge, side: "left" | "right") {
    const bend = this.ask.sheet.pattern.bends[hinge.bend]!;
    const { from, to, allowanceMm } = bend;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const s = side === "left" ? 1 : -1;
    const way = [(s * (to.y - from.y)) / length, (-s * (to.x - from.x)) / length] as const;
    const tangent = [from.x - (way[0] * allowanceMm) / 2, from.y - (way[1] * allowanceMm) / 2] as const;
    return { bend, way, tangent };
  }

  /** What a bend does to the sheet beyond it when a share of it is made: turned about its axis, less the sheet it took. */
  private bent(hinge: Hinge, side: "left" | "right", share: number): Matrix {
    const { bend, way, tangent } = this.lineSide(hinge, side);
    const T = this.ask.sheet.pattern.thicknessMm;
    const up = bend.turn === "up" ? 1 : -1;
    const axisZ = up > 0 ? T + bend.insideRadiusMm : -bend.insideRadiusMm;
    const turn = (share * bend.angleDeg * Math.PI) / 180;
    const [c, s] = [Math.cos(turn), up * Math.sin(turn)];
    const [nx, ny] = way;
    // Rotation in the plane of the way over the bend and z.
    const x: Vec3 = [1 + nx * nx * (c - 1), nx * ny * (c - 1), nx * s];
    const y: Vec3 = [nx * ny * (c - 1), 1 + ny * ny * (c - 1), ny * s];
    const z: Vec3 = [-nx * s, -ny * s, c];
    const turned = mapped(x, y, z, [0, 0, 0]);
    const back = share * bend.allowanceMm;
    const moved = at(turned, [-back * nx - tangent[0], -back * ny - tangent[1], -axisZ]);
    return mapped(x, y, z, [moved[0] + tangent[0], moved[1] + tangent[1], moved[2] + axisZ]);
  }

  /** The clamped face on the bed: way over the bend along x, marked face up for a bend that turns up. */
  private laid(hinge: Hinge, side: "left" | "right", number: number): Matrix {
    const { way, tangent } = this.lineSide(hinge, side);
    const T = this.ask.sheet.pattern.thicknessMm;
    const up = this.ask.sheet.pattern.bends[number]!.turn === "up" ? 1 : -1;
    const [nx, ny] = way;
    // Seen from above with the marked face up, w is a quarter turn counter-clockwise from x; z = −w.
    const x: Vec3 = [nx, 0, up * ny];
    const y: Vec3 = [ny, 0, -up * nx];
    const z: Vec3 = [0, up, 0];
    const unmoved = mapped(x, y, z, [0, up > 0 ? 0 : T, 0]);
    const spot = at(unmoved, [tangent[0], tangent[1], 0]);
    const left = Math.max(...this.middleLine(hinge, unmoved));
    return mapped(x, y, z, [this.tangentX - spot[0], up > 0 ? 0 : T, -left]);
  }

  /** Ends of a bend's middle line, as far as there is sheet, in z. */
  private middleLine(hinge: Hinge, map: Matrix): number[] {
    const { bend, way, tangent } = this.lineSide(hinge, "left");
    const off = (p: { x: number; y: number }) =>
      (p.x - tangent[0]) * way[0] + (p.y - tangent[1]) * way[1] - bend.allowanceMm / 2;
    return this.ask.sheet.hinges
      .filter((one) => one.bend === hinge.bend)
      .flatMap(({ strips }) => strips)
      .flatMap(({ outer }) =>
        outer.flatMap((p, i) => {
          const q = outer[(i + 1) % outer.length]!;
          const [a, b] = [off(p), off(q)];
          if (a > 0 === b > 0) return [];
          const t = a / (a - b);
          return [at(map, [p.x + t * (q.x - p.x), p.y + t * (q.y - p.y), 0])[2]];
        }),
      );
  }
}

function sideOf({ left, right }: Hinge, face: number): "left" | "right" | undefined {
  if (left.includes(face)) return "left";
  return right.includes(face) ? "right" : undefined;
}
