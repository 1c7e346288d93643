/**
 * A way out for a whole part as plain data: keys of the job file with what should stand there, how the job comes out then,
 * and the sentence for it. `null` takes a key out.
 */
import type { Mm } from "../units/quantity.ts";
import type { WholeFile } from "./wholeSchema.ts";

/** Where in the file, and what should stand there. */
export interface KeyChange {
  readonly path: readonly (string | number)[];
  readonly to: unknown;
}

export type WholeWayKind =
  | "order"
  | "lip"
  | "wall"
  | "lipTurn"
  | "corners"
  | "gap"
  | "finger"
  | "fingerGap"
  | "clampHeight"
  | "brakeEnd"
  | "brakeEndAndGap"
  | "byHand";

export interface WholeWay {
  readonly kind: WholeWayKind;
  readonly sentence: string;
  readonly verdict: "clear" | "tight";
  readonly clearance: Mm | null;
  readonly changes: readonly KeyChange[];
}

/** The file with some keys changed; the one handed in is left as it is. */
export function withKeys(file: WholeFile, changes: readonly KeyChange[]): WholeFile {
  return changes.reduce<unknown>((made, { path, to }) => withKey(made, path, to), file) as WholeFile;
}

function withKey(group: unknown, [key, ...rest]: KeyChange["path"], to: unknown): unknown {
  if (key === undefined) return to;
  const copy = Array.isArray(group) ? [...group] : { ...(group as object) };
  const keys = copy as Record<string | number, unknown>;
  if (rest.length === 0 && to === null) delete keys[key];
  else keys[key] = withKey(keys[key], rest, to);
  return copy;
}
