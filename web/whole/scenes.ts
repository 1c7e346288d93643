/**
 * Scenes of a stroke, drawn in the worker: from any side, cut at any station, with the leaf at any angle. The job and stroke
 * last asked about are kept, so that turning and playing draw only.
 */
import type { Drawing, Mark } from "../../src/drawing/model.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import type { WholeAnswer } from "../../src/jobFile/wholeAnswer.ts";
import { fromFrontLeft, onPage, type View } from "../../src/pictures/seenFrom.ts";
import { StrokeScene } from "../../src/pictures/wholeStroke.ts";
import type { Point } from "../../src/plane/point.ts";
import { type Mm, toRad } from "../../src/units/quantity.ts";
import { type Sketched, sketched } from "./sketched.ts";

export interface SceneAsked {
  readonly text: string;
  readonly answer: WholeAnswer;
  readonly stroke: number;
  /** Degrees from rest; null as far as it comes. */
  readonly leafDeg: number | null;
  /** Where you look from: to the left of the front, and above. */
  readonly leftDeg: number;
  readonly aboveDeg: number;
  /** Where the section is; null where it is nearest. */
  readonly station: Mm | null;
  /** While something moves, edges are looked at more coarsely. */
  readonly moving: boolean;
}

export interface SceneShown {
  readonly view: Sketched;
  readonly section: Sketched;
  readonly fingers: Sketched;
  readonly station: Mm;
  readonly worst: Mm;
  readonly span: readonly [from: Mm, to: Mm];
}

const FINE = 1 / 150;
const COARSE = 1 / 50;

interface Kept {
  readonly text: string;
  readonly stroke: number;
  readonly scene: StrokeScene;
  readonly fingers: Sketched;
  readonly span: readonly [Mm, Mm];
}

/** Where the sheet is cut for the section, as seen from the side. */
function cutLines(section: Drawing, from: View, station: Mm): Mark[] {
  const seen = ({ x, y }: Point) => onPage(from, [x, y, station]);
  return section.marks.flatMap((mark) =>
    mark.kind === "outline" && mark.layer === "part"
      ? mark.outline.edges.map((edge): Mark => {
          return { kind: "line", layer: "sightLine", from: seen(edge.from), to: seen(edge.to) };
        })
      : [],
  );
}

export class Scenes {
  private kept: Kept | undefined;

  /** The scene; undefined where the job can't be read. */
  shown(asked: SceneAsked): SceneShown | undefined {
    const kept = this.keep(asked);
    if (!kept) return undefined;
    const { scene, span } = kept;
    const leafRad = asked.leafDeg === null ? scene.reachedRad : toRad(asked.leafDeg);
    // The window is the same for all of the swing, so that the picture stands still while the leaf moves.
    const swing = [0, scene.reachedRad];
    const from = fromFrontLeft(asked.leftDeg, asked.aboveDeg);
    const station = asked.station ?? scene.worst;
    const view = scene.view(from, leafRad, scene.windowOf(from, swing), asked.moving ? COARSE : FINE);
    const section = scene.section(station, leafRad, scene.sectionWindow(station, swing));
    return {
      view: sketched({ ...view, marks: [...view.marks, ...cutLines(section, from, station)] }),
      section: sketched(section),
      fingers: kept.fingers,
      station,
      worst: scene.worst,
      span,
    };
  }

  private keep({ text, answer, stroke }: SceneAsked): Kept | undefined {
    if (this.kept?.text === text && this.kept.stroke === stroke) return this.kept;
    const read = readAnyJob(text);
    if (!read.ok || read.kind !== "whole" || !answer.order[stroke]) return undefined;
    const scene = new StrokeScene(read.job, answer, stroke);
    this.kept = { text, stroke, scene, fingers: sketched(scene.fingers()), span: scene.span };
    return this.kept;
  }
}
