/**
 * What is cut of a blank, as marks: the outline with its cut-outs and relief holes, a cross to drill each hole by, and
 * how far edges and holes stand from the blank's start. Lines of the bends run only where there is sheet.
 */
import { type CutBlank, cutBlank } from "../blank/cutBlank.ts";
import type { Span } from "../blank/cutOut.ts";
import { SheetCells } from "../blank/sheetCells.ts";
import type { Layer, Mark } from "../drawing/model.ts";
import { rectangle } from "../drawing/polygon.ts";
import { spread } from "../drawing/spread.ts";
import { finishedPart, type Job } from "../jobFile/job.ts";
import type { Mm } from "../units/quantity.ts";

const TEXT_MM: Mm = 3;
const LABEL_GAP_MM: Mm = 4.2;
const LEADER_MM: Mm = 8;

/** Places nearer than this share a label. */
const SAME_PLACE_MM: Mm = 0.01;

export interface BlankCuts {
  /** The outline to be cut, and a cross on the centre of each hole. */
  readonly marks: readonly Mark[];
  readonly blank: CutBlank | undefined;
  /** Where along a line across the blank's length there is sheet. */
  readonly runsAt: (x: Mm) => readonly Span[];
}

/** The cuts of a job's blank, so wide and so long. */
export function blankCuts(job: Job, widthMm: Mm, lengthMm: Mm): BlankCuts {
  const { cutOuts = [] } = job;
  const part = finishedPart(job);
  if (cutOuts.length === 0 || part.lengthMm === undefined) {
    const outline = rectangle({ x: 0, y: 0 }, { x: widthMm, y: lengthMm });
    return {
      marks: [{ kind: "outline", layer: "cut", outline, caption: "blank" }],
      blank: undefined,
      runsAt: () => [[0, lengthMm]],
    };
  }
  const blank = cutBlank(part, cutOuts);
  const cells = new SheetCells({ widthMm, lengthMm }, cutOuts);
  return {
    marks: [
      { kind: "outline", layer: "cut", outline: { edges: blank.edges }, caption: "blank" },
      ...blank.holes.map(({ center }): Mark => ({ kind: "cross", layer: "note", at: center })),
    ],
    blank,
    runsAt: (x) => cells.runsAt(x),
  };
}

/** A line of the blank along its bends, where there is sheet. */
export function uprightRuns(layer: Layer, x: Mm, runs: readonly Span[]): readonly Mark[] {
  return runs.map(([from, to]) => ({ kind: "line", layer, from: { x, y: from }, to: { x, y: to } }));
}

/** The longest of some runs, for words to stand in. @example longestRun([[0, 1], [4, 9]]) // [4, 9] */
export function longestRun(runs: readonly Span[]): Span {
  return runs.reduce<Span>((most, run) => (run[1] - run[0] > most[1] - most[0] ? run : most), [0, 0]);
}

/** What stands at a place, to be named there. */
interface Named {
  readonly at: Mm;
  readonly words: string;
}

/** Places in their order, each once, with all that stands there. */
export function placesNamed(all: readonly Named[]): readonly Named[] {
  const found: Named[] = [];
  for (const { at, words } of all.toSorted((a, b) => a.at - b.at)) {
    const last = found.at(-1);
    if (last === undefined || at - last.at >= SAME_PLACE_MM) found.push({ at, words });
    else if (!last.words.split(", ").includes(words)) {
      found[found.length - 1] = { at: last.at, words: `${last.words}, ${words}` };
    }
  }
  return found;
}

/** Where edges of cut-outs and holes stand along the blank, at its far edge, each place once with what it is. */
export function alongLabels(
  { cutOuts = [] }: Job,
  { blank }: BlankCuts,
  widthMm: Mm,
  say: (lengthMm: Mm) => string,
): { readonly marks: readonly Mark[]; readonly rightMm: Mm } {
  if (blank === undefined) return { marks: [], rightMm: widthMm };
  const sorted = placesNamed([
    ...blank.holes.map(({ center, diameterMm }) => ({ at: center.y, words: `hole ${say(diameterMm)} wide` })),
    ...cutOuts.flatMap(({ alongMm }, i) => alongMm.map((at) => ({ at, words: `cut-out ${i + 1}` }))),
  ]);
  const ys = spread(
    sorted.map(({ at }) => at),
    LABEL_GAP_MM,
  );
  const labels = sorted.map(({ at, words }, i) => ({ at, y: ys[i] ?? at, words: `${say(at)}  ${words}` }));
  const knee = widthMm + LEADER_MM;
  const marks = labels.flatMap(({ at, y, words }): Mark[] => [
    { kind: "line", layer: "dimension", from: { x: widthMm + 1, y: at }, to: { x: knee, y } },
    {
      kind: "text",
      layer: "dimension",
      at: { x: knee + 1, y: y - TEXT_MM * 0.35 },
      words,
      heightMm: TEXT_MM,
      anchor: "start",
    },
  ]);
  const longest = Math.max(...labels.map(({ words }) => words.length));
  return { marks, rightMm: knee + longest * TEXT_MM * 0.58 };
}
