/**
 * --json of `blank`, `nest`, `pan` and `doubt`, held against figures that the same commands print for people and against
 * sums worked out here; the record of a strip kept in a file and read back; `blank` and `check` of a job with cut-outs.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EXAMPLES, noseroom } from "./noseroom.ts";

const trough = join(EXAMPLES, "cable-trough-bar.json");
const base = join(EXAMPLES, "lens-box-cut-outs.json");
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-json-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function json(args: readonly string[], expected = 0) {
  const { status, out, err } = await noseroom([...args, "--json"]);
  expect({ status, err }).toEqual({ status: expected, err: "" });
  return JSON.parse(out);
}

/** A file of the folder with a job like an example but for its part. */
function jobFile(name: string, path: string, change: (part: Record<string, unknown>) => void): string {
  const job = JSON.parse(readFileSync(path, "utf8"));
  change(job.part);
  const file = join(folder, name);
  writeFileSync(file, JSON.stringify(job));
  return file;
}

describe("noseroom blank --json", () => {
  it("has lines, sizes and weight of a plain blank, and no word of cut-outs", async () => {
    const plan = await json(["blank", trough]);
    const checked = await json(["check", trough]);
    expect(plan.developedWidth).toBe(checked.blank.developedWidth);
    expect(plan.bends.map(({ tangents }: { tangents: number[] }) => tangents)).toEqual(
      checked.blank.bends.map(({ tangents }: { tangents: number[] }) => tangents),
    );
    // One inside radius into the bend from the tangent line of the clamped side (FAA-H-8083-31, sight line).
    for (const { clamped, sightLine, tangents } of plan.bends) {
      const away = clamped === "start" ? sightLine - tangents[0] : tangents[1] - sightLine;
      expect(away).toBeCloseTo(0.032 * 25.4, 9);
    }
    // Aluminium 5052 weighs 2680 kg/m³ (Aluminum Association).
    expect(plan.weight).toBeCloseTo((plan.developedWidth * 304.8 * 0.032 * 25.4 * 2680) / 1e9, 6);
    expect(plan).not.toHaveProperty("cutOuts");
    expect(plan).toMatchObject({ verdict: "clear", length: 12 * 25.4, grain: null });
  });

  it("has cut-outs, holes and grain where the job has them, and weighs what is left", async () => {
    const plan = await json(["blank", base]);
    expect(plan.grain).toBe(90);
    expect(plan.cutOuts).toHaveLength(5);
    expect(plan.reliefHoles).toHaveLength(6);
    const whole = (plan.developedWidth * 200 * 0.8 * 7850) / 1e9;
    const cornerMm2 = 4 * 20 * plan.bends[0].tangents[1] + 20 * 32;
    // Three quarters of four holes and half of two lie in the sheet: 4 holes of 1/8 in.
    const holesMm2 = 4 * Math.PI * (25.4 / 16) ** 2;
    expect(plan.weight).toBeCloseTo(whole - ((cornerMm2 + holesMm2) * 0.8 * 7850) / 1e9, 6);
  });
});

describe("noseroom nest --json", () => {
  it("has the nest that it prints", async () => {
    const plan = await json(["nest", trough, "--sheet", "24 x 48 in"]);
    const { out } = await noseroom(["nest", trough, "--sheet", "24 x 48 in"]);
    expect(out).toContain(`${plan.perSheet} blanks off a sheet`);
    expect(plan.places).toHaveLength(plan.perSheet);
    expect(out).toContain(`${plan.cuts.length} cuts on a sheet`);
    const blankMm2 = plan.places[0].size[0] * plan.places[0].size[1];
    const stripsMm2 = (48 * 25.4 - plan.rest) * 24 * 25.4;
    expect(plan.waste).toBeCloseTo(100 * (1 - (plan.perSheet * blankMm2) / stripsMm2), 6);
  });

  it("exits with 1 and nothing placed where no blank fits", async () => {
    expect(await json(["nest", trough, "--sheet", "6 x 6 in"], 1)).toMatchObject({ perSheet: 0, places: [] });
  });
});

describe("noseroom pan --json", () => {
  const pan = [
    "pan",
    "--inside",
    "6 x 8 in",
    "--wall",
    "2",
    "--thickness",
    "20 ga steel",
    "--radius",
    "1/16",
  ];

  it("has both ways of the blank, its holes and the fingers", async () => {
    const plan = await json([...pan, "--set", "4, 3, 2, 1, 1/2"]);
    expect(plan.width.size + 2 * 25.4).toBeCloseTo(plan.length.size, 9);
    expect(plan.reliefHoles).toHaveLength(4);
    for (const { diameter } of plan.reliefHoles) expect(diameter).toBeCloseTo(25.4 / 8, 9);
    const filled = plan.fingers.widths.reduce((sum: number, width: number) => sum + width, 0);
    expect(filled + plan.fingers.gap).toBeCloseTo(plan.fingers.between, 9);
    expect((await json(pan)).fingers).toBeNull();
    expect((await json([...pan, "--set", "1/2"], 1)).fingers).toBeNull();
  });
});

describe("noseroom doubt", () => {
  it("prints the finding as JSON, flats and bends from 1", async () => {
    const plan = await json(["doubt", trough, "--by", "1/8 in"], 1);
    expect(plan).toMatchObject({ asRead: "clear", verdict: "tight", proved: true });
    expect(plan.doubts).toEqual([3.175, 3.175, 3.175]);
    expect(plan.worst.flats).toHaveLength(3);
    expect([1, 2]).toContain(plan.worst.bend);
    expect(await json(["doubt", trough, "--by", "0"])).toMatchObject({ verdict: "clear", worst: null });
  });

  it("takes the job's doubts where --by is not given", async () => {
    expect((await json(["doubt", base])).doubts).toEqual([0.5, 0.25, 0.5]);
    expect((await json(["doubt", base, "--by", "1"])).doubts).toEqual([1, 1, 1]);
    expect((await noseroom(["doubt", base])).out).toContain("The flats may be off by 0.5, 0.25, 0.5 mm.");
  });
});

describe("a job with doubts", () => {
  it("is tight in check, blank and sheet where some mix of them hits, with exit status 0", async () => {
    const file = jobFile("unsure.json", trough, (part) => {
      part.doubts = "1/8";
    });
    const { status, out } = await noseroom(["check", file]);
    expect(status).toBe(0);
    expect(out).toMatch(/^Folds as read, but with flat .+ than read, bend \d does not fold\./u);
    expect(out).toMatch(/Mind\n {2}Tight by its readings: /u);
    expect((await noseroom(["check", base])).out).toContain(
      "It folds whatever the readings are within their doubts.",
    );
    expect(await json(["check", file])).toMatchObject({ verdict: "tight", doubts: { verdict: "tight" } });
    expect((await noseroom(["blank", file])).out).toContain("Folds as read, but with flat");
    const sheet = await noseroom(["sheet", file, "--pdf", join(folder, "sheet.pdf")]);
    expect(sheet).toMatchObject({ status: 0, err: "" });
    expect(sheet.out).toMatch(/^Folds as read, but with flat/u);
  });
});

describe("noseroom blank of a job with cut-outs", () => {
  it("tells where to cut and drill, and how the grain lies", async () => {
    const { out } = await noseroom(["blank", base]);
    expect(out).toMatch(/^cut-out 5 +from +0\.00 +90\.00$/mu);
    expect(out).toMatch(/^relief hole 6, bend 1 +3\.17 mm wide +25\.32 +110\.00$/mu);
    expect(out).toContain("Grain across the bend lines, as it should be.");
  });
});

describe("noseroom strip --keep and --record", () => {
  const readings = ["--before", "2", "--flanges", "1.029, 1.028", "--leaf", "94", "--relaxed", "90"];

  it("keeps a record that prints the same when it is read back, and goes into a job", async () => {
    const record = join(folder, "strip-record.json");
    const first = await noseroom(["strip", trough, ...readings, "--date", "2026-05-30", "--keep", record]);
    expect(first).toMatchObject({ status: 0, err: "" });
    expect(JSON.parse(readFileSync(record, "utf8"))).toMatchObject({
      noseroomStrip: 1,
      date: "2026-05-30",
      metal: { name: "5052-H32" },
      found: { springback: 90 / 94 },
    });
    const again = await noseroom(["strip", "--record", record]);
    expect(again).toMatchObject({ status: 0, err: "" });
    const table = (text: string) =>
      text.split("\n").filter((line) => /^(Test strip|brake|metal|[a-z].+ {2})/u.test(line));
    expect(table(again.out)).toEqual(table(first.out).filter((line) => !line.startsWith("The record")));
    const job = join(folder, "with-strip.json");
    const put = await noseroom(["strip", trough, "--record", record, "-o", job]);
    expect(put).toMatchObject({ status: 0, err: "" });
    const { part } = JSON.parse(readFileSync(job, "utf8"));
    expect(part.kFactor).toBeCloseTo(JSON.parse(readFileSync(record, "utf8")).found.kFactor, 3);
    expect(part.bends[0].overbend).toBeCloseTo(94, 2);
    expect((await noseroom(["check", job])).status).toBe(0);
  });

  it.each([
    ["{", /The record|not JSON|JSON/u],
    ['{"noseroomStrip": 2}', /noseroomStrip: found 2; it should be 1, the version of a strip's record/u],
    ["[]", /The record: found an empty list; it should be the record of a strip in braces/u],
  ])("refuses %s as a record", async (text, sentence) => {
    const file = join(folder, "no-record.json");
    writeFileSync(file, text);
    const { status, out, err } = await noseroom(["strip", "--record", file]);
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toMatch(sentence);
  });

  it("refuses readings beside a record, and a record that isn't there", async () => {
    const both = await noseroom(["strip", "--record", "x.json", "--before", "2"]);
    expect(both).toMatchObject({ status: 2, out: "" });
    expect(both.err).toBe("--record has its own readings; leave --before away.\n");
    const none = await noseroom(["strip", "--record", join(folder, "nowhere.json")]);
    expect(none).toMatchObject({ status: 2, out: "" });
    expect(none.err).toMatch(/^There is no file /u);
  });
});
