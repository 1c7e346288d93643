/**
 * The page's one store: the shelf with its history, what is saved, and what is looked at. Panels read a snapshot
 * and call the verbs; every change of a job goes through `change`, so that undo, saving and the answer follow.
 */

import { arrivalWords, withAdded, withOpened } from "./arrivals.ts";
import { withBrakeSafe } from "./brakeShelf.ts";
import type { Drawer } from "./drawer.ts";
import { beginHistory, changed, type History, redone, rewritten, undone } from "./history.ts";
import { fileText, type JobFile, type KeyPath, type OwnMetalFile, setAt } from "./jobFile.ts";
import { forgetDamage } from "./keep.ts";
import { Keeper } from "./keeper.ts";
import { type Notice, NoticeBoard } from "./noticeBoard.ts";
import { type Opened, openedText } from "./opened.ts";
import { OtherTabs } from "./otherTabs.ts";
import { type Sample, sampleOf } from "./sample.ts";
import { newId, openJob, type Shelf, type ShelfJob, withFile, withoutJob, withSample } from "./shelf.ts";
import type { Wishes } from "./wishes.ts";

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
  private readonly board = new NoticeBoard();
  private firstVisit: boolean;
  private readonly listeners = new Set<() => void>();
  private readonly drawer: Drawer | null;
  private readonly keeper: Keeper;
  private readonly tabs: OtherTabs;
  /** Files that the person has saved on disk: losing them from the browser loses nothing. */
  private readonly onDisk = new WeakSet<JobFile>();
  private refused = false;
  private snapshotNow: Snapshot | null = null;

  constructor(drawer: Drawer | null, first: () => JobFile) {
    this.drawer = drawer;
    this.keeper = new Keeper(drawer);
    this.tabs = new OtherTabs(this.keeper, {
      shelf: () => this.history.now.shelf,
      rewrite: (change) => {
        this.history = rewritten(this.history, change);
        this.tell();
      },
      put: (shelf, did) => this.put(shelf, did),
      open: (id) => this.open(id),
      say: (sentence, more) => this.say(sentence, more),
      keep: () => this.keep(),
    });
    const read = this.keeper.read();
    this.firstVisit = read.shelf === null;
    const id = newId();
    this.history = beginHistory(read.shelf ?? { jobs: [{ id, file: first() }], openId: id });
    for (const damage of read.damage) {
      this.say(damage.sentence, { download: { name: damage.fileName, text: damage.text }, damage });
    }
  }

  snapshot(): Snapshot {
    if (this.snapshotNow === null) {
      const { past, now, future } = this.history;
      this.snapshotNow = {
        shelf: now.shelf,
        file: openJob(now.shelf).file,
        sample: sampleOf(openJob(now.shelf)),
        canUndo: past.length > 0 ? now.did : null,
        canRedo: future[0]?.did ?? null,
        notices: this.board.lines,
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

  /** Tries again what the browser refused to keep, as when the page is put away. */
  keepAgain(): void {
    if (this.refused) this.keep();
  }

  /** Keeps what has changed. */
  private keep(): void {
    const { refused, clashes, brakeClashes } = this.keeper.keep(this.history.now.shelf);
    for (const id of clashes) this.tabs.keepBoth(id);
    for (const id of brakeClashes) this.tabs.keepBothBrakes(id);
    if (clashes.length + brakeClashes.length > 0) {
      this.keep();
      return;
    }
    this.refused = refused !== null;
    if (refused === null) {
      if (this.board.drop("keeping")) this.tell();
    } else if (!this.board.lines.some((n) => n.sentence === refused)) {
      const text = () => fileText(this.snapshot().file);
      this.say(refused, { download: { name: "job.json", text }, about: "keeping" });
    }
  }

  /** Whether closing the page now would lose something: neither kept in the browser nor saved as a file. */
  wouldLose(): boolean {
    const { jobs } = this.history.now.shelf;
    return this.refused && jobs.some((job) => !this.keeper.holds(job) && !this.onDisk.has(job.file));
  }

  /** Notes that these files have been saved on disk. */
  savedAs(files: readonly JobFile[]): void {
    for (const file of files) this.onDisk.add(file);
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

  /** Changes one wish for a brake to be made; its keystrokes make one undo. */
  wish(wishes: Wishes, label: string): void {
    this.put({ ...this.history.now.shelf, wishes }, `change ${label.toLowerCase()}`, `wish:${label}`);
  }

  /** Any other change of the shelf, as one step to undo. */
  reshelve(change: (shelf: Shelf) => Shelf, did: string): void {
    this.put(change(this.history.now.shelf), did);
  }

  undo(): void {
    this.move(undone(this.history));
  }

  redo(): void {
    this.move(redone(this.history));
  }

  /** Lays a new job on the shelf and opens it; its name is made free. `brake` says which brake of the shelf it lies on. */
  add(file: JobFile, did: string, brake: Pick<ShelfJob, "brakeId" | "brakeFrom"> = {}): void {
    const { shelf } = this.history.now;
    this.put(withAdded(shelf, file, brake), did);
  }

  open(id: string): void {
    const { shelf } = this.history.now;
    if (shelf.openId !== id) this.put({ ...shelf, openId: id }, "open another job");
  }

  remove(id: string): void {
    const { shelf } = this.history.now;
    const going = shelf.jobs.find((job) => job.id === id);
    if (going && shelf.jobs.length > 1) this.put(withoutJob(withBrakeSafe(shelf, going), id), "remove a job");
  }

  /** Takes in what a file holds, or says why not; what lies on the shelves stays as it is. True when opened. */
  take(opened: Opened, raw: string, from: string): boolean {
    if (!opened.ok) {
      const download = { name: "not-read.txt", text: raw };
      this.say(`${from}: ${opened.sentence} Your jobs are untouched.`, { download });
      return false;
    }
    const { jobs, brakes, leftOut } = opened;
    this.reshelve((shelf) => withOpened(shelf, jobs, brakes), "open a file");
    if (leftOut.length > 0) {
      const download = { name: "as-it-came.txt", text: raw };
      this.say(`${from} is open, but: ${leftOut.join(" ")}`, { download });
    } else if (jobs.length !== 1 || brakes.length > 0) this.say(`${from}: ${arrivalWords(jobs, brakes)}`);
    return true;
  }

  takeText(text: string, from: string): boolean {
    return this.take(openedText(text), text, from);
  }

  say(sentence: string, more: Omit<Notice, "id" | "sentence"> = {}): void {
    this.board.say(sentence, more);
    this.tell();
  }

  putAway(id: number): void {
    const gone = this.board.putAway(id);
    if (gone?.damage) forgetDamage(this.drawer, gone.damage);
    this.tell();
  }

  welcomed(): void {
    this.firstVisit = false;
    this.keep();
    this.tell();
  }

  /** Another tab has written into the browser's store. */
  otherTab(key: string | null): void {
    this.tabs.news(key);
  }
}
