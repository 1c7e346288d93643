/**
 * The page's side of the worker. Only the newest question of each asker counts: one that is still being worked on
 * when a newer one comes is given a moment, then stopped with its worker, so that typing never waits for a search.
 * A worker that has died or gone silent is told of and replaced, and its question asked once more.
 */
import type { Question, Reply } from "./messages.ts";
import { ownScript } from "./ownScript.ts";

type Unnumbered<T> = T extends Question ? Omit<T, "id"> : never;
export type Asked = Unnumbered<Question>;

const PATIENCE_MS = 120;
/** A search tells how far it is every quarter of a second: silent for so long, its worker is dead. */
const SEARCH_SILENT_MS = 15_000;
/** The others work without a word. */
const WORK_SILENT_MS = 120_000;
/** A clock that rings this late has slept with the computer; the worker has too. */
const SLEPT_MS = 3000;

const AGAIN = "The work had stopped by itself and was begun again.";
const GIVEN_UP =
  "The answer could not be worked out: it stopped twice. Your job is safe. Change a figure to have it tried again.";

interface Waiting {
  readonly id: number;
  readonly asked: Asked;
  readonly onReply: (reply: Reply) => void;
  readonly onDropped: () => void;
  readonly sinceMs: number;
  /** Whether a worker has stopped over it already. */
  readonly again?: boolean;
}

/** The element that this script stands in, known only while it is first run; the worker, which runs it too, has none. */
const element = typeof document === "undefined" ? null : document.currentScript;

/** Starts a worker on this same script: its file, or the text of the one that has all in it. */
function startWorker(): Worker {
  if (element?.hasAttribute("src")) return new Worker(ownScript("page.js"));
  const address = URL.createObjectURL(new Blob([element?.textContent ?? ""], { type: "text/javascript" }));
  const worker = new Worker(ownScript(address));
  URL.revokeObjectURL(address);
  return worker;
}

export class Asker {
  /** `patienceMs`: how long work that is out of date may go on before its worker is stopped. */
  constructor(private readonly patienceMs = PATIENCE_MS) {}

  private worker: Worker | null = null;
  private busy: Waiting | null = null;
  private next: Waiting | null = null;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private silence: ReturnType<typeof setTimeout> | undefined;
  private count = 0;

  /** Asks; `onReply` is called for progress and once for the outcome, or never when a newer question came. */
  ask(asked: Asked, onReply: (reply: Reply) => void, onDropped: () => void = () => {}): void {
    this.next?.onDropped();
    this.next = { id: ++this.count, asked, onReply, onDropped, sinceMs: performance.now() };
    if (this.busy === null) this.send();
    else if (this.timer === undefined) {
      const left = this.patienceMs - (performance.now() - this.busy.sinceMs);
      this.timer = setTimeout(() => this.stopOld(), Math.max(0, left));
    }
  }

  /** Asks and waits for the outcome; null when a newer question came or `limitMs` ran out. */
  askOnce(asked: Asked, limitMs: number): Promise<Reply | null> {
    return new Promise((resolve) => {
      const limit = setTimeout(() => {
        this.stop();
        resolve(null);
      }, limitMs);
      const finish = (reply: Reply | null) => {
        if (reply?.kind === "progress" || reply?.kind === "restarted") return;
        clearTimeout(limit);
        resolve(reply);
      };
      this.ask(asked, finish, () => finish(null));
    });
  }

  /** Ends the worker and whatever it is at. */
  stop(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    this.endWorker();
    const dropped = [this.busy, this.next];
    this.busy = null;
    this.next = null;
    for (const waiting of dropped) waiting?.onDropped();
  }

  private endWorker(): void {
    clearTimeout(this.silence);
    this.worker?.terminate();
    this.worker = null;
  }

  private stopOld(): void {
    this.timer = undefined;
    if (this.busy === null || this.next === null) return;
    this.endWorker();
    const dropped = this.busy;
    this.busy = null;
    this.send();
    dropped.onDropped();
  }

  private send(): void {
    const waiting = this.next;
    if (waiting === null) return;
    this.next = null;
    this.busy = { ...waiting, sinceMs: performance.now() };
    try {
      this.worker ??= this.listenTo(startWorker());
      this.worker.postMessage({ ...waiting.asked, id: waiting.id });
    } catch {
      this.died();
      return;
    }
    this.listenForLife();
  }

  /** Counts the worker dead unless it says something within its time. */
  private listenForLife(): void {
    clearTimeout(this.silence);
    const limitMs = this.busy?.asked.kind === "check" ? SEARCH_SILENT_MS : WORK_SILENT_MS;
    const dueMs = performance.now() + limitMs;
    this.silence = setTimeout(() => {
      if (performance.now() - dueMs > SLEPT_MS) this.listenForLife();
      else this.died();
    }, limitMs);
  }

  /** The worker is dead: another takes up the newest question, a second time only when it is not the one that kills. */
  private died(): void {
    this.endWorker();
    const { busy } = this;
    this.busy = null;
    clearTimeout(this.timer);
    this.timer = undefined;
    if (busy === null) return;
    if (this.next) busy.onDropped();
    else if (busy.again) busy.onReply({ id: busy.id, kind: "failed", sentence: GIVEN_UP });
    else {
      this.next = { ...busy, again: true };
      busy.onReply({ id: busy.id, kind: "restarted", sentence: AGAIN });
    }
    this.send();
  }

  private finish(reply: Reply): void {
    const { busy } = this;
    if (busy === null || busy.id !== reply.id) return;
    this.listenForLife();
    if (reply.kind === "progress") {
      busy.onReply(reply);
      return;
    }
    clearTimeout(this.silence);
    this.busy = null;
    clearTimeout(this.timer);
    this.timer = undefined;
    // A newer question waits: this outcome is out of date, except that a quick typist wants to see something.
    busy.onReply(reply);
    this.send();
  }

  private listenTo(worker: Worker): Worker {
    worker.onmessage = (event: MessageEvent<Reply>) => {
      if (this.worker === worker) this.finish(event.data);
    };
    worker.onerror = (event) => {
      event.preventDefault();
      if (this.worker === worker) this.died();
    };
    worker.onmessageerror = () => {
      if (this.worker === worker) this.died();
    };
    return worker;
  }
}
