/**
 * One side of the part as a chain of closed pieces (flat, flat strip of an undone bend, arc of a done bend), walked
 * from the bend being made outward. Chain frame: first tangent at the origin, outer face on y = 0, running along +x.
 */
import type { State } from "./plainJob.ts";
import { pushArc, type Shape } from "./shape.ts";
import type { Sheet } from "./sheet.ts";

export interface Piece {
  kind: "flat" | "strip" | "bend";
  /** Flat or bend of the part, from 0. */
  index: number;
  shape: Shape;
  convex: boolean;
  /** Coplanar with the first flat: part of the resting or moving run. */
  run: boolean;
  /** Left out against the body on which the run lies: an up-turned bend at the run's end, and the flat right beyond. */
  besideRun: boolean;
}

interface Link {
  kind: Piece["kind"];
  index: number;
}

const SAME_PLANE = 1e-6;

/** What lies on one side of the bend, from the bend outward. */
function linksOf(sheet: Sheet, state: State, side: "clamped" | "moving"): Link[] {
  const towardStart = (side === "clamped") === (state.end === "start");
  const links: Link[] = [];
  const bendLink = (index: number): Link => ({ kind: state.done[index] ? "bend" : "strip", index });
  if (towardStart) {
    for (let flat = state.bend; flat >= 0; flat--) {
      links.push({ kind: "flat", index: flat });
      if (flat > 0) links.push(bendLink(flat - 1));
    }
  } else {
    for (let flat = state.bend + 1; flat < sheet.flats.length; flat++) {
      links.push({ kind: "flat", index: flat });
      if (flat < sheet.bends.length) links.push(bendLink(flat));
    }
  }
  return links;
}

/** Pen that walks the outer face of the sheet; turns left for a bend that turns up. */
class Walker {
  private x = 0;
  private y = 0;
  private heading = 0;
  private readonly thickness: number;
  private readonly inset: number;
  private readonly chordMm: number;

  constructor(thickness: number, inset: number, chordMm: number) {
    this.thickness = thickness;
    this.inset = inset;
    this.chordMm = chordMm;
  }

  onFirstPlane(): boolean {
    const turns = this.heading / (2 * Math.PI);
    return Math.abs(turns - Math.round(turns)) < SAME_PLANE && Math.abs(this.y) < SAME_PLANE;
  }

  straight(length: number): Shape {
    const [c, s] = [Math.cos(this.heading), Math.sin(this.heading)];
    const at = (u: number, v: number): number[] => [this.x + u * c - v * s, this.y + u * s + v * c];
    const [low, high] = [this.inset, this.thickness - this.inset];
    const shape = Float64Array.from([...at(0, low), ...at(length, low), ...at(length, high), ...at(0, high)]);
    this.x += length * c;
    this.y += length * s;
    return shape;
  }

  arc(radius: number, theta: number, up: boolean): Shape {
    const [c, s] = [Math.cos(this.heading), Math.sin(this.heading)];
    const reach = up ? this.thickness + radius : -radius;
    const center: [number, number] = [this.x - reach * s, this.y + reach * c];
    const start = up ? this.heading - Math.PI / 2 : this.heading + Math.PI / 2;
    const sweep = up ? theta : -theta;
    const [wide, narrow] = [radius + this.thickness - this.inset, radius + this.inset];
    const out: number[] = [];
    if (up) {
      pushArc(out, center, wide, start, sweep, this.chordMm);
      pushArc(out, center, narrow, start + sweep, -sweep, this.chordMm);
    } else {
      pushArc(out, center, narrow, start, sweep, this.chordMm);
      pushArc(out, center, wide, start + sweep, -sweep, this.chordMm);
    }
    this.heading += sweep;
    this.x = center[0] + reach * Math.sin(this.heading);
    this.y = center[1] - reach * Math.cos(this.heading);
    return Float64Array.from(out);
  }
}

/** The chain of one side. `inset` pulls both faces in; free ends and tangent cross-sections stay. */
export function chainOf(
  sheet: Sheet,
  state: State,
  side: "clamped" | "moving",
  inset: number,
  chordMm: number,
): Piece[] {
  const walker = new Walker(sheet.thickness, inset, chordMm);
  const made = sheet.bends[state.bend]!;
  const links = linksOf(sheet, state, side);
  const turnsUp = (index: number) => sheet.bends[index]!.up === made.up;
  const pieces = links.map((link): Piece => {
    const run = link.kind !== "bend" && walker.onFirstPlane();
    if (link.kind === "bend") {
      const bend = sheet.bends[link.index]!;
      const shape = walker.arc(bend.radius, bend.theta, turnsUp(link.index));
      return { ...link, shape, convex: false, run, besideRun: false };
    }
    const length = link.kind === "flat" ? sheet.flats[link.index]! : sheet.bends[link.index]!.allowance;
    return { ...link, shape: walker.straight(length), convex: true, run, besideRun: false };
  });
  pieces.forEach((piece, i) => {
    if (piece.kind !== "bend" || !turnsUp(piece.index)) return;
    const before = pieces[i - 1]!;
    const after = pieces[i + 1]!;
    if (!before.run && !after.run) return;
    piece.besideRun = true;
    for (const flat of [before, after]) if (!flat.run) flat.besideRun = true;
  });
  return pieces;
}

/** The bend being made, in the chain frame: the flat strip before it is made, the arc when it is finished. */
export function zoneOf(sheet: Sheet, bend: number, formed: boolean, inset: number, chordMm: number): Shape {
  const walker = new Walker(sheet.thickness, inset, chordMm);
  const made = sheet.bends[bend]!;
  return formed ? walker.arc(made.radius, made.theta, true) : walker.straight(made.allowance);
}
