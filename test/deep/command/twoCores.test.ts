/**
 * Long searches on two cores: the same answer as on one, with the thread that the command starts. Source: the same search by
 * one thread, itself held to plain enumeration (test/sequence).
 */
import { Worker } from "node:worker_threads";
import { describe, expect, it } from "vitest";
import { startPartner } from "../../../src/cli/startPartner.ts";
import { Board } from "../../../src/sequence/board.ts";
import type { Partner } from "../../../src/sequence/partner.ts";
import { searchOrders } from "../../../src/sequence/search.ts";
import { benchJob, type Shape } from "../../bench/benchJobs.ts";

const THREAD = new URL("../../../dist/command/partnerThread.mjs", import.meta.url);

/** The command's partner, waited for until it is there, so that it takes its share from the first layer on. */
function wellStarted(seen: Board[]): Partner {
  return (share) => {
    startPartner(THREAD, 2)!(share);
    const board = new Board(share.memory);
    const nap = new Int32Array(new SharedArrayBuffer(4));
    const until = Date.now() + 20_000;
    while (!board.hasPartner && Date.now() < until) Atomics.wait(nap, 0, 0, 5);
    expect(board.hasPartner).toBe(true);
    seen.push(board);
  };
}

describe("a search on two cores", () => {
  it.each<[Shape, number]>([
    ["open", 13],
    ["hat", 13],
    ["wide", 14],
    ["spiral", 13],
  ])("of %s with %i bends finds what one core finds", (shape, n) => {
    const { part, brake, marginMm } = benchJob(shape, n);
    const boards: Board[] = [];
    expect(searchOrders(part, brake, marginMm, undefined, wellStarted(boards))).toEqual(
      searchOrders(part, brake, marginMm),
    );
    const [board] = boards;
    expect(board).toBeDefined();
    const found = (masks: Int32Array) => masks.some((mask) => mask !== 0);
    expect(found(board!.withStart) || found(board!.withEnd)).toBe(true);
  });

  it("ends as on one where the second thread ends before its time", () => {
    const { part, brake, marginMm } = benchJob("hat", 13);
    const gone: Partner = ({ memory }) => {
      new Board(memory).partnerIsThere(true);
      const leave = `const { workerData } = require("node:worker_threads");
        const turns = new Int32Array(workerData);
        setTimeout(() => { Atomics.store(turns, 0, 0); Atomics.notify(turns, 2); }, 100);`;
      new Worker(leave, { eval: true, workerData: memory });
    };
    expect(searchOrders(part, brake, marginMm, undefined, gone)).toEqual(searchOrders(part, brake, marginMm));
  });

  it("ends as on one where there is no thread to start", () => {
    const { part, brake, marginMm } = benchJob("hat", 13);
    const missing = startPartner(new URL("no-such-thread.mjs", THREAD), 2)!;
    expect(searchOrders(part, brake, marginMm, undefined, missing)).toEqual(
      searchOrders(part, brake, marginMm),
    );
  });

  it("starts none where there is one core", () => {
    expect(startPartner(THREAD, 1)).toBeUndefined();
  });
});
