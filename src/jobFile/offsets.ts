/**
 * Offsets of a part as typed, {offset: height over outside faces, angle, turn?, insideRadius?} in the list of bends, each written out as
 * its two bends with the flat between, before the file is held against the schema: it counts as two numbers from then on. The height
 * is that of the radius asked for; `turn` is that of the first bend, up unless said.
 */
import { offsetFlat, offsetHeight } from "../part/offset.ts";
import { parseThickness } from "../units/gauge.ts";
import { parseLength, unitMeant } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { foundText, type Problem } from "./problem.ts";
import { sayLimit } from "./reading.ts";

type Group = Readonly<Record<string, unknown>>;

export interface Offsets {
  /** The file with its offsets written out, or as it is where it has none. */
  readonly value: unknown;
  readonly problems: readonly Problem[];
  /** A key path of the file written out, as the user's own file has it. */
  readonly asTyped: (path: string) => string;
}

/** Writes the offsets of a job file out. */
export function withOffsets(value: unknown): Offsets {
  const part = isGroup(value) ? value.part : undefined;
  const bends = isGroup(part) ? part.bends : undefined;
  const none = { value, problems: [], asTyped: (path: string) => path };
  if (!isGroup(value) || !isGroup(part) || !Array.isArray(bends) || !bends.some(isOffset)) return none;
  const written = new Written(part, unitMeant(value.units) ?? "mm");
  const flats = Array.isArray(part.flats) ? part.flats : [];
  const out: { bends: unknown[]; flats: unknown[]; fromBend: number[]; fromFlat: number[] } = {
    bends: [],
    flats: flats.slice(0, 1),
    fromBend: [],
    fromFlat: [0],
  };
  bends.forEach((bend: unknown, i) => {
    if (isOffset(bend)) {
      const [first, flat, second] = written.out(bend, `part.bends[${i}]`);
      out.bends.push(first, second);
      out.flats.push(flat);
      out.fromBend.push(i, i);
      out.fromFlat.push(-1 - i);
    } else {
      out.bends.push(bend);
      out.fromBend.push(i);
    }
    if (i + 1 < flats.length) {
      out.flats.push(flats[i + 1]);
      out.fromFlat.push(i + 1);
    }
  });
  out.flats.push(...flats.slice(bends.length + 1));
  const asTyped = (path: string) =>
    path
      .replace(/^part\.bends\[(\d+)\]/u, (all, n) => `part.bends[${out.fromBend[Number(n)] ?? all}]`)
      .replace(/^part\.flats\[(\d+)\]/u, (_, n) => {
        const from = out.fromFlat[Number(n)] ?? Number(n);
        return from < 0 ? `part.bends[${-1 - from}].offset` : `part.flats[${from}]`;
      });
  return {
    value: { ...value, part: { ...part, bends: out.bends, flats: out.flats } },
    problems: written.problems,
    asTyped,
  };
}

/** Writes offsets of one part out, and notes what is wrong with them. */
class Written {
  readonly problems: Problem[] = [];

  constructor(
    private readonly part: Group,
    private readonly units: "mm" | "in",
  ) {}

  out(offset: Group, path: string): readonly [first: unknown, flat: unknown, second: unknown] {
    const { offset: height, turn, ...bend } = offset;
    const first = typeof turn === "string" ? turn.trim().toLowerCase() : "up";
    const thicknessMm = parseThickness(writing(this.part.thickness), this.units);
    const insideRadiusMm = parseLength(writing(bend.insideRadius ?? this.part.insideRadius), this.units);
    const angleDeg = Number.parseFloat(String(bend.angle));
    const heightMm = parseLength(writing(height), this.units);
    let flatMm: Mm = 1;
    if (!(angleDeg > 0 && angleDeg < 180)) {
      this.note(
        `${path}.angle`,
        bend.angle,
        "an angle between 0 and 180 degrees, that of both bends of the offset",
      );
    } else if (thicknessMm !== undefined && insideRadiusMm !== undefined) {
      const shape = { angleDeg, insideRadiusMm, thicknessMm };
      flatMm = heightMm === undefined ? 0 : offsetFlat(shape, heightMm);
      const least = sayLimit(this.units, "least")(offsetHeight(shape, 0));
      const allowed = `a height over the outside faces of more than ${least}, which the two bends alone make at this angle and radius`;
      if (!(flatMm > 1e-6)) this.note(`${path}.offset`, height, allowed);
    }
    const second = first === "up" ? "down" : "up";
    const flat = { size: `${flatMm} mm`, from: "tangent", to: "tangent" };
    return [{ ...bend, turn: turn === undefined ? "up" : turn }, flat, { ...bend, turn: second }];
  }

  private note(path: string, found: unknown, allowed: string): void {
    this.problems.push({ path, found: foundText(found), allowed });
  }
}

function writing(value: unknown): string | number {
  return typeof value === "number" || typeof value === "string" ? value : "";
}

function isGroup(value: unknown): value is Group {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isOffset(bend: unknown): bend is Group {
  return isGroup(bend) && Object.hasOwn(bend, "offset");
}
