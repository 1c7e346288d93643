/**
 * A shop of 12 parts and 3 brakes: its table against single checks, its sentence against counting by hand.
 * Malformed shops are told by the key of the shop file.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { jobFileOf, readShop } from "../../src/jobFile/readShop.ts";
import { isMade, type ShopFit } from "../../src/jobFile/shopFit.ts";
import { fitShop } from "../../src/ways/shopFit.ts";
import { shopSentence } from "../../src/words/shopWords.ts";
import { readAs } from "./tryWays.ts";

const text = readFileSync(
  fileURLToPath(new URL("../../examples/shop/observatory.json", import.meta.url)),
  "utf8",
);
const read = readShop(text);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const { shop } = read;
const fit = fitShop(shop);

describe("the observatory's shop", () => {
  test("has 12 parts and 3 brakes", () => {
    expect([fit.parts.length, fit.brakes.length]).toEqual([12, 3]);
  });

  test("its table says what a check of each part on each brake says", () => {
    shop.parts.forEach((part, p) => {
      shop.brakes.forEach((brake, b) => {
        const answer = check(readAs(jobFileOf(shop, part, brake)).job);
        const cell = fit.cells[p]![b]!;
        if (cell.verdict === "unfit") return;
        expect(`${part.name} on ${brake.name}: ${cell.verdict}`).toBe(
          `${part.name} on ${brake.name}: ${answer.verdict}`,
        );
        const clearances = answer.order.flatMap(({ clearance }) => (clearance === null ? [] : [clearance]));
        if (isMade(cell)) {
          expect(cell.clearance).toBe(clearances.length === 0 ? null : Math.min(...clearances));
        } else {
          const blocked = answer.order.find(({ verdict }) => verdict === "hits");
          expect([cell.worstBend, cell.stopsAt]).toEqual([blocked?.bend, blocked?.reached]);
        }
      });
    });
  });

  test("parts longer than the vise brake's 12 in are not for it, and nothing else is unfit", () => {
    // Lengths in the file, counted by hand: 24, 24, 16, 20 and 18 in.
    const long = ["drip edge", "eave angle", "shutter rail", "roller cover", "rail cap"];
    const unfit = fit.cells.flatMap((row, p) =>
      row.flatMap((cell, b) =>
        cell.verdict === "unfit" ? [[fit.parts[p], fit.brakes[b], cell.because]] : [],
      ),
    );
    expect(unfit.map(([part, brake]) => [part, brake])).toEqual(long.map((part) => [part, "vise brake"]));
    for (const [, , because] of unfit)
      expect(because).toMatch(/^The part is \d\d in long, and this brake takes 12 in\.$/u);
  });

  test("its sentence is right by hand count", () => {
    // Counted in the table: the finger brake has 9 parts that fold, the three troughs and clips of web 7/16 in and less
    // do not, and neither of the other brakes makes one of those three.
    expect(fit.cells.filter((row) => isMade(row[0]!))).toHaveLength(9);
    const narrow = ["cable trough", "sensor-lead trough", "wire clip"];
    expect(fit.unmade.map((part) => fit.parts[part])).toEqual(narrow);
    expect(shopSentence(fit, "in")).toBe(
      "Your finger brake makes 9 of 12. One clamp bar 3/16 to 1/4 in thick, 13 in long, makes the other three.",
    );
  });

  test("the bar that it tells of makes those three and no fewer", () => {
    expect(fit.bar?.makes).toEqual(fit.unmade);
    for (const part of fit.unmade) {
      const answer = check(readAs(jobFileOf(shop, shop.parts[part]!, fit.bar!.brake)).job);
      expect(answer.verdict).not.toBe("hits");
    }
    expect(fit.bar!.length).toBeGreaterThan(12 * 25.4);
    expect(fit.bar!.length).toBeLessThanOrEqual(13 * 25.4);
  });

  test("a thinner window for two of the parts is never narrower than for all three", () => {
    const two = { ...shop, parts: fit.unmade.slice(0, 2).map((part) => shop.parts[part]!) };
    const bar = fitShop(two).bar!;
    expect(bar.thickest).toBeGreaterThanOrEqual(fit.bar!.thickest - 0.01);
    expect(bar.thinnest).toBeLessThanOrEqual(fit.bar!.thinnest + 0.01);
  });
});

describe("other shops in a sentence", () => {
  const cell = (makes: boolean) =>
    ({
      verdict: makes ? "clear" : "hits",
      clearance: null,
      worstBend: 1,
      stopsAt: 0,
      order: [],
      because: null,
    }) as const;
  const shopOf = (rows: readonly string[], bar: ShopFit["bar"] = null): ShopFit => ({
    parts: rows.map((_, i) => `part ${i + 1}`),
    brakes: ["finger brake", "old straight brake"],
    cells: rows.map((row) => [...row].map((sign) => cell(sign === "x"))),
    unmade: rows.flatMap((row, i) => (row.includes("x") ? [] : [i])),
    bar,
  });
  const bar = (makes: readonly number[]): ShopFit["bar"] => ({
    thinnest: 3,
    thickest: 7,
    stock: [4, 5, 6],
    overhang: 12,
    length: 302,
    makes,
    brake: shop.brakes[0]!,
  });

  test.each([
    [["x.", "xx"], null, "Your finger brake makes all 2."],
    [["x.", ".x", "x."], null, "Your finger brake makes 2 of 3. Your old straight brake makes one more."],
    [
      ["x.", ".."],
      null,
      "Your finger brake makes 1 of 2. No brake of yours makes the other one, and neither would one clamp bar: part 2.",
    ],
    [
      ["..", ".."],
      bar([1]),
      "None of your brakes makes any of the 2. One clamp bar 4 to 6 mm thick, 310 mm long, makes one of them. Nothing makes part 1.",
    ],
    [
      ["..", ".."],
      bar([0, 1]),
      "None of your brakes makes any of the 2. One clamp bar 4 to 6 mm thick, 310 mm long, makes them.",
    ],
  ])("%j", (rows, withBar, sentence) => {
    expect(shopSentence(shopOf(rows, withBar), "mm")).toBe(sentence);
  });
});

describe("a shop file with a slip", () => {
  const slipped = (change: (shop: ReturnType<typeof JSON.parse>) => void) => {
    const copy = JSON.parse(text);
    change(copy);
    const result = readShop(JSON.stringify(copy));
    return result.ok ? [] : result.problems.map(({ path }) => path);
  };

  test.each<[string, (shop: ReturnType<typeof JSON.parse>) => void]>([
    ["parts[2].flats[1]", (s) => (s.parts[2].flats[1] = "-1")],
    ["parts[4].thickness", (s) => (s.parts[4].thickness = "thick")],
    ["parts[0].angle", (s) => (s.parts[0].angle = 3)],
    ["brakes[1].clamp.height", (s) => (s.brakes[1].clamp.height = 0)],
    ["brakes[2].lift", (s) => delete s.brakes[2].lift],
    ["noseroomShop", (s) => (s.noseroomShop = 2)],
    ["brakes", (s) => (s.brakes = [])],
  ])("is told where: %s", (path, change) => {
    expect(slipped(change)).toContain(path);
  });

  test("that is no JSON, or huge, is refused in a sentence", () => {
    expect(readShop("{").ok).toBe(false);
    expect(readShop(" ".repeat(5_000_000)).ok).toBe(false);
  });

  test("a part whose radius is too small for one brake stays, and that cell says why", () => {
    const copy = JSON.parse(text);
    copy.brakes[1].clamp.noseRadius = "1/8";
    const result = readShop(JSON.stringify(copy));
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    const cell = fitShop({ ...result.shop, parts: result.shop.parts.slice(0, 1) }).cells[0]![1]!;
    expect(cell.verdict).toBe("unfit");
    expect(cell.because).toMatch(/nose radius/u);
  });
});
