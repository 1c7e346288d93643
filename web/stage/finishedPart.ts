/**
 * The finished part as a dimensioned drawing of a fixed size in points: its middle line, its flats with their dimensions, and
 * its bends with their numbers; angles other than square are written, as drawings have it (ISO 129-1, from memory).
 */
import { shortNumber } from "../../src/drawing/pathData.ts";
import { finishedPart, type Job } from "../../src/jobFile/job.ts";
import type { Point } from "../../src/plane/point.ts";
import { toRad } from "../../src/units/quantity.ts";
import { angleWords } from "../../src/words/angleWords.ts";
import type { AskedLabel, AskedLength, AskedNote, Placed } from "../drafting/asked.ts";
import type { Piece } from "../drafting/boxes.ts";
import { placedDimensions } from "../drafting/dimensions.ts";
import { fitted, onCanvas } from "./camera.ts";
import type { MeasuredFlat } from "./measured.ts";

export interface PartDrawing {
  /** SVG path of the sheet's middle line, and how thick the sheet is. */
  readonly path: string;
  readonly thick: number;
  readonly placed: readonly Placed[];
  /** What stands in each label beside its number. */
  readonly words: Readonly<Record<string, string>>;
}

/** Left free all round for the dimensions. */
const AIR = 56;
const AIR_OF_NUMBERS = 34;

/** The drawing in `width` by `height` points. */
export function drawFinishedPart(
  job: Job,
  measured: readonly MeasuredFlat[],
  {
    width,
    height,
    widthOf,
    figures,
  }: {
    readonly width: number;
    readonly height: number;
    readonly widthOf: (words: string) => number;
    /** Without figures flats and bends have their numbers only, on no dimension lines. */
    readonly figures: boolean;
  },
): PartDrawing {
  const { flatsMm, bends, thicknessMm } = finishedPart(job);
  let [at, heading]: [Point, number] = [{ x: 0, y: 0 }, 0];
  const flats: { readonly from: Point; readonly to: Point; readonly heading: number }[] = [];
  const arcs: { readonly radiusMm: number; readonly up: 1 | -1; readonly turnRad: number }[] = [];
  flatsMm.forEach((flatMm, i) => {
    const to = { x: at.x + flatMm * Math.cos(heading), y: at.y + flatMm * Math.sin(heading) };
    flats.push({ from: at, to, heading });
    const bend = bends[i];
    at = to;
    if (bend === undefined) return;
    const up = bend.turn === "up" ? 1 : -1;
    const radiusMm = bend.insideRadiusMm + thicknessMm / 2;
    const turnRad = toRad(bend.angleDeg);
    const centre = {
      x: at.x - up * radiusMm * Math.sin(heading),
      y: at.y + up * radiusMm * Math.cos(heading),
    };
    heading += up * turnRad;
    at = { x: centre.x + up * radiusMm * Math.sin(heading), y: centre.y - up * radiusMm * Math.cos(heading) };
    arcs.push({ radiusMm, up, turnRad });
  });
  const ends = flats.flatMap(({ from, to }) => [from, to]);
  const [xs, ys] = [ends.map((p) => p.x), ends.map((p) => p.y)];
  const window = {
    min: { x: Math.min(...xs), y: Math.min(...ys) },
    max: { x: Math.max(...xs), y: Math.max(...ys) },
  };
  const camera = fitted(window, width, height, figures ? AIR : AIR_OF_NUMBERS);
  const drawn = flats.map((flat) => ({ from: onCanvas(camera, flat.from), to: onCanvas(camera, flat.to) }));
  const thick = Math.max(2.5, thicknessMm * camera.scale);
  const put = ({ x, y }: Point) => `${shortNumber(x)} ${shortNumber(y)}`;
  const path = drawn
    .map(({ from, to }, i) => {
      const arc = arcs[i - 1];
      if (arc === undefined) return `M${put(from)}L${put(to)}`;
      const radius = shortNumber(arc.radiusMm * camera.scale);
      return `A${radius} ${radius} 0 ${arc.turnRad > Math.PI ? 1 : 0} ${arc.up > 0 ? 0 : 1} ${put(from)}L${put(to)}`;
    })
    .join("");
  const words: Record<string, string> = {};
  const lengths = drawn.map(({ from, to }, i): AskedLength | AskedNote => {
    const run = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    const along = { x: (to.x - from.x) / run, y: (to.y - from.y) / run };
    const { words: figure = "?", pastMm = [0, 0], edges = [] } = measured[i] ?? {};
    const face = (bend: number, edge: string | undefined): 1 | 0 | -1 => {
      const made = bends[bend];
      if (made === undefined || edge === "tangent" || edge === undefined) return 0;
      const outside = made.turn === "up" ? 1 : -1;
      return edge === "inside" ? (-outside as 1 | -1) : outside;
    };
    const past = (p: Point, mm: number): Point => ({
      x: p.x + along.x * mm * camera.scale,
      y: p.y + along.y * mm * camera.scale,
    });
    const key = `flat ${i}`;
    words[key] = figures ? figure : "";
    const number = widthOf(`${i + 1}`) + 8;
    if (!figures) {
      const side = face(i - 1, edges[0]) || face(i, edges[1]) || 1;
      return {
        kind: "note",
        key,
        at: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
        away: { x: -along.y * side, y: along.x * side },
        half: thick / 2,
        size: { halfWide: number / 2, halfHigh: 9 },
      };
    }
    return {
      kind: "length",
      key,
      from: past(from, -pastMm[0]),
      to: past(to, pastMm[1]),
      faces: [face(i - 1, edges[0]), face(i, edges[1])],
      half: thick / 2,
      size: { halfWide: (widthOf(`${i + 1}`) + widthOf(figure) + 18) / 2, halfHigh: 9 },
      small: { halfWide: number / 2, halfHigh: 9 },
      own: i,
    };
  });
  const joints: Piece[] = [];
  const notes = arcs.map((arc, i): AskedNote => {
    const [one, other] = [drawn[i]!, drawn[i + 1]!];
    joints.push([one.to, other.from]);
    const key = `bend ${i}`;
    const deg = (arc.turnRad * 180) / Math.PI;
    words[key] = !figures || bends[i]!.hem || Math.abs(deg - 90) < 0.05 ? "" : angleWords(deg);
    // Into the corner, where the dimension lines don't run; a hem has no room there.
    const side = bends[i]!.hem ? -arc.up : arc.up;
    const middle = flats[i]!.heading + (arc.up * arc.turnRad) / 2 + (side * Math.PI) / 2;
    const wide = widthOf(`${i + 1}`) + (words[key] === "" ? 0 : widthOf(words[key]) + 6) + 8;
    return {
      kind: "note",
      key,
      at: { x: (one.to.x + other.from.x) / 2, y: (one.to.y + other.from.y) / 2 },
      away: { x: Math.cos(middle), y: -Math.sin(middle) },
      half: thick / 2,
      size: { halfWide: Math.max(18, wide) / 2, halfHigh: 9 },
    };
  });
  // Where flats alone fill the small picture, the bends between them are told by the large one.
  const bendsToo = figures || arcs.length <= MOST_NUMBERED;
  const flatsFirst = lengths.toSorted((a, b) => span(a) - span(b));
  const asked: readonly AskedLabel[] = [...flatsFirst, ...(bendsToo ? notes : [])];
  const sheet = [...drawn.map(({ from, to }): Piece => [from, to]), ...joints];
  const placed = placedDimensions(asked, { width, height, sheet, half: thick / 2, taken: [], marks: [] });
  return { path, thick, placed, words };
}

/** A small picture has room for the numbers of so many bends beside those of the flats. */
const MOST_NUMBERED = 8;

const span = (one: AskedLength | AskedNote) =>
  one.kind === "note" ? 0 : Math.hypot(one.to.x - one.from.x, one.to.y - one.from.y);
