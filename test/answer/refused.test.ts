/**
 * Bends that are not begun: too little sheet to grip or to push, a brake that is not rated for the sheet or is too short.
 * Least grip 3 mm and 4 T, least flange 2 T + r: common practice, no source. Full plastic moment σy·T²/4: textbook mechanics.
 */

import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { fitShop } from "../../src/ways/shopFit.ts";
import { verdictSentence } from "../../src/words/verdictWords.ts";
import { jobOfText, problemsOf, soundJob } from "../jobFile/jobs.ts";
import { rectangle } from "../rectangle.ts";

/** An angle of two flats, measured tangent to tangent: T 1, r 1, one bend of 90°. */
function angle(flats: readonly number[], brake: object = {}, part: object = {}) {
  const job = soundJob();
  Object.assign(job.part, {
    thickness: 1,
    insideRadius: 1,
    dimensions: "flat",
    flats,
    bends: [{ angle: 90, turn: "up", overbend: 90 }],
    ...part,
  });
  Object.assign(job.brake, brake);
  return { ...job, order: [{ bend: 1, clamped: "start" }] };
}

const answered = (job: object) => check(jobOfText(JSON.stringify(job)));
const said = (job: object) => {
  const read = jobOfText(JSON.stringify(job));
  return verdictSentence(read, check(read));
};

describe("check with little sheet to hold", () => {
  it("refuses a bend under the least grip, with the figure, and makes one that has it", () => {
    const short = answered(angle([3.9, 20]));
    expect([short.verdict, short.order[0]!.refused, short.order[0]!.reached]).toEqual(["hits", "grip", 0]);
    expect(short.order[0]!.contact).toBeNull();
    expect(said(angle([3.9, 20]))).toContain("the clamp has 3.9 mm of flat sheet to grip and needs 4 mm");
    expect(answered(angle([4, 20])).order[0]!.refused).toBeNull();
  });

  it("refuses a bend under the least flange, 2 T + r", () => {
    expect(answered(angle([20, 2.9])).order[0]!.refused).toBe("flange");
    expect(said(angle([20, 2.9]))).toContain("the leaf has 2.9 mm of flat sheet to push on and needs 3 mm");
    expect(answered(angle([20, 3])).order[0]!.refused).toBeNull();
  });

  it("counts sheet up to the leaf's face", () => {
    const leaf = {
      profile: rectangle(6, -10, 25, 0),
      swing: 135,
      pivot: [0, 0],
    };
    const [step] = answered(angle([20, 5], { leaf })).order;
    expect(step!.refused).toBe("flange");
  });

  it("takes the job's own least lengths, and none where they are 0", () => {
    expect(answered(angle([3, 20], { leastGrip: 0 })).order[0]!.refused).toBeNull();
    expect(answered(angle([20, 1], { leastFlange: "0" })).order[0]!.refused).toBeNull();
    expect(answered(angle([8, 20], { leastGrip: "9 mm" })).order[0]!.refused).toBe("grip");
    expect(answered(angle([20, 8], { leastFlange: 9 })).order[0]!.refused).toBe("flange");
    expect(problemsOf(JSON.stringify(angle([20, 8], { leastGrip: -1 })))[0]!.path).toBe("brake.leastGrip");
  });

  it("warns between the least and twice the least", () => {
    expect(answered(angle([7.9, 20])).warnings.join()).toMatch(/Bend 1: the clamp grips only 7\.9 mm/u);
    expect(answered(angle([20, 5.9])).warnings.join()).toMatch(
      /Bend 1: only 5\.9 mm of flat sheet lies on the leaf/u,
    );
    expect(answered(angle([8, 6])).warnings.join()).not.toMatch(/flat sheet/u);
  });

  it("counts a bend that is still flat as sheet, and a formed one as the end of it", () => {
    // Flat 2 alone is too short to grip; with bend 2 still flat the clamp has flats 2 and 3.
    const job = angle(
      [20, 2.5, 20],
      {},
      { bends: [0, 1].map(() => ({ angle: 30, turn: "up", overbend: 31 })) },
    );
    const clamped = "end" as const;
    const first = answered({ ...job, order: [1, 2].map((bend) => ({ bend, clamped })) });
    expect(first.order.map(({ refused }) => refused)).toEqual([null, "flange"]);
    const second = answered({ ...job, order: [2, 1].map((bend) => ({ bend, clamped })) });
    expect(second.order.map(({ refused }) => refused)).toEqual([null, "grip"]);
    // The search knows it too: it makes bend 2 from the other side, or none.
    const { order: _, ...free } = job;
    for (const step of answered(free).order)
      if (answered(free).verdict !== "hits") expect(step.refused).toBeNull();
    expect(answered(free).viableOrders).toBe(0);
  });
});

describe("a brake that is not rated for the part", () => {
  // Mild steel of the table yields at 240 MPa; rated for 1 mm of 240 MPa over 1000 mm.
  const rated = { rated: { thickness: 1, length: 1000, yield: 240 } };

  it.each([
    [{ thickness: 1.004 }, null],
    [{ thickness: 1.006 }, "rated"],
    [{ length: 1009 }, null],
    [{ length: 1011 }, "length"],
    [{ thickness: 0.8, length: 1000 }, null],
  ] as const)("%j: refused %s", (part, refused) => {
    const { order, verdict, viableOrders } = answered(angle([20, 20], rated, part));
    expect(order[0]!.refused).toBe(refused);
    expect(verdict === "hits").toBe(refused !== null);
    expect(viableOrders === 0).toBe(refused !== null);
  });

  it("says what it is rated for, and not at which bend", () => {
    expect(said(angle([20, 20], rated, { thickness: 1.2 }))).toBe(
      "Does not fold: this brake is rated for 1 mm sheet of 240 MPa, and 1.2 mm mild steel takes 144 % of that.",
    );
    expect(said(angle([20, 20], rated, { length: 1200 }))).toBe(
      "Does not fold: the part is 1200 mm long, and this brake takes 1000 mm.",
    );
  });

  it("is the same to fit", () => {
    const { part, brake } = angle([20, 20], rated, { thickness: 1.2 });
    const read = readJob(JSON.stringify(angle([20, 20], rated, { thickness: 1.2 })));
    expect(read.ok).toBe(true);
    const shop = { noseroomShop: 1, units: "mm", brakes: [brake], parts: [part] } as unknown as Parameters<
      typeof fitShop
    >[0];
    const [cell] = fitShop(shop).cells[0]!;
    expect(cell!.verdict).toBe("unfit");
    expect(cell!.because).toMatch(/^This brake is rated for 1 mm sheet of 240 MPa.*144 %/u);
  });
});
