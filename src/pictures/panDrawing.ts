/**
 * The blank of a pan at true size: cut line with its relief holes, bend tangent lines, bend lines and sight lines
 * across the walls, and running figures from one edge each way.
 */
import type { PanBlank, PanSide } from "../blank/pan.ts";
import type { Drawing, Layer, Mark } from "../drawing/model.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { lengthWords, placeWords } from "../words/lengthWords.ts";

const WORDS_MM: Mm = 3;
/** Rows of running figures under and beside the blank. */
const ROW_MM: Mm = 7;

/** Drawing of a pan's blank; x across its width, y along its length. */
export function drawPan(pan: PanBlank, units: "mm" | "in"): Drawing {
  const { across, along, outline, holes } = pan;
  const [width, length] = [across.sizeMm, along.sizeMm];
  const hole = lengthWords(holes[0]?.diameterMm ?? 0, units);
  const marks: Mark[] = [
    { kind: "outline", layer: "cut", outline, caption: "blank" },
    ...bendMarks(across, insideOf(along), (at, run) => ({ x: at, y: run })),
    ...bendMarks(along, insideOf(across), (at, run) => ({ x: run, y: at })),
    ...running(across, units, (at) => ({ x: at, y: 0 }), -1),
    ...running(along, units, (at) => ({ x: 0, y: at }), 1),
    text({ x: width / 2, y: length / 2 + 2 }, "bottom, marked face up"),
    text({ x: width / 2, y: length / 2 - 4 }, `relief holes ${hole} across`),
  ];
  const size = `${placeWords(width, units)} by ${placeWords(length, units)}`;
  const sentence = `Blank of a pan, ${size}, with a relief hole of ${hole} at each corner of its bottom.`;
  const room = 4 * ROW_MM + 8;
  return { sentence, window: { min: { x: -room, y: -room }, max: { x: width + 8, y: length + 8 } }, marks };
}

/** Lines of the two bends that cross a side, over the length of the walls that they turn up. */
function bendMarks(
  { bends, sightLinesMm }: PanSide,
  [from, to]: readonly [Mm, Mm],
  place: (at: Mm, run: Mm) => Point,
): readonly Mark[] {
  const line = (layer: Layer, at: Mm): Mark => {
    return { kind: "line", layer, from: place(at, from), to: place(at, to) };
  };
  return bends.flatMap(({ tangentsMm: [near, far] }, i) => [
    line("bendTangent", near),
    line("bendTangent", far),
    line("bendUp", (near + far) / 2),
    line("sightLine", sightLinesMm[i] ?? near),
  ]);
}

/** Figures from the edge: both sight lines, and the whole size; each on a row of its own. */
function running(
  side: PanSide,
  units: "mm" | "in",
  place: (at: Mm) => Point,
  outward: 1 | -1,
): readonly Mark[] {
  const ends = [...side.sightLinesMm, side.sizeMm];
  return ends.map((end, i) => ({
    kind: "dimension",
    layer: "dimension",
    from: place(0),
    to: place(end),
    words: `${i < 2 ? "sight " : ""}${placeWords(end, units)}`,
    offsetMm: outward * (i + 1) * ROW_MM,
  }));
}

function insideOf({ bends }: PanSide): readonly [Mm, Mm] {
  return [bends[0].tangentsMm[1], bends[1].tangentsMm[0]];
}

function text(at: Point, words: string): Mark {
  return { kind: "text", layer: "note", at, words, heightMm: WORDS_MM, anchor: "middle" };
}
