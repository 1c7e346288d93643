import { describe, expect, it } from "vitest";
import { statusOf } from "../../src/cli/check.ts";
import { inkFor } from "../../src/cli/ink.ts";
import { systemSentence } from "../../src/cli/refusal.ts";
import { reportLines } from "../../src/cli/report.ts";
import { pageScale } from "../../src/cli/stepPictures.ts";
import { columnsOf, wrap } from "../../src/cli/wrap.ts";
import { ordersSentence } from "../../src/words/ordersWords.ts";
import { answerOf, hit, jobOf, stepOf } from "../jobFile/answers.ts";

const plain = inkFor({}, {});
const order = [{ bend: 0, clamped: "start" }] as const;

describe("ordersSentence", () => {
  it.each([
    [{}, "hits", 0, "None of the 8 orders works; this one gets furthest."],
    [{}, "clear", 1, "Of the 8 orders this is the only one that works."],
    [{}, "clear", 3, "3 of the 8 orders work; this one is the best."],
    [{}, "clear", 8, "All 8 orders work; this one is the best."],
    [{ order }, "clear", 3, "Checked in the order that the job gives."],
    [{ order }, "hits", 0, "Checked in the order that the job gives."],
  ] as const)("of %o that %s with %d viable", (job, verdict, viableOrders, sentence) => {
    expect(ordersSentence(jobOf(job), { ...answerOf(verdict, stepOf()), viableOrders })).toBe(sentence);
  });

  it("says that others would work where the given order does not, and groups large counts", () => {
    const answer = { ...answerOf("hits", hit), viableOrders: 2n ** 60n };
    expect(ordersSentence(jobOf({ order }), answer)).toContain(
      "1,152,921,504,606,846,976 of the 8 orders would work",
    );
  });
});

describe("reportLines", () => {
  const report = (...steps: Parameters<typeof reportLines>[1]["order"][number][]) =>
    reportLines(
      jobOf(),
      answerOf(steps.some((step) => step.verdict === "hits") ? "hits" : "clear", ...steps),
      plain,
    ).join("\n");
  const near = { clearance: null, clearancePoints: null };

  it("says where a contact stands, and level where it is level", () => {
    expect(report(hit)).toContain(
      "4.00 mm behind and 3.00 mm above the bed's front top edge. The bend would relax to 73.6°, 16.4° short.",
    );
    const level = {
      ...hit,
      contact: { angle: 0, part: "end of flat 1", member: "bed", point: [-4, 0.001] },
      reached: 0,
    } as const;
    expect(report(level)).toContain(
      "already at rest the end of flat 1 meets the bed, 4.00 mm behind the bed's front top edge.\n",
    );
  });

  it("says how a part gets in and out where not from the front, and that it cannot", () => {
    expect(report(stepOf({ ...near, load: "end" }))).toContain(
      "Bend 2: slide the part in along the bend line",
    );
    expect(report(stepOf({ ...near, load: "end", unload: "end" }))).toContain(
      "slide the part in and out along",
    );
    expect(report(stepOf(near))).not.toContain("In and out");
    const stuck = report(stepOf({ ...near, verdict: "hits", unload: "blocked" }));
    expect(stuck).toContain("the bent part cannot be taken out of the throat");
    expect(stuck).toContain("no way in or out");
  });

  it("passes the warnings on", () => {
    const answer = { ...answerOf("clear", stepOf(near)), warnings: ["Flange 1 is short."] };
    expect(reportLines(jobOf(), answer, plain)).toContain("  Flange 1 is short.");
  });
});

describe("wrap", () => {
  it("breaks between words on a terminal and nowhere in a pipe", () => {
    expect(columnsOf({})).toBe(Number.POSITIVE_INFINITY);
    expect([columnsOf({ isTTY: true, columns: 72 }), columnsOf({ isTTY: true, columns: 300 })]).toEqual([
      72, 100,
    ]);
    expect(wrap("take 3/32 in off flat 1", 12, "  ")).toEqual(["  take 3/32", "    in off", "    flat 1"]);
    expect(wrap("unbreakablyLong word", 5, "")).toEqual(["unbreakablyLong", "  word"]);
    const lines = reportLines(jobOf(), answerOf("hits", hit), plain, 60).filter(
      (line) => !/^(\d\.| +bend)/u.test(line),
    );
    for (const line of lines.slice(3)) expect(line.length).toBeLessThanOrEqual(60);
  });
});

describe("statusOf", () => {
  it("is 0 for clear and tight, 1 for hits", () => {
    expect([statusOf("clear"), statusOf("tight"), statusOf("hits")]).toEqual([0, 0, 1]);
  });
});

describe("pageScale", () => {
  it.each([
    [36, 5],
    [9, 20],
    [100, 1.5],
    [180, 1],
    [900, 1],
  ])("of a window %d mm wide is %d", (width, scale) => {
    expect(
      pageScale({ sentence: "", window: { min: { x: 0, y: 0 }, max: { x: width, y: 1 } }, marks: [] }),
    ).toBe(scale);
  });
});

describe("systemSentence", () => {
  it("knows a read-only disk, a full one and a place without permission, and names what it does not know", () => {
    const reason = (code: string) => Object.assign(new Error("text of the system"), { code });
    expect(systemSentence("a.svg", "written", reason("EROFS"))).toBe(
      "a.svg cannot be written: that disk is read-only.",
    );
    expect(systemSentence("a.svg", "written", reason("ENOSPC"))).toBe(
      "a.svg cannot be written: the disk is full.",
    );
    expect(systemSentence("a.json", "read", reason("EACCES"))).toBe(
      "a.json cannot be read: you have no permission there.",
    );
    expect(systemSentence("a.json", "read", reason("EIO"))).toBe("a.json cannot be read (EIO).");
    expect(systemSentence("a.json", "read", "?")).toBe("a.json cannot be read.");
  });
});
