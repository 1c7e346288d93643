/**
 * Where dimensions and numbers stand on a drawing: dimension lines outside the sheet with extension lines and arrowheads,
 * figures that read from below and break their line (ISO 129-1, ASME Y14.5, from memory), angle arcs, numbers of bends on
 * leaders. Every label keeps off the sheet, the rim, other labels and their lines. All in canvas points, y down.
 */
import type { AskedLabel, AskedLength, AskedNote, Choice, Drawn, Placed, Size } from "./asked.ts";
import { type Box, boxesOverlap, boxInside, near, type Piece, shareInBox, throughBox } from "./boxes.ts";
import { arcChoices, atEnd, lengthChoices, noteChoices } from "./choices.ts";

export interface Ground {
  readonly width: number;
  readonly height: number;
  /** Middle lines of the sheet, and half its thickness. */
  readonly sheet: readonly Piece[];
  readonly half: number;
  /** Boxes that labels keep off, and their lines if they can: names of bodies. */
  readonly taken: readonly Box[];
  /** Boxes that labels alone keep off: the marks of a finding. */
  readonly marks: readonly Box[];
  /** Edges that a label had better not stand on. */
  readonly edges?: readonly Piece[];
}

/** What running over metal, over another stroke, or onto an edge costs; a step outward costs about 4. */
const OVER_METAL = 45;
const EXTENSION_OVER_METAL = 14;
const OVER_STROKE = 9;
const OVER_NAME = 25;
const ON_EDGE = 3;
/** Dearer than this a dimension is told by its figure on a leader. */
const TOO_DEAR = 60;
/** A label stays where it was while the leaf moves unless another place is better by this. */
const STAYING = 10;
const LABEL_AIR = 2;

/** So often the labels are placed anew, those first that found no place. */
const ATTEMPTS = 5;

/**
 * A place for each label, in the order asked. `before` holds which choice each took in the frame before.
 * What finds no room with its figure stands with its number alone; only on a canvas without any room it is left out.
 */
export function placedDimensions(
  asked: readonly AskedLabel[],
  ground: Ground,
  before: Map<string, number> = new Map(),
): readonly Placed[] {
  let order = asked;
  let best: readonly Placed[] = [];
  const first = new Set<string>();
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const placed = placedInOrder(order, ground, before, first);
    if (attempt > 0 && placed.length <= best.length) break;
    best = placed;
    const found = new Set(placed.map(({ key }) => key));
    const missing = asked.filter(({ key, kind }) => kind !== "angle" && !found.has(key));
    if (missing.length === 0) return placed;
    for (const { key } of missing) first.add(key);
    order = [...asked.filter(({ key }) => first.has(key)), ...asked.filter(({ key }) => !first.has(key))];
  }
  return best;
}

/** Places labels one after another; those of `small` with their number alone. */
function placedInOrder(
  asked: readonly AskedLabel[],
  ground: Ground,
  before: Map<string, number>,
  small: ReadonlySet<string>,
): readonly Placed[] {
  const placed: Placed[] = [];
  const boxes: Box[] = [];
  const strokes: Piece[] = [];
  const best: Best = (choices, one, most, way = "") => {
    const key = one + way;
    let [least, at] = [most, -1];
    let kept: Drawn | null = null;
    const last = before.get(key);
    const look = (i: number) => {
      const staying = i === last ? STAYING : 0;
      const choice = choices[i]!;
      if (choice.cost - staying >= least || !isFree(choice, ground, boxes, strokes)) return;
      const drawn = choice.drawn();
      const cost = costOf(choice, drawn, { ground, boxes, strokes, most: least + staying }) - staying;
      if (cost < least) [least, at, kept] = [cost, i, drawn];
    };
    // Where it was first, then the cheapest: most others then need not be looked at.
    if (last !== undefined && choices[last]) look(last);
    for (const i of cheapestFirst(choices)) {
      if (choices[i]!.cost >= least) break;
      look(i);
    }
    if (kept === null) return null;
    before.set(key, at);
    const { box, whole } = choices[at]!;
    const { lines, heads, arc } = kept as Drawn;
    return { key: one, box, whole, lines, heads, ...(arc && { arc }) };
  };
  for (const one of asked) {
    const found = placeOf(one, ground, best, small.has(one.key));
    if (found === null) continue;
    placed.push(found);
    boxes.push(found.box);
    strokes.push(...found.lines);
  }
  return placed;
}

interface Filled {
  readonly ground: Ground;
  readonly boxes: readonly Box[];
  readonly strokes: readonly Piece[];
  /** A choice that costs this much is not looked at further. */
  readonly most: number;
}

/** Whether a label stands on nothing. */
function isFree(
  { box }: Choice,
  { width, height, sheet, half, taken, marks }: Ground,
  boxes: readonly Box[],
  strokes: readonly Piece[],
): boolean {
  return (
    boxInside(box, width, height) &&
    !boxes.some((other) => boxesOverlap(other, box, LABEL_AIR)) &&
    !taken.some((other) => boxesOverlap(other, box, LABEL_AIR)) &&
    !marks.some((other) => boxesOverlap(other, box)) &&
    !sheet.some((piece) => throughBox(piece, box, half + 1)) &&
    !strokes.some((piece) => throughBox(piece, box, 1))
  );
}

/** What a choice whose label is free costs; no end where its lines run through another label. */
function costOf({ box, cost, own: mine }: Choice, drawn: Drawn, filled: Filled): number {
  const { ground, boxes, strokes, most } = filled;
  const { lines, strokes: own, extensions } = drawn;
  const { sheet, half } = ground;
  if (lines.some((line) => boxes.some((other) => throughBox(line, other, 1))))
    return Number.POSITIVE_INFINITY;
  const over = (piece: Piece, air: number, limit: number): number => {
    let count = 0;
    for (let i = 0; i < sheet.length && count < limit; i++)
      if (i !== mine && near(piece, sheet[i]!, air)) count++;
    return count;
  };
  let sum = cost;
  for (const line of lines) for (const name of ground.taken) if (throughBox(line, name, 1)) sum += OVER_NAME;
  for (const piece of own) {
    if (sum >= most) return sum;
    sum += OVER_METAL * over(piece, half + 1, 2);
    for (const other of strokes) if (near(piece, other, 1)) sum += OVER_STROKE;
  }
  for (const piece of extensions) {
    if (sum >= most) return sum;
    sum += EXTENSION_OVER_METAL * over(piece, half * 0.6, 3);
  }
  for (const edge of ground.edges ?? []) if (throughBox(edge, box)) sum += ON_EDGE;
  return sum;
}

/** Places in a list of choices, the cheapest first. */
function cheapestFirst(choices: readonly Choice[]): readonly number[] {
  return choices.map((_, i) => i).sort((a, b) => choices[a]!.cost - choices[b]!.cost);
}

type Best = (choices: readonly Choice[], key: string, most: number, way?: string) => Placed | null;

function placeOf(one: AskedLabel, ground: Ground, best: Best, alone: boolean): Placed | null {
  const anywhere = Number.POSITIVE_INFINITY;
  if (one.kind === "angle") return best(arcChoices(one), one.key, TOO_DEAR);
  if (one.kind === "note") {
    return (
      best(noteChoices(one, one.size, true), one.key, anywhere) ??
      best(everywhere(one, one.size, ground), one.key, anywhere, " far")
    );
  }
  const middle = seenMiddle(one, ground);
  const led = { at: middle.at, away: middle.across, half: one.half, led: true };
  const whole = () =>
    best(lengthChoices(one, middle.share), one.key, TOO_DEAR) ??
    best(noteChoices(led, one.size, true), one.key, 3 * TOO_DEAR, " led");
  return (
    (alone ? null : whole()) ??
    best(noteChoices(led, one.small, false), one.key, anywhere, " small") ??
    best(everywhere(led, one.small, ground), one.key, anywhere, " far")
  );
}

/** Places all over the canvas, on a leader: the last resort, so that no number is missing while there is room at all. */
function everywhere(
  { at, half }: Pick<AskedNote, "at" | "half">,
  size: Size,
  { width, height }: Ground,
): readonly Choice[] {
  const choices: Choice[] = [];
  const pitch = 14;
  for (let x = size.halfWide + 3; x < width - size.halfWide - 2; x += pitch) {
    for (let y = size.halfHigh + 3; y < height - size.halfHigh - 2; y += pitch) {
      const far = Math.hypot(x - at.x, y - at.y);
      if (far < half + size.halfHigh) continue;
      const way = { x: (x - at.x) / far, y: (y - at.y) / far };
      choices.push(atEnd({ at, half, led: true }, way, far, { size, whole: false, cost: far / 12 }));
    }
  }
  return choices;
}

/** The middle of what is seen of a length, and the direction square to it. */
function seenMiddle({ from, to, faces }: AskedLength, { width, height }: Ground) {
  const run = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const [dx, dy] = [(to.x - from.x) / run, (to.y - from.y) / run];
  const canvas = { x: width / 2, y: height / 2, halfWide: width / 2 - 6, halfHigh: height / 2 - 6 };
  const inside = shareInBox([from, to], canvas) ?? [0, 1];
  const share = (inside[0] + inside[1]) / 2;
  const side = faces[0] || faces[1] || 1;
  return {
    share: inside,
    at: { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share },
    across: { x: -dy * side, y: dx * side },
  };
}
