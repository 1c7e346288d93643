/**
 * The swept check for the benchmark: our kernel beside general libraries and plain sampling, and what the kernel does in
 * it, counted: pairs of features there are, pairs left after culling, and the time for each.
 */
import { execFileSync } from "node:child_process";
import { Machine } from "../../src/contact/machine.ts";
import { PairCurve } from "../../src/contact/pairCurve.ts";
import { noContact, SideChecks } from "../../src/contact/sideChecks.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { formedJoints } from "../../src/part/chain.ts";
import { flattenSampler, jstsSampler, paperSampler, plainSampler } from "./sampled.ts";
import { type SweepCase, sweepCase } from "./sweepJob.ts";
import { inTurn, type Row, ratio, row } from "./timing.ts";

/** Contact of the whole moving side with clamp, bed, frame and leaf over the sweep, the seat set up once. */
function ours(at: SweepCase): { readonly checks: SideChecks; readonly call: () => number } {
  const seat = seatFor(at.part, at.brake, at.bend, "start");
  const checks = new SideChecks(seat, new Machine(at.brake, at.part.thicknessMm));
  const formed = formedJoints(seat.movingChain, at.bendsDone);
  const record = noContact();
  const call = () => {
    record.phiRad = Number.POSITIVE_INFINITY;
    for (let k = 0; k <= seat.movingChain.joints; k++) checks.withBrake("moving", k, formed, record);
    return record.phiRad;
  };
  return { checks, call };
}

/** How many pairs are looked into over one sweep: each asks once for a bound on its curve's bend. */
function pairsSolved({ call }: ReturnType<typeof ours>): number {
  const { mostBend } = PairCurve.prototype;
  let solved = 0;
  PairCurve.prototype.mostBend = function (swing) {
    solved++;
    return mostBend.call(this, swing);
  };
  call();
  PairCurve.prototype.mostBend = mostBend;
  return solved;
}

const SWEEPS = [
  ["goes clear", 20],
  ["meets the bar", 30],
] as const;

/** The counts of all sweeps, printed as JSON: in a process of its own, since counting slows down all that comes after it. */
export function pairsAlone(): void {
  process.stdout.write(JSON.stringify(SWEEPS.map(([, bar]) => pairsSolved(ours(sweepCase(bar))))));
}

export function sweepRows(): Row[] {
  const rows: Row[] = [];
  const counts = execFileSync(process.execPath, [process.argv[1]!, "--pairs"]).toString();
  const pairsOf = JSON.parse(counts) as number[];
  for (const [i, [name, bar]] of SWEEPS.entries()) {
    const at = sweepCase(bar);
    const mine = ours(at);
    const rivals = [
      ["@flatten-js/core", flattenSampler(at)],
      ["jsts", jstsSampler(at)],
      ["paper's paths", paperSampler(at)],
      ["plain sampling", plainSampler(at)],
    ] as const;
    const degrees = (phi: number) =>
      phi === Number.POSITIVE_INFINITY ? "no contact" : `${((phi * 180) / Math.PI).toFixed(2)}°`;
    const [own, ...others] = inTurn(7, [
      { calls: 400, call: mine.call },
      ...rivals.map(([, call]) => ({ calls: 1, call })),
    ]);
    const pairs = pairsOf[i]!;
    const each = Math.round((Math.min(...own!) * 1000) / Math.max(1, pairs));
    rows.push(
      row(
        `sweep of 48 edges, ${name}: noseroom`,
        own!,
        `${degrees(mine.call())}, solved; ${pairs} pairs left after culling, ${each} ns for each with all else`,
      ),
    );
    rivals.forEach(([library, call], other) => {
      rows.push(
        row(
          `  the same on ${library}, every 0.5°`,
          others[other]!,
          `${degrees(call())}, ${ratio(others[other]!, own!)}`,
        ),
      );
    });
  }
  return rows;
}
