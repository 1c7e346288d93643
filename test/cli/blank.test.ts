import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EXAMPLES, noseroom } from "./noseroom.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-blank-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/**
 * FAA-H-8083-31, bending a U-channel: T .040, R .16, mold lines 1.00/2.00/1.00 in, flats .80/1.60/.80.
 * The K-factor is the one that gives the handbook's bend allowance of 0.27 in: 0.27/(π/2) = R + K·T.
 */
const channel = {
  noseroom: 1,
  units: "in",
  part: {
    name: "handbook channel",
    material: "2024-T3",
    thickness: 0.04,
    insideRadius: 0.16,
    kFactor: (0.27 / (Math.PI / 2) - 0.16) / 0.04,
    dimensions: "outside",
    flats: [1, 2, 1],
    bends: [
      { angle: 90, turn: "up", overbend: 90 },
      { angle: 90, turn: "up", overbend: 90 },
    ],
  },
  brake: JSON.parse(readFileSync(join(EXAMPLES, "cable-trough-bar.json"), "utf8")).brake,
};

describe("noseroom blank", () => {
  it("gives the handbook's developed width of 3.74 in, its lines, and the nearest 64ths where they are asked for", async () => {
    const { status, out, err } = await noseroom(["blank", "-", "--fractions"], {
      input: JSON.stringify(channel),
    });
    expect({ status, err }).toEqual({ status: 0, err: "" });
    expect(out).toMatch(/^Blank of handbook channel: 3\.740 in wide\.$/mu);
    // 3.74 in = 239.36/64: 239/64 = 3 47/64, short by 0.36/64 = 0.0056 in.
    expect(out).toMatch(/^developed width +3\.740 +3 47\/64 +−0\.006$/mu);
    const figures = [...out.matchAll(/line[^\d\n]*(\d\.\d{3}) /gu)].map((match) => match[1]);
    expect(figures.filter((_, i) => i % 3 !== 1)).toEqual(["0.800", "1.070", "2.670", "2.940"]);
    // The sight line stands one nose radius into the bend from the clamped tangent line: there the nose's foremost point is.
    const into = Number(channel.brake.clamp.noseRadius);
    expect([0.8 + into, 1.07 - into].map((at) => at.toFixed(3))).toContain(figures[1]);
    expect([2.67 + into, 2.94 - into].map((at) => at.toFixed(3))).toContain(figures[4]);
    expect(out).toContain("free end of flat 1");
  });

  it("draws the blank at true size with --svg", async () => {
    const file = join(folder, "blank.svg");
    const { status, out } = await noseroom(["blank", "-", "--svg", file], { input: JSON.stringify(channel) });
    expect(status).toBe(0);
    expect(out).toContain(file);
    const svg = readFileSync(file, "utf8");
    const [, widthMm, boxWidth] = /width="([\d.]+)mm".*viewBox="[-\d.]+ [-\d.]+ ([\d.]+) /u.exec(svg) ?? [];
    expect(widthMm).toBe(boxWidth);
    const cut = /<g class="cut">\s*<path class="face" d="M0 0L([\d.]+) 0/u.exec(svg);
    expect(Number(cut?.[1])).toBeCloseTo(3.74 * 25.4, 3);
  });
});
