/**
 * A canvas to draw on in points, and the marks that the drawing is made of: bodies with their hatch, cross, words. The pen
 * knows no sheet metal.
 */
import { boxOf } from "../../src/plane/bounding.ts";
import { samePoint } from "../../src/plane/chained.ts";
import type { Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";
import type { Box } from "../drafting/boxes.ts";
import { LETTERING } from "../drafting/textWidth.ts";
import { type Camera, onCanvas } from "./camera.ts";

export interface Sheet {
  readonly ctx: CanvasRenderingContext2D;
  readonly width: number;
  readonly height: number;
}

/** Gives a canvas a size in points, as sharp as the screen, and a clean sheet. */
export function cleanSheet(canvas: HTMLCanvasElement, width: number, height: number): Sheet {
  const sharp = devicePixelRatio || 1;
  const [wide, high] = [Math.round(width * sharp), Math.round(height * sharp)];
  if (canvas.width !== wide || canvas.height !== high) {
    canvas.width = wide;
    canvas.height = high;
    canvas.style.width = `${width}px`;
    canvas.style.height = `${height}px`;
  }
  const ctx = canvas.getContext("2d")!;
  ctx.setTransform(sharp, 0, 0, sharp, 0, 0);
  ctx.clearRect(0, 0, width, height);
  ctx.lineJoin = "round";
  return { ctx, width, height };
}

/** An outline as a closed path; an edge that starts elsewhere begins another loop. */
export function pathOf(camera: Camera, { edges }: Outline): Path2D {
  const path = new Path2D();
  edges.forEach((edge, i) => {
    const before = edges[i - 1];
    if (before === undefined || !samePoint(before.to, edge.from)) {
      if (before) path.closePath();
      const { x, y } = onCanvas(camera, edge.from);
      path.moveTo(x, y);
    }
    if (edge.kind === "line") {
      const { x, y } = onCanvas(camera, edge.to);
      path.lineTo(x, y);
    } else {
      const { x, y } = onCanvas(camera, edge.center);
      const { startRad, sweepRad } = edge;
      path.arc(x, y, edge.radius * camera.scale, -startRad, -startRad - sweepRad, sweepRad > 0);
    }
  });
  path.closePath();
  return path;
}

/** The upright box round an outline, in canvas points. */
export function canvasBox(camera: Camera, outline: Outline): Box {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  const middle = onCanvas(camera, { x: (minX + maxX) / 2, y: (minY + maxY) / 2 });
  return {
    ...middle,
    halfWide: ((maxX - minX) / 2) * camera.scale,
    halfHigh: ((maxY - minY) / 2) * camera.scale,
  };
}

export interface Hatching {
  /** Counter-clockwise as on paper. */
  readonly angleDeg: number;
  readonly pitch: number;
  readonly colour: string;
  /** One line goes through it, so that the hatch turns and shifts with its body. */
  readonly anchor: Point;
}

/** Parallel lines all over the canvas, to be clipped by a body. */
export function hatchLines(
  { ctx, width, height }: Sheet,
  { angleDeg, pitch, colour, anchor }: Hatching,
): void {
  const turn = (-angleDeg * Math.PI) / 180;
  const along = { x: Math.cos(turn), y: Math.sin(turn) };
  const across = { x: -along.y, y: along.x };
  const reach = Math.hypot(width, height) / 2;
  const middle = { x: width / 2, y: height / 2 };
  const off = (anchor.x - middle.x) * across.x + (anchor.y - middle.y) * across.y;
  const first = off - Math.floor((off + reach) / pitch) * pitch;
  ctx.beginPath();
  for (let far = first; far <= reach; far += pitch) {
    const at = { x: middle.x + across.x * far, y: middle.y + across.y * far };
    ctx.moveTo(at.x - along.x * reach, at.y - along.y * reach);
    ctx.lineTo(at.x + along.x * reach, at.y + along.y * reach);
  }
  ctx.strokeStyle = colour;
  ctx.lineWidth = 0.9;
  ctx.stroke();
}

export interface BodyStyle {
  readonly fill: string;
  readonly line: string;
  readonly hatching: Hatching;
}

/** A body as in a section drawing: ground, hatch, outline. */
export function drawBody(sheet: Sheet, path: Path2D, { fill, line, hatching }: BodyStyle): void {
  const { ctx } = sheet;
  ctx.fillStyle = fill;
  ctx.fill(path);
  ctx.save();
  ctx.clip(path);
  hatchLines(sheet, hatching);
  ctx.restore();
  ctx.strokeStyle = line;
  ctx.lineWidth = 1.3;
  ctx.stroke(path);
}

/** A line through points. */
export function drawLine({ ctx }: Sheet, points: readonly Point[], colour: string, width: number): void {
  ctx.beginPath();
  for (const { x, y } of points) ctx.lineTo(x, y);
  ctx.strokeStyle = colour;
  ctx.lineWidth = width;
  ctx.stroke();
}

/** Reach of the cross that marks a contact. */
const CROSS = 14;

/** The cross that marks a contact: shape, not colour alone. Returns what it covers. */
export function drawCross(sheet: Sheet, at: Point, colour: string, ground: string): Box {
  const arm = 6.4;
  for (const [width, paint] of [
    [6, ground],
    [2.5, colour],
  ] as const) {
    for (const way of [1, -1])
      drawLine(
        sheet,
        [
          { x: at.x - arm, y: at.y - way * arm },
          { x: at.x + arm, y: at.y + way * arm },
        ],
        paint,
        width,
      );
  }
  const { ctx } = sheet;
  ctx.beginPath();
  ctx.arc(at.x, at.y, CROSS - 1, 0, 2 * Math.PI);
  ctx.lineWidth = 2;
  ctx.stroke();
  return { ...at, halfWide: CROSS, halfHigh: CROSS };
}

/** The box of words about their middle. */
export function boxOfWords({ ctx }: Sheet, words: string, middle: Point): Box {
  ctx.font = LETTERING;
  return { ...middle, halfWide: ctx.measureText(words).width / 2 + 3, halfHigh: 10 };
}

/** Words about their middle, with the ground's colour round the letters so that they stand out from hatch. Returns their box. */
export function drawWords(sheet: Sheet, words: string, middle: Point, colour: string, ground: string): Box {
  const { ctx } = sheet;
  ctx.font = LETTERING;
  ctx.textAlign = "center";
  ctx.textBaseline = "middle";
  ctx.lineWidth = 5;
  ctx.strokeStyle = ground;
  ctx.strokeText(words, middle.x, middle.y + 0.5);
  ctx.fillStyle = colour;
  ctx.fillText(words, middle.x, middle.y + 0.5);
  return boxOfWords(sheet, words, middle);
}

/** A least distance: a line between two dots. */
export function drawClearance(sheet: Sheet, from: Point, to: Point, colour: string, ground: string): void {
  const { ctx } = sheet;
  drawLine(sheet, [from, to], colour, 1.5);
  for (const { x, y } of [from, to]) {
    ctx.beginPath();
    ctx.arc(x, y, 2.6, 0, 2 * Math.PI);
    ctx.fillStyle = colour;
    ctx.fill();
    ctx.strokeStyle = ground;
    ctx.lineWidth = 1;
    ctx.stroke();
  }
}
