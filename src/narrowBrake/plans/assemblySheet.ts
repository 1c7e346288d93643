/**
 * The assembly drawn on pages of their own: top view, front view, and the section through a bolt, each to a stated scale, with the names
 * of the pieces and the sizes that the pieces' own drawings don't have. Third-angle projection, marked.
 */
import type { Mark } from "../../drawing/model.ts";
import { onPaper, type Page, type Placed } from "../../drawing/page.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "../../drawing/pageSize.ts";
import type { Point } from "../../plane/point.ts";
import { formatLength, type LengthUnit } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import type { NarrowBrakePlan } from "../narrowBrake.ts";
import { boxOfShape, isRound, type Piece, pieceOf } from "../solid.ts";
import { type Side, seenBox, viewFrom } from "./orthographic.ts";
import { largerOf, type Scale } from "./scales.ts";
import { sectionSheet } from "./sectionSheet.ts";
import { label, leaders, measured, placer, ROW_MM, titleMarks, unitName, type Window } from "./sheetParts.ts";

/** Pages: top view, front view, section; each upright or lying, whichever shows it larger. */
export function assemblySheets(plan: NarrowBrakePlan, units: LengthUnit, size: PageSize): Page[] {
  return [topSheet(plan, units, size), frontSheet(plan, units, size), sectionSheet(plan, units, size)];
}

/** Handles as they are drawn: cut short, so that the rest shows at a larger scale. */
function shownPieces({ assembly, places, sizes }: NarrowBrakePlan): Piece[] {
  const endX = Math.min(places.handleEndX, sizes.leafMm + 60);
  return assembly.pieces
    .filter(({ name }) => name !== "foot bolt")
    .map((piece) =>
      piece.name === "handle" && isRound(piece.shape)
        ? { ...piece, shape: { ...piece.shape, to: [endX, piece.shape.to[1], piece.shape.to[2]] as const } }
        : piece,
    );
}

/** Room for names on the right and for dimensions on the left and above or below, millimetres of the page. */
const NAMES_MM: Mm = 48;
const LEFT_MM: Mm = 26;
const TITLE_ROOM_MM: Mm = 18;

interface Laid {
  readonly size: PageSize;
  readonly scale: Scale;
  readonly placed: Placed;
  readonly place: (point: Point) => Point;
  readonly window: Window;
}

/** A view on the page that shows it larger, with rows of dimensions above and below. */
function laid(
  side: Side,
  pieces: readonly Piece[],
  rows: { readonly above: number; readonly below: number },
  units: LengthUnit,
  upright: PageSize,
): Laid {
  const window = windowOf(side, pieces);
  const { size, scale } = largerOf(upright, units, window, ({ widthMm, heightMm }) => ({
    wideMm: widthMm - 2 * PRINTER_MARGIN_MM - NAMES_MM - LEFT_MM,
    highMm: heightMm - 2 * PRINTER_MARGIN_MM - TITLE_ROOM_MM - (rows.above + rows.below + 1.5) * ROW_MM,
  }));
  const at = {
    x: (size.widthMm + LEFT_MM - NAMES_MM) / 2,
    top: size.heightMm - PRINTER_MARGIN_MM - TITLE_ROOM_MM - (rows.above + 0.7) * ROW_MM,
  };
  return {
    size,
    scale,
    window,
    place: placer(window, at, scale),
    placed: view(side, pieces, window, at, scale),
  };
}

function topSheet(plan: NarrowBrakePlan, units: LengthUnit, upright: PageSize): Page {
  const pieces = shownPieces(plan);
  const { places, assembly } = plan;
  const words = (mm: Mm) => formatLength(mm, units);
  const { size, scale, placed, place, window } = laid("top", pieces, { above: 1, below: 2 }, units, upright);
  const middles = (name: string) =>
    pieces
      .filter((piece) => piece.name === name)
      .map(({ shape }) => (boxOfShape(shape).min[2] + boxOfShape(shape).max[2]) / 2)
      .sort((p, q) => p - q);
  const capBack = -boxOfShape(pieceOf(assembly, "cap").shape).min[0];
  const apart = (ws: readonly Mm[], y: Mm, offset: (i: number) => Mm): Mark[] =>
    ws
      .slice(1)
      .map((w, i) => measured(place({ x: ws[i]!, y }), place({ x: w, y }), words(w - ws[i]!), offset(i)));
  const left = (depth: Mm, offset: Mm) =>
    measured(place({ x: window.min.x, y: 0 }), place({ x: window.min.x, y: depth }), words(depth), offset);
  const handles = middles("handle");
  const feet = middles("foot");
  const below = (ws: readonly Mm[], row: number): Mark[] =>
    ws.length < 2
      ? []
      : [
          measured(
            place({ x: ws[1]!, y: window.min.y }),
            place({ x: ws[0]!, y: window.min.y }),
            words(ws[1]! - ws[0]!),
            row * ROW_MM,
          ),
        ];
  return {
    size,
    placed: [
      placed,
      onPaper(size, "Top view of the narrow brake.", [
        ...titleMarks(
          [
            `Top view, ${scale.words}. Lengths in ${unitName(units)}. Dashed: hidden.`,
            `Below it: handles apart${feet.length > 0 ? ", then feet apart, middle to middle" : ""}. Handles cut short: they reach ${words(places.handleEndX)} from the pivot.`,
          ],
          size,
        ),
        ...names("top", pieces, place, [
          "bed cap",
          "holder",
          "leaf",
          "screw rail",
          "handle",
          "bed ear",
          "foot",
        ]),
        ...apart(middles("hold-down bolt"), window.max.y, () => 5),
        left(capBack, 7),
        left(places.railBackMm, 15),
        ...below(handles, 0.8),
        ...below(feet, 1.8),
      ]),
    ],
  };
}

function frontSheet(plan: NarrowBrakePlan, units: LengthUnit, upright: PageSize): Page {
  const pieces = shownPieces(plan);
  const words = (mm: Mm) => formatLength(mm, units);
  const { size, scale, placed, place, window } = laid(
    "front",
    pieces,
    { above: 0, below: 5 },
    units,
    upright,
  );
  const box = (id: string) => boxOfShape(pieceOf(plan.assembly, id).shape);
  const lowY = window.min.y;
  const lengths = [
    { name: "clamp bar", from: box("bar").min[2], to: box("bar").max[2] },
    { name: "holder", from: box("holder").min[2], to: box("holder").max[2] },
    { name: "leaf", from: box("leaf").min[2], to: box("leaf").max[2] },
    { name: "spine", from: box("spine").min[2], to: box("spine").max[2] },
    { name: "over the ears", from: box("bed-ear-left").min[2], to: box("bed-ear-right").max[2] },
  ];
  return {
    size,
    placed: [
      placed,
      onPaper(size, "Front view of the narrow brake.", [
        ...titleMarks([`Front view, ${scale.words}. Lengths in ${unitName(units)}. Dashed: hidden.`], size),
        ...names("front", pieces, place, ["spine", "leaf", "leaf ear", "bed ear", "hold-down nut", "foot"]),
        ...lengths.map(({ from, to }, i) =>
          measured(
            place({ x: to, y: lowY }),
            place({ x: from, y: lowY }),
            words(to - from),
            (i + 0.8) * ROW_MM,
          ),
        ),
        ...lengths.map(({ name }, i) =>
          label(name, PRINTER_MARGIN_MM, place({ x: 0, y: lowY }).y - (i + 0.8) * ROW_MM - 1),
        ),
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
