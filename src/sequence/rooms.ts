/**
 * What sides of the sheet block for getting in and out, numbered: beginnings that block the same share a number.
 */
import { isOpen, type LoadingChecks, openRoom, type Room } from "../contact/loading.ts";

/** Nothing blocked: the first in every table of rooms. */
export const OPEN = 0;

export class Rooms {
  private readonly rooms: Room[] = [openRoom()];
  private readonly lets: boolean[] = [true];
  /** What one more element blocks; kept for the next as long as nothing was put into it. */
  private next: Room | undefined;

  constructor(private readonly loading: LoadingChecks) {}

  at(number: number): Room {
    return this.rooms[number]!;
  }

  /** Whether a room by itself leaves a way in and out by the front. */
  letsPass(number: number): boolean {
    return this.lets[number]!;
  }

  /** Room to put into what one more element blocks, empty. */
  ofElement(): Room {
    this.next ??= openRoom();
    return this.next;
  }

  /** Number of what is left after room `before` and what was put into that of the element. */
  joined(before: number): number {
    const { next } = this;
    if (!next || isOpen(next)) return before;
    const shared = this.rooms[before]!;
    next.overlaps ||= shared.overlaps;
    next.sheet.addAll(shared.sheet);
    next.clamp.addAll(shared.clamp);
    this.next = undefined;
    if (sameRoom(next, shared)) return before;
    this.lets.push(this.loading.lets(next));
    return this.rooms.push(next) - 1;
  }
}

function sameRoom(a: Room, b: Room): boolean {
  return (
    a.overlaps === b.overlaps &&
    sameHeights(a.sheet.bounds, b.sheet.bounds) &&
    sameHeights(a.clamp.bounds, b.clamp.bounds)
  );
}

function sameHeights(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((bound, i) => bound === b[i]);
}
