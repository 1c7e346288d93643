/**
 * The blank as a strip across a page, marked face up: widths to scale, length not, lines as they are scribed, and
 * which bend goes when. The figures stand in the table beneath (blankTable.ts), so that the strip stays readable.
 */
import type { Span } from "../blank/cutOut.ts";
import { SheetCells } from "../blank/sheetCells.ts";
import type { Block } from "../drawing/block.ts";
import type { Layer, Mark } from "../drawing/model.ts";
import { spread } from "../drawing/spread.ts";
import type { Answer, BlankBendAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { sightLines } from "../jobFile/sightLine.ts";
import type { Point } from "../plane/point.ts";
import { type Deg, type Mm, toRad } from "../units/quantity.ts";
import { placeWords } from "../words/lengthWords.ts";
import { longestRun, uprightRuns } from "./blankCuts.ts";
import { grainArrow } from "./grainArrow.ts";

const STRIP_HIGH_MM: Mm = 26;
const ABOVE_MM: Mm = 8;
const BELOW_MM: Mm = 13;
const WORDS_MM: Mm = 3;
/** Room at each end of the strip for the figures of its length and the overhang of labels. */
const SIDE_MM: Mm = 12;
/** So far apart that "12 down" does not run into its neighbour, or that "12" does not. */
const LABEL_APART_MM: Mm = 14;
const NUMBER_APART_MM: Mm = 6;
const MOST_ENLARGED = 3;
/** Half the grain arrow where it lies level, and how far it may reach up and down. */
const GRAIN_LONG_MM: Mm = 12;
const GRAIN_HIGH_MM: Mm = 3;
/** A narrower strip has no room beneath for its words; they stand beside it. */
const WORDS_BENEATH_FROM_MM: Mm = 100;

/** The strip as a block of a page with `widthMm` between the margins. */
export function blankStrip(job: Job, answer: Answer, widthMm: Mm, highMm: Mm = STRIP_HIGH_MM): Block {
  const { developedWidth, bends } = answer.blank;
  const scale = Math.min((widthMm - 2 * SIDE_MM) / developedWidth, MOST_ENLARGED);
  return {
    heightMm: ABOVE_MM + highMm + BELOW_MM,
    put: (leftMm, topMm) => {
      const left = leftMm + (widthMm - developedWidth * scale) / 2;
      const top = topMm - ABOVE_MM;
      const bottom = top - highMm;
      const x = (placeMm: Mm) => left + placeMm * scale;
      const runs = runsOnStrip(job, developedWidth, bottom, highMm);
      const upright = (layer: Layer, placeMm: Mm) => uprightRuns(layer, x(placeMm), runs(placeMm));
      const right = x(developedWidth);
      const rim = [
        { x: left, y: bottom },
        { x: right, y: bottom },
        { x: right, y: top },
        { x: left, y: top },
      ];
      const marks: Mark[] = [
        ...(job.cutOuts?.length
          ? cutLines(job, developedWidth, { x, y: (share) => bottom + share * highMm })
          : rim.map((from, i): Mark => ({ kind: "line", layer: "cut", from, to: rim[(i + 1) % 4] ?? from }))),
        ...bends.flatMap((bend) => bend.tangents.flatMap((placeMm) => upright("bendTangent", placeMm))),
        ...sightLines(answer).flatMap(({ at }) => upright("sightLine", at)),
        ...bendLabels(job, answer, x, top, widthMm),
        ...flatLabels(answer, x, runs),
        width(job, answer, left, right, bottom),
        ...grainMarks((left + right) / 2, bottom - 4, job.grainDeg ?? 90),
        ...endWords(job, left, right, bottom, highMm),
      ];
      return { marks };
    },
  };
}

/** Number and turn over each bend; the number alone where there are so many that the turns would not fit. */
function bendLabels(job: Job, answer: Answer, x: (placeMm: Mm) => Mm, top: Mm, widthMm: Mm): readonly Mark[] {
  const { bends } = answer.blank;
  const feet = bends.map((bend) => x(middleOf(bend)));
  const full = bends.length * LABEL_APART_MM <= widthMm;
  const places = spread(feet, full ? LABEL_APART_MM : NUMBER_APART_MM);
  return bends.flatMap((bend, i): Mark[] => {
    const at = places[i] ?? 0;
    const foot = feet[i] ?? 0;
    return [
      { kind: "line", layer: "dimension", from: { x: foot, y: top + 0.6 }, to: { x: at, y: top + 3.2 } },
      text(at, top + 4, full ? `${bend.bend} ${job.part.bends[i]?.turn ?? "up"}` : `${bend.bend}`, "middle"),
    ];
  });
}

/** Flats by number, where there is room for it. */
function flatLabels(
  answer: Answer,
  x: (placeMm: Mm) => Mm,
  runs: (placeMm: Mm) => readonly Span[],
): readonly Mark[] {
  const { developedWidth, bends } = answer.blank;
  const starts = [0, ...bends.map((bend) => bend.tangents[1])];
  const ends = [...bends.map((bend) => bend.tangents[0]), developedWidth];
  return starts.flatMap((start, i): Mark[] => {
    const end = ends[i] ?? start;
    const room = x(end) - x(start);
    if (room < 7) return [];
    const [from, to] = longestRun(runs((start + end) / 2));
    const y = (from + to) / 2;
    return [text(x((start + end) / 2), y, room > 14 ? `flat ${i + 1}` : `${i + 1}`, "middle")];
  });
}

function width(job: Job, answer: Answer, left: Mm, right: Mm, bottom: Mm): Mark {
  return {
    kind: "dimension",
    layer: "dimension",
    from: { x: left, y: bottom },
    to: { x: right, y: bottom },
    words: placeWords(answer.blank.developedWidth, job.units),
    offsetMm: -10,
  };
}

/** Which edge to measure from, and how long the blank is along the bends. */
function endWords(job: Job, left: Mm, right: Mm, bottom: Mm, highMm: Mm): readonly Mark[] {
  const datum = "edge to measure from";
  if (right - left >= WORDS_BENEATH_FROM_MM) {
    const y = bottom - 4;
    return [text(left + 1.5, y, datum, "start"), text(right - 1.5, y, lengthWords(job), "end")];
  }
  const y = bottom + highMm / 2;
  return [text(left - 2, y, datum, "end"), text(right + 2, y, lengthWords(job), "start")];
}

function lengthWords({ part, units }: Job): string {
  return part.lengthMm === undefined ? "length as wanted" : `${placeWords(part.lengthMm, units)} long`;
}

/** Where on the strip there is sheet along a line at a place of the blank, its length drawn to fit. */
function runsOnStrip(
  { part: { lengthMm }, cutOuts = [] }: Job,
  widthMm: Mm,
  bottom: Mm,
  highMm: Mm,
): (placeMm: Mm) => readonly Span[] {
  if (cutOuts.length === 0 || lengthMm === undefined) return () => [[bottom, bottom + highMm]];
  const cells = new SheetCells({ widthMm, lengthMm }, cutOuts);
  const onto = (y: Mm) => bottom + (y / lengthMm) * highMm;
  return (placeMm) => cells.runsAt(placeMm).map(([from, to]) => [onto(from), onto(to)]);
}

/** The blank's cuts on the strip, its length drawn to fit. */
function cutLines(
  { part, cutOuts = [] }: Job,
  widthMm: Mm,
  onto: { readonly x: (placeMm: Mm) => Mm; readonly y: (share: number) => Mm },
): readonly Mark[] {
  const { lengthMm } = part;
  if (lengthMm === undefined) return [];
  const at = ({ x, y }: Point): Point => ({ x: onto.x(x), y: onto.y(y / lengthMm) });
  return new SheetCells({ widthMm, lengthMm }, cutOuts)
    .edges()
    .map(({ from, to }) => ({ kind: "line", layer: "cut", from: at(from), to: at(to) }));
}

/** The way the grain of the sheet runs, or should: across the bends where the job doesn't say. */
function grainMarks(middle: Mm, y: Mm, grainDeg: Deg): readonly Mark[] {
  // Under the strip there is room for a short arrow upright, and for a long one level.
  const half = Math.min(GRAIN_LONG_MM, GRAIN_HIGH_MM / Math.abs(Math.cos(toRad(grainDeg))));
  const wide = half * Math.sin(toRad(grainDeg));
  return [
    ...grainArrow({ x: middle, y }, grainDeg, half),
    text(middle + wide + 2, y - 1, "grain", "start", "grain"),
  ];
}

function middleOf({ tangents }: BlankBendAnswer): Mm {
  return (tangents[0] + tangents[1]) / 2;
}

function text(x: Mm, y: Mm, words: string, anchor: "start" | "middle" | "end", layer: Layer = "note"): Mark {
  return { kind: "text", layer, at: { x, y }, words, heightMm: WORDS_MM, anchor };
}
