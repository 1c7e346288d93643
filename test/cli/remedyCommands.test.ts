/**
 * `ways`, `chart` and `fit` as a person runs them: what they print, what they write, their exit status.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readDxf } from "../pictures/readDxf.ts";
import { EXAMPLES, noseroom, STACK_TRACE } from "./noseroom.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-ways-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const finger = join(EXAMPLES, "cable-trough-finger.json");
const shop = join(EXAMPLES, "shop", "observatory.json");

describe("noseroom ways", () => {
  it("numbers the ways out, and the one taken folds as it said", async () => {
    const { status, out, err } = await noseroom(["ways", finger]);
    expect([status, err]).toEqual([0, ""]);
    const numbered = [...out.matchAll(/^(\d+)\. (.+)$/gmu)];
    expect(numbered.length).toBeGreaterThan(3);
    const bar = numbered.find(([, , words]) => words?.startsWith("Make a brake with a clamp bar"))!;
    expect(bar[2]).toContain("3/16 to 1/4 in thick");
    const file = join(folder, "bar.json");
    const taken = await noseroom(["ways", finger, "--take", bar[1]!, "-o", file]);
    expect([taken.status, taken.err]).toEqual([0, ""]);
    expect((await noseroom(["check", file])).status).toBe(0);
    // Without a file to write to, the job itself is printed.
    const printed = await noseroom(["ways", finger, "--take", bar[1]!]);
    expect(printed.out).toBe(readFileSync(file, "utf8"));
  });

  it("tries the brakes of a shop first", async () => {
    const { out } = await noseroom(["ways", join(EXAMPLES, "z-clip.json"), "--shop", shop, "--json"]);
    const ways = JSON.parse(out);
    // The recipe for the hand is no change, and has no cost.
    expect(ways.at(-1).kind).toBe("byHand");
    for (const way of ways.slice(0, -1))
      expect(way).toMatchObject({ sentence: expect.any(String), cost: expect.any(Number) });
  });

  it("says so where no way is needed", async () => {
    const { status, out } = await noseroom(["ways", join(EXAMPLES, "cable-trough-bar.json")]);
    expect(status).toBe(0);
    expect(out).toMatch(/^Folds\./u);
    expect(out).toContain("\nNothing needs changing.\n");
    expect(out).not.toContain("--take");
  });

  it.each(["0", "99", "first", ""])("refuses way %j in a sentence", async (number) => {
    const { status, out, err } = await noseroom(["ways", finger, "--take", number]);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toMatch(/^--take is ".*"; it may be the number of a way out/u);
    expect(err).not.toMatch(STACK_TRACE);
  });
});

describe("noseroom chart", () => {
  it("prints the table and draws the picture", async () => {
    const svg = join(folder, "chart.svg");
    const { status, out, err } = await noseroom(["chart", finger, "--svg", svg, "--angles", "90"]);
    expect([status, err]).toEqual([0, ""]);
    expect(out).toMatch(/^web, in +at 90°$/mu);
    // W − T + r − (1 + √2)·Rn for the trough's web of 3/8 in is 0.298 in, 19/64, without the overbend; with it, less.
    const [, longest] = /^ +3\/8 +(\d+)\/64$/mu.exec(out) ?? [];
    expect(Number(longest)).toBeLessThanOrEqual(19);
    expect(Number(longest)).toBeGreaterThan(15);
    expect(out).toContain(
      `Flat 2 of the part: web 3/8 in, return flange 1/2 in, 90°. That is too long: the longest there is ${longest}/64 in.`,
    );
    expect(readFileSync(svg, "utf8")).toContain("Longest return flange on 24 in finger brake");
  });

  it("lays picture and table on a page to print", async () => {
    const pdf = join(folder, "chart.pdf");
    const { status, out } = await noseroom([
      "chart",
      finger,
      "--pdf",
      pdf,
      "--angles",
      "90",
      "--paper",
      "a4",
    ]);
    expect(status).toBe(0);
    expect(out).toContain(`To print and hang up: ${pdf}`);
    expect(readFileSync(pdf).subarray(0, 5).toString("latin1")).toBe("%PDF-");
  });

  it("prints the limits as JSON in mm, and refuses angles that are none", async () => {
    const { out } = await noseroom(["chart", finger, "--json", "--angles", "90"]);
    const chart = JSON.parse(out);
    expect(chart.curves).toHaveLength(1);
    expect(chart.part).toEqual([expect.objectContaining({ flat: 2, angle: 90 })]);
    const { status, err } = await noseroom(["chart", finger, "--angles", "90,square"]);
    expect(status).toBe(2);
    expect(err).toMatch(/^--angles is "90,square"; it may be angles/u);
  });
});

describe("noseroom fit", () => {
  it("answers 12 parts on 3 brakes, the deciding sentence first", async () => {
    const { status, out, err } = await noseroom(["fit", shop]);
    expect([status, err]).toEqual([1, ""]);
    expect(out.split("\n")[0]).toBe(
      "Your finger brake makes 9 of 12. One clamp bar 3/16 to 1/4 in thick, 13 in long, makes the other three.",
    );
    expect(out).toMatch(/^cable trough +does not fold, +does not fold, +does not fold,\n +stops at 7\d/mu);
  });

  it("prints one JSON object", async () => {
    const { out } = await noseroom(["fit", shop, "--json"]);
    const fit = JSON.parse(out);
    expect(fit.cells).toHaveLength(12);
    expect(fit.bar.makes.map((part: number) => fit.parts[part])).toEqual(
      fit.unmade.map((part: number) => fit.parts[part]),
    );
  });

  it("tells a slip by its place in the shop file", async () => {
    const slipped = JSON.parse(readFileSync(shop, "utf8"));
    slipped.parts[3].flats[1] = "3/";
    const file = join(folder, "slip.json");
    writeFileSync(file, JSON.stringify(slipped));
    const { status, out, err } = await noseroom(["fit", file]);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toContain("parts[3].flats[1]");
    const job = await noseroom(["fit", finger]);
    expect(job.status).toBe(2);
    expect(job.err).toMatch(/shop/u);
  });
});

describe("noseroom bar", () => {
  it("designs a brake for the parts that no brake of the shop makes, and the made brake makes them", async () => {
    const [pdf, dxf, job, stl] = ["plans.pdf", "pieces", "made.json", "brake.stl"].map((name) =>
      join(folder, name),
    );
    const { status, out, err } = await noseroom([
      ...["bar", shop, "--pdf", pdf!, "--dxf", dxf!, "--job", job!, "--stl", stl!],
    ]);
    expect([status, err]).toEqual([0, ""]);
    expect(out).toContain("Makes cable trough, sensor-lead trough, wire clip.");
    expect(out).toMatch(/^ +1 {2}1 × {2}clamp bar +3\/16 × /mu);
    expect(out).toContain("A shop aid and no engineer's approval.");
    expect(readFileSync(pdf!).subarray(0, 5).toString("latin1")).toBe("%PDF-");
    const files = readdirSync(dxf!);
    expect(files).toContain("01-clamp-bar.dxf");
    expect(files.length).toBeGreaterThan(8);
    expect(readDxf(readFileSync(join(dxf!, "01-clamp-bar.dxf"), "utf8")).unit).toBe(4);
    expect(readFileSync(stl!, "utf8")).toMatch(/^solid bar, [\s\S]*facet normal[\s\S]*endsolid /u);
    // A job for every part that it makes, each of which folds on it.
    for (const [i, name] of ["cable trough", "sensor-lead trough", "wire clip"].entries()) {
      const made = job!.replace(".json", `-${i + 1}.json`);
      expect(out).toContain(`${name} on it: ${made}`);
      expect(JSON.parse(readFileSync(made, "utf8")).brake.clamp.thickness).toBe("3/16");
      expect((await noseroom(["check", made])).status).toBe(0);
    }
  });

  it("takes a single job too, and prints the design as JSON", async () => {
    const { out } = await noseroom(["bar", finger, "--json"]);
    const { makes, limits, design, assembly, refused } = JSON.parse(out);
    expect(makes).toEqual(["cable trough"]);
    expect(design.window.thickestMm).toBe(limits.thickestMm);
    expect(refused).toBeNull();
    expect(Object.keys(assembly)).toEqual(["pieces", "pivot", "swing", "vise"]);
    expect(assembly.pieces.length).toBeGreaterThan(30);
  });

  it("says in print and as data what it carries, how it bows, what is taken for granted and what is not reckoned", async () => {
    const { out } = await noseroom(["bar", finger]);
    expect(out).toMatch(/^ {2}Nuts: tighten each of 4 to [\d.]+ lbf·ft, never past [\d.]+ lbf·ft\./mu);
    expect(out).toMatch(
      /^ {2}Opening: turn each nut back by 1\/2 turn, \d+ turns in all, and pull the slotted/mu,
    );
    expect(out).toMatch(/^ {2}Setback screws: 3 of 1\/4-20; .* a turn, .* of travel\.$/mu);
    expect(out).toMatch(/^ {2}leaf +bend angle lost at mid-length +[\d.]+° of 1°$/mu);
    expect(out).toContain("safety factors: load 1.25, yield 1.67, bolts 1.4, pins 2");
    expect(out).toMatch(/Not checked\n {2}how well the welds are made/u);
    expect(out).toContain("Stock sizes are common ones from memory");
    const { design } = JSON.parse((await noseroom(["bar", finger, "--json"])).out);
    for (const check of design.plan.checks) {
      expect(check).toMatchObject({
        formula: expect.stringMatching(/./u),
        source: expect.stringMatching(/./u),
      });
      expect(check.assumptions.length).toBeGreaterThan(0);
    }
  });

  it("takes other safety factors and strengths, says which, and refuses those that are none", async () => {
    const options = [
      "--load-factor",
      "1.3",
      "--yield-factor",
      "1.7",
      "--bolt-factor",
      "1.5",
      "--pin-factor",
      "3",
    ];
    const more = [
      "--steel-yield",
      "350",
      "--hand-force",
      "150",
      "--vise-force",
      "12000",
      "--vise-jaws",
      "4 x 1 1/2 in",
    ];
    const { status, out } = await noseroom([
      "bar",
      finger,
      ...options,
      ...more,
      "--angle-lost",
      "2",
      "--nose-give",
      "0.1 mm",
    ]);
    expect(status).toBe(0);
    expect(out).toContain("safety factors: load 1.3, yield 1.7, bolts 1.5, pins 3");
    expect(out).toContain(
      "hot rolled and welded steel yields at 50.8 ksi, cold-finished bar and pins at 50.8 ksi",
    );
    expect(out).toContain("hand force 33.7 lbf of one person");
    expect(out).toContain("jaws 4 in wide and 1 1/2 in high");
    expect(out).toContain("the nose may give by 0.0039 in; leaf, bed and holder may each lose 2°");
    for (const [option, figure] of [
      ["--pin-factor", "0.5"],
      ["--hand-force", "much"],
      ["--nose-give", "0"],
      ["--vise-jaws", "4"],
    ]) {
      const { status: refused, out: nothing, err } = await noseroom(["bar", finger, option!, figure!]);
      expect([refused, nothing]).toEqual([2, ""]);
      expect(err.startsWith(`${option} is "${figure}"; it may be `)).toBe(true);
    }
  });

  it("can be measured as built: a changed figure in the written shop file is what the next check goes by", async () => {
    const file = join(folder, "made-shop.json");
    const { out } = await noseroom(["bar", shop, "--shop", file]);
    expect(out).toContain(`run: noseroom fit ${file}`);
    const fits = await noseroom(["fit", file]);
    expect([fits.status, fits.err]).toEqual([0, ""]);
    expect(fits.out).toMatch(/^Your shop-made narrow brake makes all 3\.$/mu);
    const made = JSON.parse(readFileSync(file, "utf8"));
    made.brakes[0].clamp.thickness = "3/8";
    writeFileSync(file, JSON.stringify(made));
    expect((await noseroom(["fit", file])).status).toBe(1);
  });

  it("says of each part of a shop that no bar makes why, and designs for the rest", async () => {
    const mixed = JSON.parse(readFileSync(shop, "utf8"));
    const duct = JSON.parse(readFileSync(join(EXAMPLES, "no-way.json"), "utf8")).part;
    mixed.parts = [duct, ...mixed.parts];
    const { status, out, err } = await noseroom(["bar", "-"], { input: JSON.stringify(mixed) });
    expect([status, err]).toEqual([0, ""]);
    expect(out).toContain("Makes cable trough, sensor-lead trough, wire clip.");
    expect(out).toMatch(new RegExp(`^Not ${duct.name}\\. No clamp bar `, "mu"));
  });

  it("says so where no bar helps, and where none is needed", async () => {
    const none = await noseroom(["bar", join(EXAMPLES, "no-way.json")]);
    expect(none.status).toBe(1);
    expect(none.out).toMatch(
      /^No clamp bar makes it\. On the thinnest, with no holder behind it, the part\s+does not fold: /u,
    );
    expect(none.out).toContain(`may help: noseroom ways ${join(EXAMPLES, "no-way.json")}`);
    const hat = JSON.parse(readFileSync(join(EXAMPLES, "hat-stiffener.json"), "utf8"));
    const long = { ...hat, part: { ...hat.part, length: 36 }, brake: { ...hat.brake, rated: undefined } };
    const low = await noseroom(["bar", "-"], { input: JSON.stringify(long) });
    expect(low.status).toBe(1);
    expect(low.out.replace(/\s+/gu, " ")).toMatch(
      /^Leaf, .* ksi is the limit: the part wraps round the leaf, .* The longest that would do is \d+( 1\/2)? in\./u,
    );
    const easy = JSON.parse(readFileSync(shop, "utf8"));
    easy.parts = easy.parts.slice(0, 2);
    const needless = await noseroom(["bar", "-"], { input: JSON.stringify(easy) });
    expect([needless.status, needless.out]).toEqual([0, "Your brakes make every part: no bar is needed.\n"]);
  });
});
