/**
 * Hems, offsets and protractor angles as the page holds them: what the file says, the numbers along the chain, and edits that
 * keep the part's shape. Shapes are held against the engine's reader, which knows nothing of the page.
 */
import { describe, expect, it } from "vitest";
import { inUnit } from "../../src/jobFile/inUnit.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { adopt } from "../../web/store/adopt.ts";
import { hemEnd, withAddition, withKind } from "../../web/store/bendKinds.ts";
import { bendPath, chainFlats, fileBend, fileFlat, flatPath, inChain } from "../../web/store/chain.ts";
import { flatsAfterRemoval, mirror, removeBend } from "../../web/store/chainEdits.ts";
import { withDoubt } from "../../web/store/doubts.ts";
import { firstJob } from "../../web/store/firstJob.ts";
import { fileText, type JobFile } from "../../web/store/jobFile.ts";

/** Flat, offset, flat, bend, flat, hem, flat: flats 1, 2 (the offset's own), 3, 4, 5 and bends 1 to 4. */
const plain = firstJob("mm");
const rim: JobFile = {
  ...plain,
  part: {
    ...plain.part,
    flats: [20, 30, 15, 8],
    bends: [
      { offset: 5, angle: 45, turn: "up" },
      { included: 60, turn: "up" },
      { hem: "open", turn: "down", gap: 1 },
    ],
  },
};
const partOf = (file: JobFile) => {
  const read = readJob(fileText(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.job.part;
};
const shape = (file: JobFile) => partOf(file).bends.map(({ angleDeg, turn }) => `${turn} ${angleDeg}`);

describe("the chain", () => {
  it("counts an offset as two bends with a flat between, as the engine does", () => {
    expect(chainFlats(rim.part)).toBe(partOf(rim).flatsMm.length);
    expect([0, 1, 2, 3].map((flat) => inChain(rim.part, flat))).toEqual([0, 2, 3, 4]);
    expect([0, 1, 2, 3, 4].map((flat) => fileFlat(rim.part, flat))).toEqual([0, null, 1, 2, 3]);
    expect([0, 1, 2, 3].map((bend) => fileBend(rim.part, bend))).toEqual([0, 0, 1, 2]);
    expect(flatPath(rim, 1)).toEqual(["part", "bends", 0, "offset"]);
    expect([0, 2, 3].map((bend) => bendPath(rim, bend).at(-1))).toEqual(["angle", "included", "hem"]);
  });

  it("is the same part when it is turned end for end twice, and its mirror image in between", () => {
    const blank = { widthMm: null, lengthMm: null };
    const once = mirror(rim, blank);
    expect(shape(once)).toEqual(shape(rim).toReversed());
    partOf(once).flatsMm.forEach((mm, i) => {
      expect(mm).toBeCloseTo(partOf(rim).flatsMm.at(-1 - i)!, 9);
    });
    expect(mirror(once, blank)).toEqual(rim);
  });

  it("keeps each doubt with its flat when an offset is taken away or made", () => {
    const doubtful = [0, 1, 2, 3, 4].reduce((so, flat) => withDoubt(so, flat, flat / 10), rim);
    expect(flatsAfterRemoval(rim.part, 0)).toEqual([0, 3, 4]);
    expect(removeBend(doubtful, 0).part.doubts).toEqual([0, 0.3, 0.4]);
    const without = withKind(doubtful, 0, "angle");
    expect(without.part.doubts).toEqual([0, 0.2, 0.3, 0.4]);
    expect(withKind(without, 0, "offset").part.doubts).toEqual([0, 0.25, 0.2, 0.3, 0.4]);
    expect(partOf(without).flatsMm.length).toBe(4);
  });
});

describe("what a bend is", () => {
  it("changes and comes back with the same angle, read from flat or between the flats", () => {
    const between = withKind(rim, 0, "included");
    expect(between.part.bends[0]).toEqual({ included: 135, turn: "up" });
    expect(shape(between)[0]).toBe("up 45");
    expect(withKind(rim, 1, "angle").part.bends[1]).toEqual({ angle: 120, turn: "up" });
    expect(shape(withKind(rim, 1, "angle"))).toEqual(shape(rim));
  });

  it("keeps the order where the chain stays as long, and drops it where its bends get other numbers", () => {
    const order = [1, 2, 3, 4].map((bend) => ({ bend, clamped: "start" as const }));
    expect(withKind({ ...rim, order }, 1, "angle").order).toEqual(order);
    expect(withKind({ ...rim, order }, 0, "angle").order).toBeUndefined();
  });

  it("is added at the end, before a hem that closes it; a hem at each end once", () => {
    const longer = withAddition(rim, "bend");
    expect(longer.part.bends.map(({ hem }) => hem)).toEqual([undefined, undefined, undefined, "open"]);
    expect(longer.part.flats).toEqual([20, 30, 15, 15, 8]);
    expect(partOf(withAddition(rim, "offset")).flatsMm.length).toBe(7);
    const both = withAddition(rim, "hem");
    expect(both.part.bends[0]?.hem).toBe("closed");
    expect(hemEnd(both)).toBeNull();
    expect(withAddition(both, "hem")).toBe(both);
    expect(partOf(both).bends.length).toBe(5);
  });
});

describe("a file with hem, offset, protractor angle and doubts of the brake", () => {
  const full: JobFile = {
    ...rim,
    brake: {
      ...rim.brake,
      length: 600,
      doubts: { overbend: 1, setback: 0.2, noseRadius: 0.1 },
      frame: [
        {
          name: "ear",
          profile: [
            [-150, 60],
            [-140, 60],
            [-140, 70],
          ],
          along: [0, 12],
        },
      ],
    },
    order: [1, 2, 3, 4].map((bend) => ({ bend, clamped: "start" as const })),
  };
  it("is taken in as it stands, nothing left out", () => {
    expect(adopt(JSON.parse(fileText(full)))).toEqual({ ok: true, file: full, leftOut: [] });
  });
  it("is as large in the other unit", () => {
    const inches = partOf(inUnit(rim, "in"));
    partOf(rim).flatsMm.forEach((mm, i) => {
      expect(inches.flatsMm[i]).toBeCloseTo(mm, 6);
    });
  });
});
