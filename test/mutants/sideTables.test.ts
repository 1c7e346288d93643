/**
 * What is kept of one side for every set of joints formed, beside a plain pass over its elements one by one: by how many joints a
 * set is decided, where they reach, what they block, how clear they are. Source: the checks of single elements, and the
 * rules in the headers of sideTable.ts, beyond.ts and sector.ts.
 */
import { describe, expect, it } from "vitest";
import { Beyond } from "../../src/contact/beyond.ts";
import { ClearanceChecks } from "../../src/contact/clearance.ts";
import { FACE_INSET_MM } from "../../src/contact/gaps.ts";
import { LoadingChecks, openRoom, type Room } from "../../src/contact/loading.ts";
import { Machine } from "../../src/contact/machine.ts";
import type { Side } from "../../src/contact/seatPieces.ts";
import { leadingDirection, trailingDirection } from "../../src/contact/sector.ts";
import { noContact, SideChecks, WHOLE } from "../../src/contact/sideChecks.ts";
import { type Seat, seatFor } from "../../src/motion/seat.ts";
import { BARRED_SIDE, SideTable } from "../../src/sequence/sideTable.ts";
import { jobOf } from "../cases/answers.ts";
import { roughParts } from "./roughParts.ts";

/** A little more than a step of what the tables keep. */
const STEP_RAD = 2e-4;
const STEP_MM = 0.05;

const bounds = ({ sheet, clamp }: Room) => [[...sheet.bounds], [...clamp.bounds]];

/** One side of a seated bend, element by element. */
class Plain {
  readonly joints: number;
  private readonly checks: SideChecks;
  private readonly loading: LoadingChecks;
  private readonly measure: ClearanceChecks;
  private readonly beyond: Beyond;
  private readonly moving: boolean;

  constructor(
    private readonly seat: Seat,
    private readonly machine: Machine,
    private readonly side: Side,
  ) {
    this.checks = new SideChecks(seat, machine);
    this.loading = new LoadingChecks(this.checks);
    this.measure = new ClearanceChecks(this.checks);
    this.beyond = new Beyond(this.checks, side);
    this.joints = this.checks.pieces.chainOf(side).joints;
    this.moving = side === "moving";
  }

  /** Direction and distances of element k at rest; none where it lies in the run. */
  reach(k: number, formed: number) {
    const { checks, side, moving } = this;
    if (checks.inRun(side, k, formed)) return undefined;
    const { pieces, a } = checks;
    if (moving && k === 0) pieces.firstFlatAtRest(a, FACE_INSET_MM);
    else pieces.element(a, side, k, formed, WHOLE, FACE_INSET_MM, false);
    const directionRad = moving
      ? leadingDirection(a, pieces.turning.maxInward, FACE_INSET_MM)
      : trailingDirection(a, FACE_INSET_MM);
    return { directionRad, nearMm: a.near - FACE_INSET_MM };
  }

  /** What elements 0 to k block together. */
  room(k: number, formed: number, finished: boolean): Room {
    const room = openRoom();
    for (let j = 0; j <= k; j++) this.loading.element(this.side, j, formed, finished && this.moving, room);
    return room;
  }

  /** Whether element k misses the brake, and elements 0 to k leave a way in and out. */
  isFree(k: number, formed: number): boolean {
    const record = noContact();
    this.checks.withBrake(this.side, k, formed, record);
    if (record.phiRad < Number.POSITIVE_INFINITY) return false;
    if (!this.machine.brake.openEnds)
      return [false, true].every((finished) => this.loading.lets(this.room(k, formed, finished)));
    // By the end a part always comes in; it must not stand in the leaf once that is back.
    return !this.moving || !this.room(k, formed, true).overlaps;
  }

  angleTo(k: number, formed: number): number {
    const all = Array.from({ length: k + 1 }, (_, j) => this.reach(j, formed)?.directionRad);
    const known = all.filter((angle) => angle !== undefined);
    return this.moving ? Math.max(0, ...known) : Math.min(Math.PI, ...known);
  }

  nearTo(k: number, formed: number): number {
    return Math.min(
      ...Array.from({ length: k + 1 }, (_, j) => this.reach(j, formed)?.nearMm ?? Number.POSITIVE_INFINITY),
    );
  }

  /** All that may lie beyond flat k: a direction and a distance; none where it is not known to be out of the way. */
  rest(k: number, formed: number) {
    const { beyond, moving } = this;
    beyond.after(k, formed);
    const half = (Math.PI - this.seat.sweepRad) / 2;
    const angle = this.angleTo(k, formed);
    const bound = moving ? Math.max(angle, half) : Math.min(angle, Math.PI - half);
    const inSector = moving ? beyond.direction <= bound : beyond.direction >= bound;
    const near = Math.abs(beyond.direction - bound) < STEP_RAD;
    const passes = this.machine.brake.openEnds || (beyond.letsPass(false) && beyond.letsPass(true));
    const known = inSector && beyond.keepsOff() && passes;
    return { known, unsure: near, directionRad: beyond.direction, nearMm: beyond.near };
  }

  clearance(formed: number): number {
    const found = { mm: Number.POSITIVE_INFINITY, partX: 0, partY: 0, otherX: 0, otherY: 0 };
    for (let k = 0; k <= this.joints; k++) this.measure.withBrake(this.side, k, formed, found);
    return found.mm;
  }
}

function tableOf(seat: Seat, machine: Machine, side: Side): SideTable {
  const checks = new SideChecks(seat, machine);
  return new SideTable(side, checks, new LoadingChecks(checks), new ClearanceChecks(checks));
}

/** Sets of joints in a mixed order, each twice. */
function mixed(joints: number): number[] {
  const sets = Array.from({ length: 1 << joints }, (_, i) => (i * 11 + 5) & ((1 << joints) - 1));
  return [...sets, ...sets.toReversed()];
}

describe.each([...roughParts(61, 16, false), ...roughParts(62, 16, true)])("a rough part, %#", (file) => {
  describe.each(["moving", "clamped"] as const)("its %s side", (side) => {
    it.each(["start", "end"] as const)("with the %s clamped", (clamped) => {
      const { part, brake } = jobOf(file);
      const machine = new Machine(brake, part.thicknessMm);
      part.bends.forEach((_, bend) => {
        const seat = seatFor(part, brake, bend, clamped);
        // A leaf that does not come up far enough makes nothing: no table is asked.
        if (seat.sweepRad < seat.overbendRad) return;
        const plain = new Plain(seat, machine, side);
        const table = tableOf(seat, machine, side);
        if (bend % 2 === 0) table.keepDecided();
        let most = -1;
        for (const formed of mixed(plain.joints)) {
          const told = `bend ${bend}, joints ${formed.toString(2)}`;
          const decided = table.decidedBy(formed);
          let k = 0;
          while (k < plain.joints && plain.isFree(k, formed) && !plain.rest(k, formed).known) k++;
          const free = plain.isFree(k, formed);
          const rest = k < plain.joints && free ? plain.rest(k, formed) : undefined;
          if (rest?.unsure) continue;
          expect(decided, told).toBe(free ? k : BARRED_SIDE);
          if (!free) continue;
          const sign = side === "moving" ? 1 : -1;
          const angle = [plain.angleTo(k, formed), rest?.directionRad ?? plain.angleTo(k, formed)];
          const farthest = sign > 0 ? Math.min(Math.PI, Math.max(...angle)) : Math.max(0, Math.min(...angle));
          expect(sign * (table.reach.angle(k, formed) - farthest), told).toBeGreaterThanOrEqual(0);
          expect(sign * (table.reach.angle(k, formed) - farthest), told).toBeLessThan(STEP_RAD);
          const near = Math.max(
            0,
            Math.min(plain.nearTo(k, formed), rest?.nearMm ?? Number.POSITIVE_INFINITY),
          );
          if (near === Number.POSITIVE_INFINITY) expect(table.reach.near(k, formed), told).toBe(near);
          else {
            expect(near - table.reach.near(k, formed), told).toBeGreaterThanOrEqual(0);
            expect(near - table.reach.near(k, formed), told).toBeLessThan(STEP_MM);
          }
          if (!brake.openEnds) {
            const rooms = [false, true].map((finished) => bounds(plain.room(k, formed, finished)));
            const kept = [false, true].map((finished) => bounds(table.room(k, formed, finished)));
            expect(kept, told).toEqual(rooms);
            expect(table.isOpen(k, formed), told).toBe(rooms.flat(2).length === 0);
          } else expect(table.isOpen(k, formed)).toBe(true);
          const clear = table.clearance(formed);
          most = Math.max(most, clear);
          expect(clear, told).toBeCloseTo(plain.clearance(formed), 4);
        }
        if (most >= 0) expect(table.mostClearance(), `bend ${bend}`).toBeCloseTo(most, 4);
      });
    });
  });
});
