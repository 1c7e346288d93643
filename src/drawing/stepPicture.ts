/**
 * The marks of one bend's picture, from scenes of it at rising leaf angles: what is where, drawn and named.
 * Knows no motion: step.ts gathers the scenes, tests make them by hand.
 */
import type { StepAnswer } from "../job/answer.ts";
import type { Scene } from "../motion/scene.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { LengthUnit } from "../units/length.ts";
import { labelPoint } from "./labelPoint.ts";
import { lengthWords } from "./lengthWords.ts";
import type { Drawing, Layer, Mark } from "./model.ts";
import { scaleBar } from "./scaleBar.ts";
import { stepWindow } from "./stepWindow.ts";
import { angleWords, contactWords, outcomeSentence, stepTitle } from "./stepWords.ts";
import { sweptBand } from "./sweptBand.ts";
import { swingArc } from "./swingArc.ts";

export interface StepScenes {
  /** Scenes from the leaf at rest to the angle reached, in rising order; at least one. */
  readonly scenes: readonly Scene[];
  readonly pivot: Point;
  readonly step: StepAnswer;
  readonly bendCount: number;
  readonly units: LengthUnit;
  /** The sheet at the moment of least clearance, where that is not the last scene. */
  readonly nearest?: Outline;
}

/** Text height as a share of the window's width: about 3.5 mm on a page 160 mm wide. */
const TEXT_SHARE = 0.022;

function point(pair: readonly [number, number]): Point {
  return { x: pair[0], y: pair[1] };
}

function members(
  scene: Scene,
  step: StepAnswer,
): { layer: Layer; caption: string; outlines: readonly Outline[] }[] {
  return [
    { layer: "frame", caption: "frame", outlines: scene.frame },
    { layer: "bed", caption: "bed", outlines: [scene.bed] },
    { layer: "leaf", caption: `leaf at ${angleWords(step.reached)}`, outlines: [scene.leaf] },
    { layer: "clamp", caption: "clamp", outlines: scene.clamp },
  ];
}

function nameMarks(scene: Scene, picture: StepScenes, window: Drawing["window"], textMm: number): Mark[] {
  const marks: Mark[] = [];
  for (const { layer, outlines } of members(scene, picture.step)) {
    const places = outlines.flatMap((body) => labelPoint(body, [scene.sheet], window) ?? []);
    const best = places.reduce<(typeof places)[number] | undefined>(
      (most, place) => (most === undefined || place.roomMm > most.roomMm ? place : most),
      undefined,
    );
    if (best === undefined || best.roomMm < textMm * 0.7) continue;
    const at = { x: best.at.x, y: best.at.y - textMm * 0.35 };
    marks.push({ kind: "text", layer: "note", at, words: layer, heightMm: textMm, anchor: "middle" });
  }
  return marks;
}

function findingMarks(picture: StepScenes, window: Drawing["window"], textMm: number): Mark[] {
  const { step, units } = picture;
  if (step.contact !== null) {
    const at = point(step.contact.point);
    const toRight = at.x < (window.min.x + window.max.x) / 2;
    const aside = toRight ? 1.6 * textMm : -1.6 * textMm;
    return [
      { kind: "outline", layer: "contact", outline: disc(at, textMm) },
      { kind: "cross", layer: "contact", at },
      {
        kind: "text",
        layer: "contact",
        at: { x: at.x + aside, y: at.y + textMm * 0.9 },
        words: contactWords(step.contact),
        heightMm: textMm,
        anchor: toRight ? "start" : "end",
      },
    ];
  }
  if (step.clearance === null || step.clearancePoints === null) return [];
  const [from, to] = step.clearancePoints.map(point) as [Point, Point];
  const words = lengthWords(step.clearance, units);
  return [{ kind: "dimension", layer: "clearance", from, to, words, offsetMm: 0 }];
}

function disc(center: Point, radius: number): Outline {
  const from = { x: center.x + radius, y: center.y };
  return { edges: [{ kind: "arc", from, to: from, center, radius, startRad: 0, sweepRad: 2 * Math.PI }] };
}

function titleMarks(window: Drawing["window"], lines: readonly string[], textMm: number): Mark[] {
  const { min, max } = window;
  const foot = max.y - textMm * (lines.length * 1.5 + 0.8);
  const corners = [{ x: min.x, y: foot }, { x: max.x, y: foot }, max, { x: min.x, y: max.y }];
  const strip: Outline = {
    edges: corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % 4] as Point })),
  };
  return [
    { kind: "outline", layer: "note", outline: strip },
    { kind: "line", layer: "note", from: corners[0] as Point, to: corners[1] as Point },
    ...lines.map((words, i): Mark => {
      const at = { x: min.x + textMm, y: max.y - textMm * (1.6 + i * 1.5) };
      return { kind: "text", layer: "note", at, words, heightMm: textMm, anchor: "start" };
    }),
  ];
}

/**
 * Picture of one bend: tools hatched, sheet at rest dashed, its way tinted, sheet at the reached angle in ink,
 * then contact or least clearance, the leaf's angle, names, title and scale bar.
 * @throws RangeError when there is no scene
 */
export function stepPicture(picture: StepScenes): Drawing {
  const { scenes, step, units } = picture;
  const first = scenes[0];
  const last = scenes.at(-1);
  if (first === undefined || last === undefined) throw new RangeError("a step's picture needs a scene");
  const title = stepTitle(step, picture.bendCount);
  const outcome = outcomeSentence(step, units);
  const { window, groundMm } = stepWindow(scenes, TEXT_SHARE);
  const textMm = (window.max.x - window.min.x) * TEXT_SHARE;

  const marks: Mark[] = [];
  for (const outline of sweptBand(scenes.map((scene) => scene.sheet))) {
    marks.push({ kind: "outline", layer: "swept", outline });
  }
  for (const { layer, caption, outlines } of members(last, step)) {
    for (const outline of outlines) marks.push({ kind: "outline", layer, outline, caption });
  }
  marks.push({
    kind: "outline",
    layer: "partBefore",
    outline: first.sheet,
    caption: "sheet before the leaf moves",
  });
  if (picture.nearest) {
    marks.push({
      kind: "outline",
      layer: "partBefore",
      outline: picture.nearest,
      caption: "sheet where it comes nearest",
    });
  }
  const caption = `sheet with the leaf at ${angleWords(step.reached)}`;
  marks.push({ kind: "outline", layer: "part", outline: last.sheet, caption });
  marks.push(...swingArc(picture.pivot, last.leaf, step.reached, window, textMm));
  marks.push(...nameMarks(last, picture, { min: window.min, max: { x: window.max.x, y: groundMm } }, textMm));
  marks.push(...findingMarks(picture, window, textMm));
  marks.push(...titleMarks(window, [title, outcome], textMm));
  const barAt = { x: window.min.x + textMm, y: window.min.y + textMm };
  marks.push(...scaleBar(barAt, (window.max.x - window.min.x) * 0.25, textMm, units));
  return { sentence: `${title.replaceAll(" · ", ", ")}. ${outcome}`, window, marks };
}
