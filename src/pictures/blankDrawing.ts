/**
 * The blank at true size, marked face up: cut outline, bend tangent lines, sight and bend lines, and how far each
 * stands from one datum edge, the free end of flat 1. Running figures, so that no rounding adds up.
 */

import type { Drawing, Layer, Mark } from "../drawing/model.ts";
import { spread } from "../drawing/spread.ts";
import type { Answer, BlankBendAnswer } from "../jobFile/answer.ts";
import { finishedPart, type Job } from "../jobFile/job.ts";
import { sightLines } from "../jobFile/sightLine.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "../words/angleWords.ts";
import { placeWords } from "../words/lengthWords.ts";
import { alongLabels, type BlankCuts, blankCuts, longestRun, placesNamed, uprightRuns } from "./blankCuts.ts";
import { grainArrow } from "./grainArrow.ts";

const TEXT_MM = 3;
const LABEL_GAP_MM = 4.2;
const LEADER_MM = 8;
/** The grain arrow reaches so far each way from its middle. */
const GRAIN_HALF_MM = 8;
/** Rough width of a letter over its height, to make room for labels. */
const LETTER_WIDTH = 0.58;
const UPRIGHT = Math.PI / 2;

interface Label {
  readonly at: Mm;
  readonly words: string;
}

function middleOf(bend: BlankBendAnswer): Mm {
  return (bend.tangents[0] + bend.tangents[1]) / 2;
}

/** Labels that stand on a side of the blank, each with its leader to the line that it names. */
function labelMarks(labels: readonly Label[], foot: Mm, outward: 1 | -1): { marks: Mark[]; xs: number[] } {
  const sorted = labels.toSorted((a, b) => a.at - b.at);
  const xs = spread(
    sorted.map(({ at }) => at),
    LABEL_GAP_MM,
  );
  const marks = sorted.flatMap(({ at, words }, i): Mark[] => {
    const x = xs[i] as number;
    const knee = { x, y: foot + outward * LEADER_MM };
    return [
      { kind: "line", layer: "dimension", from: { x: at, y: foot + outward }, to: knee },
      {
        kind: "text",
        layer: "dimension",
        at: { x: x + TEXT_MM * 0.35, y: knee.y + outward },
        words,
        heightMm: TEXT_MM,
        anchor: outward > 0 ? "start" : "end",
        angleRad: UPRIGHT,
      },
    ];
  });
  return { marks, xs };
}

function flatNames(bends: readonly BlankBendAnswer[], widthMm: Mm, { runsAt }: BlankCuts): Mark[] {
  const starts = [0, ...bends.map((bend) => bend.tangents[1])];
  const ends = [...bends.map((bend) => bend.tangents[0]), widthMm];
  return starts.flatMap((start, i): Mark[] => {
    const end = ends[i] as number;
    if (end - start < TEXT_MM * 1.3) return [];
    const middle = (start + end) / 2;
    const [from, to] = longestRun(runsAt(middle));
    const at = { x: middle + TEXT_MM * 0.35, y: (from + to) / 2 };
    const words = i === 0 ? "flat 1, marked face" : `flat ${i + 1}`;
    return [
      { kind: "text", layer: "grain", at, words, heightMm: TEXT_MM, anchor: "middle", angleRad: UPRIGHT },
    ];
  });
}

function longest(labels: readonly Label[]): Mm {
  return Math.max(0, ...labels.map(({ words }) => words.length)) * TEXT_MM * LETTER_WIDTH + LEADER_MM + 3;
}

/**
 * Drawing of a job's blank. Where the job gives no length along the bends a strip stands for it, and the words say so.
 */
export function drawBlank(job: Job, answer: Answer): Drawing {
  const { developedWidth: widthMm, bends } = answer.blank;
  const lengthMm = job.part.lengthMm ?? Math.max(40, widthMm * 0.4);
  const datum = { at: 0, words: "0, measure from this edge" };
  const sights = sightLines(answer);
  const lines = bends.flatMap((bend, i): Label[] => [
    { at: bend.tangents[0], words: `${placeWords(bend.tangents[0], job.units)}  tangent` },
    ...sights.slice(i, i + 1).map(({ at }) => ({ at, words: `${placeWords(at, job.units)}  sight` })),
    { at: bend.tangents[1], words: `${placeWords(bend.tangents[1], job.units)}  tangent` },
  ]);
  const above = [datum, ...lines];
  const named: Label[] = bends.map((bend, i) => {
    const { turn = "up", angleDeg = 0 } = finishedPart(job).bends[i] ?? {};
    return { at: middleOf(bend), words: `bend ${bend.bend}, ${turn} ${angleWords(angleDeg)}` };
  });
  const cutAt = placesNamed(
    (job.cutOuts ?? []).flatMap(({ acrossMm }, i) =>
      acrossMm.filter((at) => at > 0 && at < widthMm).map((at) => ({ at, words: `cut-out ${i + 1}` })),
    ),
  ).map(({ at, words }) => ({ at, words: `${placeWords(at, job.units)}  ${words}` }));
  const below = [...named, ...cutAt];
  const top = labelMarks(above, lengthMm, 1);
  const bottom = labelMarks(below, 0, -1);

  const cuts = blankCuts(job, widthMm, lengthMm);
  const upright = (layer: Layer, x: Mm) => uprightRuns(layer, x, cuts.runsAt(x));
  const marks: Mark[] = [...cuts.marks];
  bends.forEach((bend, i) => {
    const turned: Layer = job.part.bends[i]?.turn === "down" ? "bendDown" : "bendUp";
    marks.push(
      ...upright("bendTangent", bend.tangents[0]),
      ...upright("bendTangent", bend.tangents[1]),
      ...upright(turned, middleOf(bend)),
    );
  });
  for (const { at } of sights) marks.push(...upright("sightLine", at));
  const side = alongLabels(job, cuts, widthMm, (lengthMm) => placeWords(lengthMm, job.units));
  marks.push(...flatNames(bends, widthMm, cuts), ...top.marks, ...bottom.marks, ...side.marks);

  const underLabels = longest(below);
  const widthWords = placeWords(widthMm, job.units);
  marks.push({
    kind: "dimension",
    layer: "dimension",
    from: { x: 0, y: 0 },
    to: { x: widthMm, y: 0 },
    words: widthWords,
    offsetMm: -(underLabels + 6),
  });
  const lengthText = job.part.lengthMm === undefined ? "length as wanted" : placeWords(lengthMm, job.units);
  marks.push({
    kind: "dimension",
    layer: "dimension",
    from: { x: 0, y: 0 },
    to: { x: 0, y: lengthMm },
    words: lengthText,
    offsetMm: 8,
  });
  const footMm = underLabels + 14;
  const grain = grainMarks(job, widthMm / 2, -footMm);
  marks.push(...grain);
  const xs = [0, widthMm, side.rightMm, ...top.xs, ...bottom.xs];
  const min = { x: Math.min(...xs) - 20, y: -(footMm + (grain.length > 0 ? 2 * GRAIN_HALF_MM + 4 : 0)) };
  // A figure too wide for its dimension stands beyond the second arrow.
  const figureMm = widthWords.length * TEXT_MM * LETTER_WIDTH;
  const right = widthMm < figureMm + 6 ? widthMm + figureMm + 6 : widthMm;
  const max = { x: Math.max(right, ...xs) + 12, y: lengthMm + longest(above) };
  const count = bends.length === 1 ? "one bend" : `${bends.length} bends`;
  const cut = cutSentence(job, cuts);
  const sentence = `Blank of ${job.part.name}: ${widthWords} wide with ${count}${cut}, all lines measured from the free end of flat 1.`;
  return { sentence, window: { min, max }, marks };
}

/** The arrow along the grain under the blank, where the job says how the grain runs. */
function grainMarks({ grainDeg }: Job, x: Mm, topMm: Mm): readonly Mark[] {
  if (grainDeg === undefined) return [];
  const y = topMm - GRAIN_HALF_MM;
  return [
    ...grainArrow({ x, y }, grainDeg, GRAIN_HALF_MM, "note"),
    {
      kind: "text",
      layer: "note",
      at: { x: x + GRAIN_HALF_MM + 2, y: y - TEXT_MM * 0.35 },
      words: "grain",
      heightMm: TEXT_MM,
      anchor: "start",
    },
  ];
}

function cutSentence({ cutOuts = [] }: Job, { blank }: BlankCuts): string {
  if (blank === undefined) return "";
  const cut = cutOuts.length === 1 ? "one cut-out" : `${cutOuts.length} cut-outs`;
  const holes = blank.holes.length === 1 ? "one relief hole" : `${blank.holes.length} relief holes`;
  return `, ${cut} and ${holes}`;
}
