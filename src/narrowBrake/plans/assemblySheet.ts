/**
 * The assembly drawn on pages of their own: front and top view, and the section through a bolt, each to a stated scale, with the names
 * of the pieces and the sizes that the pieces' own drawings don't have. Third-angle projection, marked.
 */
import type { Mark } from "../../drawing/model.ts";
import { onItsSide, onPaper, type Page, type Placed } from "../../drawing/page.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "../../drawing/pageSize.ts";
import { spread } from "../../drawing/spread.ts";
import type { Point } from "../../plane/point.ts";
import { formatLength, type LengthUnit } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import type { NarrowBrakePlan } from "../narrowBrake.ts";
import { boxOfShape, isRound, type Piece, pieceOf } from "../solid.ts";
import { projectionSign } from "./projectionSign.ts";
import { seenBox, type Side, viewFrom } from "./orthographic.ts";
import { type Scale, scaleFor } from "./scales.ts";
import { sectionPlace, sectionThrough } from "./sectionThrough.ts";

const TITLE_MM: Mm = 5;
const WORDS_MM: Mm = 3;
/** Room beside a view for names and dimensions, millimetres of the page. */
const BESIDE_MM: Mm = 40;
const ROW_MM: Mm = 7.5;

/** Pages: front and top view, then the section. */
export function assemblySheets(plan: NarrowBrakePlan, units: LengthUnit, size: PageSize): Page[] {
  const aside = onItsSide(size);
  return [frontAndTop(plan, units, aside), section(plan, units, aside)];
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
  const pieces = cutShort(assembly.pieces, Math.min(places.handleEndX, sizes.leafMm + 60)).filter(({ name }) => name !== "foot bolt");
  const words = (mm: Mm) => formatLength(mm, units);
  const front = windowOf("front", pieces);
  const top = windowOf("top", pieces);
  const room = { wideMm: size.widthMm - 2 * PRINTER_MARGIN_MM - 44, highMm: size.heightMm - 2 * PRINTER_MARGIN_MM - 78 };
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
    ...boltWs.slice(1).map((w, i) =>
      measured(onTop({ x: boltWs[i]!, y: top.max.y }), onTop({ x: w, y: top.max.y }), words(w - boltWs[i]!), 5),
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
  const lengthNames = ["clamp bar", "holder", "leaf", "over the ears"].map((name, i): Mark => ({
    kind: "text",
    layer: "note",
    at: { x: PRINTER_MARGIN_MM, y: onFront({ x: 0, y: lowY }).y - (i + 1) * ROW_MM - 1 },
    words: name,
    heightMm: WORDS_MM,
    anchor: "start",
  }));
  return {
    size,
    placed: [
      ...views,
      onPaper(size, "Front and top view of the narrow brake.", [
        ...titleMarks(`Assembly: top view over front view, ${scale.words}. Lengths in ${unitName(units)}. Dashed: hidden. Handles cut short; they reach ${words(places.handleEndX)} from the pivot.`, size),
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

function section(plan: NarrowBrakePlan, units: LengthUnit, size: PageSize): Page {
  const { assembly, places } = plan;
  const { pieces } = assembly;
  const box = (id: string) => boxOfShape(pieceOf(assembly, id).shape);
  const boxes = pieces.filter(({ name }) => name !== "handle" && name !== "foot bolt").map(({ shape }) => boxOfShape(shape));
  const leaf = box("leaf");
  const handleShown = leaf.max[0] + 35;
  const min = { x: Math.min(...boxes.map((one) => one.min[0])), y: Math.min(...boxes.map((one) => one.min[1])) };
  const max = { x: handleShown, y: Math.max(...boxes.map((one) => one.max[1])) };
  const room = { wideMm: size.widthMm - 2 * PRINTER_MARGIN_MM - 2 * BESIDE_MM - 36, highMm: size.heightMm - 2 * PRINTER_MARGIN_MM - 60 };
  const scale = scaleFor({ wideMm: max.x - min.x, highMm: max.y - min.y }, room, units);
  const window = { min, max, wideMm: max.x - min.x, highMm: max.y - min.y };
  const at = { x: size.widthMm / 2, top: size.heightMm - PRINTER_MARGIN_MM - 46 };
  const place = placer(window, at, scale);
  const words = (mm: Mm) => formatLength(mm, units);
  const drawing: Placed = {
    drawing: { sentence: "Section through a bolt.", window, marks: sectionThrough(assembly) },
    at: place(min),
    scale: scale.ratio,
  };
  const [bar, holder, spine, cap, bolt] = ["bar", "holder", "spine", "cap", "bolt-1"].map(box) as [
    ReturnType<typeof box>,
    ReturnType<typeof box>,
    ReturnType<typeof box>,
    ReturnType<typeof box>,
    ReturnType<typeof box>,
  ];
  const boltX = (bolt.min[0] + bolt.max[0]) / 2;
  const topY = max.y;
  const level = (fromX: Mm, toX: Mm, y: Mm, rows: number) => {
    const distance = Math.abs(toX - fromX);
    return measured(place({ x: fromX, y }), place({ x: toX, y }), words(distance), rows * ROW_MM);
  };
  const dims: Mark[] = [
    level(boltX, 0, topY, 0.7),
    level(holder.max[0], bar.max[0], topY, 1.7),
    level(spine.max[0], 0, topY, 2.7),
    level(0, cap.min[0], min.y, 1),
    measured(place({ x: min.x, y: cap.min[1] }), place({ x: min.x, y: 0 }), words(-cap.min[1]), 6),
    measured(place({ x: min.x, y: spine.min[1] }), place({ x: min.x, y: cap.min[1] }), words(cap.min[1] - spine.min[1]), 6),
    measured(place({ x: handleShown, y: 0 }), place({ x: handleShown, y: leaf.min[1] }), words(-leaf.min[1]), 6),
  ];
  const named: readonly (readonly [string, Point])[] = [
    ["clamp bar", { x: bar.max[0] - 3, y: (bar.min[1] + bar.max[1]) / 2 }],
    ["holder", { x: holder.max[0] - 4, y: (holder.min[1] + holder.max[1]) / 2 }],
    ["hold-down bolt, nut, washer", { x: boltX, y: box("nut-1").max[1] - 2 }],
    ["leaf", { x: leaf.max[0] / 2, y: leaf.min[1] * 0.3 }],
    ["handle", { x: handleShown - 8, y: (box("handle-1").min[1] + box("handle-1").max[1]) / 2 }],
    ["pivot on the cap's edge", { x: 0, y: 0 }],
  ];
  const namedLeft: readonly (readonly [string, Point])[] = [
    ["setback screw, lock nut", { x: box("setback-screw-1").min[0] + 2, y: places.screwY }],
    ["screw rail", { x: cap.min[0] + 2, y: places.screwY + plan.sizes.screw.diameterMm }],
    ["heel strip", { x: -places.stripFrontMm - 3, y: 0.3 }],
    ["bed cap", { x: cap.min[0] + 8, y: cap.min[1] / 2 }],
    ["spine", { x: (spine.min[0] + spine.max[0]) / 2, y: spine.min[1] * 0.8 }],
    ["bed ear, behind", { x: -places.bedEarLongMm + places.earRadiusMm + 2, y: places.bedEarLowY + 3 }],
  ];
  return {
    size,
    placed: [
      drawing,
      onPaper(size, "Section of the narrow brake.", [
        ...titleMarks(
          `Section through a bolt, ${words(Math.abs(sectionPlace(assembly)))} ${units} from the middle, ${scale.words}. Lengths in ${unitName(units)}. Handles cut short; they reach ${words(places.handleEndX)} from the pivot.`,
          size,
        ),
        ...dims,
        ...leaders(named, place, size.widthMm - PRINTER_MARGIN_MM - BESIDE_MM + 2, "start"),
        ...leaders(namedLeft, place, PRINTER_MARGIN_MM + BESIDE_MM - 2, "end"),
      ]),
    ],
  };
}

interface Window {
  readonly min: Point;
  readonly max: Point;
  readonly wideMm: Mm;
  readonly highMm: Mm;
}

function windowOf(side: Side, pieces: readonly Piece[]): Window {
  const boxes = pieces.map(({ shape }) => seenBox(side, boxOfShape(shape)));
  const min = { x: Math.min(...boxes.map((one) => one.min.x)), y: Math.min(...boxes.map((one) => one.min.y)) };
  const max = { x: Math.max(...boxes.map((one) => one.max.x)), y: Math.max(...boxes.map((one) => one.max.y)) };
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
    drawing: { sentence: `The brake from the ${side}.`, window: grown(window, 1), marks: viewFrom(side, pieces) },
    at: placer(window, at, scale)({ x: window.min.x - 1, y: window.min.y - 1 }),
    scale: scale.ratio,
  };
}

function grown({ min, max }: Window, by: Mm) {
  return { min: { x: min.x - by, y: min.y - by }, max: { x: max.x + by, y: max.y + by } };
}

/** Where a point of the view comes to lie on the page. */
function placer({ min, max }: Window, at: { readonly x: Mm; readonly top: Mm }, { ratio }: Scale) {
  const middle = (min.x + max.x) / 2;
  return (point: Point): Point => ({ x: at.x + (point.x - middle) * ratio, y: at.top - (max.y - point.y) * ratio });
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

function leaders(
  named: readonly (readonly [string, Point])[],
  place: (point: Point) => Point,
  x: Mm,
  anchor: "start" | "end",
): Mark[] {
  const sorted = [...named].sort((a, b) => place(a[1]).y - place(b[1]).y);
  const ys = spread(
    sorted.map(([, point]) => place(point).y),
    WORDS_MM * 1.6,
  );
  return sorted.flatMap(([words, point], i): Mark[] => {
    const to = place(point);
    const from = { x: anchor === "start" ? x - 1 : x + 1, y: ys[i]! + WORDS_MM * 0.35 };
    return [
      { kind: "line", layer: "dimension", from, to },
      { kind: "arc", layer: "cut", center: to, radius: 0.4, startRad: 0, sweepRad: 2 * Math.PI },
      { kind: "text", layer: "note", at: { x, y: ys[i]! }, words, heightMm: WORDS_MM, anchor },
    ];
  });
}

function titleMarks(words: string, size: PageSize): Mark[] {
  const top = size.heightMm - PRINTER_MARGIN_MM;
  return [
    { kind: "text", layer: "note", at: { x: PRINTER_MARGIN_MM, y: top - TITLE_MM }, words: "Shop-made narrow brake", heightMm: TITLE_MM, anchor: "start" },
    label(words, PRINTER_MARGIN_MM, top - TITLE_MM - 5.5),
    ...projectionSign({ x: size.widthMm - PRINTER_MARGIN_MM - 30, y: top - 6 }),
  ];
}

function unitName(units: LengthUnit): string {
  return units === "in" ? "inches" : "millimetres";
}

function label(words: string, x: Mm, y: Mm): Mark {
  return { kind: "text", layer: "note", at: { x, y }, words, heightMm: WORDS_MM, anchor: "start" };
}

function measured(from: Point, to: Point, words: string, offsetMm: Mm): Mark {
  return { kind: "dimension", layer: "dimension", from, to, words, offsetMm };
}
