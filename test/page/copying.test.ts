/**
 * What the page keeps beside the job file: readings of a sample and metals of the person's own. Lengths by hand: inside
 * a bend of 90° an inside reading is one thickness T·tan(45°) shorter than the outside one at each end that is bent.
 */
import { describe, expect, it } from "vitest";
import { inUnit } from "../../src/jobFile/inUnit.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { withAddition } from "../../web/store/bendKinds.ts";
import {
  flatsAfterRemoval,
  flatsEndForEnd,
  mirror,
  removeBend,
  SHAPES,
  withShape,
} from "../../web/store/chainEdits.ts";
import { withDoubt, withDoubts } from "../../web/store/doubts.ts";
import type { Drawer } from "../../web/store/drawer.ts";
import { firstJob } from "../../web/store/firstJob.ts";
import { fileText, type JobFile, setAt } from "../../web/store/jobFile.ts";
import { readShelf } from "../../web/store/keep.ts";
import { Keeper } from "../../web/store/keeper.ts";
import { adoptMetals, withMetal } from "../../web/store/metals.ts";
import {
  adoptSample,
  doubtShown,
  movedSample,
  NOTHING_READ,
  readingOf,
  type Sample,
  sampleInUnit,
  sampleOf,
  sideOf,
  withFlat,
  withReading,
} from "../../web/store/sample.ts";

const partOf = (file: JobFile) => {
  const read = readJob(fileText(file));
  if (!read.ok) throw new Error("the job of the test can't be read");
  return read.job.part;
};
const trough = firstJob("mm");
/** Doubts as the engine reads them out of the file. */
const doubtsMm = (file: JobFile) => {
  const read = readJob(fileText(file));
  return read.ok ? read.job.doubtsMm : null;
};
const UNKNOWN = { widthMm: null, lengthMm: null };

function drawer(): Drawer {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (index) => [...kept.keys()][index] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}

describe("a sample", () => {
  it.each([
    ["outside", 10, 10],
    ["inside", 8.4, 10],
  ] as const)("read %s makes the web of 0.8 mm sheet as long as it is", (side, reading, outside) => {
    const next = withReading(NOTHING_READ, trough, 1, { reading, side }, partOf(trough));
    expect(next.file.part.flats[1]).toBe(outside);
    expect(sideOf(next.sample, next.file, 1)).toBe(side);
    expect(readingOf(next.sample, next.file, 1, partOf(next.file))).toBe(reading);
  });

  it("of a free flange grows at its one bent end only", () => {
    const next = withReading(NOTHING_READ, trough, 0, { reading: 11.9, side: "inside" }, partOf(trough));
    expect(next.file.part.flats[0]).toBe(12.7);
  });

  it("read outside into a job that is dimensioned inside comes out the same part", () => {
    const inside = setAt(trough, ["part", "dimensions"], "inside");
    const next = withReading(NOTHING_READ, inside, 1, { reading: 10, side: "outside" }, partOf(inside));
    expect(next.file.part.flats[1]).toBe(8.4);
  });

  it("follows a flat that is changed elsewhere, and keeps what was typed as long as it holds", () => {
    const read = withReading(NOTHING_READ, trough, 1, { reading: "8.40", side: "inside" }, partOf(trough));
    expect(readingOf(read.sample, read.file, 1, partOf(read.file))).toBe("8.40");
    const other = setAt(read.file, ["part", "flats", 1], 12);
    expect(readingOf(read.sample, other, 1, partOf(other))).toBe(10.4);
  });

  it("that can't be read goes into the job as typed, for the reader to say so", () => {
    const next = withReading(NOTHING_READ, trough, 1, { reading: "about 3", side: "inside" }, partOf(trough));
    expect(next.file.part.flats[1]).toBe("about 3");
    expect(readingOf(next.sample, next.file, 1, null)).toBe("about 3");
  });

  it("is as sure as callipers are unless it says otherwise: 0.25 mm, 1/64 in; the job file says so", () => {
    expect(doubtsMm(withDoubts(trough, true))).toEqual([0.25, 0.25, 0.25]);
    expect(doubtsMm(withDoubts(firstJob("in"), true))?.[0]).toBeCloseTo(25.4 / 64, 9);
    expect(doubtsMm(withDoubt(trough, 1, "0.4"))).toEqual([0.25, 0.4, 0.25]);
    expect(doubtsMm(withDoubt(withDoubt(trough, 1, "0.4"), 1, " "))).toEqual([0.25, 0.25, 0.25]);
    expect(withDoubts(trough, false)).toEqual(trough);
    expect(readJob(fileText(withDoubt(trough, 1, "not much")))).toMatchObject({
      ok: false,
      problems: [{ path: "part.doubts[1]" }],
    });
  });

  it("shows a doubt that was typed or came with the file, and an empty box for the usual one", () => {
    const file = withDoubt(trough, 1, 0.4);
    expect([0, 1, 2].map((flat) => doubtShown(NOTHING_READ, file, flat))).toEqual(["", 0.4, ""]);
    const typed = withFlat(NOTHING_READ, 0, { doubt: 0.25 });
    expect(doubtShown(typed, withDoubt(file, 0, 0.25), 0)).toBe(0.25);
    expect(sampleOf({ file })).toEqual(NOTHING_READ);
    expect(sampleOf({ file: trough })).toBeNull();
  });

  it("keeps its lengths when the unit is switched", () => {
    const sample = withFlat(NOTHING_READ, 1, { doubt: 0.4, reading: 8.4, side: "inside" });
    const inches = sampleInUnit(sample, "mm", "in");
    expect(doubtsMm(inUnit(withDoubt(trough, 1, 0.4), "in"))?.[1]).toBeCloseTo(0.4, 9);
    expect(adoptSample(sampleInUnit(inches, "in", "mm"))?.flats[1]).toMatchObject({ side: "inside" });
  });

  it("is turned end for end with its part", () => {
    const sample = withFlat(NOTHING_READ, 0, { doubt: 1 });
    const from = flatsEndForEnd(trough.part);
    const turned = movedSample({ ...sample, overall: { ...sample.overall, flat: 2 } }, from);
    expect(turned.flats.map(({ doubt }) => doubt)).toEqual([undefined, undefined, 1]);
    expect(turned.overall.flat).toBe(0);
    expect(doubtsMm(mirror(withDoubt(trough, 0, 1), UNKNOWN))).toEqual([0.25, 0.25, 1]);
  });

  it("keeps to its flats when a bend in the middle is taken away or one is added", () => {
    const hat = withShape(trough, SHAPES.find(({ name }) => name === "Hat")!);
    const file = [0, 1, 2, 3, 4].reduce((so, flat) => withDoubt(so, flat, 1 + flat / 10), hat);
    const read = [10, 11, 12, 13, 14].reduce<Sample>(
      (so, reading, flat) => withFlat(so, flat, { reading, side: "inside", doubt: 1 + flat / 10 }),
      { ...NOTHING_READ, overall: { reading: 40, flat: 4, square: true } },
    );
    // Bend 2 goes, and with it flat 3.
    const left = removeBend(file, 1);
    const sample = movedSample(read, flatsAfterRemoval(file.part, 1));
    expect(left.part.flats).toEqual([15, 22, 22, 15]);
    expect(left.part.doubts).toEqual([1, 1.1, 1.3, 1.4]);
    expect(sample.flats.map(({ reading }) => reading)).toEqual([10, 11, 13, 14]);
    expect(sample.overall).toEqual({ reading: 40, flat: 3, square: true });
    // A size measured along the flat that went says nothing any more.
    expect(movedSample(read, flatsAfterRemoval(file.part, 3)).overall.reading).toBe("");
    expect(withAddition(left, "bend").part.doubts).toEqual([1, 1.1, 1.3, 1.4, 0.25]);
    expect(doubtsMm(withAddition(left, "bend"))).toEqual([1, 1.1, 1.3, 1.4, 0.25]);
  });

  it("kept from before doubts stood in the job file brings them into it", () => {
    const place = drawer();
    const sample = withFlat(NOTHING_READ, 1, { doubt: "1/2" });
    const entry = { version: 1, place: 0, file: firstJob("in"), sample };
    place.setItem("noseroom.job.a", JSON.stringify(entry));
    expect(readShelf(place).shelf?.jobs[0]?.file.part.doubts).toEqual(["1/64", "1/2", "1/64"]);
  });

  it("is kept beside its job and read back; what is none is left out, whatever it is", () => {
    const place = drawer();
    const sample = withFlat(NOTHING_READ, 1, { doubt: "1/2", side: "inside" });
    const file = withDoubt(trough, 1, "1/2");
    new Keeper(place).keep({ jobs: [{ id: "a", file, sample }], openId: "a" });
    expect(readShelf(place).shelf?.jobs[0]?.sample).toEqual(sample);
    for (const junk of [undefined, null, 3, "x", []]) {
      const read = adoptSample(junk);
      expect(read?.flats ?? []).toEqual([]);
    }
    const bent = adoptSample({
      flats: [{ side: "above", doubt: {}, reading: [] }, 7],
      overall: { flat: -3 },
    });
    expect(bent).toEqual({ flats: [{}, {}], overall: { reading: "", flat: 0, square: false } });
  });
});

describe("metals of one's own", () => {
  const roof = { name: "roof sheet", yield: 310, modulus: "200000" };
  it("are kept and read back; one of the same name takes the old one's place", () => {
    const place = drawer();
    const metals = withMetal(withMetal([], roof), { ...roof, yield: 320 });
    new Keeper(place).keep({ jobs: [{ id: "a", file: trough }], openId: "a", metals });
    expect(readShelf(place).shelf?.metals).toEqual([{ ...roof, yield: 320 }]);
  });

  it("that are none are left out, and a damaged list loses nothing else", () => {
    expect(adoptMetals(JSON.stringify([roof, { name: 3 }, null, { ...roof, yield: {} }]))).toEqual([roof]);
    for (const damaged of ['[{"name"', "{}", "null", ""]) expect(adoptMetals(damaged)).toEqual([]);
  });
});
