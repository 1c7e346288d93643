/**
 * Where you look from, turned by dragging and by the arrow keys.
 */
export interface Turned {
  /** To the left of the front; 90 looks along the bend line. */
  readonly leftDeg: number;
  readonly aboveDeg: number;
}

export const SIDES_SEEN = [
  { name: "Front left", turned: { leftDeg: 32, aboveDeg: 28 } },
  { name: "Front", turned: { leftDeg: 0, aboveDeg: 0 } },
  { name: "Left end", turned: { leftDeg: 90, aboveDeg: 0 } },
  { name: "Above", turned: { leftDeg: 0, aboveDeg: 89 } },
] as const;

const DEG_PER_POINT = 0.5;
const KEY_DEG = 5;
const KEYS: Readonly<Record<string, readonly [left: number, above: number]>> = {
  ArrowLeft: [-KEY_DEG, 0],
  ArrowRight: [KEY_DEG, 0],
  ArrowUp: [0, KEY_DEG],
  ArrowDown: [0, -KEY_DEG],
};

/** @example turnedBy({ leftDeg: 32, aboveDeg: 28 }, 10, 100) // { leftDeg: 42, aboveDeg: 89 } */
export function turnedBy({ leftDeg, aboveDeg }: Turned, left: number, above: number): Turned {
  return {
    leftDeg: ((leftDeg + left + 540) % 360) - 180,
    aboveDeg: Math.min(89, Math.max(-89, aboveDeg + above)),
  };
}

/** The view after a drag over so many points of the screen: what is near follows the hand. */
export function dragged(from: Turned, dx: number, dy: number): Turned {
  return turnedBy(from, dx * DEG_PER_POINT, dy * DEG_PER_POINT);
}

/** The view after a key; undefined for a key that turns nothing. */
export function keyed(from: Turned, key: string): Turned | undefined {
  const by = KEYS[key];
  return by && turnedBy(from, by[0], by[1]);
}
