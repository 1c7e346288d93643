/**
 * The commands that end on paper or on the sheet, run as a person would: files are read back by other libraries.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readDxf } from "../pictures/readDxf.ts";
import { readPdf } from "../pictures/readPdf.ts";
import { EXAMPLES, noseroom, STACK_TRACE } from "./noseroom.ts";

const trough = join(EXAMPLES, "cable-trough-bar.json");
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-paper-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function pagesOf(file: string) {
  return readPdf(new Uint8Array(readFileSync(file)));
}

describe("noseroom sheet", () => {
  it("writes the shop sheet on Letter for a job in inches, on A4 where asked, and says the answer", async () => {
    const file = join(folder, "sheet.pdf");
    const { status, out, err } = await noseroom(["sheet", trough, "--pdf", file]);
    expect({ status, err }).toEqual({ status: 0, err: "" });
    expect(out).toMatch(/^Folds\. /u);
    expect(out).toContain(file);
    expect(out).toContain("crushes");
    const [page] = await pagesOf(file);
    expect(page?.widthMm).toBeCloseTo(215.9, 1);
    expect(page?.words.some((one) => one.words === "cable trough")).toBe(true);
    expect((await noseroom(["sheet", trough, "--pdf", file, "--paper", "A4"])).status).toBe(0);
    expect((await pagesOf(file))[0]?.widthMm).toBeCloseTo(210, 1);
  });

  it("exits with 1, the sheet written all the same, where the part does not fold", async () => {
    const file = join(folder, "no-way.pdf");
    const { status, out } = await noseroom(["sheet", join(EXAMPLES, "no-way.json"), "--pdf", file]);
    expect(status).toBe(1);
    expect(out).toMatch(/^Does not fold/u);
    expect((await pagesOf(file)).length).toBeGreaterThan(0);
  });

  it.each([
    ["no file to write", [], /--pdf/u],
    [
      "a paper nobody has",
      ["--pdf", "x.pdf", "--paper", "foolscap"],
      /--paper is "foolscap"; it may be a4 or letter/u,
    ],
    [
      "a folder that is not there",
      ["--pdf", "/no/such/folder/x.pdf"],
      /cannot be written: its folder is not there/u,
    ],
  ])("%s: a sentence and exit status 2", async (_, more, sentence) => {
    const { status, out, err } = await noseroom(["sheet", trough, ...more], { cwd: folder });
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(sentence);
    expect(err).not.toMatch(STACK_TRACE);
  });
});

describe("noseroom blank", () => {
  it("writes a full-size template and a DXF of the blank beside the figures", async () => {
    const [pdf, dxf] = [join(folder, "blank.pdf"), join(folder, "blank.dxf")];
    const { status, out } = await noseroom(["blank", trough, "--pdf", pdf, "--dxf", dxf]);
    expect(status).toBe(0);
    expect(out).toContain("2 in both ways");
    const words = (await pagesOf(pdf)).flatMap((page) => page.words.map((one) => one.words)).join(" ");
    expect(words).toContain("Print at 100 %");
    // The blank's outline in the DXF is as wide as the figure that the command prints.
    const width = Number(/: ([\d.]+) in wide/u.exec(out)?.[1]) * 25.4;
    const { entities } = readDxf(readFileSync(dxf, "utf8"));
    const xs = entities
      .filter((entity) => entity.layer === "CUT")
      .flatMap((entity) => [entity.start?.x ?? Number.NaN, entity.end?.x ?? Number.NaN]);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(width, 1);
    expect(new Set(entities.map((entity) => entity.layer))).toContain("SIGHT_LINE");
  });
});

describe("noseroom nest", () => {
  it("counts blanks off a sheet, by hand 4 a strip and 76 strips", async () => {
    // The trough is 1.26 in wide and 12 in long: 48 / 12 = 4 a strip, 96 / 1.26 = 76 strips.
    const { status, out } = await noseroom(["nest", trough, "--sheet", "48 x 96 in"]);
    expect(status).toBe(0);
    expect(out).toMatch(/^304 blanks off a sheet of 48\.000 in by 96\.000 in/u);
    // Strips of one kind share a line.
    expect(out).toMatch(/^1 to 76 +1\.261 +0\.000 +95\.\d{3} +4 {2}across the grain$/mu);
  });

  it("says so with exit status 1 where not one goes on it", async () => {
    const { status, out } = await noseroom(["nest", trough, "--sheet", "6 x 6 in"]);
    expect(status).toBe(1);
    expect(out).toContain("does not go on that sheet with its bends across the grain");
  });

  it.each([
    [["--sheet", "48"], /--sheet is "48"/u],
    [["--sheet", "0 x 96"], /--sheet is "0 x 96"/u],
    [["--sheet", "48 x 96", "--count", "2.5"], /--count is "2\.5"/u],
    [["--sheet", "48 x 96", "--kerf", "thin"], /--kerf is "thin"/u],
  ])("refuses %j in a sentence", async (more, sentence) => {
    const { status, out, err } = await noseroom(["nest", trough, ...more]);
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toMatch(sentence);
  });

  it("asks for the part's length where the job has none", async () => {
    const job = JSON.parse(readFileSync(trough, "utf8"));
    delete job.part.length;
    const file = join(folder, "no-length.json");
    writeFileSync(file, JSON.stringify(job));
    const { status, err } = await noseroom(["nest", file, "--sheet", "48 x 96"]);
    expect(status).toBe(2);
    expect(err).toContain("part.length");
  });
});

describe("noseroom doubt", () => {
  it("says whether the job folds whatever the readings are, and which one decides", async () => {
    const sure = await noseroom(["doubt", trough, "--by", "1/64"]);
    expect(sure).toMatchObject({ status: 0, err: "" });
    expect(sure.out).toMatch(/^It folds whatever the readings are/u);
    const unsure = await noseroom(["doubt", trough, "--by", "1/8 in"]);
    expect(unsure.status).toBe(1);
    expect(unsure.out).toMatch(/^Tight by its readings: with flat .+ than read, bend \d does not fold/u);
    const wrong = await noseroom(["doubt", trough, "--by", "3 in"]);
    expect(wrong).toMatchObject({ status: 2, out: "" });
    expect(wrong.err).toContain('--by is "3 in"');
  });
});

describe("noseroom pan", () => {
  const pan = [
    "pan",
    "--inside",
    "6 x 8 1/4 in",
    "--wall",
    "2",
    "--thickness",
    "20 ga steel",
    "--radius",
    "1/16",
  ];

  it("lays out a blank with four relief holes, and chooses fingers between the walls", async () => {
    const dxf = join(folder, "pan.dxf");
    const { status, out, err } = await noseroom([...pan, "--set", "4, 3, 2, 1, 1/2", "--dxf", dxf]);
    expect({ status, err }).toEqual({ status: 0, err: "" });
    expect(out).toContain("Relief holes 0.125 in across");
    expect(out).toMatch(/put fingers of .+ in between them/u);
    const { entities } = readDxf(readFileSync(dxf, "utf8"));
    const arcs = entities.filter((entity) => entity.type === "ARC" && entity.layer === "CUT");
    expect(arcs.length).toBe(4);
    for (const arc of arcs) expect(arc.r).toBeCloseTo(25.4 / 16, 6);
  });

  it("exits with 1 where no fingers fit, and 2 for a pan that can't be", async () => {
    const none = await noseroom([...pan, "--set", "1/2"]);
    expect(none.status).toBe(1);
    expect(none.out).toContain("No choice of these fingers");
    const small = await noseroom([...pan.map((word) => (word === "2" ? "1/32" : word))]);
    expect(small).toMatchObject({ status: 2, out: "" });
    const metal = await noseroom([...pan, "--metal", "unobtainium"]);
    expect(metal).toMatchObject({ status: 2, out: "" });
    expect(metal.err).toContain('--metal is "unobtainium"');
  });
});

describe("noseroom pan --on", () => {
  const pan = [
    "pan",
    "--units",
    "mm",
    "--inside",
    "150 x 90",
    "--wall",
    "25",
    "--thickness",
    "1",
    "--radius",
    "1.2",
  ];
  const on = ["--on", join(EXAMPLES, "whole", "end-cap.json")];

  it("answers with the check, and writes a job that answers alike", async () => {
    const job = join(folder, "pan.json");
    const { status, out, err } = await noseroom([...pan, ...on, "-o", job]);
    expect({ status, err }).toEqual({ status: 0, err: "" });
    expect(out).toContain("Folds. Bend");
    expect(out).toContain("152.00 mm by 92.00 mm by 25.00 mm outside when folded");
    const check = await noseroom(["check", job]);
    expect(check.status).toBe(0);
    expect(out).toContain(check.out.split("\n")[0]);
  });

  it("checks with the fingers of --set, and refuses an output without a brake", async () => {
    const few = await noseroom([...pan, ...on, "--set", "20"]);
    expect(few.status).toBe(1);
    expect(few.out).toMatch(/a finger [\d.]+ mm wide is missing/u);
    const none = await noseroom([...pan, "-o", join(folder, "none.json")]);
    expect(none.status).toBe(2);
    expect(none.err).toBe("--output wants --on beside it, a job with the brake that you bend the pan on.\n");
  });
});
