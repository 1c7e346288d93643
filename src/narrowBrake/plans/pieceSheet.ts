/**
 * The drawing of one piece for the saw and the drill: its face with every hole, its end, a table of holes with tap drills, and what
 * is to be done to it in words. Dimensions from one end and one edge, in the shop's unit; scales stated.
 */
import type { Block } from "../../drawing/block.ts";
import type { Mark } from "../../drawing/model.ts";
import { pageTable } from "../../drawing/pageTable.ts";
import { paragraph } from "../../drawing/paragraph.ts";
import { polygon } from "../../drawing/polygon.ts";
import type { Point } from "../../plane/point.ts";
import { formatLength, type LengthUnit } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import type { CutPiece } from "../narrowBrake.ts";
import type { Piece } from "../solid.ts";
import type { FlatHead, TappedThread } from "../stockSize.ts";
import { faceOf, type HoleKind, holeKinds, type PieceFace } from "./pieceFace.ts";
import { scaleFor } from "./scales.ts";

const HEAD_MM: Mm = 4.4;
const WORDS_MM: Mm = 3;
const ROW_MM: Mm = 7;
const FACE_HIGH_MM: Mm = 48;
const LOW_FACE_MM: Mm = 14;
const END_ROOM = { wideMm: 46, highMm: 34 } as const;
const TABLE_LEFT_MM: Mm = 66;

export interface SheetFor {
  readonly units: LengthUnit;
  readonly widthMm: Mm;
  /** Threads with their tap drills. */
  readonly threads: readonly (TappedThread | FlatHead)[];
  /** More to say under the end view: nose radius and bevel of the bar. */
  readonly endNote?: string;
}

/** One piece's drawing as a block of a page. */
export function pieceSheet(piece: Piece, cut: CutPiece, sheet: SheetFor): Block {
  const { units, widthMm } = sheet;
  const face = faceOf(piece);
  const kinds = holeKinds(face);
  const words = (mm: Mm) => formatLength(mm, units);
  const title = paragraph(`${cut.item}  ${cut.piece}, ${cut.count} off: ${cut.stock}`, HEAD_MM, widthMm);
  const work = paragraph(
    `${cut.work} Lengths in ${units === "in" ? "inches" : "millimetres"}.`,
    WORDS_MM,
    widthMm,
  );
  const scale = scaleFor(
    { wideMm: face.longMm, highMm: face.wideMm },
    { wideMm: widthMm - 50, highMm: FACE_HIGH_MM },
    units,
  );
  const chains = chainsOf(kinds);
  // One chain above the face, one below; more would write over each other, and the table has all of them.
  const [over, under] = chains;
  const rows = (chain: Chain | undefined) => (chain ? rowsOf(chain, scale.ratio, words) : 0);
  const faceHighMm = face.wideMm * scale.ratio;
  // Arrows that stand outside a low face want room under the title.
  const aboveMm = ROW_MM * rows(over) + (faceHighMm < LOW_FACE_MM && over === undefined ? 11 : 4);
  const belowMm = ROW_MM * (1 + rows(under));
  const endScale = face.end && scaleFor(boxSize(face.end), END_ROOM, units);
  const table =
    kinds.length > 0 ? holeTable(kinds, sheet, widthMm - (face.end ? TABLE_LEFT_MM : 0)) : undefined;
  const endHighMm = face.end ? boxSize(face.end).highMm * endScale!.ratio + 2 * ROW_MM + 6 : 0;
  const note = sheet.endNote ? paragraph(sheet.endNote, WORDS_MM, widthMm) : undefined;
  const lowerMm = Math.max(endHighMm, table?.heightMm ?? 0);
  const viewMm = aboveMm + faceHighMm + belowMm + 7;
  return {
    heightMm: title.heightMm + viewMm + lowerMm + 3 + (note?.heightMm ?? 0) + work.heightMm + 4,
    put: (leftMm, topMm) => {
      const marks: Mark[] = [...title.put(leftMm, topMm).marks];
      const faceTop = topMm - title.heightMm - aboveMm;
      const faceLeft = leftMm + 24;
      marks.push(
        ...faceMarks(face, [over, under], { left: faceLeft, top: faceTop, ratio: scale.ratio }, words),
      );
      marks.push(caption(`Face, ${scale.words}`, faceLeft, faceTop - faceHighMm - belowMm - 5));
      const lowerTop = topMm - title.heightMm - viewMm;
      if (face.end && endScale) {
        marks.push(
          ...endMarks(face.end, { left: leftMm + 12, top: lowerTop - 6, ratio: endScale.ratio }, words),
          caption(`End, ${endScale.words}`, leftMm, lowerTop - endHighMm + 1),
        );
      }
      if (table) marks.push(...table.put(leftMm + (face.end ? TABLE_LEFT_MM : 0), lowerTop).marks);
      let at = lowerTop - lowerMm - 3;
      if (note) {
        marks.push(...note.put(leftMm, at).marks);
        at -= note.heightMm;
      }
      marks.push(...work.put(leftMm, at).marks);
      return { marks };
    },
  };
}

/** Places along the piece that are told in one chain, and the letters of the holes that stand there. */
interface Chain {
  readonly letters: readonly string[];
  readonly steps: readonly Step[];
}

interface Step {
  readonly from: Mm;
  readonly to: Mm;
  /** Over many equal steps of which only the first is drawn: it stands in a row of its own. */
  readonly whole?: true;
}

/** From so many equal steps on the first and the whole are told, and the table has each place. */
const MANY_STEPS = 4;

/** Kinds of holes at the same places share a chain. */
function chainsOf(kinds: readonly HoleKind[]): Chain[] {
  const chains = new Map<string, { letters: string[]; places: Mm[] }>();
  for (const { letter, holes } of kinds) {
    const places = [...new Set(holes.map(({ alongMm }) => Number(alongMm.toFixed(4))))].sort((a, b) => a - b);
    const known = chains.get(places.join());
    if (known) known.letters.push(letter);
    else chains.set(places.join(), { letters: [letter], places });
  }
  return [...chains.values()].map(({ letters, places }) => ({
    letters,
    steps: stepsOf(places),
  }));
}

function stepsOf(places: readonly Mm[]): Step[] {
  const steps = places.map((to, i) => ({ from: i === 0 ? 0 : places[i - 1]!, to }));
  const [first, second, ...rest] = steps;
  const equal = second && rest.every(({ from, to }) => Math.abs(to - from - second.to + second.from) < 1e-3);
  if (!equal || rest.length + 1 < MANY_STEPS) return steps;
  return [first!, second, { from: second.from, to: places.at(-1)!, whole: true }];
}

/** A step too short for its figure stands a row higher, where nothing stands beside it. */
function isShort({ from, to, whole }: Step, ratio: number, words: (mm: Mm) => string) {
  return whole === true || (to - from) * ratio < words(to - from).length * 1.65 + 6;
}

function rowsOf({ steps }: Chain, ratio: number, words: (mm: Mm) => string): number {
  const short = steps.filter((step) => isShort(step, ratio, words)).length;
  return (short < steps.length ? 1 : 0) + short;
}

interface Place {
  readonly left: Mm;
  readonly top: Mm;
  readonly ratio: number;
}

function faceMarks(
  face: PieceFace,
  [over, under]: readonly [Chain | undefined, Chain | undefined],
  { left, top, ratio }: Place,
  words: (mm: Mm) => string,
): Mark[] {
  const at = (along: Mm, across: Mm) => ({ x: left + along * ratio, y: top - across * ratio });
  const marks: Mark[] = [
    {
      kind: "outline",
      layer: "face",
      outline: polygon(face.outline.map(([along, across]) => at(along, across))),
    },
  ];
  for (const hole of face.holes) {
    const center = at(hole.alongMm, hole.acrossMm);
    const radius = Math.max((hole.diameterMm / 2) * ratio, 0.35);
    const arm = radius + 1.5;
    if (!hole.slot) {
      const layer = hole.deepMm === null ? "edge" : "hidden";
      marks.push({ kind: "arc", layer, center, radius, startRad: 0, sweepRad: 2 * Math.PI });
    }
    marks.push(
      centreLine({ x: center.x - arm, y: center.y }, { x: center.x + arm, y: center.y }),
      centreLine({ x: center.x, y: center.y - arm }, { x: center.x, y: center.y + arm }),
    );
  }
  const chainMarks = (chain: Chain, across: Mm, first: Mm, sign: 1 | -1) => {
    const long = chain.steps.filter((step) => !isShort(step, ratio, words));
    const short = chain.steps.filter((step) => isShort(step, ratio, words));
    const rows = [...(long.length > 0 ? [long] : []), ...short.map((step) => [step])];
    rows.forEach((row, i) => {
      const offset = sign * (first + i * ROW_MM);
      for (const { from, to } of row) {
        marks.push(measure(at(from, across), at(to, across), words(to - from), offset));
      }
    });
    const y = at(0, across).y + sign * first - 1;
    marks.push(caption(chain.letters.join(", "), left - 20, y));
    return rows.length;
  };
  if (over) chainMarks(over, 0, 4, 1);
  const below = under ? chainMarks(under, face.wideMm, 5, -1) : 0;
  marks.push(
    measure(at(face.longMm, face.wideMm), at(0, face.wideMm), words(face.longMm), ROW_MM * (1 + below)),
  );
  // Written from the top down, so that a figure with no room stands under the face.
  marks.push(measure(at(0, 0), at(0, face.wideMm), words(face.wideMm), -9));
  const across = [...new Set(face.holes.map(({ acrossMm }) => Number(acrossMm.toFixed(4))))];
  across.slice(0, 3).forEach((from, i) => {
    marks.push(measure(at(face.longMm, 0), at(face.longMm, from), words(from), 6 + i * 8));
  });
  return marks;
}

function endMarks(
  end: readonly (readonly [Mm, Mm])[],
  { left, top, ratio }: Place,
  words: (mm: Mm) => string,
): Mark[] {
  const minX = Math.min(...end.map(([x]) => x));
  const maxY = Math.max(...end.map(([, y]) => y));
  const { wideMm, highMm } = boxSize(end);
  const at = (x: Mm, y: Mm) => ({ x: left + (x - minX) * ratio, y: top - (maxY - y) * ratio });
  return [
    { kind: "outline", layer: "face", outline: polygon(end.map(([x, y]) => at(x, y))) },
    measure(at(minX + wideMm, maxY - highMm), at(minX, maxY - highMm), words(wideMm), ROW_MM),
    measure(at(minX + wideMm, maxY), at(minX + wideMm, maxY - highMm), words(highMm), ROW_MM),
  ];
}

function holeTable(kinds: readonly HoleKind[], { units, threads }: SheetFor, widthMm: Mm): Block {
  // A fraction keeps its whole number beside it where a cell is broken into lines.
  const words = (mm: Mm) => formatLength(mm, units).replace(" ", "-");
  const rows = kinds.map(({ letter, holes }) => {
    const [one] = holes;
    const thread = threads.find(({ name }) => name === one!.tapped);
    const size = one!.tapped
      ? `tap ${one!.tapped}, drill ${thread?.tapDrill ?? ""}`
      : one!.reason === "countersink"
        ? `countersink to ${words(one!.diameterMm)}`
        : `${words(one!.diameterMm)}${one!.slot ? ", slot as wide" : ""}`;
    const sorted = [...holes].sort((a, b) => a.alongMm - b.alongMm);
    const across = [...new Set(sorted.map(({ acrossMm }) => words(acrossMm)))];
    return [
      `${letter} × ${holes.length}`,
      size,
      one!.reason === "countersink" ? "from below" : one!.deepMm === null ? "through" : words(one!.deepMm),
      sorted.map(({ alongMm }) => words(alongMm)).join(", "),
      across.length === 1 ? across[0]! : sorted.map(({ acrossMm }) => words(acrossMm)).join(", "),
    ];
  });
  const shares = [0.12, 0.28, 0.14, 0.3, 0.16];
  const heads = ["Hole", `Size, ${units}`, "Deep", "From end", "From edge"];
  return pageTable(
    heads.map((heading, i) => ({ heading, widthMm: widthMm * shares[i]! })),
    rows,
    { wordsMm: WORDS_MM, leading: 1.25, insetMm: 0.8 },
  );
}

function centreLine(from: Point, to: Point): Mark {
  return { kind: "line", layer: "centre", from, to };
}

function measure(from: { x: Mm; y: Mm }, to: { x: Mm; y: Mm }, words: string, offsetMm: Mm): Mark {
  return { kind: "dimension", layer: "dimension", from, to, words, offsetMm };
}

function caption(words: string, x: Mm, y: Mm): Mark {
  return { kind: "text", layer: "note", at: { x, y }, words, heightMm: WORDS_MM, anchor: "start" };
}

function boxSize(profile: readonly (readonly [Mm, Mm])[]): { readonly wideMm: Mm; readonly highMm: Mm } {
  const xs = profile.map(([x]) => x);
  const ys = profile.map(([, y]) => y);
  return { wideMm: Math.max(...xs) - Math.min(...xs), highMm: Math.max(...ys) - Math.min(...ys) };
}
