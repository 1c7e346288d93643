/**
 * The stage: two canvases over each other. The standing brake behind is painted when the view changes, leaf and
 * sheet in front on every frame of a drag, so that dragging stays smooth on an old laptop.
 */
import paper from "paper/dist/paper-core";
import { boxOf } from "../../src/plane/bounding.ts";
import type { Point } from "../../src/plane/point.ts";
import { type Camera, fitted, inSection, onCanvas, shifted, type Window, zoomed } from "./camera.ts";
import { flatPlaces } from "./flatPlaces.ts";
import { type Ink, inkOf } from "./ink.ts";
import { awayFrom, type FlatLabel, placedLabels } from "./labels.ts";
import { paintFinding, paintLeaf, paintOverlap, paintSheet, paintStanding } from "./layers.ts";
import type { Scope } from "./pen.ts";
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

  /** The same at once, for a page that is about to be printed. */
  readThemeNow(): void {
    this.readTheme();
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
      paintFinding(front, camera, pose, held, ink, this.hasRoom());
      paintScale(front, camera, pose.job.units, ink);
      labels = this.labelsAt(pose, held);
    }
    front.view.update();
    this.onFrame({ pulledDeg: this.pulled, heldDeg: held, labels, overlapMm2 });
  }

  private labelsAt(pose: StepPose, leafDeg: number): readonly FlatLabel[] {
    const { width, height } = this.size();
    const clampedCount = pose.seat.clampedChain.joints + 1;
    const lines = flatPlaces(pose, leafDeg).map((place, i) => ({
      flat: place.flat,
      from: onCanvas(this.camera, place.from),
      to: onCanvas(this.camera, place.to),
      // The side away from bed and leaf is the freer one.
      side: i < clampedCount ? (1 as const) : (-1 as const),
    }));
    return placedLabels(lines, width, height);
  }
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
