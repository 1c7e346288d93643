/**
 * Drawings that are not as the page wants them: a nose that faces left, a hole in the clamp. The drawn sizes are the
 * truth: 45° finger, 25 mm high, nose radius 0.8 mm.
 */
import { expect, it } from "vitest";
import { profilesFromDxf } from "../../web/dxf/profileFromDxf.ts";
import { facesLeft, turnedRound, withoutHoles } from "../../web/dxf/readable.ts";

const FINGER = [
  { x: 0, y: 0, radius: 0.8 },
  { x: -25, y: 25 },
  { x: -50, y: 25 },
  { x: -50, y: 0 },
];
const mirrored = FINGER.map((corner) => ({ ...corner, x: -corner.x }));
const hole = [
  { x: -40, y: 5 },
  { x: -30, y: 5 },
  { x: -30, y: 15 },
  { x: -40, y: 15 },
];
const text = (...rings: readonly (readonly { x: number; y: number }[])[]) =>
  [
    ...["0", "SECTION", "2", "ENTITIES"],
    ...rings.flatMap((ring) => [
      ...["0", "LWPOLYLINE", "8", "0", "90", String(ring.length), "70", "1"],
      ...ring.flatMap(({ x, y }) => ["10", String(x), "20", String(y)]),
    ]),
    ...["0", "ENDSEC", "0", "EOF", ""],
  ].join("\n");

it("notices a nose that faces left, and only that", () => {
  expect(facesLeft([FINGER])).toBe(false);
  expect(facesLeft([mirrored])).toBe(true);
  expect(turnedRound([mirrored])[0]!.toReversed()).toEqual(FINGER);
  expect(facesLeft([hole])).toBe(false);
});

it("turns it round with a word", () => {
  const read = profilesFromDxf(text(mirrored), "mm", "mm");
  if (!read.ok) throw new Error(read.sentence);
  expect(read.remarks.join(" ")).toMatch(/faced left.*turned round/);
  const xs = read.profiles[0]!.map(([x]) => Number(x));
  expect(Math.max(...xs)).toBe(0);
  const foremost = read.profiles[0]!.find(([x]) => Number(x) === 0);
  expect(Number(foremost?.[1])).toBe(0);
});

it("takes a hole for no second clamp, and says so", () => {
  expect(withoutHoles([FINGER, hole])).toEqual([FINGER]);
  const read = profilesFromDxf(text(FINGER, hole), "mm", "mm");
  if (!read.ok) throw new Error(read.sentence);
  expect(read.profiles.length).toBe(1);
  expect(read.remarks.join(" ")).toMatch(/A hole was left out/);
});
