/**
 * Writes the shelf into the browser's store as it changes, and never over what another tab has written since: such a job
 * is handed back as a clash. What the browser refuses (store full or shut) is tried again with the next change.
 */

import type { Drawer } from "./drawer.ts";
import {
  type Damage,
  entryText,
  jobIdOfKey,
  jobKey,
  jobOfEntry,
  METALS_KEY,
  OPEN_KEY,
  readShelf,
  sameJob,
  WISHES_KEY,
} from "./keep.ts";
import { brakeIdOfKey, KeptBrakes } from "./keptBrakes.ts";
import { adoptMetals } from "./metals.ts";
import type { Shelf, ShelfBrake, ShelfJob } from "./shelf.ts";

export interface Kept {
  /** A sentence where something is not kept; null where all is. */
  readonly refused: string | null;
  /** Jobs that another tab has written since; they were left as that tab wrote them. */
  readonly clashes: readonly string[];
  /** Brakes of which the same holds. */
  readonly brakeClashes: readonly string[];
}

/** What another tab has done. */
export type News =
  | { readonly kind: "job"; readonly id: string; readonly job: ShelfJob }
  | { readonly kind: "gone"; readonly id: string }
  /** Null where the brake was taken away. */
  | { readonly kind: "brake"; readonly id: string; readonly brake: ShelfBrake | null }
  | { readonly kind: "metals"; readonly metals: NonNullable<Shelf["metals"]> };

const NOTHING_KEPT = "This browser keeps nothing between visits: save the job as a file.";
const FULL = "The browser's store is full or closed: save the job as a file, it is not kept here.";

export class Keeper {
  private drawer: Drawer | null;
  /** Jobs as the store holds them, with their place on the shelf. */
  private readonly kept = new Map<string, { readonly job: ShelfJob; readonly place: number }>();
  /** The text of each as it was last seen here. */
  private readonly seen = new Map<string, string>();
  private readonly brakes = new KeptBrakes();
  private wishes: Shelf["wishes"];
  private metals: Shelf["metals"];
  private metalsText: string | null = null;
  private openId: string | null = null;

  constructor(drawer: Drawer | null) {
    this.drawer = drawer;
  }

  /** Reads the shelf; null when there is none yet or the store can't be read. */
  read(): { readonly shelf: Shelf | null; readonly damage: readonly Damage[] } {
    const { drawer } = this;
    const nothing = { shelf: null, damage: [] };
    if (drawer === null) return nothing;
    try {
      const found = readShelf(drawer);
      for (const [place, job] of (found.shelf?.jobs ?? []).entries()) {
        this.kept.set(job.id, { job, place });
        this.seen.set(job.id, drawer.getItem(jobKey(job.id)) ?? "");
      }
      this.brakes.begin(drawer, found.shelf?.brakes ?? []);
      this.wishes = found.shelf?.wishes;
      this.metals = found.shelf?.metals;
      this.metalsText = drawer.getItem(METALS_KEY);
      this.openId = found.shelf?.openId ?? null;
      return found;
    } catch {
      this.drawer = null;
      return nothing;
    }
  }

  /** Whether the store holds this job as it is now. */
  holds(job: ShelfJob): boolean {
    const was = this.kept.get(job.id);
    return (
      was?.job.file === job.file &&
      was.job.sample === job.sample &&
      was.job.brakeId === job.brakeId &&
      was.job.brakeFrom === job.brakeFrom
    );
  }

  /** Writes what has changed and takes away what is gone. Jobs of other tabs are left alone. */
  keep(shelf: Shelf): Kept {
    const { drawer } = this;
    if (drawer === null) return { refused: NOTHING_KEPT, clashes: [], brakeClashes: [] };
    const clashes: string[] = [];
    let refused: string | null = null;
    const trying = (act: () => void) => {
      try {
        act();
      } catch {
        refused = FULL;
      }
    };
    const here = new Set(shelf.jobs.map((job) => job.id));
    for (const id of [...this.kept.keys()]) if (!here.has(id)) trying(() => this.takeAway(drawer, id));
    for (const [place, job] of shelf.jobs.entries()) {
      if (this.holds(job) && this.kept.get(job.id)?.place === place) continue;
      trying(() => {
        if (this.isChanged(drawer, job.id)) clashes.push(job.id);
        else this.write(drawer, job, place);
      });
    }
    const brakeClashes = this.brakes.keep(drawer, shelf.brakes ?? [], trying);
    trying(() => this.writeRest(drawer, shelf));
    return { refused, clashes, brakeClashes };
  }

  private write(drawer: Drawer, job: ShelfJob, place: number): void {
    const text = entryText(job, place);
    drawer.setItem(jobKey(job.id), text);
    this.seen.set(job.id, text);
    this.kept.set(job.id, { job, place });
  }

  private takeAway(drawer: Drawer, id: string): void {
    // What another tab has written since stays in the store and lies on the shelf again at the next visit.
    if (!this.isChanged(drawer, id)) drawer.removeItem(jobKey(id));
    this.forget(id);
  }

  private writeRest(drawer: Drawer, shelf: Shelf): void {
    if (this.metals !== shelf.metals) {
      const stored = drawer.getItem(METALS_KEY);
      const theirs = stored === this.metalsText ? [] : adoptMetals(stored);
      const ours = shelf.metals ?? [];
      const names = new Set(ours.map(({ name }) => name));
      const text = JSON.stringify([...theirs.filter(({ name }) => !names.has(name)), ...ours]);
      drawer.setItem(METALS_KEY, text);
      this.metals = shelf.metals;
      this.metalsText = text;
    }
    if (this.wishes !== shelf.wishes) {
      drawer.setItem(WISHES_KEY, JSON.stringify(shelf.wishes ?? {}));
      this.wishes = shelf.wishes;
    }
    if (this.openId === shelf.openId) return;
    drawer.setItem(OPEN_KEY, shelf.openId);
    this.openId = shelf.openId;
  }

  /** Whether another tab has changed more of a job than its place since it was last seen here. */
  private isChanged(drawer: Drawer, id: string): boolean {
    const stored = drawer.getItem(jobKey(id));
    const seen = this.seen.get(id);
    if (stored === null || stored === seen) return false;
    const [theirs, ours] = [jobOfEntry(id, stored), seen === undefined ? null : jobOfEntry(id, seen)];
    return theirs === null || ours === null || !sameJob(theirs, ours);
  }

  /** What a change of this key by another tab means; null for what is none of ours. */
  newsOf(key: string | null): News | null {
    const { drawer } = this;
    const id = jobIdOfKey(key);
    try {
      if (drawer === null) return null;
      if (key === METALS_KEY) return { kind: "metals", metals: adoptMetals(drawer.getItem(METALS_KEY)) };
      const brakeId = brakeIdOfKey(key);
      if (brakeId !== null) return { kind: "brake", id: brakeId, brake: this.brakes.stored(drawer, brakeId) };
      const job = id === null ? null : this.stored(id);
      if (job) return { kind: "job", id: job.id, job };
      return id !== null && drawer.getItem(jobKey(id)) === null ? { kind: "gone", id } : null;
    } catch {
      return null;
    }
  }

  /** The job as the store has it now. */
  stored(id: string): ShelfJob | null {
    const text = this.drawer?.getItem(jobKey(id)) ?? null;
    return text === null ? null : jobOfEntry(id, text);
  }

  /** Takes what another tab has written as seen, so that it may be written over. */
  accept(job: ShelfJob, place: number): void {
    const text = this.drawer?.getItem(jobKey(job.id)) ?? null;
    if (text === null) return;
    this.seen.set(job.id, text);
    this.kept.set(job.id, { job, place });
  }

  /** Takes what another tab did to a brake as seen, and gives what stands in the store. */
  acceptBrake(id: string): ShelfBrake | null {
    const brake = this.drawer ? this.brakes.stored(this.drawer, id) : null;
    if (brake && this.drawer) this.brakes.accept(this.drawer, brake);
    else this.brakes.forget(id);
    return brake;
  }

  acceptMetals(metals: Shelf["metals"]): void {
    this.metals = metals;
    this.metalsText = this.drawer?.getItem(METALS_KEY) ?? null;
  }

  /** Forgets a job that is in the store no more, or belongs to another tab now. */
  forget(id: string): void {
    this.kept.delete(id);
    this.seen.delete(id);
  }
}
