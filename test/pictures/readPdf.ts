/**
 * Reads a PDF file back with an independent library (pdfjs-dist) and says what ink lies where, in millimetres.
 * Knows nothing of how the file was made: path operators, graphics states and text only (ISO 32000-1).
 */
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

export interface InkRun {
  /** Points of a straight run, or of a curve walked in small steps. */
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly curved: boolean;
  readonly dashed: boolean;
  readonly painted: "stroke" | "fill";
  /** Rectangle that the run is cut off at. */
  readonly clip: Box;
}

export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

export interface ReadWords {
  readonly words: string;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly height: number;
}

export interface ReadPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly runs: readonly InkRun[];
  readonly words: readonly ReadWords[];
}

type Matrix = readonly [number, number, number, number, number, number];

interface State {
  readonly matrix: Matrix;
  readonly clip: Box;
  readonly dashed: boolean;
}

const MM = 25.4 / 72;
const CURVE_STEPS = 16;

/** Path codes of the library's path arrays. */
const MOVE = 0;
const LINE = 1;
const CURVE = 2;
const CLOSE = 4;

/** All pages of a PDF file. */
export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const file = await getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= file.numPages; number += 1) {
    const page = await file.getPage(number);
    const [left, bottom, right, top] = page.view as [number, number, number, number];
    const whole = { left: left * MM, bottom: bottom * MM, right: right * MM, top: top * MM };
    const { fnArray, argsArray } = await page.getOperatorList();
    const { items } = await page.getTextContent();
    const words = items.flatMap((item) => {
      if (!("str" in item) || item.str.trim() === "") return [];
      const [a, b, , , x, y] = item.transform as unknown as Matrix;
      const height = Math.hypot(a, b) * MM;
      return [{ words: item.str, left: x * MM, bottom: y * MM, right: (x + item.width) * MM, height }];
    });
    pages.push({
      widthMm: whole.right - whole.left,
      heightMm: whole.top - whole.bottom,
      runs: runsOf(fnArray, argsArray, whole),
      words,
    });
  }
  await file.destroy();
  return pages;
}

function runsOf(codes: readonly number[], args: readonly unknown[], whole: Box): readonly InkRun[] {
  const runs: InkRun[] = [];
  const kept: State[] = [];
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], clip: whole, dashed: false };
  let clipNext = false;
  codes.forEach((code, index) => {
    const given = args[index] as never;
    if (code === OPS.save) kept.push(state);
    else if (code === OPS.restore) state = kept.pop() ?? state;
    else if (code === OPS.transform) state = { ...state, matrix: times(state.matrix, given) };
    else if (code === OPS.setDash) state = { ...state, dashed: (given as [number[], number])[0].length > 0 };
    else if (code === OPS.clip || code === OPS.eoClip) clipNext = true;
    else if (code === OPS.constructPath) {
      const [paint, [path]] = given as [number, [Float32Array | undefined]];
      const found = path === undefined ? [] : walk([...path], state);
      if (clipNext) state = { ...state, clip: meet(state.clip, bounds(found.flatMap((run) => run.points))) };
      clipNext = false;
      const painted = paint === OPS.stroke ? "stroke" : paint === OPS.fill ? "fill" : undefined;
      if (painted !== undefined) runs.push(...found.map((run) => ({ ...run, painted }) as const));
    }
  });
  return runs;
}

function walk(path: readonly number[], state: State): readonly Omit<InkRun, "painted">[] {
  const place = (x: number, y: number): [number, number] => {
    const [a, b, c, d, e, f] = state.matrix;
    return [(a * x + c * y + e) * MM, (b * x + d * y + f) * MM];
  };
  const runs: Omit<InkRun, "painted">[] = [];
  let at: [number, number] = [0, 0];
  let start = at;
  const add = (points: readonly [number, number][], curved: boolean) => {
    runs.push({ points, curved, dashed: state.dashed, clip: state.clip });
    at = points.at(-1) ?? at;
  };
  for (let i = 0; i < path.length; ) {
    const code = path[i] as number;
    const n = (k: number) => path[i + k] as number;
    if (code === MOVE) {
      at = place(n(1), n(2));
      start = at;
      i += 3;
    } else if (code === LINE) {
      add([at, place(n(1), n(2))], false);
      i += 3;
    } else if (code === CURVE) {
      const [p1, p2, p3] = [place(n(1), n(2)), place(n(3), n(4)), place(n(5), n(6))];
      const p0 = at;
      const points = Array.from({ length: CURVE_STEPS + 1 }, (_, step): [number, number] => {
        const t = step / CURVE_STEPS;
        const u = 1 - t;
        const on = (axis: 0 | 1) =>
          u ** 3 * p0[axis] + 3 * u * u * t * p1[axis] + 3 * u * t * t * p2[axis] + t ** 3 * p3[axis];
        return [on(0), on(1)];
      });
      add(points, true);
      i += 7;
    } else if (code === CLOSE) {
      if (Math.hypot(at[0] - start[0], at[1] - start[1]) > 1e-6) add([at, start], false);
      i += 1;
    } else {
      throw new Error(`path code ${code} is not known`);
    }
  }
  return runs;
}

function times(m: Matrix, n: Matrix): Matrix {
  return [
    m[0] * n[0] + m[2] * n[1],
    m[1] * n[0] + m[3] * n[1],
    m[0] * n[2] + m[2] * n[3],
    m[1] * n[2] + m[3] * n[3],
    m[0] * n[4] + m[2] * n[5] + m[4],
    m[1] * n[4] + m[3] * n[5] + m[5],
  ];
}

/** Smallest box round points. */
export function bounds(points: readonly (readonly [number, number])[]): Box {
  const xs = points.map((point) => point[0]);
  const ys = points.map((point) => point[1]);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

function meet(a: Box, b: Box): Box {
  return {
    left: Math.max(a.left, b.left),
    right: Math.min(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
    top: Math.min(a.top, b.top),
  };
}
