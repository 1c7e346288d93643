/**
 * The assembly drawn on pages of their own: front and top view, and the section through a bolt, each to a stated scale, with the names
 * of the pieces and the sizes that the pieces' own drawings don't have. Third-angle projection, marked.
 */
import type { Mark } from "../../drawing/model.ts";
import { onItsSide, onPaper, type Page, type Placed } from "../../drawing/page.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "../../drawing/pageSize.ts";
import type { Point } from "../../plane/point.ts";
import { formatLength, type LengthUnit } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import type { NarrowBrakePlan } from "../narrowBrake.ts";
import { boxOfShape, isRound, type Piece, pieceOf } from "../solid.ts";
import { type Side, seenBox, viewFrom } from "./orthographic.ts";
import { type Scale, scaleFor } from "./scales.ts";
import { sectionSheet } from "./sectionSheet.ts";
import {
  label,
  leaders,
  measured,
  placer,
  ROW_MM,
  titleMarks,
  unitName,
  type Window,
  WORDS_MM,
} from "./sheetParts.ts";

/** Pages: front and top view, then the section. */
export function assemblySheets(plan: NarrowBrakePlan, units: LengthUnit, size: PageSize): Page[] {
  const aside = onItsSide(size);
  return [frontAndTop(plan, units, aside), sectionSheet(plan, units, aside)];
}

/** Handles as they are drawn: cut short, so that the rest shows at a larger scale. */
function cutShort(pieces: readonly Piece[], endX: Mm): Piece[] {
  return pieces.map((piece) =>
    piece.name === "handle" && isRound(piece.shape)
      ? { ...piece, shape: { ...piece.shape, to: [endX, piece.shape.to[1], piece.shape.to[2]] as const } }
      : piece,
  );
}

function frontAndTop({ assembly, places, sizes }: NarrowBrakePlan, units: LengthUnit, size: PageSize): Page {
  const pieces = cutShort(assembly.pieces, Math.min(places.handleEndX, sizes.leafMm + 60)).filter(
    ({ name }) => name !== "foot bolt",
  );
  const words = (mm: Mm) => formatLength(mm, units);
  const front = windowOf("front", pieces);
  const top = windowOf("top", pieces);
  const room = {
    wideMm: size.widthMm - 2 * PRINTER_MARGIN_MM - 44,
    highMm: size.heightMm - 2 * PRINTER_MARGIN_MM - 96,
  };
  const scale = scaleFor({ wideMm: front.wideMm, highMm: front.highMm + top.highMm }, room, units);
  const centerX = size.widthMm / 2;
  const topAt = size.heightMm - PRINTER_MARGIN_MM - 26;
  const frontAt = topAt - top.highMm * scale.ratio - 30;
  const views = [
    view("top", pieces, top, { x: centerX, top: topAt }, scale),
    view("front", pieces, front, { x: centerX, top: frontAt }, scale),
  ];
  const onTop = placer(top, { x: centerX, top: topAt }, scale);
  const onFront = placer(front, { x: centerX, top: frontAt }, scale);
  const bolts = pieces.filter(({ name }) => name === "hold-down bolt").map(({ shape }) => boxOfShape(shape));
  const box = (id: string) => boxOfShape(pieceOf(assembly, id).shape);
  const wide = (id: string, y: Mm, rows: number): Mark => {
    const { min, max } = box(id);
    const [a, b] = [onFront({ x: max[2], y }), onFront({ x: min[2], y })];
    return measured(a, b, words(max[2] - min[2]), rows * ROW_MM);
  };
  const lowY = front.min.y;
  const boltWs = bolts.map(({ min, max }) => (min[2] + max[2]) / 2);
  const dims: Mark[] = [
    ...boltWs
      .slice(1)
      .map((w, i) =>
        measured(
          onTop({ x: boltWs[i]!, y: top.max.y }),
          onTop({ x: w, y: top.max.y }),
          words(w - boltWs[i]!),
          5,
        ),
      ),
    wide("bar", lowY, 1),
    wide("holder", lowY, 2),
    wide("leaf", lowY, 3),
    measured(
      onFront({ x: box("bed-ear-right").max[2], y: lowY }),
      onFront({ x: box("bed-ear-left").min[2], y: lowY }),
      words(box("bed-ear-right").max[2] - box("bed-ear-left").min[2]),
      4 * ROW_MM,
    ),
    measured(
      onTop({ x: top.min.x, y: 0 }),
      onTop({ x: top.min.x, y: -box("cap").min[0] }),
      words(-box("cap").min[0]),
      7,
    ),
    measured(
      onTop({ x: top.min.x, y: 0 }),
      onTop({ x: top.min.x, y: places.railBackMm }),
      words(places.railBackMm),
      15,
    ),
  ];
  const lengthNames = ["clamp bar", "holder", "leaf", "over the ears"].map(
    (name, i): Mark => ({
      kind: "text",
      layer: "note",
      at: { x: PRINTER_MARGIN_MM, y: onFront({ x: 0, y: lowY }).y - (i + 1) * ROW_MM - 1 },
      words: name,
      heightMm: WORDS_MM,
      anchor: "start",
    }),
  );
  return {
    size,
    placed: [
      ...views,
      onPaper(size, "Front and top view of the narrow brake.", [
        ...titleMarks(
          `Assembly: top view over front view, ${scale.words}. Lengths in ${unitName(units)}. Dashed: hidden. Handles cut short; they reach ${words(places.handleEndX)} from the pivot.`,
          size,
        ),
        ...names("top", pieces, onTop, ["bed cap", "holder", "leaf", "screw rail", "handle", "bed ear"]),
        ...names("front", pieces, onFront, ["spine", "leaf ear", "hold-down nut", "foot"]),
        label("top view", PRINTER_MARGIN_MM, topAt + 8),
        label("front view", PRINTER_MARGIN_MM, frontAt + 8),
        ...dims,
        ...lengthNames,
      ]),
    ],
  };
}

function windowOf(side: Side, pieces: readonly Piece[]): Window {
  const boxes = pieces.map(({ shape }) => seenBox(side, boxOfShape(shape)));
  const min = {
    x: Math.min(...boxes.map((one) => one.min.x)),
    y: Math.min(...boxes.map((one) => one.min.y)),
  };
  const max = {
    x: Math.max(...boxes.map((one) => one.max.x)),
    y: Math.max(...boxes.map((one) => one.max.y)),
  };
  return { min, max, wideMm: max.x - min.x, highMm: max.y - min.y };
}

function view(
  side: Side,
  pieces: readonly Piece[],
  window: Window,
  at: { readonly x: Mm; readonly top: Mm },
  scale: Scale,
): Placed {
  return {
    drawing: {
      sentence: `The brake from the ${side}.`,
      window: grown(window, 1),
      marks: viewFrom(side, pieces),
    },
    at: placer(window, at, scale)({ x: window.min.x - 1, y: window.min.y - 1 }),
    scale: scale.ratio,
  };
}

function grown({ min, max }: Window, by: Mm) {
  return { min: { x: min.x - by, y: min.y - by }, max: { x: max.x + by, y: max.y + by } };
}

/** Names beside a view, each with a leader to the right-hand part of its piece. */
function names(
  side: Side,
  pieces: readonly Piece[],
  place: (point: Point) => Point,
  wanted: readonly string[],
): Mark[] {
  const named = wanted.flatMap((name): (readonly [string, Point])[] => {
    const last = pieces.filter((piece) => piece.name === name).at(-1);
    if (!last) return [];
    const { min, max } = seenBox(side, boxOfShape(last.shape));
    return [[name, { x: max.x - Math.min(3, (max.x - min.x) / 2), y: (min.y + max.y) / 2 }]];
  });
  const rightmost = Math.max(...pieces.map(({ shape }) => place(seenBox(side, boxOfShape(shape)).max).x));
  return leaders(named, place, rightmost + 14, "start");
}
