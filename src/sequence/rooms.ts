/**
 * What sides of the sheet block for getting in and out, numbered: a beginning that blocks no more than the one before it shares
 * its number. Kept as bare figures, one room after the other, for there may be millions; a room's number is where it begins.
 */
import type { BlockedHeights } from "../contact/blockedHeights.ts";
import { type LoadingChecks, openRoom, type Room } from "../contact/loading.ts";

/** Nothing blocked: the number of that room in every table. */
export const OPEN = 0;
/** In place of a number: no way in or out by the front is left. */
export const NO_WAY = -1;

export class Rooms {
  /** Of each room: how many bounds its two lists have, then these. What leaves no way, or overlaps, is not kept. */
  private figures = new Float64Array(64);
  private end = 2;
  /** The room asked for last, laid out. */
  private readonly laidOut = openRoom();
  private laidOutNumber = OPEN;
  private readonly next = openRoom();

  constructor(private readonly loading: LoadingChecks) {}

  /** A room by its number; to be done with before another is asked for. */
  at(number: number): Room {
    if (number === this.laidOutNumber) return this.laidOut;
    this.laidOutNumber = number;
    const { sheet, clamp } = this.laidOut;
    const sheetFrom = number + 2;
    const clampFrom = sheetFrom + this.figures[number]!;
    this.fill(sheet, sheetFrom, clampFrom);
    this.fill(clamp, clampFrom, clampFrom + this.figures[number + 1]!);
    return this.laidOut;
  }

  /** Room `before`, to put into it what one more element blocks. */
  ofElement(before: number): Room {
    const { laidOut, next } = this;
    this.at(before);
    next.overlaps = false;
    refill(next.sheet, laidOut.sheet);
    refill(next.clamp, laidOut.clamp);
    return next;
  }

  /** Number of what is left once that was put in. */
  joined(before: number): number {
    const { next } = this;
    if (!this.loading.lets(next)) return NO_WAY;
    const { sheet, clamp } = this.at(before);
    return sameHeights(next.sheet, sheet) && sameHeights(next.clamp, clamp) ? before : this.keep(next);
  }

  private keep({ sheet, clamp }: Room): number {
    const number = this.end;
    this.end = number + 2 + sheet.bounds.length + clamp.bounds.length;
    this.makeRoomFor(this.end);
    this.figures[number] = sheet.bounds.length;
    this.figures[number + 1] = clamp.bounds.length;
    this.figures.set(sheet.bounds, number + 2);
    this.figures.set(clamp.bounds, number + 2 + sheet.bounds.length);
    return number;
  }

  private makeRoomFor(end: number): void {
    if (end <= this.figures.length) return;
    const more = new Float64Array(Math.max(end, 2 * this.figures.length));
    more.set(this.figures);
    this.figures = more;
  }

  private fill({ bounds }: BlockedHeights, from: number, to: number): void {
    bounds.length = to - from;
    for (let i = 0; i < bounds.length; i++) bounds[i] = this.figures[from + i]!;
  }
}

function refill({ bounds }: BlockedHeights, { bounds: from }: BlockedHeights): void {
  bounds.length = from.length;
  for (let i = 0; i < from.length; i++) bounds[i] = from[i]!;
}

function sameHeights({ bounds: a }: BlockedHeights, { bounds: b }: BlockedHeights): boolean {
  return a.length === b.length && a.every((bound, i) => bound === b[i]);
}
