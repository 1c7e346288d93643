/**
 * Typing: how people in shops write figures. An inch is 25.4 mm (1959); 20 gauge steel is 0.0359 in (U.S. Manufacturers'
 * Standard Gauge for sheet steel, from memory).
 */
import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { valueTyped } from "../../web/fields/typed.ts";
import { DESKTOP, PHONE } from "./browser.ts";
import { pageTests, settled, type, until, words } from "./shop.ts";

const tests = pageTests();
const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const below = (page: Page, id: string) => words(page.locator(`#${id}`));

it("takes a decimal comma and leaves it as typed; the file has a number", async () => {
  const page = await tests.visit({ ...DESKTOP, locale: "de-DE" });
  await type(page, "Thickness", "0,9");
  expect(await field(page, "Thickness").inputValue()).toBe("0,9");
  await until(() => below(page, "field-part-thickness-e"), /^0\.9 mm = 0\.035 in$/);
  await settled(page);
  expect(await page.locator(".answer").getAttribute("data-verdict")).not.toBe("unread");
});

it.each([
  ["0,8", false, 0.8],
  ["1,250", false, "1,250"],
  ["1,250", true, "1.250"],
  ["0,032", false, 0.032],
  [",8", false, 0.8],
  ["12,5 mm", false, "12.5 mm"],
] as const)("reads %s by its sense and the language (comma: %s)", (text, comma, value) => {
  expect(valueTyped(text, "length", { comma, metal: "mild steel" })).toBe(value);
});

it("takes a gauge number by the metal chosen, and a strength in ksi", async () => {
  const page = await tests.visit();
  await type(page, "Thickness", "20 ga");
  expect(await field(page, "Thickness").inputValue()).toBe("20 ga");
  await until(() => below(page, "field-part-thickness-e"), /^20 ga steel = 0\.036 in = 0\.91 mm$/);
  await page.getByLabel("Metal", { exact: true }).selectOption("own figures");
  await type(page, "Yield strength MPa", "35 ksi");
  await settled(page);
  expect(await page.locator(".answer").getAttribute("data-verdict")).not.toBe("unread");
});

it("echoes 3/8 and 0.375 the same", async () => {
  const page = await tests.visit();
  await type(page, "Flat 2", "0.375");
  await until(() => below(page, "field-part-flats-1-e"), /^3\/8 in = 9\.53 mm$/);
  await type(page, "Flat 2", "3/8");
  await until(() => below(page, "field-part-flats-1-e"), /^3\/8 in = 9\.53 mm$/);
});

it("tells a slip in the page's own words, and only when the field is left or typing rests", async () => {
  const page = await tests.visit();
  await field(page, "Flat 1").focus();
  const seen = await page.evaluate(async () => {
    const input = document.querySelector<HTMLInputElement>("#field-part-flats-0")!;
    const answer = document.querySelector(".answer")!;
    input.value = "3/";
    input.dispatchEvent(new InputEvent("input", { bubbles: true }));
    await new Promise((next) => setTimeout(next, 500));
    return answer.getAttribute("data-verdict");
  });
  expect(seen).toBe("hits");
  await page.keyboard.press("Tab");
  const told = await until(() => words(page.locator(".answer .problems")), /^Flat 1: it should be/);
  expect(told).not.toMatch(/part\.|\[/);
});

it("has minus and slash within reach of a thumb in every field of figures", async () => {
  const page = await tests.visit(PHONE);
  await page.getByRole("radio", { name: "As set on the brake" }).check();
  for (const [label, sign, shown] of [
    ["Flat 1", "Fraction slash into Flat 1", "1/2/"],
    ["Nose setback", "Minus sign into Nose setback", "-"],
    ["Nose angle °", "Minus sign into Nose angle", "45-"],
  ] as const) {
    await field(page, label).focus();
    if (shown === "-") await field(page, label).fill("");
    await page.keyboard.press("End");
    await page.getByRole("button", { name: sign, exact: true }).click();
    expect(await field(page, label).inputValue()).toBe(shown);
  }
});

it("does not move the drawing by a pixel while one types", async () => {
  const page = await tests.visit();
  // In its place on the page, wherever that is scrolled to.
  const place = async () => {
    const [front, box] = await Promise.all([
      page.locator(".front").boundingBox(),
      page.locator(".canvas-box").boundingBox(),
    ]);
    return { ...box, y: (box?.y ?? 0) - (front?.y ?? 0) };
  };
  await page.locator('.answer[data-ways="found"]').waitFor();
  const before = await place();
  for (const text of ["1/8", "3", "x", "1/2"]) {
    await type(page, "Flat 1", text);
    await page.keyboard.press("Tab");
    await settled(page);
    expect(await place()).toEqual(before);
  }
});
