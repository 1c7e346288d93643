/**
 * Contact and clearance name the piece of iron that is met: the holder apart from the bar that it carries, a piece of
 * the frame by its own name.
 */
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { reportSections } from "../../src/words/reportWords.ts";
import { soundJob } from "../jobFile/jobs.ts";

type Block = readonly (readonly [number, number])[];
const block = (fromX: number, toX: number, fromY: number, toY: number): Block => [
  [fromX, fromY],
  [toX, fromY],
  [toX, toY],
  [fromX, toY],
];

function answered(change: (brake: Record<string, unknown>) => void) {
  const file = soundJob();
  change(file.brake as unknown as Record<string, unknown>);
  const read = readJob(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const answer = check(read.job);
  return { answer, said: reportSections(read.job, answer).flat(2).join(" ") };
}

describe("check", () => {
  it("names the frame piece that is met by its own name", () => {
    // A block in the way of every flange as it comes up.
    const { answer, said } = answered((brake) => {
      brake.frame = [block(-90, -80, 5, 60), { name: "gauge arm", profile: block(4, 6, 4, 9) }];
    });
    const met = answer.order.find(({ contact }) => contact !== null)!.contact!;
    expect(met).toMatchObject({ member: "frame", name: "gauge arm" });
    expect(said).toContain("meets the gauge arm");
  });

  it("tells the holder from the bar that it carries", () => {
    const { answer } = answered((brake) => {
      brake.clamp = {
        type: "bar",
        noseAngle: 84,
        thickness: 4,
        depth: 40,
        noseRadius: 0.8,
        holderBack: 1,
        holderHeight: 40,
        holderDepth: 30,
      };
    });
    const members = answer.order.flatMap(({ contact, nearest }) => [contact?.member, nearest?.member]);
    expect(members).toContain("holder");
  });
});
