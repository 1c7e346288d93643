/**
 * The marks of one bend's picture, from scenes of it at rising leaf angles: what is where, drawn and named.
 * Knows no motion: step.ts gathers the scenes, tests make them by hand.
 */

import { labelPoint } from "../drawing/labelPoint.ts";
import type { Drawing, Layer, Mark } from "../drawing/model.ts";
import { rectangle } from "../drawing/polygon.ts";
import { scaleBar } from "../drawing/scaleBar.ts";
import type { StepAnswer } from "../jobFile/answer.ts";
import type { Scene } from "../motion/scene.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { LengthUnit } from "../units/length.ts";
import { angleWords } from "../words/angleWords.ts";
import { type ClampKind, clampWord } from "../words/contactWords.ts";
import { outcomeSentence, stepTitle } from "../words/stepWords.ts";
import { dashed, findingGround, findingMarks, findingPoints, leastMarks } from "./finding.ts";
import { stepWindow } from "./stepWindow.ts";
import { sweptBand } from "./sweptBand.ts";
import { swingArc } from "./swingArc.ts";

export interface StepScenes {
  /** Scenes from the leaf at rest to the angle reached, in rising order; at least one. */
  readonly scenes: readonly Scene[];
  readonly pivot: Point;
  readonly step: StepAnswer;
  readonly bendCount: number;
  readonly units: LengthUnit;
  readonly clamp: ClampKind;
}

/** Text height as a share of the window's width: about 3.5 mm on a page 160 mm wide. */
const TEXT_SHARE = 0.022;

function members(
  scene: Scene,
  { step, clamp }: StepScenes,
): { layer: Layer; name: string; caption: string; outlines: readonly Outline[] }[] {
  const named = (name: string) => ({ name, caption: name });
  return [
    { layer: "frame", ...named("frame"), outlines: scene.frame },
    { layer: "bed", ...named("bed"), outlines: [scene.bed] },
    { layer: "leaf", name: "leaf", caption: `leaf at ${angleWords(step.reached)}`, outlines: [scene.leaf] },
    { layer: "clamp", ...named(clampWord(clamp)), outlines: scene.clamp },
  ];
}

function nameMarks(scene: Scene, picture: StepScenes, window: Drawing["window"], textMm: number): Mark[] {
  const marks: Mark[] = [];
  const obstacles = [scene.sheet, ...findingGround(picture.step, textMm)];
  for (const { name, outlines } of members(scene, picture)) {
    const places = outlines.flatMap((body) => labelPoint(body, obstacles, window) ?? []);
    const best = places.reduce<(typeof places)[number] | undefined>(
      (most, place) => (most === undefined || place.roomMm > most.roomMm ? place : most),
      undefined,
    );
    if (best === undefined || best.roomMm < textMm * 0.7) continue;
    const at = { x: best.at.x, y: best.at.y - textMm * 0.35 };
    marks.push({ kind: "text", layer: "note", at, words: name, heightMm: textMm, anchor: "middle" });
  }
  return marks;
}

function titleMarks(window: Drawing["window"], lines: readonly string[], textMm: number): Mark[] {
  const { min, max } = window;
  const foot = max.y - textMm * (lines.length * 1.5 + 0.8);
  return [
    { kind: "outline", layer: "note", outline: rectangle({ x: min.x, y: foot }, max) },
    { kind: "line", layer: "note", from: { x: min.x, y: foot }, to: { x: max.x, y: foot } },
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
  const outcome = outcomeSentence(step, units, picture.clamp);
  const { window, groundMm } = stepWindow(scenes, TEXT_SHARE, findingPoints(step));
  const textMm = (window.max.x - window.min.x) * TEXT_SHARE;

  const ground = { min: window.min, max: { x: window.max.x, y: groundMm } };
  const marks: Mark[] = [];
  for (const outline of sweptBand(scenes.map((scene) => scene.sheet))) {
    marks.push({ kind: "outline", layer: "swept", outline });
  }
  for (const { layer, caption, outlines } of members(last, picture)) {
    for (const outline of outlines) marks.push({ kind: "outline", layer, outline, caption });
  }
  if (step.reached > 0) marks.push(dashed(first.sheet, "sheet before the leaf moves"));
  marks.push(...leastMarks(scenes, step));
  const caption = `sheet with the leaf at ${angleWords(step.reached)}`;
  marks.push({ kind: "outline", layer: "part", outline: last.sheet, caption });
  marks.push(...swingArc(picture.pivot, last.leaf, step.reached, window, textMm));
  marks.push(...nameMarks(last, picture, ground, textMm));
  marks.push(...findingMarks(step, { units, clamp: picture.clamp, textMm }, last.sheet, ground));
  marks.push(...titleMarks(window, [title, outcome], textMm));
  const barAt = { x: window.min.x + textMm, y: window.min.y + textMm };
  marks.push(...scaleBar(barAt, (window.max.x - window.min.x) * 0.25, textMm, units));
  return { sentence: `${title.replaceAll(" · ", ", ")}. ${outcome}`, window, marks };
}
