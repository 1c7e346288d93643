/**
 * The worked cases' blanks: developed width, tangent lines, sight line, allowance and deduction of each expected file, found by
 * an independent computation of the model. Their sight line is always the one for the start clamped.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { layOut, sightLineOf } from "../../src/blank/blank.ts";
import { bendAllowance, bendDeduction } from "../../src/part/allowance.ts";
import { insideBendSetback, outsideBendSetback } from "../../src/part/bendSetback.ts";

interface CaseFile {
  readonly brake: { readonly clamp: { readonly noseRadius: number } };
  readonly part: {
    readonly thickness: number;
    readonly insideRadius: number;
    readonly kFactor: number;
    readonly dimensions: "outside" | "inside" | "flat";
    readonly flats: readonly number[];
    readonly bends: readonly { angle: number; turn: "up" | "down"; insideRadius?: number }[];
  };
}

interface Expected {
  readonly blank: {
    readonly developedWidth: number;
    readonly bends: readonly {
      tangents: readonly [number, number];
      sightLine: number;
      allowance: number;
      deduction: number;
    }[];
  };
}

const folder = new URL("../cases/", import.meta.url);
const names = readdirSync(folder)
  .filter((file) => file.endsWith(".expected.json"))
  .map((file) => file.replace(".expected.json", ""));

function read<Content>(file: string): Content {
  return JSON.parse(readFileSync(new URL(file, folder), "utf8"));
}

describe("blanks of the worked cases", () => {
  it("are there", () => {
    expect(names.length).toBeGreaterThanOrEqual(12);
  });

  it.each(names)("%s", (name) => {
    const { part, brake } = read<CaseFile>(`${name}.json`);
    const { blank: expected } = read<Expected>(`${name}.expected.json`);
    const shapes = part.bends.map((bend) => ({
      angleDeg: bend.angle,
      insideRadiusMm: bend.insideRadius ?? part.insideRadius,
      thicknessMm: part.thickness,
    }));
    const takenOff = { outside: outsideBendSetback, inside: insideBendSetback, flat: () => 0 }[
      part.dimensions
    ];
    const bendSetbacks = shapes.map(takenOff);
    const blank = layOut({
      flatsMm: part.flats.map((flat, i) => flat - (bendSetbacks[i - 1] ?? 0) - (bendSetbacks[i] ?? 0)),
      bends: shapes.map((shape) => {
        const allowanceMm = bendAllowance(shape, part.kFactor);
        return {
          allowanceMm,
          deductionMm: bendDeduction(shape, allowanceMm),
        };
      }),
    });
    expect(blank.developedWidthMm).toBeCloseTo(expected.developedWidth, 5);
    expect(blank.bends.length).toBe(expected.bends.length);
    blank.bends.forEach((bend, i) => {
      const wanted = expected.bends[i];
      expect(bend.tangentsMm[0]).toBeCloseTo(wanted?.tangents[0] ?? Number.NaN, 5);
      expect(bend.tangentsMm[1]).toBeCloseTo(wanted?.tangents[1] ?? Number.NaN, 5);
      expect(sightLineOf(bend, "start", brake.clamp.noseRadius)).toBeCloseTo(
        wanted?.sightLine ?? Number.NaN,
        5,
      );
      expect(bend.allowanceMm).toBeCloseTo(wanted?.allowance ?? Number.NaN, 5);
      expect(bend.deductionMm).toBeCloseTo(wanted?.deduction ?? Number.NaN, 5);
    });
  });
});
