/**
 * The worker: reads a job file with the engine's reader and answers it with the engine's check, off the page's
 * thread. It knows no page; text goes in, plain data comes out.
 */

import { check } from "../../src/answer/check.ts";
import { toDxf } from "../../src/drawing/dxfPen.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import { dataOf } from "../../src/jobFile/jsonText.ts";
import { problemSentence, type Problem as Slip } from "../../src/jobFile/problem.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import { isWayOut } from "../../src/jobFile/wayOut.ts";
import { writeJob } from "../../src/jobFile/writeJob.ts";
import { drawBlank } from "../../src/pictures/blankDrawing.ts";
import { applied, waysOut } from "../../src/ways/waysOut.ts";
import { profilesFromDxf } from "../dxf/profileFromDxf.ts";
import { Scenes } from "../whole/scenes.ts";
import { wholeReply } from "../whole/wholeReplies.ts";
import { chartShown } from "./chartShown.ts";
import { fitShown } from "./fitShown.ts";
import type { Problem, Question, Reply, Way } from "./messages.ts";
import { narrowBrakePlans } from "./narrowBrakePlans.ts";
import { ordersShown } from "./ordersShown.ts";
import { sheetPages } from "./sheetPages.ts";

interface Post {
  postMessage(reply: Reply): void;
  onmessage: ((event: MessageEvent<Question>) => void) | null;
}

const NEWS_EVERY_MS = 250;
const post = self as unknown as Post;

/** The brake of another job, or nothing where that job can't be read. */
function brakeOf(text: string): JobFile["brake"][] {
  const read = readJob(text);
  return read.ok ? [read.file.brake] : [];
}

/** Tells the page now and then how far a long search is; the page stops it by ending this worker. */
function watchFor(id: number) {
  let lastMs = performance.now();
  return {
    progress(fraction: number) {
      const nowMs = performance.now();
      if (nowMs - lastMs < NEWS_EVERY_MS) return;
      lastMs = nowMs;
      post.postMessage({
        id,
        kind: "progress",
        words: `Looking through the orders, ${Math.round(fraction * 100)} % done.`,
      });
    },
    stopped: () => false,
  };
}

/** One brake for several jobs; where one can't be read, what is wrong with it. */
function narrowBrake({ id, texts, wishes }: Extract<Question, { kind: "narrowBrake" }>): Reply {
  const files: JobFile[] = [];
  for (const text of texts) {
    const read = readJob(text);
    if (!read.ok) return { id, kind: "problems", problems: problemsOf(read.problems) };
    files.push(read.file);
  }
  return { id, kind: "narrowBrake", plans: narrowBrakePlans(files, wishes) };
}

function problemsOf(problems: readonly Slip[]): Problem[] {
  return problems.map((p) => ({ path: p.path, sentence: problemSentence(p), allowed: p.allowed }));
}

function answer(question: Exclude<Question, { kind: "scene" }>): Reply {
  const { id } = question;
  if (question.kind === "dxf")
    return { id, kind: "dxf", read: profilesFromDxf(question.text, question.units, question.drawnIn) };
  if (question.kind === "write")
    return { id, kind: "written", text: writeJob(JSON.parse(question.text) as JobFile) };
  if (question.kind === "plain") {
    const read = dataOf(question.text, question.text.length);
    if (!read.ok) return { id, kind: "problems", problems: problemsOf(read.problems) };
    return { id, kind: "written", text: JSON.stringify(read.value) };
  }
  if (question.kind === "fit") return { id, kind: "fit", fit: fitShown(question.jobs, question.brakes) };
  if (question.kind === "narrowBrake") return narrowBrake(question);
  const read = readAnyJob(question.text);
  if (!read.ok) {
    return { id, kind: "problems", problems: problemsOf(read.problems) };
  }
  if (read.kind === "whole") {
    const reply = wholeReply(question, read, watchFor(id));
    return reply ?? { id, kind: "failed", sentence: "This is for a part of one section only." };
  }
  if (question.kind === "chart") return { id, kind: "chart", chart: chartShown(read.job) };
  if (question.kind === "orders") return { id, kind: "orders", orders: ordersShown(read.job) };
  const answered = check(read.job, watchFor(id));
  if (question.kind === "check") return { id, kind: "answer", job: read.job, answer: answered };
  if (question.kind === "sheet") return { id, kind: "sheet", pages: sheetPages(read, answered) };
  if (question.kind === "blank") {
    const drawing = drawBlank(read.job, answered);
    const title = `Blank of ${read.job.part.name}`;
    return {
      id,
      kind: "written",
      text: question.as === "dxf" ? toDxf(drawing) : writeSvg(drawing, { title }),
    };
  }
  const brakes = question.others.flatMap(brakeOf);
  const ways = waysOut(read.file, read.job, answered, { brakes, pairs: true }).map((way): Way => {
    if (!isWayOut(way)) return { sentence: way.sentence, because: null, file: null };
    const file = applied(read.file, read.job, way.changes);
    return { sentence: way.sentence, because: way.because ?? null, file };
  });
  return { id, kind: "ways", ways };
}

function sceneOf(scenes: Scenes, asked: Extract<Question, { kind: "scene" }>): Reply {
  const scene = scenes.shown(asked);
  if (scene) return { id: asked.id, kind: "scene", scene };
  return { id: asked.id, kind: "failed", sentence: "There is no such stroke." };
}

/** Answers whatever the page asks; the page runs the same script and leaves this alone. */
export function startWorking(): void {
  const scenes = new Scenes();
  post.onmessage = (event) => {
    const { data } = event;
    try {
      post.postMessage(data.kind === "scene" ? sceneOf(scenes, data) : answer(data));
    } catch {
      const sentence =
        "These figures could not be worked through. The job is safe; change a figure to go on.";
      post.postMessage({ id: data.id, kind: "failed", sentence });
    }
  };
}
