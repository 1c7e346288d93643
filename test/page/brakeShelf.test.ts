/**
 * The shelf of brakes: whatever puts another brake in a job's place, the measured one is found again, over a reload too.
 * Figures compared are those that the test itself typed.
 */
import type { Page } from "playwright-core";
import { beforeEach, describe, expect, it } from "vitest";
import { pageTests, press, saved, settled, type, until, words } from "./shop.ts";

const tests = pageTests();
let page: Page;
beforeEach(async () => {
  page = await tests.visit();
});

/** What a person might read off a finger brake of their own. */
const MEASURED = {
  "Nose angle °": "47.5",
  "Nose radius": "0.03",
  "Finger height": "1 3/16",
  "Foot depth": "1 15/16",
  "Leaf face": "1 5/8",
  Lift: "1 1/16",
};

async function measure(of: Page = page): Promise<void> {
  for (const [label, figure] of Object.entries(MEASURED)) await type(of, label, figure);
  await settled(of);
}

const field = (label: string, of: Page = page) => of.getByLabel(label, { exact: true });

async function expectMeasured(of: Page = page): Promise<void> {
  for (const [label, figure] of Object.entries(MEASURED))
    expect([label, await field(label, of).inputValue()]).toEqual([label, figure]);
}

const chooseClamp = async (name: string) => {
  await page.getByRole("radio", { name, exact: true }).check();
  await settled(page);
};
const pickBrake = async (name: string | RegExp, of: Page = page) => {
  const pick = of.getByLabel("Brake of this job", { exact: true });
  const options = await pick.locator("option").allTextContents();
  const found = options.find((text) => (typeof name === "string" ? text === name : name.test(text)));
  if (found === undefined) throw new Error(`no brake ${name} among ${options.join(" | ")}`);
  await pick.selectOption({ label: found });
  await settled(of);
};

describe("a measured brake", () => {
  it("comes back figure by figure when the clamp's kind is changed and changed back, over a reload", async () => {
    await measure();
    await chooseClamp("Clamp bar");
    await page.reload();
    await settled(page);
    await chooseClamp("Finger");
    await expectMeasured();
    await chooseClamp("Clamp bar");
    await type(page, "Bar thickness", "5/16");
    await chooseClamp("Own profile");
    await chooseClamp("Clamp bar");
    expect(await field("Bar thickness").inputValue()).toBe("5/16");
    await chooseClamp("Finger");
    await expectMeasured();
  });

  it("is on the shelf after a way out has put another brake in its place, over a reload", async () => {
    await type(page, "Brake’s name", "Bench brake");
    await measure();
    await page.locator('.answer[data-ways="found"]').waitFor();
    const way = page.getByRole("button", { name: /^Do it: (Make a brake|Use a bar|Grind)/ }).first();
    await way.click();
    await settled(page);
    expect(await page.locator(".answer").getAttribute("data-verdict")).not.toBe("hits");
    await page.reload();
    await settled(page);
    await pickBrake("Bench brake");
    await expectMeasured();
  });

  it("is on the shelf after the part was put on a narrow brake to be made", async () => {
    await type(page, "Brake’s name", "Bench brake");
    await measure();
    await press(page, /^Design a narrow brake/);
    await page.getByRole("button", { name: "Put the part on it" }).click();
    await settled(page);
    await page.reload();
    await settled(page);
    await pickBrake("Bench brake");
    await expectMeasured();
  });

  it("is on the shelf after a drawing has become the clamp, and after its job was taken away", async () => {
    await type(page, "Brake’s name", "Bench brake");
    await measure();
    const corners = [
      [0, 0],
      [20, 0],
      [20, 15],
      [0, 15],
    ].flatMap(([x, y]) => ["10", x, "20", y]);
    const text = [
      "0",
      "SECTION",
      "2",
      "ENTITIES",
      "0",
      "LWPOLYLINE",
      "8",
      "0",
      "90",
      "4",
      "70",
      "1",
      ...corners,
      "0",
      "ENDSEC",
      "0",
      "EOF",
      "",
    ].join("\n");
    await chooseClamp("Own profile");
    await page
      .locator('input[type="file"][accept=".dxf"]')
      .setInputFiles({ name: "clamp.dxf", mimeType: "application/dxf", buffer: Buffer.from(text) });
    // This drawing does not say its unit.
    await press(page, "20 by 15 millimetres");
    await until(
      () =>
        page
          .getByLabel("Brake of this job", { exact: true })
          .locator("option")
          .allTextContents()
          .then(String),
      /drawn/,
    );
    await press(page, "New job");
    await page.getByRole("button", { name: "Take the job Cable trough away" }).click();
    await page.reload();
    await settled(page);
    await pickBrake("Bench brake");
    await expectMeasured();
  });
});

describe("a kept brake", () => {
  it("starts every new job, follows only when kept again, and is never typed over", async () => {
    await type(page, "Brake’s name", "Bench brake");
    await measure();
    await press(page, "Measured on: today");
    await press(page, "Keep this brake");
    await press(page, "New job");
    await settled(page);
    await expectMeasured();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("field-part-name");
    expect(await page.evaluate(() => scrollY)).toBe(0);
    // A trial in this job leaves the other job and the shelf alone.
    await type(page, "Leaf face", "3");
    await page.locator(".jobs").getByRole("button", { name: "Cable trough", exact: true }).click();
    await settled(page);
    await expectMeasured();
    await page.locator(".jobs").getByRole("button", { name: "New part", exact: true }).click();
    await settled(page);
    expect(await words(page.locator(".brake-shelf [role=status]"))).toMatch(
      /^Changed since you kept Bench brake/,
    );
    await press(page, "Back to it as kept");
    await expectMeasured();
    // Kept anew it is the brake of both jobs.
    await type(page, "Leaf face", "1 3/4");
    await press(page, "Keep the changes");
    await page.locator(".jobs").getByRole("button", { name: "Cable trough", exact: true }).click();
    await settled(page);
    expect(await field("Leaf face").inputValue()).toBe("1 3/4");
  });

  it("is copied, saved as a file, opened in another browser, taken away and brought back", async () => {
    await type(page, "Brake’s name", "Bench brake");
    await measure();
    await press(page, "Measured on: today");
    const day = await field("Measured on").inputValue();
    await press(page, "Keep this brake");
    await page.locator(".brake-shelf summary").click();
    await press(page, "Copy the brake Bench brake");
    await until(() => words(page.locator(".brakes")), /Bench brake 2/);
    const file = await saved(page, () => press(page, "Save the brakes as a file"));
    const other = await tests.visit();
    await other.locator(".brake-shelf summary").click();
    await other
      .getByLabel("Open brakes from a file")
      .setInputFiles({ name: file.name, mimeType: "application/json", buffer: Buffer.from(file.text) });
    await other.locator(".brakes li").nth(1).waitFor();
    await pickBrake("Bench brake", other);
    await expectMeasured(other);
    expect(await field("Measured on", other).inputValue()).toBe(day);
    await press(page, "Take the brake Bench brake 2 away");
    expect(await page.locator(".brakes li").count()).toBe(1);
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await page.locator(".brakes li").count()).toBe(2);
  });

  it("is shared with another tab", async () => {
    const other = await page.context().newPage();
    await other.goto(tests.address);
    await settled(other);
    await type(page, "Brake’s name", "Bench brake");
    await press(page, "Keep this brake");
    await expect
      .poll(() =>
        other
          .getByLabel("Brake of this job", { exact: true })
          .locator("option")
          .allTextContents()
          .then(String),
      )
      .toContain("Bench brake");
  });
});
