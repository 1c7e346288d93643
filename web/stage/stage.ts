/**
 * The stage: two canvases over each other. The standing brake behind is painted when the view changes, leaf and
 * sheet in front on every frame of a drag, so that dragging stays smooth on an old laptop.
 */
import paper from "paper/dist/paper-core";
import { finishedPart } from "../../src/jobFile/job.ts";
import { boxOf } from "../../src/plane/bounding.ts";
import type { Point } from "../../src/plane/point.ts";
import { type Camera, fitted, inSection, onCanvas, shifted, type Window, zoomed } from "./camera.ts";
import { flatPlaces } from "./flatPlaces.ts";
import { type Ink, inkOf } from "./ink.ts";
import { awayFrom, type Box, type FlatLabel, type Labelled, placedLabels } from "./labels.ts";
import { paintFinding, paintLeaf, paintOverlap, paintSheet, paintStanding } from "./layers.ts";
import { type Scope, wordsItem } from "./pen.ts";
import { paintScale } from "./scaleRule.ts";
import { heldDeg, type StepPose, sweepOf } from "./stepPose.ts";

/** What a frame looked like, for the words and labels around the canvas. */
export interface Frame {
  readonly pulledDeg: number;
  readonly heldDeg: number;
  readonly labels: readonly FlatLabel[];
  /** Shared area past a contact, in mm². */
  readonly overlapMm2: number;
}

/** Size of the printed drawing in points: as wide as the type area of A4 and Letter, half as high. */
const PAPER = { width: 700, height: 380 } as const;

export class Stage {
  private readonly back: Scope;
  private readonly front: Scope;
  private readonly box: HTMLElement;
  private readonly onFrame: (frame: Frame) => void;
  private readonly watcher: ResizeObserver;
  private pose: StepPose | null = null;
  private camera: Camera = { scale: 10, originX: 0, originY: 0 };
  private ink: Ink;
  private pulled = 0;
  private movedByHand = false;
  private frameAsked = 0;
  private standingStale = true;
  private leafPath: paper.Path | null = null;
  private onPaper = false;
  /** Where words stand that no label may cover. */
  private taken: readonly Box[] = [];

  constructor(
    box: HTMLElement,
    back: HTMLCanvasElement,
    front: HTMLCanvasElement,
    onFrame: (frame: Frame) => void,
  ) {
    this.box = box;
    this.onFrame = onFrame;
    this.back = new paper.PaperScope();
    this.front = new paper.PaperScope();
    for (const [scope, canvas] of [
      [this.back, back],
      [this.front, front],
    ] as const) {
      scope.setup(canvas);
      scope.view.autoUpdate = false;
      // paper makes every canvas a stop for the Tab key; only the front one is one.
      if (canvas === back) canvas.removeAttribute("tabindex");
    }
    this.ink = inkOf(box);
    this.watcher = new ResizeObserver(() => this.resize());
    this.watcher.observe(box);
    this.resize();
  }

  close(): void {
    this.watcher.disconnect();
    cancelAnimationFrame(this.frameAsked);
    this.back.project?.remove();
    this.front.project?.remove();
  }

  /** Shows a step with the leaf where the answer is about it: where it stops, or comes nearest. */
  show(pose: StepPose | null): void {
    this.pose = pose;
    if (pose) {
      this.pulled = pose.momentDeg;
      if (!this.movedByHand) this.fit();
    }
    this.standingStale = true;
    this.repaint();
  }

  get pulledDeg(): number {
    return this.pulled;
  }

  /** Pulls the leaf to an angle; it stops where metal meets metal. */
  pull(leafDeg: number): void {
    const end = this.pose?.endDeg ?? 0;
    this.pulled = Math.min(Math.max(leafDeg, 0), end);
    this.repaint();
  }

  readTheme(): void {
    this.ink = inkOf(this.box);
    this.standingStale = true;
    this.repaint();
  }

  /** The drawing as paper wants it, at once: whole, at one size whatever the screen's, with its labels painted in. */
  setForPaper(printing: boolean): void {
    this.onPaper = printing;
    this.ink = inkOf(this.box);
    const moved = this.movedByHand;
    if (printing) this.movedByHand = false;
    this.resize();
    if (printing) this.movedByHand = moved;
    cancelAnimationFrame(this.frameAsked);
    this.frameAsked = 0;
    this.paint();
  }

  fit(): void {
    const { width, height } = this.size();
    this.movedByHand = false;
    if (this.pose) this.camera = fitted(windowOf(this.pose), width, height, Math.min(36, height * 0.12));
    this.standingStale = true;
    this.repaint();
  }

  zoom(factor: number, at?: Point): void {
    const { width, height } = this.size();
    this.look(zoomed(this.camera, factor, at ?? { x: width / 2, y: height / 2 }));
  }

  pan(dx: number, dy: number): void {
    this.look(shifted(this.camera, dx, dy));
  }

  /** Leaf angle under a canvas point, measured at the pivot, in degrees. */
  angleAt(at: Point): number {
    const p = inSection(this.camera, at);
    const pivot = this.pose?.seat.pivot ?? { x: 0, y: 0 };
    return (Math.atan2(p.y - pivot.y, p.x - pivot.x) * 180) / Math.PI;
  }

  /** Whether a canvas point is on the leaf or on the flats that lie on it. */
  isOnLeaf(at: Point): boolean {
    if (this.pose === null) return false;
    const spot = new this.front.Point(at);
    if (this.leafPath?.contains(spot)) return true;
    const clampedCount = this.pose.seat.clampedChain.joints + 1;
    return flatPlaces(this.pose, heldDeg(this.pose, this.pulled))
      .slice(clampedCount)
      .some((place) => awayFrom(at, onCanvas(this.camera, place.from), onCanvas(this.camera, place.to)) < 18);
  }

  private look(camera: Camera): void {
    this.camera = camera;
    this.movedByHand = true;
    this.standingStale = true;
    this.repaint();
  }

  private size(): { readonly width: number; readonly height: number } {
    if (this.onPaper) return PAPER;
    return { width: this.box.clientWidth, height: this.box.clientHeight };
  }

  /** Whether words find room beside the marks; in a phone's strip the lines below say it all. */
  private hasRoom(): boolean {
    return this.size().height > 200;
  }

  private resize(): void {
    const { width, height } = this.size();
    if (width < 2 || height < 2) return;
    for (const scope of [this.back, this.front]) scope.view.viewSize = new scope.Size(width, height);
    if (!this.movedByHand) this.fit();
    this.standingStale = true;
    this.repaint();
  }

  private repaint(): void {
    if (this.frameAsked !== 0) return;
    this.frameAsked = requestAnimationFrame(() => {
      this.frameAsked = 0;
      this.paint();
    });
  }

  private paint(): void {
    const { pose, camera, ink, back, front } = this;
    if (this.standingStale) {
      back.activate();
      back.project.activeLayer.removeChildren();
      if (pose) paintStanding(back, camera, pose, ink, this.hasRoom());
      back.view.update();
      this.standingStale = false;
    }
    front.activate();
    front.project.activeLayer.removeChildren();
    let overlapMm2 = 0;
    let labels: readonly FlatLabel[] = [];
    const held = pose ? heldDeg(pose, this.pulled) : 0;
    if (pose) {
      if (held > pose.fromDeg + 1) paintSheet(front, camera, pose, 0, ink, true);
      this.leafPath = paintLeaf(front, camera, pose, held, ink, false);
      paintSheet(front, camera, pose, held, ink, false);
      if (this.pulled > held + 0.05) {
        paintLeaf(front, camera, pose, this.pulled, ink, true);
        paintSheet(front, camera, pose, this.pulled, ink, true);
      }
      // Pulled past the stop, or in each other's way already at rest.
      if (pose.stopDeg !== null && (this.pulled > held + 0.05 || pose.stopDeg <= 0)) {
        overlapMm2 = paintOverlap(front, camera, pose, this.pulled, ink);
      }
      const finding = paintFinding(front, camera, pose, held, ink, this.hasRoom());
      this.taken = finding ? [boxOfItem(finding.bounds)] : [];
      paintScale(front, camera, pose.job.units, ink);
      labels = this.labelsAt(pose, held);
      if (this.onPaper) this.paintLabels(pose, labels);
    }
    front.view.update();
    this.onFrame({ pulledDeg: this.pulled, heldDeg: held, labels, overlapMm2 });
  }

  /** Labels as part of the drawing, where they can't be buttons. */
  private paintLabels(pose: StepPose, labels: readonly FlatLabel[]): void {
    const { ink, front } = this;
    const flats = finishedPart(pose.job).flatsMm;
    for (const { kind, index, x, y } of labels) {
      const words = kind === "bend" ? `bend ${index + 1}` : `${index + 1}`;
      if (kind === "flat" && flats[index] === undefined) continue;
      wordsItem(front, { x, y: y + 5 }, words, ink.ink, ink.paper, "center");
    }
  }

  private labelsAt(pose: StepPose, leafDeg: number): readonly FlatLabel[] {
    const { width, height } = this.size();
    const clampedCount = pose.seat.clampedChain.joints + 1;
    const places = flatPlaces(pose, leafDeg);
    const flats = places.map(({ flat, from, to }, i) => {
      const [a, b] = [onCanvas(this.camera, from), onCanvas(this.camera, to)];
      const run = Math.hypot(b.x - a.x, b.y - a.y) || 1;
      // The side away from bed and leaf is the freer one.
      const side = i < clampedCount ? 1 : -1;
      const away = { x: (-side * (b.y - a.y)) / run, y: (side * (b.x - a.x)) / run };
      return { kind: "flat" as const, index: flat, from: a, to: b, away };
    });
    const inOrder = flats.toSorted((one, other) => one.index - other.index);
    const joints: (readonly [Point, Point])[] = [];
    const bends = inOrder.slice(1).map((after, i): Labelled => {
      const before = inOrder[i]!;
      const [from, to] = nearestEnds(before, after);
      joints.push([from, to]);
      const at = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
      return { kind: "bend", index: i, from: at, to: at, away: outward(at, before, after) };
    });
    const sheet = [...flats.map(({ from, to }) => [from, to] as const), ...joints];
    const half = (pose.seat.thicknessMm * this.camera.scale) / 2;
    return placedLabels([...flats, ...bends], { width, height, sheet, half, taken: this.taken });
  }
}

function boxOfItem({ center, width, height }: paper.Rectangle): Box {
  return { x: center.x, y: center.y, halfWide: width / 2, halfHigh: height / 2 };
}

type Run = { readonly from: Point; readonly to: Point };

/** The ends of two flats between which their bend lies. */
function nearestEnds(one: Run, other: Run): readonly [Point, Point] {
  const pairs = [one.from, one.to].flatMap((a) => [other.from, other.to].map((b) => [a, b] as const));
  const apart = ([a, b]: readonly [Point, Point]) => Math.hypot(a.x - b.x, a.y - b.y);
  return pairs.reduce((best, pair) => (apart(pair) < apart(best) ? pair : best));
}

/** From a bend toward the outside of its corner; upward where the sheet runs straight through it. */
function outward(at: Point, one: Run, other: Run): Point {
  const middle = (run: Run) => ({
    x: (run.from.x + run.to.x) / 2 - at.x,
    y: (run.from.y + run.to.y) / 2 - at.y,
  });
  const unit = ({ x, y }: Point) => {
    const long = Math.hypot(x, y) || 1;
    return { x: x / long, y: y / long };
  };
  const [a, b] = [unit(middle(one)), unit(middle(other))];
  const sum = { x: -(a.x + b.x), y: -(a.y + b.y) };
  return Math.hypot(sum.x, sum.y) < 0.05 ? { x: a.y, y: -a.x } : unit(sum);
}

/** All the sheet passes over, and enough of the nose to tell the brake. */
export function windowOf(pose: StepPose): Window {
  const box = boxOf(...sweepOf(pose));
  const size = Math.max(box.maxX - box.minX, box.maxY - box.minY, 8);
  return {
    min: { x: Math.min(box.minX, -0.35 * size), y: Math.min(box.minY, -0.25 * size) },
    max: { x: Math.max(box.maxX, 0.35 * size), y: Math.max(box.maxY, 0.35 * size) },
  };
}
