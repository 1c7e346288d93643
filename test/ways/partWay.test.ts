/**
 * A bend made in two strokes as a way out, on parts that no order of whole strokes makes: held against a plain listing of
 * every order with every bend begun at any time, and the second stroke against the independent reference.
 * Source: test/reference/twoStrokes.ts, which shares no line with src. The parts were met at random (twoStrokes.json).
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStage } from "../../src/contact/step.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import type { WayOut } from "../../src/jobFile/wayOut.ts";
import type { OrderStep } from "../../src/motion/stages.ts";
import { stagesOf } from "../../src/motion/stages.ts";
import type { End } from "../../src/part/part.ts";
import { applied, waysOut } from "../../src/ways/waysOut.ts";
import { answerOf, jobOf } from "../cases/answers.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import { checkSecondStroke } from "../reference/twoStrokes.ts";

const FILES = JSON.parse(readFileSync(new URL("twoStrokes.json", import.meta.url), "utf8")) as RandomJob[];
const ENDS: readonly End[] = ["start", "end"];

function partWayOf(file: RandomJob): WayOut {
  const job = jobOf(file);
  const ways = waysOut(file as unknown as JobFile, job, check(job));
  const way = ways.find(({ kind }) => kind === "partWay");
  if (way?.kind !== "partWay") throw new Error("no way in two strokes");
  return way;
}

/** Whether any order folds that begins `begun` at `toDeg` and finishes it later, all others in whole strokes. */
function anyOrderFolds(
  file: RandomJob,
  begun: { readonly bend: number; readonly clamped: End },
  toDeg: number,
): boolean {
  const { part, brake, marginMm } = jobOf(file);
  const machine = new Machine(brake, part.thicknessMm);
  const goOn = (order: readonly OrderStep[]): boolean => {
    const done = new Set(order.flatMap((step) => (step.toDeg === undefined ? [step.bend] : [])));
    if (done.size === part.bends.length) return true;
    const isBegun = order.some((step) => step.toDeg !== undefined);
    const moves = part.bends.flatMap((_, bend): OrderStep[] => {
      if (done.has(bend)) return [];
      if (bend !== begun.bend) return ENDS.map((clamped) => ({ bend, clamped }));
      return [isBegun ? begun : { ...begun, toDeg }];
    });
    return moves.some((move) => {
      const stage = stagesOf(part, brake, [...order, move]).at(-1)!;
      return judgeStage(stage, marginMm, machine).verdict !== "hits" && goOn([...order, move]);
    });
  };
  return goOn([]);
}

describe.each(FILES.map((file, i) => [i + 1, file] as const))("part %i that wants two strokes", (_, file) => {
  it("folds in no order of whole strokes, and in the one told", () => {
    expect(answerOf(file).verdict).toBe("hits");
    const way = partWayOf(file);
    const answer = answerOf(applied(file as unknown as JobFile, jobOf(file), way.changes));
    expect(answer.verdict).toBe(way.verdict);
    expect(answer.order.length).toBe(file.part.bends.length + 1);
    expect(answer.order.filter(({ stroke }) => stroke !== undefined).map(({ stroke }) => stroke)).toEqual([
      "begin",
      "finish",
    ]);
    const least = Math.min(...answer.order.map(({ clearance }) => clearance ?? Number.POSITIVE_INFINITY));
    expect(way.clearance ?? Number.POSITIVE_INFINITY).toBeCloseTo(least, 9);
  });

  it("may be left between the limits told, and not a quarter of a degree past them, in any order", () => {
    const way = partWayOf(file);
    const begin = way.order.find(({ to }) => to !== undefined)!;
    const begun = { bend: begin.bend - 1, clamped: begin.clamped };
    expect(anyOrderFolds(file, begun, way.limit!.figure)).toBe(true);
    expect(anyOrderFolds(file, begun, way.notUnder!)).toBe(true);
    expect(anyOrderFolds(file, begun, way.limit!.figure + 0.25)).toBe(false);
    expect(anyOrderFolds(file, begun, way.notUnder! - 0.25)).toBe(false);
  });

  it("has its second stroke judged as the reference does", () => {
    const way = partWayOf(file);
    const at = way.order.findIndex(({ to }) => to !== undefined);
    const { bend, clamped, to } = way.order[at]!;
    const last = way.order.findIndex((step, i) => i > at && step.bend === bend);
    const done = file.part.bends.map((_, i) =>
      way.order.slice(0, last).some((step) => step.bend === i + 1 && i + 1 !== bend),
    );
    const truth = checkSecondStroke(file, { done, bend: bend - 1, end: clamped }, to!);
    const answer = answerOf(applied(file as unknown as JobFile, jobOf(file), way.changes)).order[last]!;
    expect(truth.contact).toBeNull();
    expect(truth.load).toBe(answer.load);
    expect(Math.abs((answer.clearance ?? 0) - (truth.clearanceMm ?? 0))).toBeLessThan(0.02);
  });
});
