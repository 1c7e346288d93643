/**
 * What is kept of one side for every set of joints formed, beside a plain pass over its elements one by one: by how many joints a
 * set is decided, where they reach, what they block, how clear they are. Source: the checks of single elements, and the
 * rules in the headers of sideTable.ts, elementBox.ts, beyond.ts and sector.ts.
 */
import { describe, expect, it } from "vitest";
import { Beyond } from "../../src/contact/beyond.ts";
import { ClearanceChecks } from "../../src/contact/clearance.ts";
import { ElementBox } from "../../src/contact/elementBox.ts";
import type { Features } from "../../src/contact/features.ts";
import { FACE_INSET_MM } from "../../src/contact/gaps.ts";
import { LoadingChecks, openRoom, type Room } from "../../src/contact/loading.ts";
import { Machine } from "../../src/contact/machine.ts";
import type { Side } from "../../src/contact/seatPieces.ts";
import { leadingDirection, trailingDirection } from "../../src/contact/sector.ts";
import { noContact, SideChecks, WHOLE } from "../../src/contact/sideChecks.ts";
import { type Seat, seatFor } from "../../src/motion/seat.ts";
import { pathOver } from "../../src/sequence/sidePath.ts";
import { BARRED_SIDE, SideTable } from "../../src/sequence/sideTable.ts";
import { jobOf } from "../cases/answers.ts";
import { roughParts } from "./roughParts.ts";

/** A little more than a step of what the tables keep. */
const STEP_RAD = 2e-4;
const STEP_MM = 0.05;

/** Of a place or direction worked out in two ways. */
const ROUNDING = 1e-9;

const bounds = ({ sheet, clamp }: Room) => [[...sheet.bounds], [...clamp.bounds]];

interface Figures {
  readonly directionRad: number;
  readonly nearMm: number;
  readonly farMm: number;
}

/** Points on the border of a piece: ends and nearest point of every edge, and along every arc. */
function borderOf(F: Features): (readonly [x: number, y: number])[] {
  const points: (readonly [number, number])[] = [];
  for (let i = 0; i < F.segments; i++) {
    const [x, y, ux, uy, long] = [F.segX[i]!, F.segY[i]!, F.segUx[i]!, F.segUy[i]!, F.segLength[i]!];
    const nearest = Math.min(long, Math.max(0, -x * ux - y * uy));
    for (const along of [0, nearest, long]) points.push([x + along * ux, y + along * uy]);
  }
  const arc = (x: number, y: number, r: number, mx: number, my: number, cosHalf: number) => {
    const [middle, half] = [Math.atan2(my, mx), Math.acos(Math.max(-1, cosHalf))];
    for (let i = -8; i <= 8; i++) {
      const at = middle + (half * i) / 8;
      points.push([x + r * Math.cos(at), y + r * Math.sin(at)]);
    }
  };
  for (let i = 0; i < F.rounds; i++)
    arc(F.roundX[i]!, F.roundY[i]!, F.roundR[i]!, F.roundMx[i]!, F.roundMy[i]!, F.roundCos[i]!);
  for (let i = 0; i < F.hollows; i++)
    arc(F.hollowX[i]!, F.hollowY[i]!, F.hollowR[i]!, F.hollowMx[i]!, F.hollowMy[i]!, F.hollowCos[i]!);
  return points;
}

/** One side of a seated bend, element by element. */
class Plain {
  readonly joints: number;
  private readonly checks: SideChecks;
  private readonly loading: LoadingChecks;
  private readonly measure: ClearanceChecks;
  private readonly beyond: Beyond;
  private readonly box: ElementBox;
  private readonly moving: boolean;
  /** By path: what the box says of an element that it keeps off; none of one that it does not. */
  private readonly boxes = new Map<number, Figures | undefined>();

  constructor(
    private readonly seat: Seat,
    private readonly machine: Machine,
    private readonly side: Side,
  ) {
    this.checks = new SideChecks(seat, machine);
    this.loading = new LoadingChecks(this.checks);
    this.measure = new ClearanceChecks(this.checks);
    this.beyond = new Beyond(this.checks, side);
    this.box = new ElementBox(this.checks, side);
    this.joints = this.checks.pieces.chainOf(side).joints;
    this.moving = side === "moving";
  }

  /** Direction and distances of element k at rest, of its box where that keeps it off; none in the run. */
  reach(k: number, formed: number) {
    const { checks, side, moving } = this;
    if (checks.inRun(side, k, formed)) return undefined;
    const boxed = this.boxed(k, formed);
    if (boxed) return boxed;
    const { pieces, a } = checks;
    if (moving && k === 0) pieces.firstFlatAtRest(a, FACE_INSET_MM);
    else pieces.element(a, side, k, formed, WHOLE, FACE_INSET_MM, false);
    const directionRad = moving
      ? leadingDirection(a, pieces.turning.maxInward, FACE_INSET_MM)
      : trailingDirection(a, FACE_INSET_MM);
    return { directionRad, nearMm: a.near - FACE_INSET_MM, farMm: a.far + FACE_INSET_MM };
  }

  /** What the box says of element k where it keeps it off; each is looked into once. */
  private boxed(k: number, formed: number): Figures | undefined {
    const path = pathOver(k, formed);
    if (this.boxes.has(path)) return this.boxes.get(path);
    const { box, checks } = this;
    let figures: Figures | undefined;
    if (!checks.pieces.leafRising) {
      box.take(k, formed);
      if (box.keepsOff()) {
        figures = { directionRad: box.direction, nearMm: box.near, farMm: box.far };
        this.expectSafe(figures, k, formed);
      }
    }
    this.boxes.set(path, figures);
    return figures;
  }

  /** The element lies within its box, meets nothing, and blocks no height where the box says so. */
  private expectSafe({ directionRad, nearMm, farMm }: Figures, k: number, formed: number): void {
    const { box, checks, loading, moving, side } = this;
    const told = `element ${k}, joints ${formed.toString(2)}`;
    const inward = moving ? checks.pieces.turning.maxInward : 0;
    checks.pieces.element(checks.a, side, k, formed, WHOLE, 0, true);
    let out = Number.NEGATIVE_INFINITY;
    for (const [x, y] of borderOf(checks.a)) {
      const off = Math.hypot(x, y);
      out = Math.max(out, nearMm - off, off - farMm);
      out = Math.max(out, box.minX - x, x - box.maxX, box.minY - y, y - box.maxY);
      for (const slid of [x, x - inward]) {
        const at = Math.atan2(y, slid);
        const turned = at < 0 ? at + 2 * Math.PI : at;
        if (!moving) out = Math.max(out, directionRad - turned);
        else out = Math.max(out, (slid < 0 ? turned : at) - directionRad);
      }
    }
    expect(out, told).toBeLessThan(ROUNDING);
    const record = noContact();
    checks.withBrake(side, k, formed, record);
    expect(record.phiRad, told).toBe(Number.POSITIVE_INFINITY);
    for (const finished of [false, true]) {
      const room = openRoom();
      loading.element(side, k, formed, finished && moving, room);
      expect(room.overlaps, told).toBe(false);
      if (box.letsPass(finished)) expect(bounds(room), told).toEqual([[], []]);
    }
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

/** A figure is kept at most a step to the safe side of what it was, `side` 1 above it, −1 below. */
function expectJustBeside(kept: number, figure: number, side: number, step: number, told: string): void {
  if (figure === Number.POSITIVE_INFINITY) {
    expect(kept, told).toBe(figure);
    return;
  }
  expect(side * (kept - figure), told).toBeGreaterThanOrEqual(0);
  expect(side * (kept - figure), told).toBeLessThan(step);
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
          const path = pathOver(plain.joints, formed);
          const decided = table.decidedBy(path);
          let k = 0;
          while (k < plain.joints && plain.isFree(k, formed) && !plain.rest(k, formed).known) k++;
          const free = plain.isFree(k, formed);
          const rest = k < plain.joints && free ? plain.rest(k, formed) : undefined;
          if (rest?.unsure) continue;
          expect(decided, told).toBe(free ? pathOver(k, formed) : BARRED_SIDE);
          if (!free) continue;
          const sign = side === "moving" ? 1 : -1;
          const angle = [plain.angleTo(k, formed), rest?.directionRad ?? plain.angleTo(k, formed)];
          const farthest = sign > 0 ? Math.min(Math.PI, Math.max(...angle)) : Math.max(0, Math.min(...angle));
          expectJustBeside(table.reach.angle(decided), farthest, sign, STEP_RAD, told);
          const near = Math.min(plain.nearTo(k, formed), rest?.nearMm ?? Number.POSITIVE_INFINITY);
          expectJustBeside(table.reach.near(decided), Math.max(0, near), -1, STEP_MM, told);
          table.readLast(decided);
          const { lastNear, lastFar, lastAngle } = table.reach;
          const last = plain.reach(k, formed);
          if (last) {
            const own = Math.max(0, Math.min(Math.PI, last.directionRad));
            expectJustBeside(lastNear, Math.max(0, last.nearMm), -1, STEP_MM, told);
            expectJustBeside(lastFar, last.farMm, 1, STEP_MM, told);
            expectJustBeside(lastAngle, own, sign, STEP_RAD, told);
          } else expect([lastNear, lastFar, lastAngle], told).toEqual([0, Number.POSITIVE_INFINITY, -1]);
          if (!brake.openEnds) {
            const rooms = [false, true].map((finished) => bounds(plain.room(k, formed, finished)));
            const kept = [false, true].map((finished) => bounds(table.room(decided, finished)));
            expect(kept, told).toEqual(rooms);
            expect(table.isOpen(decided), told).toBe(rooms.flat(2).length === 0);
          } else expect(table.isOpen(decided)).toBe(true);
          const clear = table.clearance(path);
          most = Math.max(most, clear);
          expect(clear, told).toBeCloseTo(plain.clearance(formed), 4);
        }
        if (most >= 0) expect(table.mostClearance(), `bend ${bend}`).toBeCloseTo(most, 4);
      });
    });
  });
});
