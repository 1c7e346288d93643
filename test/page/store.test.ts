/**
 * The page's store without a browser: undo and redo, links, units, adopted files.
 * Inch figures are exact by definition (1 in = 25.4 mm, 1959); the rest is checked by going there and back.
 */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inUnit, lengthInUnit } from "../../src/jobFile/inUnit.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { adopt } from "../../web/store/adopt.ts";
import { withAddition } from "../../web/store/bendKinds.ts";
import {
  mirror,
  removeBend,
  SHAPES,
  sixteenthWords,
  turnOver,
  withShape,
} from "../../web/store/chainEdits.ts";
import { firstJob, usualClamp } from "../../web/store/firstJob.ts";
import { beginHistory, changed, redone, undone } from "../../web/store/history.ts";
import { fileName, fileText, getAt, type JobFile, setAt } from "../../web/store/jobFile.ts";
import { jobOfLink, linkOf } from "../../web/store/link.ts";
import { usualUnits } from "../../web/store/locale.ts";
import { openedText } from "../../web/store/opened.ts";
import { freeName, openJob, type Shelf, withFile, withJob, withoutJob } from "../../web/store/shelf.ts";

const shelfOf = (...files: JobFile[]): Shelf => ({
  jobs: files.map((file, i) => ({ id: `j${i}`, file })),
  openId: "j0",
});
const read = (file: JobFile) => readJob(fileText(file));
const UNKNOWN = { widthMm: null, lengthMm: null };
const LAID_OUT: Pick<JobFile["part"], "grain" | "doubts" | "cutOuts"> = {
  grain: 60,
  doubts: ["1/64", "1/32", 0],
  cutOuts: [
    { across: [0, "1/2"], along: [0, 1] },
    { across: [1, "end"], along: [4, 8] },
  ],
};

describe("undo and redo", () => {
  const start = beginHistory(shelfOf(firstJob("in")));
  const typed = (shelf: Shelf, flat: string) =>
    withFile(shelf, setAt(openJob(shelf).file, ["part", "flats", 0], flat));

  it("take the keystrokes of one field as one change, and a pause as the next", () => {
    let h = changed(start, typed(start.now.shelf, "1"), "flat 1", "f", 1000);
    h = changed(h, typed(h.now.shelf, "1/"), "flat 1", "f", 1300);
    h = changed(h, typed(h.now.shelf, "1/4"), "flat 1", "f", 1600);
    expect(undone(h).now.shelf).toBe(start.now.shelf);
    h = changed(h, typed(h.now.shelf, "1/8"), "flat 1", "f", 9000);
    expect(openJob(undone(h).now.shelf).file.part.flats[0]).toBe("1/4");
  });

  it("lead back to the beginning and forth to the end whatever was done", () => {
    const step = fc.constantFrom("type", "add", "remove", "mirror", "shape");
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), (steps) => {
        let h = start;
        steps.forEach((what, i) => {
          const { shelf } = h.now;
          const { file } = openJob(shelf);
          const next: Record<string, () => Shelf> = {
            type: () => typed(shelf, `${i}/64`),
            add: () => withJob(shelf, file, `n${i}`),
            remove: () => withoutJob(shelf, shelf.openId),
            mirror: () => withFile(shelf, mirror(file, UNKNOWN)),
            shape: () => withFile(shelf, withShape(file, SHAPES[i % SHAPES.length]!)),
          };
          h = changed(h, next[what]!(), what, null, i * 10_000);
        });
        let back = h;
        for (let i = 0; i < 30; i++) back = undone(back);
        expect(back.now.shelf).toBe(start.now.shelf);
        for (let i = 0; i < 30; i++) back = redone(back);
        expect(back.now.shelf).toEqual(h.now.shelf);
      }),
      { seed: 3 },
    );
  });
});

describe("a link", () => {
  it("carries a job there and back", async () => {
    const file = setAt(firstJob("in"), ["part", "name"], "Trough “3⁄8” – ärmel");
    const link = await linkOf(file);
    expect(link).toMatch(/^#job=1\.[A-Za-z0-9_-]+$/);
    expect(await jobOfLink(link)).toEqual({ ok: true, jobs: [file], brakes: [], leftOut: [] });
  });

  it("is nothing where there is no job in it, and a sentence where it is spoilt", async () => {
    expect(await jobOfLink("#steps")).toBeNull();
    expect(await jobOfLink("#job=1.AAAA")).toMatchObject({ ok: false });
    expect(await jobOfLink("#job=9.AAAA")).toMatchObject({ ok: false });
  });
});

describe("adopting a file", () => {
  it.each(readdirSync("examples").filter((name) => name.endsWith(".json")))(
    "keeps all of examples/%s",
    (name) => {
      const text = readFileSync(`examples/${name}`, "utf8");
      expect(openedText(text)).toEqual({ ok: true, jobs: [JSON.parse(text)], brakes: [], leftOut: [] });
    },
  );

  it("keeps grain, doubts, cut-outs and a bend in two strokes, and the reader takes them", () => {
    const file: JobFile = {
      ...firstJob("in"),
      part: { ...firstJob("in").part, ...LAID_OUT },
      order: [
        { bend: 1, clamped: "start", to: 45 },
        { bend: 2, clamped: "end" },
        { bend: 1, clamped: "start" },
      ],
    };
    expect(adopt(file)).toEqual({ ok: true, file, leftOut: [] });
    expect(adopt({ ...file, part: { ...file.part, doubts: "1/32" } })).toMatchObject({ leftOut: [] });
    expect(read(file)).toMatchObject({ ok: true });
    expect(read(inUnit(file, "mm"))).toMatchObject({ ok: true });
    const spoilt = { ...file.part, grain: [], doubts: [{}], cutOuts: [{ across: [1], along: [0, 1] }] };
    const { grain: _g, doubts: _d, cutOuts: _c, ...plain } = file.part;
    expect(adopt({ ...file, part: spoilt })).toMatchObject({ ok: true, file: { part: plain } });
    expect(adopt({ ...file, part: spoilt })).toMatchObject({ leftOut: { length: 3 } });
  });

  it("always gives a whole job or a sentence, whatever comes", () => {
    const key = fc.constantFrom("part", "brake", "order", "units", "margin", "x");
    const junk = fc.dictionary(key, fc.jsonValue({ maxDepth: 4 }));
    fc.assert(
      fc.property(junk, (bag) => {
        const adopted = adopt({ noseroom: 1, ...bag });
        if (!adopted.ok) expect(adopted.sentence.length).toBeGreaterThan(20);
        else expect(adopted.file.part.flats.length).toBe(adopted.file.part.bends.length + 1);
      }),
      { seed: 5, numRuns: 400 },
    );
  });

  it("does not let a key of every object through", () => {
    const adopted = openedText('{"noseroom": 1, "part": {"__proto__": {"ran": 1}, "name": "a"}}');
    expect(adopted.ok && adopted.leftOut.join(" ")).toContain("__proto__");
    expect(({} as { ran?: unknown }).ran).toBeUndefined();
  });
});

describe("units", () => {
  it.each([
    ["3/8", "in", "mm", 9.525],
    [".032", "in", "mm", 0.8128],
    ["1 1/2", "in", "mm", 38.1],
    [9.525, "mm", "in", "3/8"],
    [25.4, "mm", "in", 1],
    [10, "mm", "in", "10 mm"],
    ["5 mm", "in", "mm", "5 mm"],
    ["20 ga steel", "in", "mm", "20 ga steel"],
    [0, "in", "mm", 0],
  ] as const)("write %s %s in %s as %s", (value, from, to, expected) => {
    expect(lengthInUnit(value, from, to)).toBe(expected);
  });

  it.each(readdirSync("examples").filter((name) => name.endsWith(".json")))(
    "leave examples/%s the same size",
    (name) => {
      const file = JSON.parse(readFileSync(`examples/${name}`, "utf8")) as JobFile;
      const [before, after] = [read(file), read(inUnit(file, file.units === "in" ? "mm" : "in"))];
      if (!before.ok || !after.ok) throw new Error("an example can't be read");
      expect(after.job.part.flatsMm.length).toBe(before.job.part.flatsMm.length);
      for (const [i, flat] of before.job.part.flatsMm.entries())
        expect(after.job.part.flatsMm[i]).toBeCloseTo(flat, 4);
      expect(after.job.part.thicknessMm).toBeCloseTo(before.job.part.thicknessMm, 9);
      expect(after.job.brake.liftMm).toBeCloseTo(before.job.brake.liftMm, 9);
    },
  );

  it.each([
    ["en-US", "in"],
    ["en", "in"],
    ["es-MX", "mm"],
    ["de-AT", "mm"],
    ["my", "in"],
    ["!!", "mm"],
  ] as const)("begin in a %s browser as %s", (language, units) => expect(usualUnits(language)).toBe(units));
});

describe("the chain", () => {
  it("reads in every starting shape, in both units, on every usual clamp", () => {
    for (const units of ["in", "mm"] as const) {
      for (const shape of SHAPES) {
        for (const type of ["finger", "bar", "profile"] as const) {
          const file = setAt(withShape(firstJob(units), shape), ["brake", "clamp"], usualClamp(type, units));
          expect(read(file), `${shape.name} ${units} ${type}`).toMatchObject({ ok: true });
        }
      }
    }
  });

  it("is itself again, mirrored twice, turned over twice, a bend added and taken away", () => {
    const file = {
      ...firstJob("in"),
      order: [
        { bend: 2, clamped: "end" },
        { bend: 1, clamped: "start" },
      ],
    } as JobFile;
    expect(mirror(mirror(file, UNKNOWN), UNKNOWN)).toEqual(file);
    expect(mirror(file, UNKNOWN).order).toEqual([
      { bend: 1, clamped: "start" },
      { bend: 2, clamped: "end" },
    ]);
    expect(turnOver(turnOver(file, UNKNOWN), UNKNOWN)).toEqual(file);
    const { order: _, ...plain } = file;
    expect(removeBend(withAddition(file, "bend"), 2)).toEqual(plain);
  });

  it("takes its cut-outs along when it is turned: the same metal is left", () => {
    const file = { ...firstJob("in"), part: { ...firstJob("in").part, ...LAID_OUT } };
    expect(read(file)).toMatchObject({ ok: true });
    // A rectangle 2 by 12 in, cut at the corner of its beginnings and in the middle of its far edge.
    const blank = { widthMm: 50.8, lengthMm: 12 * 25.4 };
    const turned = mirror(file, blank).part.cutOuts!;
    expect(turned[0]).toEqual({ across: ["1 1/2", "end"], along: [11, "end"] });
    expect(turned[1]).toEqual({ across: [0, 1], along: [4, 8] });
    expect(mirror(mirror(file, blank), blank)).toEqual(file);
    expect(turnOver(file, blank).part.cutOuts![0]).toEqual({ across: [0, "1/2"], along: [11, "end"] });
    expect(turnOver(turnOver(file, blank), blank)).toEqual(file);
  });

  it.each([
    [8, "1/2"],
    [10, "5/8"],
    [16, 1],
    [20, "1 1/4"],
  ] as const)("writes %s sixteenths as %s", (count, words) => expect(sixteenthWords(count)).toBe(words));
});

describe("small things", () => {
  it("set and get by path, and leave the old value alone", () => {
    const old = { a: [{ b: 1 }], c: 2 };
    expect(setAt(old, ["a", 0, "b"], 5)).toEqual({ a: [{ b: 5 }], c: 2 });
    expect(setAt(old, ["c"], undefined)).toEqual({ a: [{ b: 1 }] });
    expect(old).toEqual({ a: [{ b: 1 }], c: 2 });
    expect(getAt(old, ["a", 0, "b"])).toBe(1);
    expect(getAt(old, ["a", 3, "b"])).toBeUndefined();
    expect(getAt(old, ["constructor"])).toBeUndefined();
  });

  it("name jobs and files", () => {
    expect(freeName(["Trough", "Trough 2"], "Trough")).toBe("Trough 3");
    expect(fileName('Cable trough 3/8"')).toBe("cable-trough-3-8.json");
    expect(fileName("<script>")).toBe("script.json");
    expect(fileName("…")).toBe("job.json");
  });
});
