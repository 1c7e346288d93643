/**
 * A pan's blank, folded up again by hand: bottom and walls come to the asked sizes; the cut line against an area added
 * up from rectangles and quarter circles; relief holes by FAA-H-8083-31, folding a box.
 */
import { describe, expect, test } from "vitest";
import { layOutPan, type Pan } from "../../src/blank/pan.ts";

const INCH = 25.4;

const tray: Pan = {
  insideWidthMm: 150,
  insideLengthMm: 220,
  wallMm: 40,
  thicknessMm: 0.8,
  insideRadiusMm: 1.2,
  kFactor: 0.44,
};

/** Area inside the cut line: shoelace over the chords, each hollow arc's segment taken off. */
function area(pan: Pan): number {
  return layOutPan(pan).outline.edges.reduce((sum, edge) => {
    const chord = (edge.from.x * edge.to.y - edge.to.x * edge.from.y) / 2;
    if (edge.kind === "line") return sum + chord;
    const segment = (edge.radius ** 2 * (edge.sweepRad - Math.sin(edge.sweepRad))) / 2;
    return sum + chord + segment;
  }, 0);
}

describe("layOutPan", () => {
  test("the handbook's channel sizes are those of a pan's section: flats .80, 1.60 and .80 in", () => {
    // FAA-H-8083-31, U-channel: T = .040, R = .16, mold lines 1.00, 2.00, 1.00 in; inside the web is 2.00 − 2·.040.
    const { across, allowanceMm } = layOutPan({
      insideWidthMm: (2 - 0.08) * INCH,
      insideLengthMm: 3 * INCH,
      wallMm: INCH,
      thicknessMm: 0.04 * INCH,
      insideRadiusMm: 0.16 * INCH,
      kFactor: 0.44,
    });
    const [near, far] = across.bends;
    expect(near.tangentsMm[0] / INCH).toBeCloseTo(0.8, 9);
    expect((far.tangentsMm[0] - near.tangentsMm[1]) / INCH).toBeCloseTo(1.6, 9);
    expect((across.sizeMm - far.tangentsMm[1]) / INCH).toBeCloseTo(0.8, 9);
    // The handbook reads .27 from its chart, at R .156, and comes to 3.74.
    expect(Math.abs(allowanceMm / INCH - 0.27)).toBeLessThan(0.01);
    expect(Math.abs(across.sizeMm / INCH - 3.74)).toBeLessThan(0.02);
  });

  test("folded by hand it has the asked bottom and walls", () => {
    const { along, allowanceMm } = layOutPan(tray);
    const [near, far] = along.bends;
    const flat = far.tangentsMm[0] - near.tangentsMm[1];
    // Inside faces stand one inside radius past the bottom's flat; a wall is its flat, its radius and the sheet high.
    expect(flat + 2 * tray.insideRadiusMm).toBeCloseTo(tray.insideLengthMm, 9);
    expect(near.tangentsMm[0] + tray.insideRadiusMm + tray.thicknessMm).toBeCloseTo(tray.wallMm, 9);
    expect(near.tangentsMm[1] - near.tangentsMm[0]).toBeCloseTo(allowanceMm, 9);
    expect(along.sizeMm - far.tangentsMm[1]).toBeCloseTo(near.tangentsMm[0], 9);
    expect(along.sightLinesMm[0]).toBeCloseTo(near.tangentsMm[1] - tray.insideRadiusMm, 9);
    expect(along.sightLinesMm[1]).toBeCloseTo(far.tangentsMm[0] + tray.insideRadiusMm, 9);
  });

  test("a relief hole on each corner of the bottom's flat, 1/8 in across", () => {
    const { holes, across, along } = layOutPan(tray);
    expect(holes.length).toBe(4);
    const xs = [across.bends[0].tangentsMm[1], across.bends[1].tangentsMm[0]];
    const ys = [along.bends[0].tangentsMm[1], along.bends[1].tangentsMm[0]];
    for (const { center, diameterMm } of holes) {
      expect(xs).toContain(center.x);
      expect(ys).toContain(center.y);
      expect(diameterMm).toBeCloseTo(INCH / 8, 9);
    }
  });

  test("the cut line closes, runs counter-clockwise, and holds bottom and walls less three quarters of each hole", () => {
    const { outline, across, along } = layOutPan(tray);
    outline.edges.forEach((edge, i) => {
      const next = outline.edges[(i + 1) % outline.edges.length]!;
      expect(edge.to.x).toBeCloseTo(next.from.x, 9);
      expect(edge.to.y).toBeCloseTo(next.from.y, 9);
    });
    const wide = across.bends[1].tangentsMm[0] - across.bends[0].tangentsMm[1];
    const tall = along.bends[1].tangentsMm[0] - along.bends[0].tangentsMm[1];
    const cross = across.sizeMm * tall + along.sizeMm * wide - wide * tall;
    expect(area(tray)).toBeCloseTo(cross - 3 * Math.PI * (INCH / 16) ** 2, 6);
  });

  test.each([
    [{ wallMm: 1.5 }],
    [{ insideWidthMm: 4 }],
    [{ thicknessMm: 0 }],
    [{ insideRadiusMm: -1 }],
    [{ insideLengthMm: Number.NaN }],
  ])("refuses %j", (wrong) => {
    expect(() => layOutPan({ ...tray, ...wrong })).toThrow(RangeError);
  });
});
