/**
 * The page's side of the worker. Only the newest question of each asker counts: one that is still being worked on
 * when a newer one comes is given a moment, then stopped with its worker, so that typing never waits for a search.
 */
import source from "noseroom:worker";
import type { Question, Reply } from "./messages.ts";
import { ownScript } from "./ownScript.ts";

type Unnumbered<T> = T extends Question ? Omit<T, "id"> : never;
export type Asked = Unnumbered<Question>;

const PATIENCE_MS = 120;

interface Waiting {
  readonly id: number;
  readonly asked: Asked;
  readonly onReply: (reply: Reply) => void;
  readonly onDropped: () => void;
  readonly sinceMs: number;
}

/** Starts a worker, from a file beside the page or from text inside it. */
function startWorker(): Worker {
  if ("address" in source) return new Worker(ownScript(source.address));
  const address = URL.createObjectURL(new Blob([source.text], { type: "text/javascript" }));
  const worker = new Worker(ownScript(address));
  URL.revokeObjectURL(address);
  return worker;
}

export class Asker {
  private worker: Worker | null = null;
  private busy: Waiting | null = null;
  private next: Waiting | null = null;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private count = 0;

  /** Asks; `onReply` is called for progress and once for the outcome, or never when a newer question came. */
  ask(asked: Asked, onReply: (reply: Reply) => void, onDropped: () => void = () => {}): void {
    this.next?.onDropped();
    this.next = { id: ++this.count, asked, onReply, onDropped, sinceMs: performance.now() };
    if (this.busy === null) this.send();
    else if (this.timer === undefined) {
      const left = PATIENCE_MS - (performance.now() - this.busy.sinceMs);
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
        if (reply?.kind === "progress") return;
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
    this.worker?.terminate();
    this.worker = null;
    const dropped = [this.busy, this.next];
    this.busy = null;
    this.next = null;
    for (const waiting of dropped) waiting?.onDropped();
  }

  private stopOld(): void {
    this.timer = undefined;
    if (this.busy === null || this.next === null) return;
    this.worker?.terminate();
    this.worker = null;
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
    this.worker ??= this.listenTo(startWorker());
    this.worker.postMessage({ ...waiting.asked, id: waiting.id });
  }

  private listenTo(worker: Worker): Worker {
    const finish = (reply: Reply) => {
      const { busy } = this;
      if (busy === null || busy.id !== reply.id || this.worker !== worker) return;
      if (reply.kind === "progress") {
        busy.onReply(reply);
        return;
      }
      this.busy = null;
      clearTimeout(this.timer);
      this.timer = undefined;
      // A newer question waits: this outcome is out of date, except that a quick typist wants to see something.
      busy.onReply(reply);
      this.send();
    };
    worker.onmessage = (event: MessageEvent<Reply>) => finish(event.data);
    worker.onerror = (event) => {
      event.preventDefault();
      const id = this.busy?.id ?? 0;
      finish({
        id,
        kind: "failed",
        sentence: "The answer could not be worked out; the job is safe. Change a figure to try again.",
      });
    };
    return worker;
  }
}
