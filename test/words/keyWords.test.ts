/**
 * The page of keys against the job file itself: no key of a brake is missing from it, and none is there that is not read.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { drawKeys } from "../../src/pictures/keysDrawing.ts";
import { BRAKE_KEYS } from "../../src/words/keyWords.ts";
import { soundJob } from "../jobFile/jobs.ts";

/** Keys that a group of the file takes, as the refusal of a stray one lists them. */
function taken(place: (brake: Record<string, unknown>) => Record<string, unknown>): string[] {
  const file = soundJob();
  place(file.brake as unknown as Record<string, unknown>).qqqqqqqqqq = 1;
  const read = readJob(JSON.stringify(file));
  const said = read.ok ? "" : (read.problems.find(({ path }) => path.includes("qqqqqqqqqq"))?.allowed ?? "");
  return [...said.matchAll(/\b[a-z][A-Za-z]+\b/gu)].map(([key]) => key);
}

const told = BRAKE_KEYS.map(({ key }) => key);

test("every key of a brake is told, and no other", () => {
  const brake = taken((one) => one);
  const groups = ["clamp", "bed", "leaf", "rated"];
  const inBrake = told.map((key) => key.split(".")[0]!);
  for (const key of inBrake) expect(brake).toContain(key);
  for (const key of ["name", "lift", "openEnds", "setback", "frame", ...groups])
    expect(inBrake).toContain(key);
  for (const type of ["finger", "bar", "profile"]) {
    const keys = taken((one) => {
      one.clamp = { type };
      return one.clamp as Record<string, unknown>;
    });
    const clampKeys = told.filter((key) => key.startsWith("clamp.")).map((key) => key.replace("clamp.", ""));
    for (const key of keys)
      if (/^(nose|top|holder|height|foot|depth|thick|shim|profiles)/u.test(key))
        expect(clampKeys).toContain(key);
  }
});

test("the picture of the examples is the one that the command draws, with the measured keys on it", () => {
  const svg = writeSvg(drawKeys(), { title: "The keys of a brake", enlargement: 0.8 });
  expect(readFileSync(new URL("../../examples/pictures/keys.svg", import.meta.url), "utf8")).toBe(svg);
  for (const key of told.filter((one) =>
    /^clamp\.(thick|depth|nose|top|holder)|profile$|^setback|swing|pivot/u.test(one),
  )) {
    if (key !== "clamp.profiles") expect(svg).toContain(key);
  }
});
