/**
 * Starts the page: the store, the two askers, the answer that follows every change, and the worksheet itself.
 * Everything that listens to the browser as a whole (keys, other tabs, links, offline) is wired here.
 */
import { render } from "preact";
import { inUnit } from "../src/jobFile/inUnit.ts";
import { Look } from "./look.ts";
import { takeDrops } from "./openFiles.ts";
import { PageContext, type Standing } from "./page.ts";
import { saveFile } from "./saveFile.ts";
import { worstStep } from "./stage/stepPose.ts";
import { differentBrakes } from "./store/brakes.ts";
import { firstJob } from "./store/firstJob.ts";
import { fileText, type JobFile } from "./store/jobFile.ts";
import { jobOfLink } from "./store/link.ts";
import { usualUnits } from "./store/locale.ts";
import { Store } from "./store/store.ts";
import { Asker } from "./worker/asker.ts";
import { ownScript } from "./worker/ownScript.ts";
import { Worksheet } from "./worksheet.tsx";

const WAYS_AFTER_MS = 200;
/** Half a figure is no slip: it is told after so long a pause in typing. */
const PAUSE_MS = 1000;

const NO_WAYS = {
  sentence: "What would let it fold was not worked out. Change a figure to have it looked for again.",
  because: null,
  file: null,
};

/** The browser's store, or null where it is shut (some browsers shut it for files opened from disk). A full one is open. */
function openDrawer(): Storage | null {
  try {
    return localStorage.length >= 0 ? localStorage : null;
  } catch {
    return null;
  }
}

/** Runs the page; the worker runs the same script and leaves this alone. */
export function startPage(): void {
  function save(name: string, text: string, type?: string): boolean {
    if (saveFile(name, text, type)) return true;
    const sentence = `${name} could not be saved as a file. Your job is as it was; copy the text of the file from here.`;
    store.say(sentence, { copy: text, about: "saving" });
    return false;
  }

  const drawer = openDrawer();
  const store = new Store(drawer, () => firstJob(usualUnits(navigator.language)));
  const look = new Look(drawer);
  const answering = new Asker();
  const wayfinder = new Asker();
  const asker = new Asker();
  const host = document.getElementById("worksheet")!;

  let standing: Standing = {
    file: null,
    problems: [],
    job: null,
    jobFile: null,
    answer: null,
    whole: null,
    ways: null,
    failed: null,
    working: false,
    progress: null,
    restarted: null,
  };
  let asked: unknown = null;
  let painting = false;

  function paint(): void {
    painting = false;
    const page = { store, snapshot: store.snapshot(), standing, look, asker, save };
    render(
      <PageContext.Provider value={page}>
        <Worksheet />
      </PageContext.Provider>,
      host,
    );
  }

  /** Many changes in one turn of the browser make one painting. */
  function paintSoon(): void {
    if (painting) return;
    painting = true;
    queueMicrotask(paint);
  }

  function answer(): void {
    const { file } = store.snapshot();
    if (file === asked) return;
    asked = file;
    standing = { ...standing, working: true, progress: null, restarted: null };
    answering.ask({ kind: "check", text: fileText(file) }, (reply) => {
      if (reply.kind === "progress") standing = { ...standing, progress: reply.words };
      if (reply.kind === "restarted") standing = { ...standing, restarted: reply.sentence };
      // An outcome for what stood there before leaves the newest question open.
      const working = asked !== file;
      if (reply.kind === "problems") {
        tellSlips(() => {
          if (store.snapshot().file !== file) return;
          standing = { ...standing, file, problems: reply.problems, failed: null, working: asked !== file };
          paintSoon();
        });
        return;
      }
      if (reply.kind === "failed") standing = { ...standing, file, failed: reply.sentence, working };
      if (reply.kind === "answer") {
        standing = {
          ...standing,
          file,
          problems: [],
          job: reply.job,
          jobFile: file,
          answer: reply.answer,
          whole: null,
          ways: null,
          failed: null,
          working,
          progress: null,
        };
        // The drawing follows the answer: whatever step was open, it shows the one that fails or is tightest.
        if (JSON.stringify(reply.answer.order) !== told) look.set({ step: worstStep(reply.answer) });
        told = JSON.stringify(reply.answer.order);
        findWays(file, reply.answer.verdict);
        if (look.now.step >= reply.answer.order.length)
          look.set({ step: Math.max(0, reply.answer.order.length - 1) });
      }
      if (reply.kind === "whole") {
        const { whole } = reply;
        const known = {
          job: null,
          jobFile: null,
          answer: null,
          whole,
          ways: null,
          problems: [],
          failed: null,
          progress: null,
        };
        standing = { ...standing, ...known, file, working };
        if (JSON.stringify(whole.answer.order) !== told) look.set({ step: whole.worst });
        told = JSON.stringify(whole.answer.order);
        findWays(file, whole.verdict === "hits" ? "hits" : "clear");
      }
      paintSoon();
    });
  }

  /** A slip is told when the field is left or after a pause in typing. */
  let typedAtMs = Number.NEGATIVE_INFINITY;
  let slipTimer: ReturnType<typeof setTimeout> | undefined;
  let slip: (() => void) | null = null;
  function tellSlips(tell: () => void): void {
    clearTimeout(slipTimer);
    slip = tell;
    slipTimer = setTimeout(tellNow, Math.max(0, typedAtMs + PAUSE_MS - performance.now()));
  }
  function tellNow(): void {
    clearTimeout(slipTimer);
    const tell = slip;
    slip = null;
    tell?.();
  }
  addEventListener("input", () => (typedAtMs = performance.now()), true);
  addEventListener("focusout", tellNow, true);

  /** The field under the keys lights its dimension on the drawings. */
  addEventListener("focusin", ({ target }) => {
    const id = target instanceof HTMLElement && target.id.startsWith("field-") ? target.id : null;
    look.set({ lit: id });
  });
  addEventListener("focusout", () => look.set({ lit: null }));

  /** The steps of the last answer: a change that leaves them as they are, as of a name, leaves the drawing alone. */
  let told = "";

  /** Ways out are looked for once the typing rests, in a worker of their own, so that no answer waits for them. */
  let waysTimer: ReturnType<typeof setTimeout> | undefined;
  function findWays(file: JobFile, verdict: "clear" | "tight" | "hits"): void {
    clearTimeout(waysTimer);
    if (verdict === "clear") return;
    waysTimer = setTimeout(() => {
      const { shelf } = store.snapshot();
      const others = shelf.jobs.flatMap((job) => (job.file === file ? [] : [inUnit(job.file, file.units)]));
      const brakes = differentBrakes([file, ...others], shelf, file.units).slice(1);
      const texts = brakes.map(({ brake }) => fileText({ ...file, brake }));
      wayfinder.ask({ kind: "ways", text: fileText(file), others: texts }, (reply) => {
        if (standing.file !== file) return;
        if (reply.kind === "ways") standing = { ...standing, ways: reply.ways };
        if (reply.kind === "failed") standing = { ...standing, ways: [NO_WAYS] };
        paintSoon();
      });
    }, WAYS_AFTER_MS);
  }

  store.subscribe(() => {
    answer();
    paintSoon();
  });
  look.subscribe(paintSoon);

  document.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const back = key === "z" && !event.shiftKey;
    const forth = key === "y" || (key === "z" && event.shiftKey);
    if (!back && !forth) return;
    event.preventDefault();
    if (back) store.undo();
    else store.redo();
  });

  addEventListener("storage", (event) => store.otherTab(event.key));

  // Every keystroke is kept as it comes; what the browser refused is tried once more before the page goes.
  addEventListener("pagehide", () => store.keepAgain());
  document.addEventListener("visibilitychange", () => store.keepAgain());
  addEventListener("beforeunload", (event) => {
    store.keepAgain();
    if (store.wouldLose()) event.preventDefault();
  });

  async function takeLink(): Promise<void> {
    const adopted = await jobOfLink(location.hash);
    if (adopted === null) return;
    const text = location.href;
    history.replaceState(null, "", location.pathname + location.search);
    // A job that someone shared is what this visit is about: no word of the example.
    if (store.snapshot().firstVisit) store.welcomed();
    store.take(adopted, text, "The job in the link");
  }
  addEventListener("hashchange", () => void takeLink());

  takeDrops({ store, asker });
  answer();
  paint();
  void takeLink();

  if (location.protocol.startsWith("http") && "serviceWorker" in navigator) {
    navigator.serviceWorker.register(ownScript("offline.js")).catch(() => {
      // Without it the page works as long as it is open; nothing to tell.
    });
  }
}
