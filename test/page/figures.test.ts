/**
 * Every figure of a job has its field, its picture and its echo: the field under the keys lights its dimension in the drawing,
 * a press on a dimension brings its field, and what is chosen there is what the job file holds.
 */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { withOffsets } from "../../src/jobFile/offsets.ts";
import { jobFileSchema } from "../../src/jobFile/schema.ts";
import { pageTests, press, saved, settled, type, until, words } from "./shop.ts";

const tests = pageTests();
const focused = (page: Page) => page.evaluate(() => document.activeElement?.id ?? "");
const fileOf = async (page: Page) =>
  JSON.parse((await saved(page, () => press(page, "Save as a file"))).text);

describe("the picture of the brake", () => {
  let page: Page;
  beforeAll(async () => {
    page = await tests.visit();
  });
  afterAll(() => page?.context().close());

  it("lights the dimension of the field that is filled in, one at a time, for every figure of a finger and a bar", async () => {
    const names = {
      Finger: ["Nose angle °", "Nose radius", "Finger height", "Foot depth", "Top edge radius"],
      "Clamp bar": ["Bar thickness", "Bar depth", "Nose radius", "Nose angle °", "Top edge radius"],
    };
    const others = ["Leaf face", "Leaf thickness", "Leaf swing °", "Bed depth", "Bed height", "Lift"];
    await page.evaluate(() => {
      for (const fold of Array.from(document.querySelectorAll("details"))) fold.open = true;
    });
    const more = [
      "Holder set back",
      "Holder height",
      "Holder depth",
      "Shim over the nose",
      "Least grip",
      "Least flange",
      "Pivot x",
    ];
    for (const [kind, figures] of Object.entries(names)) {
      await page.getByRole("radio", { name: kind, exact: true }).check();
      await page.evaluate(() => {
        for (const fold of Array.from(document.querySelectorAll("details"))) fold.open = true;
      });
      for (const label of [...figures, ...others, ...more]) {
        const field = page.getByLabel(label, { exact: true });
        await field.focus();
        await until(
          () =>
            page
              .locator(".brake-picture .lit")
              .evaluateAll((all) => all.map((one) => one.getAttribute("data-field")).join(" ")),
          new RegExp(`^${await field.getAttribute("id")}$`),
        );
      }
    }
  });

  it("says what is typed, and a press on a dimension brings its field", async () => {
    await page.getByRole("radio", { name: "Finger", exact: true }).check();
    await type(page, "Foot depth", "1 7/8");
    const foot = page.locator('.brake-picture [data-field="field-brake-clamp-footDepth"]');
    await until(() => words(foot), /Foot depth 1 7\/8/);
    for (const key of [
      "clamp-height",
      "leaf-profile-1-0",
      "bed-profile-0-1",
      "lift",
      "clamp-holderBack",
      "leaf-swing",
    ]) {
      await page.locator(`.brake-picture [data-field="field-brake-${key}"] text`).click();
      expect(await focused(page)).toBe(`field-brake-${key}`);
    }
  });
});

describe("the pictures of the part", () => {
  it("light flat and bend of the field, and bring the field at a press", async () => {
    const page = await tests.visit();
    for (const [label, key] of [
      ["Flat 2", "flat 1"],
      ["Bend 1 °", "bend 0"],
    ] as const) {
      await page.getByLabel(label, { exact: true }).focus();
      for (const picture of [".part-picture", ".beside"])
        await until(
          () =>
            page
              .locator(`${picture} .dimension-label.lit`)
              .evaluateAll((all) => all.map((one) => one.getAttribute("data-key")).join()),
          new RegExp(`^${key}$`),
        );
    }
    await page.getByLabel("Flat 3", { exact: true }).focus();
    await page.locator('button.flat-label.lit[aria-label^="Flat 3 "]').waitFor();
    await page.locator('.part-picture [data-key="flat 0"]').click();
    expect(await focused(page)).toBe("field-part-flats-0");
    await page.locator('.beside [data-key="bend 1"]').click();
    expect(await focused(page)).toBe("field-part-bends-1-angle");
  });
});

describe("each key of the job file", () => {
  let page: Page;
  beforeAll(async () => {
    page = await tests.visit();
    await page.getByRole("radio", { name: "Clamp bar" }).check();
    await page.evaluate(() => {
      for (const fold of Array.from(document.querySelectorAll("details"))) fold.open = true;
    });
  });
  afterAll(() => page?.context().close());

  it("says which edge a flat was measured from, and the blank follows", async () => {
    const wide = async () =>
      Number.parseFloat(
        /Cut it ([\d.]+)/.exec(await words(page.locator('[aria-labelledby="blank-heading"]')))![1]!,
      );
    await settled(page);
    const before = await wide();
    await page.getByLabel("Flat 2 at bend 1, to").selectOption("inside");
    await page.getByLabel("Flat 2 at bend 2, to").selectOption("inside");
    await settled(page);
    // A web of 3/8 in read inside is two thicknesses of 0.032 in longer outside.
    await expect.poll(wide).toBeCloseTo(before + 0.064, 2);
    expect((await fileOf(page)).part.flats[1]).toEqual({ size: "3/8", from: "inside", to: "inside" });
    await page.getByLabel("Flat 2 at bend 1, to").selectOption("as the part");
    await page.getByLabel("Flat 2 at bend 2, to").selectOption("as the part");
    expect((await fileOf(page)).part.flats[1]).toBe("3/8");
  });

  it("works a flat out from an overall size, and gives it back as it came out", async () => {
    await page.getByLabel("Work out from an overall size").selectOption("flat 2");
    await settled(page);
    let { part } = await fileOf(page);
    expect(part.flats[1]).toBe("rest");
    expect(part.overall).toEqual({ size: "3/8", along: 2 });
    await type(page, "Size over everything", "1/2");
    await until(() => words(page.locator(".part-picture")), /2\s*1\/2/);
    await page.getByLabel("Work out from an overall size").selectOption("no flat: all are measured");
    await settled(page);
    ({ part } = await fileOf(page));
    expect(part.flats[1]).toBe("1/2");
    expect(part.overall).toBeUndefined();
    await type(page, "Flat 2", "3/8");
  });

  it("says how closed bends are measured once there is one, and by which rule bends are allowed for", async () => {
    expect(await page.getByText("Bends past 90°, flats measured").count()).toBe(0);
    await type(page, "Bend 1 °", "100");
    await page.getByRole("radio", { name: "Over the bend" }).check();
    await page.getByRole("radio", { name: "DIN 6935" }).check();
    await type(page, "Deduction, bend 2", ".05");
    await settled(page);
    const { part } = await fileOf(page);
    expect(part).toMatchObject({ closedBends: "tangent", allowance: "din6935" });
    expect(part.bends[1].deduction).toBe(".05");
    await page.getByRole("radio", { name: "To the corner" }).check();
    await page.getByRole("radio", { name: "K-factor" }).check();
    await page.getByLabel("Deduction, bend 2", { exact: true }).fill("");
    await type(page, "Bend 1 °", "90");
  });

  it("sets the nose back for each bend, once for all, or as measured; grip, flange and shim beside it", async () => {
    await page.getByRole("radio", { name: "One for all bends" }).check();
    expect((await fileOf(page)).brake.setback).toBe("one");
    await page.getByRole("radio", { name: "As set on the brake" }).check();
    expect(Number(await page.getByLabel("Nose setback", { exact: true }).inputValue())).toBeGreaterThan(0);
    await page.locator('.brake-picture [data-field="field-brake-setback"] text').click();
    expect(await focused(page)).toBe("field-brake-setback");
    await page.getByRole("radio", { name: "For each bend" }).check();
    await type(page, "Least grip", "1/8");
    await type(page, "Least flange", "0");
    await type(page, "Shim over the nose", "1/64");
    await settled(page);
    const { brake } = await fileOf(page);
    expect(brake.setback).toBeUndefined();
    expect(brake).toMatchObject({ leastGrip: "1/8", leastFlange: 0, clamp: { shim: "1/64" } });
    expect(await words(page.locator(".field", { hasText: "Least grip" }))).toMatch(/1\/8 in = 3\.1\d mm/);
  });

  it("takes hems, offsets and protractor angles, and the answer follows", async () => {
    await page.getByLabel("Shim over the nose", { exact: true }).fill("");
    await press(page, "Add a hem");
    await page.getByLabel("Bend 3 is", { exact: true }).selectOption("open");
    await type(page, "Gap, bend 3", "1/16");
    await page.locator('.beside [data-key="bend 2"]').click();
    expect(await focused(page)).toBe("field-part-bends-2-hem");
    await settled(page);
    let { part } = await fileOf(page);
    expect(part.bends[2]).toEqual({ hem: "open", turn: "up", gap: "1/16" });
    // A hem is two strokes at the brake, of which the second presses it flat.
    await until(() => words(page.locator(".steps")), /flattened/);
    await press(page, "Add an offset");
    await type(page, "Offset, bends 3 and 4", "3/16");
    await type(page, "Bends 3 and 4 °", "30");
    await settled(page);
    ({ part } = await fileOf(page));
    expect(part.bends[2]).toEqual({ offset: "3/16", angle: 30, turn: "up" });
    expect(part.bends[3].hem).toBe("open");
    expect(await words(page.locator(".field", { hasText: "Offset, bends 3 and 4" }))).toMatch(
      /3\/16 in = 4\.76 mm/,
    );
    // The offset's own flat has a number of its own in the drawings, and a press on it brings the height.
    await page.getByLabel("Flat 6", { exact: true }).waitFor();
    await page.locator('.beside [data-key="flat 3"]').click();
    expect(await focused(page)).toBe("field-part-bends-2-offset");
    await press(page, "Take bends 3 and 4 away, with flat 5");
    await press(page, "Take bend 3 away, with flat 4");
    await page.getByLabel("Bend 1 is", { exact: true }).selectOption("included");
    await type(page, "Bend 1 °", "89");
    await until(() => words(page.locator(".part-picture")), /1\s*91°/);
    expect((await fileOf(page)).part.bends[0].included).toBe(89);
    await page.getByLabel("Bend 1 is", { exact: true }).selectOption("angle");
    await until(() => page.getByLabel("Bend 1 °", { exact: true }).inputValue(), /^91$/);
    await type(page, "Bend 1 °", "90");
  });

  it("says how far off the brake's readings may be, how long it is, and where a piece of its frame stands", async () => {
    await press(page, "Add a frame piece");
    await type(page, "Name of frame piece 1", "ear");
    await type(page, "Ear, along the brake from", "0");
    await type(page, "Ear, along the brake to", "1/2");
    await type(page, "Length of the brake", "24");
    await type(page, "Leaf angle off by °", "1");
    await type(page, "Nose setback off by", "1/64");
    await until(
      () => words(page.locator('.brake-picture [data-field="field-brake-setback"]')),
      /Nose setback auto ± 1\/64/,
    );
    await settled(page);
    const { brake } = await fileOf(page);
    expect(brake).toMatchObject({ length: 24, doubts: { overbend: 1, setback: "1/64" } });
    expect(brake.frame[0]).toMatchObject({ name: "ear", along: [0, "1/2"] });
    expect(brake.frame[0].profile.length).toBe(4);
  });

  it("is not lost by the page: a file with all of them comes out as it went in", async () => {
    const file = await fileOf(page);
    file.part.name = "All keys";
    file.part.closedBends = "tangent";
    file.part.allowance = "din6935";
    file.part.flats[0] = { size: "1/2", from: "inside", to: "tangent" };
    file.part.flats[1] = "rest";
    file.part.overall = { size: "1/2", along: 2 };
    file.part.bends[0].deduction = 0.05;
    file.part.flats.push(0.5, 0.25);
    file.part.bends.push(
      { offset: "3/16", angle: 45, turn: "up" },
      { hem: "teardrop", turn: "down", gap: "1/8" },
    );
    delete file.part.bends[1].angle;
    file.part.bends[1].included = 88;
    file.brake.setback = "one";
    expect(jobFileSchema.safeParse(withOffsets(file).value).success).toBe(true);
    await page.getByLabel("Open a file", { exact: true }).setInputFiles({
      name: "all.json",
      mimeType: "application/json",
      buffer: Buffer.from(JSON.stringify(file)),
    });
    await until(() => page.getByLabel("Name", { exact: true }).inputValue(), /^All keys/);
    expect(await fileOf(page)).toEqual(file);
  });
});
