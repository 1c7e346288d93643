/**
 * The keys of a brake on one picture: a bar brake in section with a sheet in it, every measure by its name in the job
 * file. Larger than life where a real brake would hide it: the sheet is thick, the nose round. No figures, only names.
 */
import { barClamp } from "../brake/bar.ts";
import type { Drawing, Mark } from "../drawing/model.ts";
import { polygon, rectangle } from "../drawing/polygon.ts";
import { movedOutline } from "../plane/move.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";

const TEXT_MM: Mm = 3;
const [SHEET, NOSE, BACK] = [4, 5, 9] as const;
const BAR = { thicknessMm: 18, depthMm: 80, noseRadiusMm: NOSE, noseAngleDeg: 78, topRadiusMm: 4 } as const;
const HOLDER = { backMm: 30, heightMm: 34, depthMm: 44 } as const;

/** The picture, true to itself at any size. */
export function drawKeys(): Drawing {
  const made = barClamp({ ...BAR, holder: HOLDER });
  if (!made.ok) throw new RangeError("the measures of the picture do not go together");
  const clamp = made.clamp.outlines.map((outline) => movedOutline(outline, -BACK, SHEET));
  const top = SHEET + BAR.thicknessMm;
  const marks: Mark[] = [
    { kind: "outline", layer: "frame", outline: rectangle({ x: 52, y: 34 }, { x: 62, y: 62 }) },
    { kind: "outline", layer: "bed", outline: rectangle({ x: -95, y: -30 }, { x: 0, y: 0 }) },
    { kind: "outline", layer: "leaf", outline: rectangle({ x: 0, y: -14 }, { x: 46, y: 0 }) },
    ...clamp.map((outline): Mark => ({ kind: "outline", layer: "clamp", outline })),
    {
      kind: "outline",
      layer: "part",
      outline: polygon([
        { x: -90, y: 0 },
        { x: 40, y: 0 },
        { x: 40, y: SHEET },
        { x: -90, y: SHEET },
      ]),
    },
    { kind: "cross", layer: "note", at: { x: 0, y: 0 } },
    across("setback", -BACK, 0, -40),
    across("clamp.depth", -BACK - BAR.depthMm, -BACK, top + HOLDER.heightMm + 26),
    across("clamp.holderBack", -BACK - HOLDER.backMm, -BACK, top + HOLDER.heightMm + 16),
    across(
      "clamp.holderDepth",
      -BACK - HOLDER.backMm - HOLDER.depthMm,
      -BACK - HOLDER.backMm,
      top + HOLDER.heightMm + 6,
    ),
    ...upright("clamp.thickness", SHEET, top),
    ...upright("clamp.holderHeight", top, top + HOLDER.heightMm),
    ...named("clamp.noseRadius", { x: 14, y: 30 }, { x: -BACK - 1.5, y: SHEET + 2 }),
    ...named("clamp.topRadius", { x: 2, y: 44 }, { x: -BACK - 5, y: top - 1 }),
    ...named("clamp.noseAngle", { x: 14, y: 37 }, { x: -BACK - 2.5, y: SHEET + 10 }),
    ...named("leaf.pivot, here at [0, 0]", { x: 8, y: -24 }, { x: 0, y: 0 }),
    words("bed.profile", { x: -50, y: -18 }),
    words("leaf.profile", { x: 24, y: -8 }),
    words("frame", { x: 57, y: 66 }),
    words("leaf.swing", { x: 58, y: 24 }),
    { kind: "arc", layer: "dimension", center: { x: 0, y: 0 }, radius: 50, startRad: 0, sweepRad: 0.6 },
    words("lift: it rises", { x: -BACK - 45, y: top + 8 }),
  ];
  const sentence =
    "The keys of a brake in a job file, each on the piece of a bar brake that it measures. Everything counts from the bed's front top edge.";
  return { sentence, window: { min: { x: -132, y: -50 }, max: { x: 78, y: 92 } }, marks };
}

function words(said: string, at: Point): Mark {
  return { kind: "text", layer: "note", at, words: said, heightMm: TEXT_MM, anchor: "middle" };
}

/** A name beside the brake with a line to what it names. */
function named(said: string, at: Point, to: Point): Mark[] {
  return [
    { kind: "line", layer: "dimension", from: { x: at.x - 1, y: at.y + 1 }, to },
    { kind: "text", layer: "note", at, words: said, heightMm: TEXT_MM, anchor: "start" },
  ];
}

function across(said: string, fromX: Mm, toX: Mm, y: Mm): Mark {
  return {
    kind: "dimension",
    layer: "dimension",
    from: { x: fromX, y },
    to: { x: toX, y },
    words: said,
    offsetMm: 0,
  };
}

/** Left of bar and holder, its name beside it. */
function upright(said: string, fromY: Mm, toY: Mm): Mark[] {
  const x = -BACK - BAR.depthMm - 6;
  const at = { x: x - 2, y: (fromY + toY) / 2 - 1 };
  return [
    {
      kind: "dimension",
      layer: "dimension",
      from: { x, y: fromY },
      to: { x, y: toY },
      words: "",
      offsetMm: 0,
    },
    { kind: "text", layer: "note", at, words: said, heightMm: TEXT_MM, anchor: "end" },
  ];
}
