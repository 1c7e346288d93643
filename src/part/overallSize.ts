/**
 * Overall size of a finished part, as callipers or a rule read it over everything: the section's extent along one of
 * its flats, or square to it. Also how far doubts about the flats' lengths can move it. Exact to rounding.
 */
import { type Mm, type Rad, toRad } from "../units/quantity.ts";
import type { Part } from "./part.ts";

/** Which way is measured: along a flat (from 0), or square to it, through the sheet. */
export interface Direction {
  readonly flat: number;
  readonly square?: boolean;
}

export interface SizeRange {
  readonly leastMm: Mm;
  readonly nominalMm: Mm;
  readonly mostMm: Mm;
}

/** What of a part its size depends on. */
export type Section = Pick<Part, "flatsMm" | "thicknessMm"> & {
  readonly bends: readonly Pick<Part["bends"][number], "angleDeg" | "turn" | "insideRadiusMm">[];
};

/** A place on the sheet's skin: how far out it lies the measured way, and how many flats lead to it. */
interface Place {
  readonly reachMm: Mm;
  readonly flats: number;
}

/**
 * Extent of the section, and the range it can have when flat i is off by up to `doubtsMm[i]` either way. The most is
 * reached by some mix of the doubts; no mix goes below the least.
 * @throws RangeError when the part has no such flat
 * @example overallSize({ flatsMm: [10], thicknessMm: 0.8, bends: [] }, { flat: 0 }, [0.25]) // { leastMm: 9.75, nominalMm: 10, mostMm: 10.25 }
 */
export function overallSize(part: Section, direction: Direction, doubtsMm: readonly Mm[] = []): SizeRange {
  const headings = headingsOf(part);
  const along = headings[direction.flat];
  if (along === undefined) throw new RangeError(`the part has no flat ${direction.flat + 1}`);
  const way = along + (direction.square ? Math.PI / 2 : 0);
  const places = placesOn(part, headings, way);
  // How much of a doubt about each flat goes the measured way, summed from flat 1 on.
  const sums = [0];
  headings.forEach((heading, i) => {
    sums.push((sums[i] ?? 0) + Math.abs(Math.cos(heading - way)) * (doubtsMm[i] ?? 0));
  });
  let [least, nominal, most]: [Mm, Mm, Mm] = [0, 0, 0];
  for (const a of places) {
    for (const b of places) {
      const apart = a.reachMm - b.reachMm;
      const doubt = Math.abs((sums[a.flats] ?? 0) - (sums[b.flats] ?? 0));
      least = Math.max(least, apart - doubt);
      nominal = Math.max(nominal, apart);
      most = Math.max(most, apart + doubt);
    }
  }
  return { leastMm: least, nominalMm: nominal, mostMm: most };
}

/** Direction of each flat, counter-clockwise from flat 1. */
function headingsOf({ bends }: Section): readonly Rad[] {
  const headings: Rad[] = [0];
  for (const { angleDeg, turn } of bends) {
    headings.push((headings.at(-1) ?? 0) + (turn === "up" ? 1 : -1) * toRad(angleDeg));
  }
  return headings;
}

/** Every place that can be outermost: both faces at each end of each flat, and where a bend's arc faces the way. */
function placesOn(
  { flatsMm, thicknessMm, bends }: Section,
  headings: readonly Rad[],
  way: Rad,
): readonly Place[] {
  const places: Place[] = [];
  let x: Mm = 0;
  let y: Mm = 0;
  const add = (px: Mm, py: Mm, flats: number) => {
    places.push({ reachMm: px * Math.cos(way) + py * Math.sin(way), flats });
  };
  // The walk keeps to the lower face; the upper one is a thickness to the left of the heading.
  const addFaces = (heading: Rad, flats: number) => {
    add(x, y, flats);
    add(x - thicknessMm * Math.sin(heading), y + thicknessMm * Math.cos(heading), flats);
  };
  addFaces(0, 0);
  headings.forEach((heading, i) => {
    x += (flatsMm[i] ?? 0) * Math.cos(heading);
    y += (flatsMm[i] ?? 0) * Math.sin(heading);
    addFaces(heading, i + 1);
    const bend = bends[i];
    const next = headings[i + 1];
    if (bend === undefined || next === undefined) return;
    const up = bend.turn === "up" ? 1 : -1;
    // Seen from the arc's centre the lower face lies outside in a bend up, inside in a bend down.
    const lower = up > 0 ? bend.insideRadiusMm + thicknessMm : bend.insideRadiusMm;
    const outer = bend.insideRadiusMm + thicknessMm;
    const center = { x: x - up * lower * Math.sin(heading), y: y + up * lower * Math.cos(heading) };
    for (const facing of [way, way + Math.PI]) {
      if (facesWithin(facing, heading, next, up)) {
        add(center.x + outer * Math.cos(facing), center.y + outer * Math.sin(facing), i + 1);
      }
    }
    x = center.x + up * lower * Math.sin(next);
    y = center.y - up * lower * Math.cos(next);
    addFaces(next, i + 1);
  });
  return places;
}

/** Whether the outside of a bend, between its two tangents, faces a direction. */
function facesWithin(facing: Rad, from: Rad, to: Rad, up: 1 | -1): boolean {
  const start = from - (up * Math.PI) / 2;
  const turned = up * (facing - start);
  const full = 2 * Math.PI;
  const within = ((turned % full) + full) % full;
  return within <= up * (to - from);
}
