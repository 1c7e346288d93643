/**
 * Undo and redo for everything on the shelf. Each state is kept whole (they share what did not change);
 * keystrokes in one field within a moment of each other count as one change.
 */
import type { Shelf } from "./shelf.ts";

export interface History {
  readonly past: readonly Moment[];
  readonly now: Moment;
  readonly future: readonly Moment[];
}

interface Moment {
  readonly shelf: Shelf;
  /** What was done to get here, for the undo button's label. */
  readonly did: string;
  readonly field: string | null;
  readonly atMs: number;
}

const KEPT = 300;
const ONE_EDIT_MS = 1500;

/** A history that begins with this shelf. */
export function beginHistory(shelf: Shelf): History {
  return { past: [], now: { shelf, did: "", field: null, atMs: 0 }, future: [] };
}

/** Adds a change. `field` names the field that is being typed in, or null for a change that stands alone. */
export function changed(
  history: History,
  shelf: Shelf,
  did: string,
  field: string | null,
  atMs: number,
): History {
  if (shelf === history.now.shelf) return history;
  const moment = { shelf, did, field, atMs };
  const same = field !== null && field === history.now.field && atMs - history.now.atMs < ONE_EDIT_MS;
  if (same) return { past: history.past, now: moment, future: [] };
  return { past: [...history.past, history.now].slice(-KEPT), now: moment, future: [] };
}

/** One step back, or the same history where there is none. */
export function undone(history: History): History {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    now: { ...before, field: null },
    future: [history.now, ...history.future],
  };
}

/** One step forward again. */
export function redone(history: History): History {
  const [after, ...future] = history.future;
  if (after === undefined) return history;
  return { past: [...history.past, history.now], now: { ...after, field: null }, future };
}

/** The same history with every shelf in it changed: for what is not this person's doing, so that no undo undoes it. */
export function rewritten(history: History, change: (shelf: Shelf) => Shelf): History {
  const one = (moment: Moment): Moment => ({ ...moment, shelf: change(moment.shelf) });
  return { past: history.past.map(one), now: one(history.now), future: history.future.map(one) };
}
