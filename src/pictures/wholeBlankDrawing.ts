/**
 * The blank of a whole part at true size: the line to cut, holes, relief holes to drill, and for each bend its middle line,
 * its tangent lines and words along it: number, turn, angle, and when you make it.
 */
import type { Drawing, Mark } from "../drawing/model.ts";
import type { WholeAnswer, WholeBlankBend } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { strokePlan } from "../pattern/strokePlan.ts";
import { filletedOutline } from "../plane/fillet.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "../words/angleWords.ts";
import { lengthWords, placeWords } from "../words/lengthWords.ts";

/** Words along a bend line, and the least to which they shrink on a short one. */
const WORDS_MM: Mm = 3;
const LEAST_WORDS_MM: Mm = 1.8;
/** Width of a letter over its height, about. */
const LETTER = 0.55;
const ROW_MM: Mm = 9;

type BlankFile = WholeAnswer["blank"];
type Corner = BlankFile["outline"][number];

/** Drawing of the blank, x to the right and y up as in the blank. */
export function drawWholeBlank(job: WholeJob, answer: WholeAnswer): Drawing {
  const { blank } = answer;
  const { units } = job;
  const xs = blank.outline.map(([x]) => x);
  const ys = blank.outline.map(([, y]) => y);
  const min = { x: Math.min(...xs), y: Math.min(...ys) };
  const max = { x: Math.max(...xs), y: Math.max(...ys) };
  const marks: Mark[] = [
    { kind: "outline", layer: "cut", outline: outlineOf(blank.outline), caption: "blank" },
    ...blank.holes.map((hole): Mark => ({ kind: "outline", layer: "cut", outline: outlineOf(hole) })),
    ...blank.reliefHoles.flatMap(({ x, y, diameter }): Mark[] => [
      {
        kind: "arc",
        layer: "cut",
        center: { x, y },
        radius: diameter / 2,
        startRad: 0,
        sweepRad: 2 * Math.PI,
      },
      { kind: "cross", layer: "note", at: { x, y } },
    ]),
    ...blank.bends.flatMap((bend) => bendMarks(job, answer, bend)),
    ...answer.order.flatMap((step) => sightMarks(job, answer, step)),
    ...overall(min, max, units),
  ];
  const size = `${placeWords(max.x - min.x, units)} by ${placeWords(max.y - min.y, units)}`;
  const [relief] = blank.reliefHoles;
  const holes = relief ? `, with relief holes ${lengthWords(relief.diameter, units)} across` : "";
  const room = 2 * ROW_MM;
  return {
    sentence: `Blank of ${job.part.name}, ${size}, marked face up${holes}.`,
    window: { min: { x: min.x - room, y: min.y - room }, max: { x: max.x + 6, y: max.y + 6 } },
    marks,
  };
}

function outlineOf(corners: readonly Corner[]): Outline {
  const made = filletedOutline(
    corners.map(([x, y, radius]) => ({ x, y, ...(radius !== undefined && { radius }) })),
  );
  if (!made.ok) throw new RangeError("the blank of a part that was read has a closed outline");
  return made.outline;
}

/** Lines of one bend and the words along it. */
function bendMarks({ part, finished }: WholeJob, { order }: WholeAnswer, bend: WholeBlankBend): Mark[] {
  const { turn, angleDeg } = (finished ?? part).sheet.pattern.bends[bend.bend - 1]!;
  const line = (layer: "bendUp" | "bendDown" | "bendTangent", [from, to]: WholeBlankBend["line"]): Mark => {
    return { kind: "line", layer, from: point(from), to: point(to) };
  };
  const stroke = order.findIndex(({ bends }) => bends.includes(bend.bend));
  const when = stroke < 0 ? "" : `, ${stroke + 1}.`;
  const words = `bend ${bend.bend}: ${turn} ${angleWords(angleDeg)}${when}`;
  return [
    line(turn === "up" ? "bendUp" : "bendDown", bend.line),
    ...bend.tangents.map((tangent) => line("bendTangent", tangent)),
    ...along(bend, words),
  ];
}

/** Where the nose stands over each bend of a stroke: one nose radius from the clamped tangent line into the bend. */
function sightMarks(
  { part, finished, brake }: WholeJob,
  { blank }: WholeAnswer,
  { bends, clampedFace }: WholeAnswer["order"][number],
): Mark[] {
  const stroke = { bends: bends.map((bend) => bend - 1), clampedFace: clampedFace - 1 };
  const planned = strokePlan(finished ?? part, brake, stroke);
  if (!planned.ok) return [];
  return planned.plan.own.flatMap(({ hinge, fold: { tangent, nx, ny } }): Mark[] => {
    const off = ([x, y]: readonly [Mm, Mm]) => Math.abs((x - tangent.x) * nx + (y - tangent.y) * ny);
    const [near] = [...blank.bends[hinge.bend]!.tangents].sort((a, b) => off(a[0]) - off(b[0]));
    const { noseRunMm } = brake.clamp;
    const [from, to] = near!.map(([x, y]) => ({ x: x + noseRunMm * nx, y: y + noseRunMm * ny })) as [
      Point,
      Point,
    ];
    return [{ kind: "line", layer: "sightLine", from, to }];
  });
}

/** Words beside the middle of a bend line, read from below or from the right. */
function along({ line: [a, b], allowance }: WholeBlankBend, words: string): Mark[] {
  let [from, to] = [point(a), point(b)];
  if (to.x < from.x - 1e-6 || (Math.abs(to.x - from.x) < 1e-6 && to.y < from.y)) [from, to] = [to, from];
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const heightMm = Math.min(WORDS_MM, (0.9 * long) / (LETTER * words.length));
  if (heightMm < LEAST_WORDS_MM) return [];
  const [ux, uy] = [(to.x - from.x) / long, (to.y - from.y) / long];
  const off = allowance / 2 + 1.2;
  const at = { x: (from.x + to.x) / 2 - uy * off, y: (from.y + to.y) / 2 + ux * off };
  return [
    { kind: "text", layer: "note", at, words, heightMm, anchor: "middle", angleRad: Math.atan2(uy, ux) },
  ];
}

function overall(min: Point, max: Point, units: WholeJob["units"]): Mark[] {
  const dimension = (from: Point, to: Point, mm: Mm, offsetMm: Mm): Mark => {
    return { kind: "dimension", layer: "dimension", from, to, words: placeWords(mm, units), offsetMm };
  };
  return [
    dimension(min, { x: max.x, y: min.y }, max.x - min.x, -ROW_MM),
    dimension(min, { x: min.x, y: max.y }, max.y - min.y, ROW_MM),
  ];
}

function point([x, y]: readonly [Mm, Mm]): Point {
  return { x, y };
}
