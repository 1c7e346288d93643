import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { drawStep } from "../../src/pictures/step.ts";
import { distanceToEdge } from "../../src/plane/edge.ts";
import type { Outline } from "../../src/plane/outline.ts";

const examples = new URL("../../examples/", import.meta.url);
const answered = readdirSync(examples)
  .filter((file) => file.endsWith(".json"))
  .map((file): [string, Job, Answer] => {
    const reading = readJob(readFileSync(new URL(file, examples), "utf8"));
    if (!reading.ok) throw new Error(file);
    return [file, reading.job, check(reading.job)];
  });

function distanceTo(point: readonly [number, number], outlines: readonly Outline[]): number {
  const [x, y] = point;
  const edges = outlines.flatMap((outline) => outline.edges);
  return Math.min(...edges.map((edge) => distanceToEdge({ x, y }, edge)));
}

/**
 * The sheet's faces are taken in by 0.01 mm for the test of contact (design of the engine), so a contact stands that far
 * inside the drawn sheet.
 */
const INSET_MM = 0.01;

describe.each(answered)("drawStep of %s", (_, job, answer) => {
  it.each(answer.order.map((step, index) => [step.bend, index] as const))("bend %d", (bend, index) => {
    const step = answer.order[index]!;
    const drawing = drawStep(job, answer, index);
    expect(drawing.sentence).toContain(`Bend ${bend}, `);
    const outlines = (layer: string) =>
      drawing.marks.flatMap((mark) =>
        mark.kind === "outline" && mark.layer === layer ? [mark.outline] : [],
      );
    if (step.contact !== null) {
      const { member, point, part } = step.contact;
      if (step.contact.angle > 0 && part !== "leaf") {
        expect(distanceTo(point, outlines("part").slice(0, 1))).toBeLessThan(INSET_MM + 1e-4);
        expect(distanceTo(point, outlines(member))).toBeLessThan(INSET_MM + 1e-4);
      }
      expect(drawing.marks).toContainEqual({
        kind: "cross",
        layer: "contact",
        at: { x: point[0], y: point[1] },
      });
    }
    if (step.clearancePoints !== null && step.contact === null) {
      const [a, b] = step.clearancePoints;
      expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeCloseTo(step.clearance ?? Number.NaN, 6);
      expect(drawing.marks.filter((mark) => mark.layer === "clearance")).toHaveLength(1);
      const member = step.nearest?.member;
      // A fixed member is where it is at every leaf angle.
      if (member === "clamp" || member === "bed") expect(distanceTo(b, outlines(member))).toBeLessThan(1e-4);
    }
  });

  it("has no picture past the last bend", () => {
    expect(() => drawStep(job, answer, answer.order.length)).toThrow(RangeError);
  });
});
