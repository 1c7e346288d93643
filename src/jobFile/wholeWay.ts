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
  | "finger"
  | "clampHeight"
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
  const made = structuredClone(file);
  for (const { path, to } of changes) {
    let group = made as unknown as Record<string | number, unknown>;
    for (const key of path.slice(0, -1)) group = group[key] as Record<string | number, unknown>;
    const last = path.at(-1)!;
    if (to === null) delete group[last];
    else group[last] = to;
  }
  return made;
}
