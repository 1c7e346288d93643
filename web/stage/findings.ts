/**
 * What the answer is about, on the stage: the contact's cross with its words, or the least clearance with its figure, where
 * the leaf stands at the moment they were found; and the strokes of the dimensions.
 */
import type { Point } from "../../src/plane/point.ts";
import { contactWords } from "../../src/words/contactWords.ts";
import { lengthWords } from "../../src/words/lengthWords.ts";
import type { Placed } from "../drafting/asked.ts";
import { type Box, boxesOverlap, type Piece, throughBox } from "../drafting/boxes.ts";
import { type Camera, onCanvas } from "./camera.ts";
import type { Ink } from "./ink.ts";
import { boxOfWords, drawClearance, drawCross, drawLine, drawWords, type Sheet } from "./pen.ts";
import { type StepPose, showsLeast } from "./stepPose.ts";

export interface Finding {
  /** What its marks cover. */
  readonly mark: Box;
  readonly words: string;
  readonly colour: string;
}

/** Paints the marks of the finding at a leaf angle; null where nothing was found there. */
export function paintFinding(
  sheet: Sheet,
  camera: Camera,
  pose: StepPose,
  leafDeg: number,
  ink: Ink,
): Finding | null {
  const { step, job, stopDeg } = pose;
  const point = ([x, y]: readonly [number, number]) => onCanvas(camera, { x, y });
  if (step.contact !== null && stopDeg !== null) {
    if (leafDeg < stopDeg - 0.05) return null;
    const mark = drawCross(sheet, point(step.contact.point), ink.signal, ink.paper);
    return { mark, words: contactWords(step.contact, job.brake.clamp.kind), colour: ink.signal };
  }
  if (step.clearancePoints === null || step.clearance === null || !showsLeast(pose, leafDeg)) return null;
  const [a, b] = step.clearancePoints.map(point) as [Point, Point];
  drawClearance(sheet, a, b, ink.ink, ink.paper);
  const mark = {
    x: (a.x + b.x) / 2,
    y: (a.y + b.y) / 2,
    halfWide: Math.abs(a.x - b.x) / 2 + 4,
    halfHigh: Math.abs(a.y - b.y) / 2 + 4,
  };
  return { mark, words: `${lengthWords(step.clearance, job.units)} clear`, colour: ink.ink };
}

/** Kept free at the foot, for the scale. */
const FOOT = 30;
const ROUND = [
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
  [0, -1],
  [0, 1],
  [1, 0],
  [-1, 0],
] as const;
const FARTHER = [0, 12, 26, 44, 66, 92, 122, 160] as const;

/** What the words of a finding keep off. */
export interface Filled {
  readonly pieces: readonly Piece[];
  readonly half: number;
  readonly boxes: readonly Box[];
  readonly lines: readonly Piece[];
}

/** Words beside the finding's mark, inside the canvas and off all else; returns where they stand. */
export function paintFindingWords(
  sheet: Sheet,
  { mark, words, colour }: Finding,
  ground: string,
  filled: Filled,
): Box {
  const size = boxOfWords(sheet, words, mark);
  const places = FARTHER.flatMap((farther) =>
    ROUND.map(([right, down]) => besideMark(sheet, mark, size, [right, down, farther])),
  );
  const free = places.find((box) => isFree(box, mark, filled) && onSheet(box, sheet));
  // With no room at all a label is covered rather than the sheet.
  const last = places.find(
    (box) => onSheet(box, sheet) && !filled.pieces.some((piece) => throughBox(piece, box, filled.half + 1)),
  );
  return drawWords(
    sheet,
    words,
    free ?? last ?? { x: sheet.width / 2, y: sheet.height - FOOT - size.halfHigh },
    colour,
    ground,
  );
}

function besideMark(
  { width }: Sheet,
  mark: Box,
  { halfWide, halfHigh }: Box,
  [right, down, farther]: readonly [number, number, number],
): Box {
  const wished = mark.x + right * (mark.halfWide + halfWide + 4 + (down === 0 ? farther : 0));
  return {
    x: Math.min(Math.max(wished, halfWide + 4), width - halfWide - 4),
    y: mark.y + down * (mark.halfHigh + halfHigh + farther),
    halfWide,
    halfHigh,
  };
}

const onSheet = ({ y, halfHigh }: Box, { height }: Sheet) => y > halfHigh + 2 && y < height - halfHigh - FOOT;

const isFree = (box: Box, mark: Box, { pieces, half, boxes, lines }: Filled) =>
  !boxesOverlap(box, { ...mark, halfHigh: mark.halfHigh - 2 }) &&
  !boxes.some((other) => boxesOverlap(other, box)) &&
  !pieces.some((piece) => throughBox(piece, box, half + 2)) &&
  !lines.some((line) => throughBox(line, box, 1));

/** Dimension lines with their arrowheads, extension lines and leaders; those of `lit` stand out. */
export function paintDimensions(sheet: Sheet, placed: readonly Placed[], ink: Ink, lit: string | null): void {
  const { ctx } = sheet;
  for (const { key, lines, heads } of placed) {
    const shines = key === lit;
    const colour = shines ? ink.press : ink.graphite;
    for (const line of lines) drawLine(sheet, line, colour, shines ? 2.2 : 1);
    ctx.fillStyle = colour;
    for (const head of heads) {
      ctx.beginPath();
      for (const { x, y } of head) ctx.lineTo(x, y);
      ctx.fill();
    }
  }
}
