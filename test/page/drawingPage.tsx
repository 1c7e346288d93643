/**
 * Runs in the browser: draws steps of jobs on three stages of different sizes and gives back what stands where, in points.
 * The stage's own redraw and the page's own labels, no answer of the drawing itself but where its dimension lines run.
 */
import { render } from "preact";
import { check } from "../../src/answer/check.ts";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { type Page, PageContext } from "../../web/page.ts";
import { FlatLabels } from "../../web/panels/flatLabels.tsx";
import { onCanvas } from "../../web/stage/camera.ts";
import { flatPlaces } from "../../web/stage/flatPlaces.ts";
import type { Frame } from "../../web/stage/frame.ts";
import { measuredFlats } from "../../web/stage/measured.ts";
import { Stage } from "../../web/stage/stage.ts";
import { poseStep, type StepPose, sheetAtDeg } from "../../web/stage/stepPose.ts";
import type { JobFile } from "../../web/store/jobFile.ts";

export interface Rect {
  readonly name: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

type Spot = readonly [x: number, y: number];

export interface Drawn {
  readonly job: string;
  readonly step: number;
  readonly leafDeg: number;
  readonly width: number;
  readonly height: number;
  readonly labels: readonly Rect[];
  /** The sheet's outline, arcs in short chords. */
  readonly sheet: readonly Spot[];
  /** Middle lines of the flats, by number from 1. */
  readonly flats: readonly (readonly [Spot, Spot])[];
  readonly lines: readonly { readonly name: string; readonly piece: readonly [Spot, Spot] }[];
  /** Where metal meets metal. */
  readonly contact: Spot | null;
}

interface Place {
  readonly box: HTMLElement;
  readonly over: HTMLElement;
  readonly stage: Stage;
  frame: Frame | null;
  told: (() => void) | null;
}

function makePlace(width: number, height: number): Place {
  const box = document.createElement("div");
  box.className = "canvas-box";
  box.style.cssText = `position:relative;width:${width}px;height:${height}px`;
  const [back, front] = [document.createElement("canvas"), document.createElement("canvas")];
  const over = document.createElement("div");
  box.append(back, front, over);
  document.body.append(box);
  const place: Place = {
    box,
    over,
    frame: null,
    told: null,
    stage: new Stage(box, back, front, (frame) => {
      place.frame = frame;
      place.told?.();
    }),
  };
  return place;
}

const drawn = (place: Place, change: () => void) =>
  new Promise<void>((resolve) => {
    place.told = () => {
      place.told = null;
      resolve();
    };
    change();
  });

function pageOf(file: JobFile): Page {
  return { snapshot: { file } } as unknown as Page;
}

/** Every step of a job on every size, at the moment of the answer and part of the way there. */
async function drawJob(places: readonly Place[], name: string, text: string): Promise<readonly Drawn[]> {
  const read = readJob(text);
  if (!read.ok) throw new Error(`${name}: ${read.problems[0]?.path}`);
  const file = JSON.parse(text) as JobFile;
  const answer: Answer = check(read.job);
  const all: Drawn[] = [];
  for (let step = 0; step < answer.order.length; step++) {
    const pose = poseStep(read.job, answer, step);
    if (pose === null) continue;
    for (const place of places) {
      const { stage } = place;
      stage.measure(measuredFlats(file, read.job));
      await drawn(place, () => stage.show(pose));
      all.push(told(place, pose, file, read.job, name, step));
      await drawn(place, () => stage.pull(pose.momentDeg * 0.45));
      all.push(told(place, pose, file, read.job, name, step));
    }
  }
  return all;
}

function told(place: Place, pose: StepPose, file: JobFile, job: Job, name: string, step: number): Drawn {
  const { box, over } = place;
  const frame = place.frame!;
  render(
    <PageContext.Provider value={pageOf(file)}>
      <FlatLabels labels={frame.labels} measured={measuredFlats(file, job)} lit={null} />
    </PageContext.Provider>,
    over,
  );
  const origin = box.getBoundingClientRect();
  const shown = [...over.querySelectorAll(".flat-label, .bend-label")].map((label): Rect => {
    const { left, top, right, bottom } = label.getBoundingClientRect();
    const number = label.querySelector<HTMLElement>(".number")?.dataset.number ?? label.textContent;
    return {
      name: `${label.classList.contains("bend-label") ? "bend" : "flat"} ${number}`,
      left: left - origin.left,
      top: top - origin.top,
      right: right - origin.left,
      bottom: bottom - origin.top,
    };
  });
  const painted = frame.labels.flatMap(({ key, box: b }): Rect[] =>
    key === "angle" || key === "finding"
      ? [
          {
            name: key,
            left: b.x - b.halfWide,
            top: b.y - b.halfHigh,
            right: b.x + b.halfWide,
            bottom: b.y + b.halfHigh,
          },
        ]
      : [],
  );
  const spot = (p: { x: number; y: number }): Spot => {
    const { x, y } = onCanvas(frame.camera, p);
    return [x, y];
  };
  const sheet = sheetAtDeg(pose, frame.heldDeg).edges.flatMap((edge): Spot[] => {
    if (edge.kind === "line") return [spot(edge.from)];
    return Array.from({ length: 12 }, (_, i) => {
      const rad = edge.startRad + (edge.sweepRad * i) / 12;
      return spot({
        x: edge.center.x + edge.radius * Math.cos(rad),
        y: edge.center.y + edge.radius * Math.sin(rad),
      });
    });
  });
  const flats = flatPlaces(pose, frame.heldDeg)
    .toSorted((a, b) => a.flat - b.flat)
    .map(({ from, to }) => [spot(from), spot(to)] as const);
  const { contact } = pose.step;
  return {
    job: name,
    step: step + 1,
    leafDeg: frame.heldDeg,
    width: frame.width,
    height: frame.height,
    labels: [...shown, ...painted],
    sheet,
    flats,
    lines: frame.labels.flatMap(({ key, lines }) =>
      lines.map(([a, b]) => ({
        name: key,
        piece: [
          [a.x, a.y],
          [b.x, b.y],
        ] as const,
      })),
    ),
    contact:
      contact && frame.heldDeg >= contact.angle - 0.05
        ? spot({ x: contact.point[0], y: contact.point[1] })
        : null,
  };
}

let places: readonly Place[] = [];
Object.assign(window, {
  setUp: (sizes: readonly (readonly [number, number])[]) => {
    places = sizes.map(([width, height]) => makePlace(width, height));
  },
  drawJob: (name: string, text: string) => drawJob(places, name, text),
});
