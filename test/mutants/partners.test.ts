/**
 * A search that two share: what either looks at, what they tell each other over the board, and that both together find what
 * one finds alone. Source: the search by one; what the board's own words say.
 */
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { Board } from "../../src/sequence/board.ts";
import { layerOf } from "../../src/sequence/layer.ts";
import { Looks } from "../../src/sequence/looks.ts";
import { partnersSeats, takeShare } from "../../src/sequence/partner.ts";
import { type Reach, reachFrom } from "../../src/sequence/reach.ts";
import { searchOrders } from "../../src/sequence/search.ts";
import type { SeatTable } from "../../src/sequence/seatTable.ts";
import { seatTables } from "../../src/sequence/seatTables.ts";
import { benchJob } from "../bench/benchJobs.ts";
import { jobOf } from "../cases/answers.ts";
import { TRUTHS } from "./truths.ts";

const seatsOf = ({ part, brake }: Job) => seatTables(part, brake, new Machine(brake, part.thicknessMm));

/** Does some work with a method replaced. */
function replacing<Of extends object, Name extends keyof Of, Done>(
  of: Of,
  name: Name,
  replacement: Of[Name],
  work: () => Done,
): Done {
  const own = of[name];
  of[name] = replacement;
  try {
    return work();
  } finally {
    of[name] = own;
  }
}

/** In place of waiting for the other thread: what happens meanwhile. */
function waiting<Done>(meanwhile: () => void, work: () => Done): Done {
  const wait = () => {
    meanwhile();
    return "ok";
  };
  return replacing(Atomics, "wait", wait as typeof Atomics.wait, work);
}

describe("the board", () => {
  it("holds four numbers, two masks of four bytes and a mark for each set", () => {
    const board = new Board(Board.memoryFor(5));
    expect(board.memory.byteLength).toBe(16 + 32 * 9);
    expect([board.withStart.length, board.withEnd.length, board.reached.length]).toEqual([32, 32, 32]);
    board.withStart.fill(-1);
    board.reached.fill(7);
    expect(board.withEnd.every((mask) => mask === 0)).toBe(true);
    expect(board.hasPartner).toBe(false);
  });

  it("shows either what the other said, over one memory", () => {
    const first = new Board(Board.memoryFor(3));
    const partner = new Board(first.memory);
    partner.partnerIsThere(true);
    expect(first.hasPartner).toBe(true);
    first.reached[5] = 1;
    expect(partner.reached[5]).toBe(1);
    first.give(0);
    expect(partner.layerAfter(-1)).toBe(0);
    partner.done(0);
    expect(first.partnerHasDone(0)).toBe(true);
    first.give(4);
    expect(partner.layerAfter(0)).toBe(4);
    first.end();
    expect(partner.layerAfter(4)).toBeUndefined();
    partner.partnerIsThere(false);
    expect(first.hasPartner).toBe(false);
    expect(first.partnerHasDone(4)).toBe(false);
  });

  it("does not wait for a partner that stands still, and waits on while it gets on", () => {
    const board = new Board(Board.memoryFor(3), 5);
    board.partnerIsThere(true);
    board.give(2);
    expect(board.partnerHasDone(2)).toBe(false);
    let waits = 0;
    const getsOnThrice = () => {
      waits++;
      if (waits < 4) board.beat();
    };
    expect(waiting(getsOnThrice, () => board.partnerHasDone(2))).toBe(false);
    expect(waits).toBe(4);
    waits = 0;
    const isDone = () => {
      waits++;
      if (waits === 3) board.done(2);
      board.beat();
    };
    expect(waiting(isDone, () => board.partnerHasDone(2))).toBe(true);
    expect(waits).toBe(3);
  });

  it("waits for a layer until one is given or the search is over", () => {
    const board = new Board(Board.memoryFor(3));
    let waits = 0;
    const given = () => {
      waits++;
      if (waits === 3) board.give(1);
    };
    expect(waiting(given, () => board.layerAfter(-1))).toBe(1);
    expect(waits).toBe(3);
  });
});

describe("a share", () => {
  const table = (moving: number, clamped: number, never = false) =>
    ({ never, moving: { joints: moving }, clamped: { joints: clamped } }) as SeatTable;

  it("is half of the work, and holds all seats of a table or none", () => {
    const shared = table(3, 0);
    const seats = [
      shared,
      table(0, 3),
      table(2, 1),
      table(1, 2),
      table(1, 2),
      table(2, 1),
      table(0, 3),
      shared,
    ];
    const share = partnersSeats(seats);
    expect(share.has(0)).toBe(share.has(7));
    expect(share.size).toBeGreaterThan(2);
    expect(share.size).toBeLessThan(6);
  });

  it("goes by the beginnings there may be, and by the looks where there are none", () => {
    const long = table(10, 0);
    const seats = [long, ...Array.from({ length: 21 }, () => table(0, 0, true))];
    expect(partnersSeats(seats).has(0)).toBe(false);
    // 2 · 2^10 beginnings and 2 are as much as eight seats of 2^10 looks.
    expect(partnersSeats(seats).size).toBe(Math.floor((21 + 9) / 2));
    const short = [table(0, 0, true), table(0, 0, true)];
    expect([...partnersSeats(short)]).toEqual([1]);
  });
});

/** A search with a partner that is there at once and does its layers when it is waited for. */
function together(
  job: Job,
  does: (made: number, board: Board, share: ReadonlySet<number>) => boolean,
): Reach {
  const seats = seatsOf(job);
  const share = partnersSeats(seats);
  const board = new Board(Board.memoryFor(job.part.bends.length));
  return replacing(
    Board.prototype,
    "partnerHasDone",
    (made) => does(made, board, share),
    () =>
      replacing(
        Board,
        "memoryFor",
        () => board.memory,
        () => {
          board.partnerIsThere(true);
          return reachFrom(job.part, seats, undefined, (memory) => expect(memory).toBe(board.memory));
        },
      ),
  );
}

describe("a search by two", () => {
  const jobs = [...TRUTHS.searches.slice(0, 12).map(({ file }) => jobOf(file)), benchJob("hat", 6)];

  it("finds what one finds", () => {
    for (const job of jobs) {
      const alone = reachFrom(job.part, seatsOf(job));
      const looks = new Looks(seatsOf(job));
      const given: number[] = [];
      const both = together(job, (made, board, share) => {
        given.push(made);
        const layer = layerOf(made, job.part.bends.length, board.reached);
        for (const seat of share) looks.look(seat, layer, seat & 1 ? board.withEnd : board.withStart);
        return true;
      });
      expect(both.viableOrders).toBe(alone.viableOrders);
      expect(both.statesChecked).toBe(alone.statesChecked);
      expect([...both.reached]).toEqual([...alone.reached]);
      expect([...both.withStart]).toEqual([...alone.withStart]);
      expect([...both.withEnd]).toEqual([...alone.withEnd]);
      expect(given).toEqual(job.part.bends.map((_, made) => made));
    }
  });

  it("leaves the partner's seats to the partner", () => {
    const job = benchJob("wide", 5);
    const both = together(job, () => true);
    const share = partnersSeats(seatsOf(job));
    const ofShare = (endHeld: number) =>
      job.part.bends.reduce(
        (mask, _, bend) => (share.has(2 * bend + endHeld) ? mask | (1 << bend) : mask),
        0,
      );
    expect(both.withStart[0]).toBe(31 & ~ofShare(0));
    expect(both.withEnd[0]).toBe(31 & ~ofShare(1));
  });

  it("goes on alone once the partner has gone, and does its layer over", () => {
    for (const job of jobs) {
      const alone = reachFrom(job.part, seatsOf(job));
      let waited = 0;
      const both = together(job, (_, board) => {
        waited++;
        // What it had found by then may be wrong or half done.
        board.withStart.fill(-1);
        return false;
      });
      expect(waited).toBe(1);
      expect([...both.withStart]).toEqual([...alone.withStart]);
      expect(both.viableOrders).toBe(alone.viableOrders);
    }
  });

  it("does not wait for a partner that has not come", () => {
    const job = jobs[0]!;
    let started = 0;
    const both = reachFrom(job.part, seatsOf(job), undefined, () => started++);
    expect(started).toBe(1);
    expect([...both.withEnd]).toEqual([...reachFrom(job.part, seatsOf(job)).withEnd]);
  });

  it("tells the partner when it is over, however it ends", () => {
    const boards: Board[] = [];
    const start = (memory: SharedArrayBuffer) => void boards.push(new Board(memory));
    const job = jobs[0]!;
    reachFrom(job.part, seatsOf(job), undefined, start);
    const stop = { progress: () => undefined, stopped: () => true };
    expect(() => reachFrom(job.part, seatsOf(job), stop, start)).toThrow();
    expect(boards.map((board) => board.layerAfter(-1))).toEqual([undefined, undefined]);
  });
});

describe("the partner", () => {
  it("looks at its seats layer by layer, and says so", () => {
    const job = benchJob("hat", 5);
    const alone = reachFrom(job.part, seatsOf(job));
    const board = new Board(Board.memoryFor(5));
    board.reached.set(alone.reached);
    const said: string[] = [];
    let [next, beats] = [0, 0];
    const layerAfter = (made: number) => {
      expect(made).toBe(next - 1);
      if (next === 0) said.push(`there ${board.hasPartner}`);
      return next < 5 ? next++ : undefined;
    };
    replacing(Board.prototype, "layerAfter", layerAfter, () =>
      replacing(
        Board.prototype,
        "done",
        (made) => void said.push(`done ${made}`),
        () =>
          replacing(
            Board.prototype,
            "beat",
            () => void beats++,
            () => takeShare({ part: job.part, brake: job.brake, memory: board.memory }),
          ),
      ),
    );
    expect(said).toEqual(["there true", ...[0, 1, 2, 3, 4].map((made) => `done ${made}`)]);
    expect(board.hasPartner).toBe(false);
    const share = partnersSeats(seatsOf(job));
    expect(beats).toBe(5 * share.size);
    for (let bend = 0; bend < 5; bend++) {
      const has = (masks: ArrayLike<number>) => Array.from(masks, (mask) => (mask >>> bend) & 1);
      const none = has([...alone.withStart].fill(0));
      expect(has(board.withStart)).toEqual(share.has(2 * bend) ? has(alone.withStart) : none);
      expect(has(board.withEnd)).toEqual(share.has(2 * bend + 1) ? has(alone.withEnd) : none);
    }
  });

  it("says that it goes when it fails", () => {
    const board = new Board(Board.memoryFor(5));
    const fails = () => {
      throw new Error("no memory left");
    };
    const { part, brake } = benchJob("open", 5);
    const share = { part, brake, memory: board.memory };
    replacing(Board.prototype, "layerAfter", fails, () =>
      expect(() => takeShare(share)).toThrow("no memory left"),
    );
    expect(board.hasPartner).toBe(false);
  });

  it("is started for a long search alone", () => {
    const sizes: number[] = [];
    for (const n of [11, 12, 13]) {
      const { part, brake, marginMm } = benchJob("open", n);
      searchOrders(part, brake, marginMm, undefined, (share) => {
        expect([share.part, share.brake]).toEqual([part, brake]);
        sizes.push(n, share.memory.byteLength);
      });
    }
    expect(sizes).toEqual([13, 16 + 9 * 2 ** 13]);
  });
});
