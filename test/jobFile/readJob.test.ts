/**
 * What readJob makes of a job: units, dimensions, radii, overbends, defaults. Lengths and setbacks against the
 * handbook's rules: (r + T)·tan(θ/2) to the outside mold line (FAA AC 43.13-1B, 4-56), 25.4 mm to the inch exactly.
 */
import { describe, expect, it } from "vitest";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { changed, drop, jobOfText, problemsOf, put, soundJob } from "./jobs.ts";

/** Every number of a job within rounding of the same number of another. */
function expectSame(a: unknown, b: unknown): void {
  if (typeof a === "number" && typeof b === "number") expect(a).toBeCloseTo(b, 9);
  else if (typeof a === "object" && a !== null && typeof b === "object" && b !== null) {
    expect(Object.keys(a)).toEqual(Object.keys(b));
    for (const [key, value] of Object.entries(a)) expectSame(value, (b as Record<string, unknown>)[key]);
  } else expect(a).toEqual(b);
}

/** The sound job with every length turned into inches. */
function inInches(): string {
  const job = soundJob();
  const lengths = /^(thickness|insideRadius|length|depth|noseRadius|topRadius|holder\w+|lift|margin)$/u;
  const turned = (key: string, value: unknown): unknown => {
    if (typeof value === "number") return lengths.test(key) ? value / 25.4 : value;
    if (Array.isArray(value)) {
      return value.map((item) => turned(/^(flats|profile|pivot)$/u.test(key) ? "length" : key, item));
    }
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([inner, item]) => [inner, turned(inner, item)]));
  };
  return JSON.stringify({ ...(turned("", job) as object), units: "in" });
}

describe("readJob, units", () => {
  it("reads the same job in inches as in mm", () => {
    const mm = jobOfText(JSON.stringify(soundJob()));
    const inch = jobOfText(inInches());
    expectSame({ ...inch, units: "mm" }, { ...mm });
  });

  it("takes fractions, units in the text and gauges beside plain numbers", () => {
    const job = jobOfText(
      changed((sound) => {
        sound.units = "in";
        sound.part.thickness = "0.8 mm";
        sound.part.insideRadius = "1 mm";
        sound.part.flats = ["1 1/2", "20 mm", 0.75];
        Object.assign(sound.brake.clamp, { thickness: "1/4", depth: "45 mm", noseRadius: "1/32 in" });
        for (const key of ["topRadius", "holderBack", "holderHeight", "holderDepth"])
          delete sound.brake.clamp[key];
        sound.brake.rated.thickness = "16 ga aluminum";
        sound.brake.leaf.swing = "135";
      }),
    );
    // Outside flats lose (1 + 0.8)·tan 45° = 1.8 at each bend.
    expectSame(job.part.flatsMm, [38.1 - 1.8, 20 - 3.6, 19.05 - 1.8]);
    expect(job.brake.clamp.noseRadiusMm).toBe(0.79375);
    // ASTM B258: No. 16 is 0.0508 in.
    expect(job.brake.rating?.thicknessMm).toBeCloseTo(0.0508 * 25.4, 2);
    expect(job.brake.leaf.swingDeg).toBe(135);
  });
});

describe("readJob, what is left out", () => {
  const bare = jobOfText(
    changed((job) => {
      for (const path of [
        "part.kFactor",
        "part.length",
        "brake.frame",
        "brake.setback",
        "brake.rated",
        "brake.leaf.pivot",
      ]) {
        drop(path)(job);
      }
      drop("margin")(job);
      drop("order")(job);
      for (const bend of job.part.bends) delete bend.overbend;
    }),
  );

  it("takes the metal's K-factor, no frame, the pivot on the edge, an automatic setback, a margin of 0.5 mm", () => {
    expect(bare.part.kFactor).toBe(0.44);
    expect(bare.brake.frame).toEqual([]);
    expect(bare.brake.leaf.pivot).toEqual({ x: 0, y: 0 });
    expect(bare.brake.noseSetback).toBe("auto");
    expect(bare.marginMm).toBe(0.5);
    for (const key of ["order"]) expect(key in bare).toBe(false);
    for (const key of ["lengthMm"]) expect(key in bare.part).toBe(false);
    expect("rating" in bare.brake).toBe(false);
  });

  it("bends an own metal over by the springback of the formed radius: X = R·σy/(E·T), R_i/R_f = 4X³ − 3X + 1", () => {
    const { bends } = jobOfText(
      changed((job) => {
        put("part.material", { name: "own", yield: 240, modulus: 200_000 })(job);
        for (const bend of job.part.bends) delete bend.overbend;
      }),
    ).part;
    // R 1, T 0.8: X = 0.0015, R_f = 1.00452, Ks = 1.4/1.40452 = 0.99678.
    const x = (1 * 240) / (200_000 * 0.8);
    const relaxed = 1 / (4 * x ** 3 - 3 * x + 1);
    const ratio = (1 + 0.4) / (relaxed + 0.4);
    for (const bend of bends) expect(bend.overbendDeg).toBeCloseTo(90 / ratio, 9);
    expect(90 / ratio).toBeCloseTo(90.29, 2);
  });

  it("bends a named metal over by its published factor: mild steel at r/T 1.25 keeps 0.99", () => {
    for (const bend of bare.part.bends) expect(bend.overbendDeg).toBeCloseTo(90 / 0.99, 9);
  });
});

describe("readJob, metals and measures", () => {
  const withMetal = (material: unknown) => jobOfText(changed(put("part.material", material))).part.metal;

  it("finds a metal of the table by its name, however it is written", () => {
    expect(withMetal("6061 t6").name).toBe("6061-T6");
  });

  it("takes an own metal with or without its ultimate strength", () => {
    const tin = { name: "roof tin", yield: "210 MPa", modulus: 190_000 };
    expect(withMetal(tin)).toEqual({ name: "roof tin", yieldMpa: 210, modulusMpa: 190_000 });
    expect(withMetal({ ...tin, ultimate: 210 })).toEqual({
      name: "roof tin",
      yieldMpa: 210,
      modulusMpa: 190_000,
      ultimateMpa: 210,
    });
  });

  it("keeps the part's length and the brake's rating where they are given", () => {
    const job = jobOfText(JSON.stringify(soundJob()));
    expect(job.part.lengthMm).toBe(300);
    expect(job.brake.rating).toEqual({ thicknessMm: 2, lengthMm: 1200, yieldMpa: 250 });
    expect(job.brake.liftMm).toBe(35);
    expect(job.brake.clamp.outlines).toHaveLength(2);
  });

  it("takes up to 10,000 corners in all, and a bar without a holder", () => {
    const ring = Array.from({ length: 4996 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 4996;
      return [Math.round(-1e6 + 5e5 * Math.cos(angle)) / 1e4, Math.round(-1e6 + 5e5 * Math.sin(angle)) / 1e4];
    });
    const job = jobOfText(
      changed((sound) => {
        sound.brake.frame = [ring, ring];
        for (const key of ["holderBack", "holderHeight", "holderDepth"]) delete sound.brake.clamp[key];
      }),
    );
    expect(job.brake.frame.map((piece) => piece.edges.length)).toEqual([4996, 4996]);
    expect(job.brake.clamp.outlines).toHaveLength(1);
  });
});

describe("readJob, dimensions", () => {
  const flats = (dimensions: string, flat = 20): readonly number[] =>
    jobOfText(
      changed((job) => {
        job.part.dimensions = dimensions;
        job.part.flats = [flat, flat, flat];
        job.part.bends = [
          { angle: 90, turn: "up", insideRadius: 2, overbend: 90 },
          { angle: 60, turn: "down", overbend: 60 },
        ];
      }),
    ).part.flatsMm;

  it("takes (r + T)·tan(θ/2) off outside, r·tan(θ/2) off inside, nothing off flat dimensions", () => {
    const tan30 = Math.tan(Math.PI / 6);
    expectSame(flats("outside"), [20 - 2.8, 20 - 2.8 - 1.8 * tan30, 20 - 1.8 * tan30]);
    expectSame(flats("inside"), [20 - 2, 20 - 2 - tan30, 20 - tan30]);
    expectSame(flats("flat"), [20, 20, 20]);
  });
});

describe("readJob, radii", () => {
  const radii = (job: Job) => job.part.bends.map((bend) => bend.insideRadiusMm);

  it("forms (r + T)·tan(θo/2) = s + Rn in every bend where the setback is given, and keeps what was asked for", () => {
    const job = jobOfText(
      changed((sound) => {
        sound.brake.setback = 1.5;
        sound.part.bends[1]!.insideRadius = 4;
        sound.part.bends.forEach((bend) => {
          delete bend.overbend;
        });
      }),
    );
    const { noseRadiusMm } = job.brake.clamp;
    for (const { insideRadiusMm, overbendDeg } of job.part.bends)
      expect((insideRadiusMm + 0.8) * Math.tan((overbendDeg * Math.PI) / 360)).toBeCloseTo(
        1.5 + noseRadiusMm,
        9,
      );
    expect(job.askedInsideRadiiMm).toEqual([1, 4]);
    // The springback follows the formed radius too.
    expect(job.part.bends[0]!.overbendDeg).toBe(job.part.bends[1]!.overbendDeg);
  });

  it("lets an asked radius under the nose's pass where the given setback forms a larger one", () => {
    const job = jobOfText(
      changed(
        (sound) => Object.assign(sound.part, { insideRadius: 0.3 }) && put("brake.setback", 0.8)(sound),
      ),
    );
    expectSame(radii(job), [0.8, 0.8]);
    expect(job.askedInsideRadiiMm).toEqual([0.3, 0.3]);
  });

  it("takes a setback of any size: one too small is an answer, the bend refused", () => {
    const pinched = (setback: number) => {
      const { part } = jobOfText(changed(put("brake.setback", setback)));
      return part.bends.map((bend) => bend.pinched);
    };
    expect(pinched(0.4)).toEqual([true, true]);
    expect(pinched(-0.1)).toEqual([true, true]);
    expect(pinched(0.8)).toEqual([false, false]);
  });

  it("takes a radius that equals the nose's though inches round it", () => {
    expect(
      problemsOf(
        changed((job) => {
          job.units = "in";
          job.part.thickness = "0.032";
          job.part.insideRadius = 0.1 + 0.2;
          job.part.flats = [2, 2, 2];
          job.brake.clamp.noseRadius = 0.3;
          drop("brake.rated")(job);
        }),
      ),
    ).toEqual([]);
  });

  it("says the least radius so that it can be typed in again", () => {
    const inch = (change: Parameters<typeof changed>[0]) =>
      problemsOf(
        changed((job) => {
          Object.assign(job, { units: "in", margin: 0.02 });
          Object.assign(job.part, { thickness: "0.032", insideRadius: "0.04", flats: ["1/2", "3/8", "1/2"] });
          Object.assign(job.brake.clamp, { thickness: "1/4", depth: 2, noseRadius: "1/32", topRadius: 0 });
          for (const key of ["holderBack", "holderHeight", "holderDepth"]) delete job.brake.clamp[key];
          drop("brake.rated")(job);
          change(job);
        }),
      ).map((problem) => problem.allowed);
    expect(inch(() => undefined)).toEqual([]);
    expect(inch(put("part.insideRadius", "1/64"))).toEqual([expect.stringContaining("0.0313 in")]);
    expect(inch(put("part.insideRadius", "0.0313"))).toEqual([]);
  });

  it("names a common radius once, however many bends share it", () => {
    expect(problemsOf(changed(put("part.insideRadius", 0.5))).map((problem) => problem.found)).toEqual([
      "0.5",
    ]);
  });
});

describe("readJob, order and text", () => {
  it("counts bends from 0 inside", () => {
    expect(jobOfText(JSON.stringify(soundJob())).order).toEqual([
      { bend: 0, clamped: "start" },
      { bend: 1, clamped: "end" },
    ]);
  });

  it("leaves nothing behind on the prototype of all objects", () => {
    readJob('{"__proto__": {"polluted": true}, "part": {"constructor": {"prototype": {"polluted": true}}}}');
    expect("polluted" in {}).toBe(false);
  });
});
