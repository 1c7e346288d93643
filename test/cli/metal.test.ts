/**
 * `metals` and `strip`, and what `blank` says of its bend allowance, as a person reads them.
 */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { metalNames } from "../../src/metal/metals.ts";
import { EXAMPLES, noseroom } from "./noseroom.ts";

const trough = join(EXAMPLES, "cable-trough-finger.json");
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-metal-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("noseroom metals", () => {
  it("lists every metal with all its figures, and a source for each", async () => {
    const { status, out, err } = await noseroom(["metals"]);
    expect({ status, err }).toEqual({ status: 0, err: "" });
    const [table = "", sources = ""] = out.split("Where the figures come from");
    for (const name of metalNames()) {
      expect(table).toMatch(new RegExp(`^${name} +\\d+ +\\d+ +[\\d.]+ +0\\.\\d{3} +0\\.\\d+ +[\\d.]+`, "mu"));
      for (const what of ["Strength", "Modulus", "Density", "K-factor", "Least radius"]) {
        const line = sources
          .split("\n")
          .find((one) => one.startsWith(`  ${what} of `) && one.includes(name))
          ?.split(": ");
        expect(line?.slice(1).join(": ").length, `${what} of ${name}`).toBeGreaterThan(15);
      }
    }
    // Aluminum Association, typical properties: 6061-T6 yields at 40 ksi, breaks at 45 ksi, modulus 10 million psi.
    expect(table).toMatch(/^6061-T6 +40 +45 +10 /mu);
  });

  it("shows one metal with its radii by thickness", async () => {
    const { out } = await noseroom(["metals", "2024 t3"]);
    expect(out).toMatch(/^yield +50 ksi +Aluminum Association/mu);
    // FAA AC 43.13-1B, table 4-6: 2024-T3 at .064 in wants 3 to 5 T.
    expect(out).toMatch(/^ {2}0\.064 in +3 T at least, easy from 5 T$/mu);
    expect(out).toContain("Source: FAA AC 43.13-1B, table 4-6");
    expect((await noseroom(["metals", "copper", "--units", "mm"])).out).toMatch(/^modulus +117 GPa +/mu);
  });

  it("prints JSON in mm, MPa and kg/m³", async () => {
    const all = JSON.parse((await noseroom(["metals", "--json"])).out);
    expect(all.map(({ name }: { name: string }) => name)).toEqual(metalNames());
    const one = JSON.parse((await noseroom(["metals", "mild steel", "--json"])).out);
    expect(one).toMatchObject({
      yieldMpa: 240,
      densityKgM3: 7850,
      sources: { strength: expect.any(String) },
    });
  });
});

describe("noseroom strip", () => {
  const read = ["--thickness", "1/16", "--radius", "1/16", "--date", "2026-05-30", "--metal", "mild steel"];

  it("finds the K-factor of the handbook's soft-metal formula in a strip made by it", async () => {
    // Machinery's Handbook, from memory: a 90° bend in soft sheet takes up 0.64 T + 1.57 R. With R = T = 1/16 in that
    // is 0.1381 in, so the deduction is 4/16 − 0.1381 = 0.1119 in, and K = 0.64/1.5708 = 0.41.
    const { status, out } = await noseroom([
      "strip",
      ...read,
      "--brake",
      "finger brake",
      "--before",
      "2",
      "--flanges",
      "1.0559, 1.0560 in",
    ]);
    expect(status).toBe(0);
    expect(out).toMatch(/^Test strip of 2026-05-30: bend deduction 0\.112 in, K-factor 0\.41\.\n/u);
    expect(out).toMatch(/^brake +finger brake$/mu);
    expect(out).toMatch(/^metal +mild steel, 0\.063 in thick$/mu);
    expect(out).toMatch(/^width before +2\.000 in$/mu);
    expect(out).toContain('"kFactor": 0.4');
    expect(out).toContain("crushes");
  });

  it("gives the springback ratio, leaf read over relaxed, and the leaf angle that it asks for", async () => {
    const { out } = await noseroom(["strip", ...read, "--leaf", "100°", "--relaxed", "96"]);
    expect(out).toMatch(/^Test strip of 2026-05-30: springback ratio 0\.960\.\n/u);
    // 90 / 0.96 = 93.75
    expect(out).toContain("For 90° swing the leaf to 93.8°");
    expect(out).not.toContain("K-factor");
  });

  it("takes the rest from a job and puts what it found into it", async () => {
    const file = join(folder, "measured.json");
    const words = ["--before", "2", "--flanges", "1.029, 1.028", "--leaf", "92", "--relaxed", "90"];
    const { status, out } = await noseroom(["strip", trough, ...words, "-o", file]);
    expect(status).toBe(0);
    expect(out).toMatch(/^brake +24 in finger brake, 45° fingers$/mu);
    expect(out).toContain(file);
    const { kFactor, bends } = JSON.parse(readFileSync(file, "utf8")).part;
    // By hand: 2·(.032 + .032) − .057 = .071 in over π/2, less .032, over .032.
    expect(kFactor).toBeCloseTo((0.071 / (Math.PI / 2) - 0.032) / 0.032, 3);
    expect(bends.map(({ overbend }: { overbend: number }) => overbend)).toEqual([92, 92]);
    expect((await noseroom(["check", file])).out).toContain("92°");
  });

  it("doubts a strip that puts the neutral line where it can't be", async () => {
    const { out } = await noseroom(["strip", ...read, "--before", "2", "--flanges", "1.1, 1.1"]);
    expect(out).toContain("The strip puts the neutral line inside the bend");
  });

  it("prints the record as JSON in mm", async () => {
    const words = ["strip", ...read, "--before", "2", "--flanges", "1, 1.11", "--json"];
    const record = JSON.parse((await noseroom(words)).out);
    expect(record).toMatchObject({ date: "2026-05-30", metal: "mild steel", brake: null, springback: null });
    expect(record.bend.deductionMm).toBeCloseTo(0.11 * 25.4, 9);
  });
});

describe("noseroom blank", () => {
  it("says by which bend allowance, how far others would differ, and warns past what is allowed", async () => {
    const { out } = await noseroom(["blank", trough]);
    expect(out).toContain("Bend allowance by K-factor 0.41, from the table: Machinery's Handbook");
    // Two bends of 90°, R = T = .032 in. FAA-H-8083-31: 90·(.01743 + .0078)·.032 = .07266 each, by K .41 .07087;
    // DIN 6935: k = 0.65 at r/s = 1, so π/2·(.032 + .325·.032) = .06660.
    expect(out).toContain("would make the blank 0.004 in wider, DIN 6935 0.009 in narrower.");
    expect(out).not.toContain("That is more than");
    const strict = await noseroom(["blank", trough, "--within", "0.005"]);
    expect(strict.out).toContain("That is more than 0.005 in: bend a test strip before you cut");
  });
});
