/**
 * A drawing as DXF text (release 2000 of the format, AC1015) in millimetres, for a cutter or any CAD program: lines, arcs, words.
 * One layer a meaning, named in capitals; the window does not cut anything off. Coordinates to 1e-6 mm.
 */
import DxfFile from "dxf-writer";
import { type Mm, type Rad, toDeg } from "../units/quantity.ts";
import { MADE_BY } from "./madeBy.ts";
import type { Drawing, Layer } from "./model.ts";
import { type Stroke, strokesOf } from "./stroke.ts";

/** Layer name in the file and its colour number in the DXF colour index, by what the mark stands for. */
const DXF_LAYERS: Readonly<Record<Layer, readonly [name: string, colour: number]>> = {
  cut: ["CUT", 7],
  bendUp: ["BEND_UP", 5],
  bendDown: ["BEND_DOWN", 1],
  bendTangent: ["BEND_TANGENT", 8],
  sightLine: ["SIGHT_LINE", 3],
  dimension: ["DIMENSION", 8],
  note: ["NOTE", 8],
  grain: ["GRAIN", 8],
  waste: ["WASTE", 9],
  face: ["FACE", 7],
  edge: ["EDGE", 7],
  hidden: ["HIDDEN", 8],
  centre: ["CENTRE", 8],
  part: ["PART", 7],
  partBefore: ["PART_BEFORE", 8],
  bed: ["BED", 8],
  clamp: ["CLAMP", 8],
  leaf: ["LEAF", 8],
  frame: ["FRAME", 8],
  swept: ["SWEPT", 9],
  contact: ["CONTACT", 1],
  clearance: ["CLEARANCE", 3],
};

/** The height of words is their type size; DXF asks for the height of capitals. */
const CAPITALS = 0.72;

const FULL_TURN = 2 * Math.PI;

/** Name of a layer in the DXF file. @example dxfLayer("bendUp") // "BEND_UP" */
export function dxfLayer(layer: Layer): string {
  return DXF_LAYERS[layer][0];
}

/**
 * DXF text of a drawing. Outlines and dimensions come out as single lines and arcs, whole circles as circles.
 * Letters outside ASCII are written as \U+XXXX, which every reader of this form knows.
 * @example toDxf({ sentence: "", window: { min: { x: 0, y: 0 }, max: { x: 9, y: 9 } }, marks: [] }).slice(-3) // "EOF"
 */
export function toDxf(drawing: Drawing): string {
  const file = new DxfFile();
  file.setUnits("Millimeters");
  // The library's types know numbers only in header values; a version is a word.
  file.header("ACADVER", [[1, "AC1015" as unknown as number]]);
  const strokes = drawing.marks.flatMap((mark) => strokesOf(mark, 1));
  for (const layer of new Set(strokes.map((stroke) => stroke.layer))) {
    const [name, colour] = DXF_LAYERS[layer];
    file.addLayer(name, colour, "CONTINUOUS");
  }
  for (const stroke of strokes) put(file, stroke);
  // Group 999 is a remark.
  return `999\n${MADE_BY}\n${file.toDxfString()}`;
}

function put(file: DxfFile, stroke: Stroke): void {
  file.setActiveLayer(dxfLayer(stroke.layer));
  switch (stroke.kind) {
    case "line":
      file.drawLine(tidy(stroke.from.x), tidy(stroke.from.y), tidy(stroke.to.x), tidy(stroke.to.y));
      break;
    case "arc":
      putArc(file, stroke);
      break;
    case "text": {
      const place = [tidy(stroke.at.x), tidy(stroke.at.y)] as const;
      const align = stroke.anchor === "start" ? "left" : stroke.anchor === "middle" ? "center" : "right";
      const turn = degrees(stroke.angleRad);
      file.drawText(
        ...place,
        tidy(stroke.heightMm * CAPITALS),
        turn,
        escaped(stroke.words),
        align,
        "baseline",
      );
      break;
    }
  }
}

/** DXF arcs always run counter-clockwise, so a clockwise one is written from its end. */
function putArc(file: DxfFile, arc: Extract<Stroke, { kind: "arc" }>): void {
  const { center, radius, startRad, sweepRad } = arc;
  if (Math.abs(sweepRad) >= FULL_TURN - 1e-12) {
    file.drawCircle(tidy(center.x), tidy(center.y), tidy(radius));
    return;
  }
  const first = sweepRad > 0 ? startRad : startRad + sweepRad;
  const last = first + Math.abs(sweepRad);
  file.drawArc(tidy(center.x), tidy(center.y), tidy(radius), degrees(first), degrees(last));
}

function degrees(angleRad: Rad): number {
  const turned = toDeg(angleRad) % 360;
  return Math.round((turned < 0 ? turned + 360 : turned) * 1e9) / 1e9;
}

/** Rounded to 1e-6 mm, so that no figure is written with an exponent, which some cutters don't read. */
function tidy(length: Mm): number {
  const rounded = Math.round(length * 1e6) / 1e6;
  return rounded === 0 ? 0 : rounded;
}

function escaped(words: string): string {
  return words.replace(/[^\x20-\x7e]/gu, (letter) => {
    const code = letter.codePointAt(0) ?? 0x20;
    return code < 0x20 ? " " : `\\U+${code.toString(16).toUpperCase().padStart(4, "0")}`;
  });
}
