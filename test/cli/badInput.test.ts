import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EXAMPLES, noseroom, STACK_TRACE } from "./noseroom.ts";

const good = readFileSync(join(EXAMPLES, "cable-trough-bar.json"), "utf8");
/** The good job with what stands at a path replaced, or taken out where `value` is undefined. */
function changed(path: string, value: unknown): string {
  const job: unknown = JSON.parse(good);
  const keys = path.split(".");
  const last = keys.pop() ?? "";
  const holder = keys.reduce((at, key) => (at as Record<string, unknown>)[key], job) as Record<
    string,
    unknown
  >;
  holder[last] = value;
  return JSON.stringify(job);
}

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-bad-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Each ends in exit status 2, sentences on standard error, nothing on standard output, within a second or so. */
describe("noseroom check, given what is no job,", () => {
  it.each<[string, string, RegExp]>([
    ["nothing", "", /./u],
    ["half a file", good.slice(0, 200), /./u],
    ["a list", "[]", /./u],
    ["an unknown key", changed("part.flanges", 3), /flanges/u],
    ["a missing key", changed("brake.bed", undefined), /brake\.bed/u],
    ["a word for a length", changed("part.flats.1", "three eighths"), /part\.flats\[1\].*three eighths/u],
    ["a negative length", changed("part.flats.2", -3), /part\.flats\[2\] \(flat 3\).*-3/u],
    ["a giant number", changed("brake.lift", 1e308), /lift/u],
    ["an angle past folding", changed("part.bends.0.angle", 180), /part\.bends\[0\]\.angle.*180/u],
    ["another version", changed("noseroom", 2), /noseroom/u],
    ["five hundred bends", changed("part.bends", Array(500).fill({ angle: 90, turn: "up" })), /part\.bends/u],
    ["ten million signs", " ".repeat(10_000_000), /./u],
  ])("%s: says so in sentences and exits with 2", async (name, text, sentence) => {
    const file = join(folder, `${name.replaceAll(" ", "-")}.json`);
    writeFileSync(file, text);
    const { status, out, err } = await noseroom(["check", file]);
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err).toContain(file);
    expect(err).toMatch(sentence);
    expect(err).not.toMatch(STACK_TRACE);
    expect(err).not.toMatch(/\b(invalid|entity|undefined|object Object)\b|\berror\b/iu);
    expect(err.length).toBeLessThan(4000);
  });

  it("a sound job saved as UTF-16, with a byte order mark or in UTF-8 with one: answers it", async () => {
    const file = join(folder, "coded.json");
    const plain = await noseroom(["check", join(EXAMPLES, "cable-trough-bar.json")]);
    for (const coding of ["utf16le", "utf8"] as const) {
      writeFileSync(file, Buffer.from(`\uFEFF${good}`, coding));
      expect(await noseroom(["check", file])).toEqual(plain);
    }
  });

  it("a missing file or a folder: one sentence that names it", async () => {
    const missing = await noseroom(["check", join(folder, "no-such.json")]);
    expect(missing).toMatchObject({
      status: 2,
      out: "",
      err: `There is no file ${join(folder, "no-such.json")}.\n`,
    });
    const aFolder = await noseroom(["blank", folder]);
    expect(aFolder).toMatchObject({ status: 2, out: "", err: `${folder} is a folder; name a file.\n` });
  });
});

describe("noseroom, given words it does not know,", () => {
  it.each([
    [["fold", "x.json"]],
    [["check"]],
    [["check", "a", "b"]],
    [["check", "--yaml", "x.json"]],
    [["--colour"]],
  ])("%j: says so, points to --help and exits with 2", async (args) => {
    const { status, out, err } = await noseroom(args);
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(/See noseroom (?:check )?--help\./u);
    expect(err).not.toMatch(/error/iu);
    expect(err).not.toMatch(STACK_TRACE);
  });
});
