/**
 * Words that no command can work with: a sentence on standard error, nothing on standard output, exit status 2.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EXAMPLES, noseroom, STACK_TRACE } from "./noseroom.ts";

const trough = join(EXAMPLES, "cable-trough-bar.json");
const box = join(EXAMPLES, "whole", "end-cap.json");
const bracket = join(EXAMPLES, "whole", "corner-bracket.json");
const shop = join(EXAMPLES, "shop", "observatory.json");
const pan = ["pan", "--inside", "6 x 8", "--wall", "2", "--thickness", "1/16", "--radius", "1/16"];
const strip = ["strip", trough, "--before", "2", "--flanges", "1, 1"];

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-refused-"));
  writeFileSync(join(folder, "torn.json"), '{"noseroom": 1,');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("noseroom refuses in a sentence", () => {
  it.each<[string[], RegExp]>([
    [["check", ""], /^FILE is empty; it wants a name\.$/u],
    [["check", trough, "--svg", ""], /^--svg is empty; it wants the name of a folder\.$/u],
    [["check", shop], /is a shop file\. Choose with --part and --brake, or try noseroom fit with it\.$/u],
    [["ways", shop], /is a shop file\. Choose with --part and --brake, or try noseroom fit with it\.$/u],
    [["fit", trough], /is a job file; this takes a shop file\. Try noseroom check with it\.$/u],
    [["ways", trough, "--shop", trough], /is a job file; this takes a shop file/u],
    [["ways", trough, "-o", "x.json"], /^--output wants --take beside it/u],
    [["blank", trough, "--within", "a hair"], /^--within is "a hair"; it may be a length of 0 or more\.$/u],
    [["blank", trough, "--paper", "a4"], /^--paper wants --pdf beside it, the file to write\.$/u],
    [["chart", trough, "--paper", "b5", "--pdf", "x.pdf"], /^--paper is "b5"; it may be a4 or letter\.$/u],
    [["bar", "torn.json"], /^torn\.json: The job file: found the end of the text/u],
    [["doubt", "torn.json"], /^torn\.json: The job file/u],
    [["chart", box], /more than a section\. A chart is of return flanges .+ with flats and bends\.$/u],
    [["strip", box], /more than a section\. Run strip without a job, and type the K-factor/u],
    [["bar", box], /more than a section\. A narrow brake is planned for sections: write the flats/u],
    [["check", box, "--orders"], /^--orders lists those of a section; leave it away/u],
    [["doubt", bracket], /^doubt misreads sizes, and a drawn pattern has none: move a corner/u],
    [["doubt", box, "--by", "20"], /^--by is "20"; it may be .+ under 18\.00 mm, the smallest size\.$/u],
    [["nest", trough, "--sheet", "1000000 x 1000000"], /^--sheet is .+; it may be up to 100 m each way/u],
    [["nest", trough, "--sheet", "480 x 960"], /hold up to 20000 blanks\.$/u],
    [[...pan, "--set", ""], /^--set is ""; it may be finger widths with commas between/u],
    [[...pan, "--units", "cm"], /^--units is "cm"; it may be mm or in\.$/u],
    [["metals", "unobtainium"], /^There is no metal "unobtainium"\. There are: mild steel, /u],
    [["metals", "__proto__"], /^There is no metal "__proto__"\./u],
    [["strip", trough], /^A strip wants --before and --flanges .+ or --leaf and --relaxed/u],
    [["strip", trough, "--before", "2"], /^--before wants --flanges beside it\.$/u],
    [["strip", trough, "--relaxed", "90"], /^--relaxed wants --leaf beside it\.$/u],
    [
      ["strip", trough, "--leaf", "90", "--relaxed", "91"],
      /^That can't be: a strip relaxes to .+ no further/u,
    ],
    [["strip", trough, "--leaf", "92", "--relaxed", "square"], /^--relaxed is "square"; it may be degrees/u],
    [["strip", "--before", "2", "--flanges", "1, 1"], /^A strip wants --thickness, or a job that has it\.$/u],
    [["strip", "--leaf", "9", "--relaxed", "8", "--thickness", "1"], /^A strip wants --radius/u],
    [["strip", trough, "--before", "2", "--flanges", "1"], /^--flanges is "1"; it may be two lengths/u],
    [[...strip, "--date", "2026-02-30"], /^--date is "2026-02-30"; it may be a day such as/u],
    [[...strip, "--metal", "gold"], /^--metal is "gold"; it may be one of mild steel/u],
    [[...strip, "--angle", "180"], /^--angle is "180"; it may be degrees from flat/u],
    [
      ["strip", trough, "--before", "2", "--flanges", "1.5, 1.5", "-o", "new.json"],
      /^With this strip: part\.kFactor: found -\d+\.\d+; it should be a number from 0 to 1\.$/u,
    ],
    [
      ["strip", "--leaf", "9", "--relaxed", "8", "--thickness", "1", "--radius", "1", "-o", "new.json"],
      /^--output wants a job to put the strip's figures into\.$/u,
    ],
  ])("%j", async (words, sentence) => {
    const { status, out, err } = await noseroom(words, { cwd: folder });
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err.trimEnd()).toMatch(sentence);
    expect(err.trimEnd().split("\n")).toHaveLength(1);
    expect(err).not.toMatch(STACK_TRACE);
  });

  it("points to the page of the command whose words were wrong", async () => {
    expect((await noseroom(["sheet", trough])).err).toContain("See noseroom sheet --help.");
    expect((await noseroom(["plan"])).err).toContain("See noseroom --help.");
  });
});
