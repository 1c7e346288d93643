/**
 * A pattern cut into what stays flat and what bends: faces, strips, and which faces each bend joins. The part is a tree:
 * take any bend away and it falls in two. Faces are the outline less holes and strips.
 */
import type { Point } from "../plane/point.ts";
import { type Cells, type Chord, Net } from "./cells.ts";
import { outlineRegion } from "./outlineRegion.ts";
import type { LineBend, Pattern, PatternFault } from "./pattern.ts";
import { type Region, regionArea, regionHolds, withoutInLine } from "./ring.ts";
import { type BendStrips, stripsOf, wayOf } from "./strips.ts";

/** Strips of one bend that hang together through the faces beside them, and those faces, numbered from 0. */
export interface Hinge {
  readonly bend: number;
  readonly strips: readonly Region[];
  /** Faces on the left of the way from the bend line's `from` to its `to`, and on the right. */
  readonly left: readonly number[];
  readonly right: readonly number[];
}

export interface SheetPart {
  readonly pattern: Pattern;
  readonly faces: readonly Region[];
  readonly hinges: readonly Hinge[];
}

export type SheetPartResult =
  | { readonly ok: true; readonly part: SheetPart }
  | { readonly ok: false; readonly fault: PatternFault };

/** Cuts a pattern; a fault where it is no tree of faces. */
export function sheetPartOf(pattern: Pattern): SheetPartResult {
  const region = outlineRegion(pattern.outline, pattern.holes);
  if (!region.ok) return region;
  const net = new Net(region.region);
  const strips: BendStrips[] = [];
  for (const [i, bend] of pattern.bends.entries()) {
    const found = stripsOf(net, bend, i);
    if (!found.ok) return found;
    strips.push(found.strips);
  }
  const fault = crossing(net, strips) ?? within(net, strips, pattern);
  if (fault) return { ok: false, fault };
  const cut = new Cut(net, strips);
  const bare = cut.nothingBetween();
  if (bare) return { ok: false, fault: bare };
  const part = { pattern, faces: cut.faces, hinges: cut.hinges() };
  const ring = ringIn(part);
  return ring ? { ok: false, fault: { kind: "ring", bends: ring } } : { ok: true, part };
}

/** The first two bends whose strips cross or lie in each other. */
function crossing({ nodes }: Net, strips: readonly BendStrips[]): PatternFault | undefined {
  for (const [bend, a] of strips.entries()) {
    for (const [other, b] of strips.slice(0, bend).entries()) {
      for (const one of [...a.left, ...a.right]) {
        for (const two of [...b.left, ...b.right]) {
          const at = crossingOf(nodes, one, two);
          if (at) return { kind: "crossing", bend: other, other: bend, at };
        }
      }
    }
  }
  return undefined;
}

/** Less than this two strips may lie in each other: corners are snapped to their lines. */
const TOUCH_MM = 0.01;

/** The first bend of which a line lies inside another's strip. */
function within({ nodes }: Net, strips: readonly BendStrips[], { bends }: Pattern): PatternFault | undefined {
  for (const [bend, { left, right, middles }] of strips.entries()) {
    const lines = [...left, ...right].map((chord): Point => {
      const [a, b] = [nodes[chord.from]!, nodes[chord.to]!];
      return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    });
    for (const at of [...middles, ...lines]) {
      const other = bends.findIndex((one, i) => i !== bend && inStrip(one, at));
      if (other >= 0)
        return { kind: "crossing", bend: Math.min(bend, other), other: Math.max(bend, other), at };
    }
  }
  return undefined;
}

function inStrip(bend: LineBend, { x, y }: Point): boolean {
  const { lengthMm, ux, uy } = wayOf(bend);
  const [dx, dy] = [x - bend.from.x, y - bend.from.y];
  const along = dx * ux + dy * uy;
  const acrossMm = Math.abs(dy * ux - dx * uy);
  return along > TOUCH_MM && along < lengthMm - TOUCH_MM && acrossMm < bend.allowanceMm / 2 - TOUCH_MM;
}

function crossingOf(nodes: readonly Point[], one: Chord, two: Chord): Point | undefined {
  if ([two.from, two.to].includes(one.from) || [two.from, two.to].includes(one.to)) return undefined;
  const [a, b, c, d] = [nodes[one.from]!, nodes[one.to]!, nodes[two.from]!, nodes[two.to]!];
  const side = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  const [sc, sd] = [side(a, b, c), side(a, b, d)];
  if (sc > 0 === sd > 0 || side(c, d, a) > 0 === side(c, d, b) > 0) return undefined;
  const t = sc / (sc - sd);
  return { x: c.x + t * (d.x - c.x), y: c.y + t * (d.y - c.y) };
}

/** The net cut along all tangent lines. */
class Cut {
  readonly faces: readonly Region[];
  private readonly cells: Cells;
  /** The bend that each cell is a strip of; −1 for a face. */
  private readonly bendOf: readonly number[];
  /** The face that each cell is; −1 for a strip. */
  private readonly faceOf: readonly number[];

  constructor(
    net: Net,
    private readonly strips: readonly BendStrips[],
  ) {
    this.cells = net.cells(strips.flatMap(({ left, right }) => [...left, ...right]));
    const { cells } = this.cells;
    this.bendOf = cells.map(({ region }) =>
      strips.findIndex(({ middles }) => middles.some((middle) => regionHolds(region, middle))),
    );
    let faces = 0;
    this.faceOf = cells.map((_, i) => (this.bendOf[i]! < 0 ? faces++ : -1));
    this.faces = cells.filter((_, i) => this.bendOf[i]! < 0).map(({ region }) => cleaned(region));
  }

  /** A place where a strip borders on another strip, or on no sheet where it should. */
  nothingBetween(): PatternFault | undefined {
    for (const [bend, { left, right, middles }] of this.strips.entries()) {
      for (const chord of [...left, ...right]) {
        const beyond = this.beside(chord).filter((cell) => this.bendOf[cell]! < 0);
        if (beyond.length === 0) return { kind: "nothingLeft", bend, at: middles[0]! };
      }
    }
    return undefined;
  }

  hinges(): Hinge[] {
    return this.strips.flatMap(({ left, right }, bend) => {
      const groups: { strips: Set<number>; left: Set<number>; right: Set<number> }[] = [];
      for (const [chords, side] of [
        [left, "left"],
        [right, "right"],
      ] as const) {
        for (const chord of chords) {
          const cells = this.beside(chord);
          const strip = cells.find((cell) => this.bendOf[cell] === bend)!;
          const face = this.faceOf[cells.find((cell) => this.bendOf[cell]! < 0)!]!;
          const one = { strips: new Set([strip]), left: new Set<number>(), right: new Set<number>() };
          one[side].add(face);
          const same = groups.filter((group) => group.strips.has(strip) || group[side].has(face));
          for (const group of same) {
            for (const key of ["strips", "left", "right"] as const)
              for (const value of group[key]) one[key].add(value);
            groups.splice(groups.indexOf(group), 1);
          }
          groups.push(one);
        }
      }
      return groups.map((group) => ({
        bend,
        strips: [...group.strips].map((cell) => cleaned(this.cells.cells[cell]!.region)),
        left: [...group.left],
        right: [...group.right],
      }));
    });
  }

  private beside({ from, to }: Chord): number[] {
    return [this.cells.leftOf(from, to), this.cells.leftOf(to, from)].filter(
      (cell): cell is number => cell !== undefined,
    );
  }
}

function cleaned({ outer, holes }: Region): Region {
  return { outer: withoutInLine(outer), holes: holes.map(withoutInLine) };
}

/** The bends of a ring of faces, or undefined where the part is a tree. */
function ringIn({ faces, hinges }: Pick<SheetPart, "faces" | "hinges">): number[] | undefined {
  const cameBy = new Map<number, { readonly hinge: Hinge; readonly face: number } | undefined>([
    [0, undefined],
  ]);
  const made = new Set<Hinge>();
  const waiting = [0];
  const wayBack = (from: number) => {
    const bends: number[] = [];
    for (let at = cameBy.get(from); at; at = cameBy.get(at.face)) bends.push(at.hinge.bend);
    return bends;
  };
  for (let face = waiting.shift(); face !== undefined; face = waiting.shift()) {
    for (const hinge of hinges) {
      if (made.has(hinge) || !(hinge.left.includes(face) || hinge.right.includes(face))) continue;
      made.add(hinge);
      for (const next of [...hinge.left, ...hinge.right]) {
        if (next === face) continue;
        if (cameBy.has(next)) {
          const [a, b] = [wayBack(face), wayBack(next)];
          const once = [...a, ...b].filter((bend) => a.includes(bend) !== b.includes(bend));
          return [...new Set([hinge.bend, ...once])].sort((x, y) => x - y);
        }
        cameBy.set(next, { hinge, face });
        waiting.push(next);
      }
      // A face on both sides of one bend: the sheet runs round the end of its own bend.
      const both = hinge.left.find((one) => hinge.right.includes(one));
      if (both !== undefined) return [hinge.bend];
    }
  }
  return faces.length > cameBy.size ? [...new Set(hinges.map(({ bend }) => bend))] : undefined;
}

/** Number of the face that holds a point of the blank; undefined outside all faces. */
export function faceAt(part: SheetPart, point: Point): number | undefined {
  const face = part.faces.findIndex((region) => regionHolds(region, point));
  return face < 0 ? undefined : face;
}

/** The largest face, the first of equals: how the finished part is measured. */
export function largestFace({ faces }: SheetPart): number {
  const areas = faces.map(regionArea);
  const most = Math.max(...areas);
  return areas.findIndex((area) => area > most - 1e-6 * most);
}

/** The bend of a hinge. */
export function bendOf(part: SheetPart, hinge: Hinge): LineBend {
  return part.pattern.bends[hinge.bend]!;
}
