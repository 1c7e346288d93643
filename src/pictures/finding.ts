/**
 * What was found in a bend, marked on its picture: contact with hatch, cross and words, or the least clearance
 * dimensioned in the user's unit, with sheet and leaf dashed where they stood at that moment.
 */

import type { Drawing, Mark } from "../drawing/model.ts";
import { rectangle } from "../drawing/polygon.ts";
import { wordsBeside } from "../drawing/wordsBeside.ts";
import type { StepAnswer } from "../jobFile/answer.ts";
import type { Scene } from "../motion/scene.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { type ClampKind, contactWords } from "../words/contactWords.ts";
import { lengthWords } from "../words/lengthWords.ts";
import { leastMoment } from "./leastMoment.ts";

function point(pair: readonly [number, number]): Point {
  return { x: pair[0], y: pair[1] };
}

function disc(center: Point, radius: number): Outline {
  const from = { x: center.x + radius, y: center.y };
  return { edges: [{ kind: "arc", from, to: from, center, radius, startRad: 0, sweepRad: 2 * Math.PI }] };
}

/** An outline that is not where the picture's moment has it. */
export function dashed(outline: Outline, caption: string): Mark {
  return { kind: "outline", layer: "partBefore", outline, caption };
}

/** Sheet and leaf where they come nearest, where the picture does not show them so already. */
export function leastMarks(scenes: readonly Scene[], step: StepAnswer): Mark[] {
  const least = leastMoment(scenes, step);
  const moment = least === undefined ? undefined : scenes[least];
  if (least === undefined || moment === undefined || least === scenes.length - 1) return [];
  return [
    ...(least > 0 ? [dashed(moment.sheet, "sheet where it comes nearest")] : []),
    ...(step.nearest?.member === "leaf" ? [dashed(moment.leaf, "leaf where the sheet comes nearest")] : []),
  ];
}

/** The points that a bend's picture is about. */
export function findingPoints(step: StepAnswer): Point[] {
  const pairs = step.contact ? [step.contact.point] : (step.clearancePoints ?? []);
  return pairs.map(point);
}

/** Ground that names must leave free: around the cross and its words, or the dimension and its figure. */
export function findingGround(step: StepAnswer, textMm: number): Outline[] {
  const points = findingPoints(step);
  if (points.length === 0) return [];
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const min = { x: Math.min(...xs) - 4 * textMm, y: Math.min(...ys) - 2 * textMm };
  const max = { x: Math.max(...xs) + 4 * textMm, y: Math.max(...ys) + 2 * textMm };
  return [rectangle(min, max)];
}

/** Contact, or the dimension of the least clearance; nothing where nothing was left to measure. */
export function findingMarks(
  step: StepAnswer,
  { units, clamp, textMm }: { readonly units: LengthUnit; readonly clamp: ClampKind; readonly textMm: Mm },
  sheet: Outline,
  window: Drawing["window"],
): Mark[] {
  if (step.contact !== null) {
    const at = point(step.contact.point);
    const words = contactWords(step.contact, clamp);
    return [
      { kind: "outline", layer: "contact", outline: disc(at, textMm) },
      { kind: "cross", layer: "contact", at },
      {
        kind: "text",
        layer: "contact",
        words,
        heightMm: textMm,
        ...wordsBeside(at, words.length, textMm, sheet, window),
      },
    ];
  }
  if (step.clearance === null || step.clearancePoints === null) return [];
  const [from, to] = step.clearancePoints;
  const words = lengthWords(step.clearance, units);
  return [{ kind: "dimension", layer: "clearance", from: point(from), to: point(to), words, offsetMm: 0 }];
}
