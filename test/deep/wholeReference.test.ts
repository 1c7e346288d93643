/**
 * The contact of whole parts against an independent computation in space: solids of the manifold-3d library, common volumes
 * at single leaf angles.
 */
import { expect, it } from "vitest";
import { drawn } from "../drawn.ts";
import { compareSeed } from "../reference3d/compare.ts";

const { seed: first, numRuns: parts } = drawn(1, 5000);

it(`strokeContact: ${parts} random whole parts meet what solids in space meet, at the same angle`, () => {
  const wrong: string[] = [];
  let [strokes, contacts, tried] = [0, 0, 0];
  for (let seed = first; tried < parts; seed++) {
    const compared = compareSeed(seed);
    if (!compared) continue;
    tried++;
    strokes += compared.strokes;
    contacts += compared.contacts;
    wrong.push(...compared.wrong);
  }
  expect(wrong).toEqual([]);
  // Both sorts must be among them, or nothing was held against anything.
  expect(contacts).toBeGreaterThan(parts / 8);
  expect(strokes - contacts).toBeGreaterThan(parts / 8);
});
