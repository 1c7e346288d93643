/**
 * How the shelf of brakes lies in the browser's store: each under its own key, as jobs do, and never written over what
 * another tab has written since. What can't be read stays where it is.
 */
import { adoptBrake } from "./adopt.ts";
import type { Drawer } from "./drawer.ts";
import { usualBrake } from "./firstJob.ts";
import type { ShelfBrake } from "./shelf.ts";
import { isBag, Sieve } from "./sieve.ts";

const BRAKE = "noseroom.brake.";
const VERSION = 1;

/** The brakes of the store, oldest first: their ids begin with the time. */
export function readBrakes(drawer: Drawer): readonly ShelfBrake[] {
  const ids: string[] = [];
  for (let i = 0; i < drawer.length; i++) {
    const id = brakeIdOfKey(drawer.key(i));
    if (id !== null) ids.push(id);
  }
  return ids.sort().flatMap((id) => brakeOfEntry(id, drawer.getItem(BRAKE + id)) ?? []);
}

/** The id of a brake whose stored text has changed, or null for other keys. */
export function brakeIdOfKey(key: string | null): string | null {
  return key?.startsWith(BRAKE) ? key.slice(BRAKE.length) : null;
}

function entryText({ id: _id, ...entry }: ShelfBrake): string {
  return JSON.stringify({ version: VERSION, ...entry });
}

function brakeOfEntry(id: string, text: string | null): ShelfBrake | null {
  try {
    const entry: unknown = JSON.parse(text ?? "null");
    if (!isBag(entry) || entry.version !== VERSION || !isBag(entry.brake)) return null;
    const units = entry.units === "mm" ? "mm" : "in";
    const { came, from, kept } = entry;
    return {
      id,
      units,
      brake: adoptBrake(new Sieve(), entry.brake, usualBrake(units)),
      kept: kept === true,
      ...(typeof came === "string" ? { came: came.slice(0, 200) } : {}),
      ...(typeof from === "string" ? { from } : {}),
    };
  } catch {
    return null;
  }
}

export class KeptBrakes {
  private kept = new Map<string, ShelfBrake>();
  /** The text of each as it was last seen here. */
  private readonly seen = new Map<string, string>();

  /** Notes what was read, as what the store holds. */
  begin(drawer: Drawer, brakes: readonly ShelfBrake[]): void {
    for (const brake of brakes) {
      this.kept.set(brake.id, brake);
      this.seen.set(brake.id, drawer.getItem(BRAKE + brake.id) ?? "");
    }
  }

  /** Writes what has changed and takes away what is gone; gives the ids that another tab has written since. */
  keep(drawer: Drawer, brakes: readonly ShelfBrake[], trying: (act: () => void) => void): readonly string[] {
    const clashes: string[] = [];
    const here = new Set(brakes.map(({ id }) => id));
    for (const id of [...this.kept.keys()]) {
      if (here.has(id)) continue;
      trying(() => {
        if (!this.isChanged(drawer, id)) drawer.removeItem(BRAKE + id);
        this.forget(id);
      });
    }
    for (const brake of brakes) {
      if (this.kept.get(brake.id) === brake) continue;
      trying(() => {
        if (this.isChanged(drawer, brake.id)) clashes.push(brake.id);
        else {
          const text = entryText(brake);
          drawer.setItem(BRAKE + brake.id, text);
          this.seen.set(brake.id, text);
          this.kept.set(brake.id, brake);
        }
      });
    }
    return clashes;
  }

  private isChanged(drawer: Drawer, id: string): boolean {
    const stored = drawer.getItem(BRAKE + id);
    return stored !== null && stored !== this.seen.get(id);
  }

  /** What the store has now of a brake: null where it is gone. */
  stored(drawer: Drawer, id: string): ShelfBrake | null {
    return brakeOfEntry(id, drawer.getItem(BRAKE + id));
  }

  /** Takes what another tab has written as seen. */
  accept(drawer: Drawer, brake: ShelfBrake): void {
    this.seen.set(brake.id, drawer.getItem(BRAKE + brake.id) ?? "");
    this.kept.set(brake.id, brake);
  }

  forget(id: string): void {
    this.kept.delete(id);
    this.seen.delete(id);
  }
}
