/**
 * The page's one store: the shelf with its history, what is saved, and what is looked at. Panels read a snapshot
 * and call the verbs; every change of a job goes through `change`, so that undo, saving and the answer follow.
 */

import { type Adopted, adoptText } from "./adopt.ts";
import { beginHistory, changed, type History, redone, undone } from "./history.ts";
import { fileText, type JobFile, type KeyPath, type OwnMetalFile, setAt } from "./jobFile.ts";
import { type Damage, type Drawer, forgetDamage, jobIdOfKey, keepShelf, readOne, readShelf } from "./keep.ts";
import type { Sample } from "./sample.ts";
import { freeName, newId, openJob, type Shelf, withFile, withJob, withoutJob, withSample } from "./shelf.ts";

/** A line for the person that stays until put away. */
export interface Notice {
  readonly id: number;
  readonly sentence: string;
  /** Text offered for download beside the sentence. */
  readonly download?: { readonly name: string; readonly text: string };
  readonly damage?: Damage;
}

export interface Snapshot {
  readonly shelf: Shelf;
  readonly file: JobFile;
  /** How the open job's part was read off a sample; null where it is no copy. */
  readonly sample: Sample | null;
  readonly canUndo: string | null;
  readonly canRedo: string | null;
  readonly notices: readonly Notice[];
  readonly firstVisit: boolean;
}

export class Store {
  private history: History;
  private saved: Shelf | null;
  private notices: Notice[] = [];
  private noticeCount = 0;
  private firstVisit: boolean;
  private readonly listeners = new Set<() => void>();
  private readonly drawer: Drawer | null;
  private snapshotNow: Snapshot | null = null;

  constructor(drawer: Drawer | null, first: () => JobFile) {
    this.drawer = drawer;
    const read = drawer ? readShelf(drawer) : { shelf: null, damage: [] };
    this.saved = read.shelf;
    this.firstVisit = read.shelf === null;
    const id = newId();
    this.history = beginHistory(read.shelf ?? { jobs: [{ id, file: first() }], openId: id });
    for (const damage of read.damage) {
      this.say(damage.sentence, { name: damage.fileName, text: damage.text }, damage);
    }
  }

  snapshot(): Snapshot {
    if (this.snapshotNow === null) {
      const { past, now, future } = this.history;
      this.snapshotNow = {
        shelf: now.shelf,
        file: openJob(now.shelf).file,
        sample: openJob(now.shelf).sample ?? null,
        canUndo: past.length > 0 ? now.did : null,
        canRedo: future[0]?.did ?? null,
        notices: this.notices,
        firstVisit: this.firstVisit,
      };
    }
    return this.snapshotNow;
  }

  subscribe(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  private tell(): void {
    this.snapshotNow = null;
    for (const listener of this.listeners) listener();
  }

  private move(history: History): void {
    if (history === this.history) return;
    this.history = history;
    this.keep();
    this.tell();
  }

  private keep(): void {
    const shelf = this.history.now.shelf;
    const refused = keepShelf(this.drawer, this.saved, shelf);
    this.saved = shelf;
    if (refused !== null && !this.notices.some((n) => n.sentence === refused)) {
      this.say(refused, { name: "job.json", text: fileText(openJob(shelf).file) });
    }
  }

  private put(shelf: Shelf, did: string, field: string | null = null): void {
    this.move(changed(this.history, shelf, did, field, performance.now()));
  }

  /** Sets one key of the open job; `field` true joins the keystrokes of one field into one undo. */
  set(path: KeyPath, value: unknown, did: string, typing = false): void {
    const { shelf } = this.history.now;
    const field = typing ? `${shelf.openId}:${path.join(".")}` : null;
    this.put(withFile(shelf, setAt(openJob(shelf).file, path, value)), did, field);
  }

  /** Replaces the open job's file. */
  replace(change: (file: JobFile) => JobFile, did: string): void {
    const { shelf } = this.history.now;
    this.put(withFile(shelf, change(openJob(shelf).file)), did);
  }

  /** Like `replace`, for a field that is being typed in: its keystrokes make one undo. */
  type(change: (file: JobFile) => JobFile, did: string, field: string): void {
    const { shelf } = this.history.now;
    this.put(withFile(shelf, change(openJob(shelf).file)), did, `${shelf.openId}:${field}`);
  }

  /** Changes file and sample of the open job in one; `field` joins the keystrokes of one field into one undo. */
  copy(file: JobFile, sample: Sample | undefined, did: string, field: string | null = null): void {
    const { shelf } = this.history.now;
    this.put(withSample(shelf, file, sample), did, field === null ? null : `${shelf.openId}:${field}`);
  }

  /** Replaces the list of metals of the person's own. */
  keepMetals(metals: readonly OwnMetalFile[], did: string): void {
    this.put({ ...this.history.now.shelf, metals }, did);
  }

  undo(): void {
    this.move(undone(this.history));
  }

  redo(): void {
    this.move(redone(this.history));
  }

  /** Lays a new job on the shelf and opens it; its name is made free. */
  add(file: JobFile, did: string): void {
    const { shelf } = this.history.now;
    const name = freeName(
      shelf.jobs.map((job) => job.file.part.name),
      file.part.name,
    );
    this.put(withJob(shelf, setAt(file, ["part", "name"], name)), did);
  }

  open(id: string): void {
    const { shelf } = this.history.now;
    if (shelf.openId !== id) this.put({ ...shelf, openId: id }, "open another job");
  }

  remove(id: string): void {
    this.put(withoutJob(this.history.now.shelf, id), "remove a job");
  }

  /** Takes in a file's text as a new job, or says why not; the open job stays as it is. True when opened. */
  take(adopted: Adopted, raw: string, from: string): boolean {
    if (!adopted.ok) {
      this.say(`${from}: ${adopted.sentence} Your jobs are untouched.`, { name: "not-read.txt", text: raw });
      return false;
    }
    this.add(adopted.file, "open a file");
    if (adopted.leftOut.length > 0) {
      this.say(`${from} is open, but: ${adopted.leftOut.join(" ")}`, { name: "as-it-came.txt", text: raw });
    }
    return true;
  }

  takeText(text: string, from: string): boolean {
    return this.take(adoptText(text), text, from);
  }

  say(sentence: string, download?: Notice["download"], damage?: Damage): void {
    const notice: Notice = {
      id: ++this.noticeCount,
      sentence,
      ...(download ? { download } : {}),
      ...(damage ? { damage } : {}),
    };
    this.notices = [...this.notices, notice].slice(-6);
    this.tell();
  }

  putAway(id: number): void {
    const gone = this.notices.find((notice) => notice.id === id);
    if (gone?.damage) forgetDamage(this.drawer, gone.damage);
    this.notices = this.notices.filter((notice) => notice.id !== id);
    this.tell();
  }

  welcomed(): void {
    this.firstVisit = false;
    this.keep();
    this.tell();
  }

  /** Another tab has written a job: take it over unless it is the one open here. */
  otherTab(key: string | null): void {
    const id = jobIdOfKey(key);
    if (id === null || this.drawer === null || id === this.history.now.shelf.openId) return;
    const job = readOne(this.drawer, id);
    const { now } = this.history;
    const others = now.shelf.jobs.filter((j) => j.id !== id);
    const shelf = { ...now.shelf, jobs: job ? [...others, job] : others };
    if (shelf.jobs.length === 0) return;
    this.history = { ...this.history, now: { ...now, shelf } };
    this.saved = shelf;
    this.tell();
  }
}
