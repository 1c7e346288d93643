/**
 * The long run of photosOnPage.ts: PICTURES of them (20,000 if not said) from SEED (1), with a count as it goes.
 */
import { expect, it } from "vitest";
import { DESKTOP, launch } from "./browser.ts";
import { attackWithPictures, readyToTrace } from "./photosOnPage.ts";
import { complaintsOf, openShop, visit } from "./shop.ts";

const AT_A_TIME = 1000;
const count = Number(process.env.PICTURES ?? 20_000);
const seed = Number(process.env.SEED ?? 1);

it(`takes or refuses ${count} damaged pictures`, async () => {
  const { server, address } = await openShop();
  const browser = await launch();
  const page = await visit(browser, DESKTOP, address);
  const complaints = complaintsOf(page);
  await readyToTrace(page);
  const start = Date.now();
  let [shown, refused] = [0, 0];
  for (let batch = 0; shown + refused < count; batch++) {
    const found = await attackWithPictures(page, AT_A_TIME, seed * 10_000 + batch);
    expect(found.findings).toEqual([]);
    [shown, refused] = [shown + found.shown, refused + found.refused];
    const took = ((Date.now() - start) / 1000).toFixed(0);
    console.log(
      `pictures: ${shown + refused} in ${took} s, seed ${seed}: ${shown} shown, ${refused} refused`,
    );
  }
  expect(complaints).toEqual([]);
  await browser.close();
  server.close();
});
