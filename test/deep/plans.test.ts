/**
 * The printed plans read back: what a saw and a drill need stands there in words, letters are large enough, nothing is written over or cut
 * off, one system of units. Pages by pdfjs-dist; sizes from the assembly, not from the pages' own making.
 */
import { describe, expect, test } from "vitest";
import { A4, LETTER } from "../../src/drawing/pageSize.ts";
import { writePdf } from "../../src/drawing/pdfPen.ts";
import { designNarrowBrake } from "../../src/narrowBrake/designNarrowBrake.ts";
import type { NarrowBrakePlan } from "../../src/narrowBrake/narrowBrake.ts";
import { narrowBrakePlans } from "../../src/narrowBrake/plans/narrowBrakePlans.ts";
import { assemblyStl, pieceFiles } from "../../src/narrowBrake/plans/pieceFiles.ts";
import { formatLength } from "../../src/units/length.ts";
import { asked, fewDesigns } from "../narrowBrake/designs.ts";
import { readDxf } from "../pictures/readDxf.ts";
import { type ReadWords, readPdf } from "../pictures/readPdf.ts";

/** 8 points, the least that is read at arm's length. */
const LEAST_MM = (8 * 25.4) / 72;
const DESIGNS = [
  ...fewDesigns(),
  {
    name: "48 in, many bolts",
    design: designNarrowBrake(
      asked(
        {
          metal: { name: "5052-H32", yieldMpa: 193, modulusMpa: 70_000, ultimateMpa: 228 },
          thicknessMm: 1.6,
        },
        48,
        "in",
      ),
    ),
  },
];

describe.each(DESIGNS)("narrowBrakePlans of $name", ({ design }) => {
  const plan = design.plan as NarrowBrakePlan;
  const { units } = design.requirements;
  const words = (mm: number) => formatLength(mm, units);

  test.each([A4, LETTER])(
    "on $name: letters of 8 points, nothing over another word, nothing cut off",
    async (size) => {
      const pages = await readPdf(await writePdf(narrowBrakePlans(design, size), "plans"));
      expect(pages.length).toBeGreaterThan(6);
      for (const [i, page] of pages.entries()) {
        const shown = distinct(page.words);
        for (const one of shown) {
          expect(one.height, `page ${i + 1}: ${one.words}`).toBeGreaterThanOrEqual(LEAST_MM - 0.01);
          expect(one.left, `page ${i + 1}: ${one.words}`).toBeGreaterThan(8);
          expect(one.right, `page ${i + 1}: ${one.words}`).toBeLessThan(page.widthMm - 4);
          expect(one.bottom, `page ${i + 1}: ${one.words}`).toBeGreaterThan(8);
          expect(one.bottom + one.height, `page ${i + 1}: ${one.words}`).toBeLessThan(page.heightMm - 4);
        }
        expect(overprinted(shown), `page ${i + 1}`).toEqual([]);
      }
    },
  );

  test("what a saw and a drill need of each piece stands on its pages, in one system of units", async () => {
    const size = units === "in" ? LETTER : A4;
    const pages = await readPdf(await writePdf(narrowBrakePlans(design, size), "plans"));
    const all = pages.flatMap((page) => page.words.map((one) => one.words)).join(" ");
    const figures = new Set(
      pages.flatMap((page) => page.words.flatMap((one) => [one.words, ...one.words.split(/, ?/u)])),
    );
    const { pieces } = plan.assembly;
    for (const cut of plan.cutList) {
      expect(all).toContain(cut.piece);
      if (cut.bought) continue;
      const piece = pieces.find(({ item }) => item === cut.item)!;
      expect(figures.has(words(cut.lengthMm)), `${cut.piece}: ${words(cut.lengthMm)} long`).toBe(true);
      if ("profile" in piece.shape) {
        const [xs, ys] = [piece.shape.profile.map(([x]) => x), piece.shape.profile.map(([, y]) => y)];
        for (const extent of [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]) {
          expect(all.includes(words(extent)), `${cut.piece}: ${words(extent)}`).toBe(true);
        }
      }
      for (const hole of piece.holes) {
        expect(
          all.includes(hole.tapped ? `tap ${hole.tapped}, drill` : words(hole.diameter).replace(" ", "-")),
          `${cut.piece}: hole`,
        ).toBe(true);
        const along = Math.abs(hole.to[2] - hole.from[2]) > 1e-9 ? undefined : hole.from[2];
        if (
          along === undefined ||
          !("profile" in piece.shape) ||
          piece.name === "foot" ||
          piece.name === "slotted washer"
        )
          continue;
        const from = words(along - piece.shape.from);
        expect(figures.has(from.replace(" ", "-")), `${cut.piece}: hole ${from} from the end`).toBe(true);
      }
    }
    expect(all).toContain("third angle");
    expect(all).toMatch(/1:\d/u);
    expect(all).toMatch(/fillet .* in every/u);
    expect(all).toMatch(/straight within/u);
    expect(all).toMatch(/It weighs about .*: (hold|lift) it/u);
    expect(all).toMatch(/The hinges pinch/u);
    expect(all).toMatch(/Not checked: /u);
    expect(all).toMatch(/of music wire .* thick, .* coils .* long when free|No coil spring/u);
    expect(all).toMatch(
      plan.assembly.vise.held === "vise"
        ? /Face them with smooth flat bar/u
        : /as long as the bench is thick and [\d/ ]+ (in|mm) more/u,
    );
    const foreign = units === "in" ? /.{20}\d (mm|MPa|N|N·m|kg)\b.{9}/gu : /.{20}\d (in|ksi|lbf|lb)\b.{9}/gu;
    expect([...all.matchAll(foreign)].map(([text]) => text)).toEqual([]);
  });

  test("every check's figure on the pages is one of the data, in the shop's unit", async () => {
    const pages = await readPdf(await writePdf(narrowBrakePlans(design, A4), "plans"));
    const all = pages.flatMap((page) => page.words.map((one) => one.words)).join(" ");
    const factor = { MPa: units === "in" ? 6.894757 : 1, N: units === "in" ? 4.448222 : 1, deg: 1 } as const;
    for (const { unit, value, limit } of plan.checks) {
      if (unit !== "MPa" && unit !== "N" && unit !== "deg") continue;
      for (const figure of [value, limit]) {
        const shown = figure / factor[unit];
        const found = [...all.matchAll(/\d+(?:\.\d+)?/gu)].some(
          ([text]) => Math.abs(Number(text) / shown - 1) < 0.006,
        );
        expect(found, `${shown}`).toBe(true);
      }
    }
  });

  test("pieceFiles: a DXF a sawn flat piece, one closed outline and every hole as a circle", () => {
    const files = pieceFiles(plan);
    expect(files.length).toBeGreaterThanOrEqual(8);
    for (const { name, text } of files) {
      const { unit, entities } = readDxf(text);
      const piece = plan.assembly.pieces.find(({ item }) => item === Number(name.slice(0, 2)))!;
      expect(unit).toBe(4);
      const outlines = entities.filter(({ layer }) => layer === "CUT") as unknown as {
        type: string;
        closed: boolean;
        vertices: { x: number; y: number }[];
      }[];
      expect(outlines).toHaveLength(1);
      expect(outlines[0]!.type).toBe("LWPOLYLINE");
      expect(outlines[0]!.closed).toBe(true);
      const circles = entities.filter(({ type }) => type === "CIRCLE");
      expect(circles.map(({ r }) => 2 * r!).sort((a, b) => a - b)).toEqual(
        piece.holes
          .filter(({ slot }) => !slot)
          .map(({ diameter }) => expect.closeTo(diameter, 5))
          .sort((a, b) => a.sample - b.sample),
      );
      expect(entities.filter(({ type }) => type === "TEXT").every(({ layer }) => layer === "TEXT")).toBe(
        true,
      );
    }
  });

  test("assemblyStl: closed triangles whose volume is that of the pieces", () => {
    const solids = assemblyStl(plan.assembly).split("endsolid").slice(0, -1);
    expect(solids).toHaveLength(plan.assembly.pieces.length);
    solids.forEach((solid, i) => {
      const points = [...solid.matchAll(/vertex (\S+) (\S+) (\S+)/gu)].map(
        (m) => m.slice(1).map(Number) as [number, number, number],
      );
      let volume = 0;
      for (let k = 0; k < points.length; k += 3) {
        const [a, b, c] = points.slice(k, k + 3) as [
          [number, number, number],
          [number, number, number],
          [number, number, number],
        ];
        volume +=
          (a[0] * (b[1] * c[2] - b[2] * c[1]) +
            a[1] * (b[2] * c[0] - b[0] * c[2]) +
            a[2] * (b[0] * c[1] - b[1] * c[0])) /
          6;
      }
      const { shape } = plan.assembly.pieces[i]!;
      const box =
        "profile" in shape
          ? (Math.max(...shape.profile.map(([x]) => x)) - Math.min(...shape.profile.map(([x]) => x))) *
            (Math.max(...shape.profile.map(([, y]) => y)) - Math.min(...shape.profile.map(([, y]) => y))) *
            (shape.to - shape.from)
          : (Math.PI / 4) *
            shape.diameter ** 2 *
            Math.hypot(...([0, 1, 2] as const).map((n) => shape.to[n] - shape.from[n]));
      // Positive: all triangles look outward. Ears are less than their box, rounds less than their circle.
      expect(volume / box).toBeLessThan(1.0001);
      expect(volume / box).toBeGreaterThan(0.75);
    });
  });
});

/** Words once: rims under words on hatched drawings are the same word again. */
function distinct(words: readonly ReadWords[]): ReadWords[] {
  const seen = new Set<string>();
  return words.filter((one) => {
    const key = `${one.words}@${one.left.toFixed(1)},${one.bottom.toFixed(1)}`;
    const fresh = !seen.has(key);
    seen.add(key);
    return fresh;
  });
}

/** Pairs of level words whose letters lie over each other. */
function overprinted(words: readonly ReadWords[]): string[] {
  return words.flatMap((a, i) =>
    words.slice(i + 1).flatMap((b) => {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const up =
        Math.min(a.bottom + 0.7 * a.height, b.bottom + 0.7 * b.height) - Math.max(a.bottom, b.bottom);
      return across > 0.4 && up > 0.4 ? [`${a.words} | ${b.words}`] : [];
    }),
  );
}
