/**
 * The stage: two canvases over each other. The standing brake behind is painted when the view changes, leaf and
 * sheet in front on every frame of a drag, so that dragging stays smooth on an old laptop.
 */
import type { Point } from "../../src/plane/point.ts";
import { angleWords } from "../../src/words/angleWords.ts";
import type { Placed } from "../drafting/asked.ts";
import { awayFrom, type Box } from "../drafting/boxes.ts";
import { placedDimensions } from "../drafting/dimensions.ts";
import { textMeasure } from "../drafting/textWidth.ts";
import { type Camera, inSection, onCanvas, shifted, zoomed } from "./camera.ts";
import { paintDimensions, paintFinding, paintFindingWords } from "./findings.ts";
import { flatPlaces } from "./flatPlaces.ts";
import type { Frame } from "./frame.ts";
import { type Ink, inkOf } from "./ink.ts";
import {
  paintLeaf,
  paintLeafName,
  paintMarkedFace,
  paintOverlap,
  paintSheet,
  paintStanding,
} from "./layers.ts";
import type { MeasuredFlat } from "./measured.ts";
import { cleanSheet, drawWords, type Sheet } from "./pen.ts";
import { paintScale } from "./scaleRule.ts";
import { stageLabels } from "./stageLabels.ts";
import { bentDeg, heldDeg, leafAtDeg, type StepPose } from "./stepPose.ts";
import { paintTurning, type Turning } from "./turning.ts";
import { framed } from "./window.ts";

/** Height of a label: what a finger hits on a touch screen is larger by its padding. */
const LABEL_HIGH = 24;
/** Room at the foot for the scale and the words on the throat. */
const FOOT = 30;

/** Size of the printed drawing in points: as wide as the type area of A4 and Letter, half as high. */
const PAPER = { width: 700, height: 380 } as const;

export class Stage {
  private readonly box: HTMLElement;
  private readonly back: HTMLCanvasElement;
  private readonly front: HTMLCanvasElement;
  private readonly onFrame: (frame: Frame) => void;
  private readonly watcher: ResizeObserver;
  /** Measured when it changes only: to ask for it lays the whole page out. */
  private screen: { readonly width: number; readonly height: number };
  private pose: StepPose | null = null;
  private camera: Camera = { scale: 10, originX: 0, originY: 0 };
  private ink: Ink;
  private pulled = 0;
  private movedByHand = false;
  private frameAsked = 0;
  private standingStale = true;
  private leafPath: Path2D | null = null;
  private onPaper = false;
  private measured: readonly MeasuredFlat[] = [];
  private lit: string | null = null;
  /** The way from the step shown before: done with share 1. */
  private turning: Turning = { from: null, camera: this.camera, share: 1 };
  /** Where the standing brake's names are. */
  private names: readonly Box[] = [];
  private readonly widthOf = textMeasure();
  /** Which place each label took before. */
  private readonly before = new Map<string, number>();

  constructor(
    box: HTMLElement,
    back: HTMLCanvasElement,
    front: HTMLCanvasElement,
    onFrame: (frame: Frame) => void,
  ) {
    this.box = box;
    this.back = back;
    this.front = front;
    this.onFrame = onFrame;
    this.ink = inkOf(box);
    this.screen = { width: box.clientWidth, height: box.clientHeight };
    this.watcher = new ResizeObserver(() => {
      this.screen = { width: box.clientWidth, height: box.clientHeight };
      this.resize();
    });
    this.watcher.observe(box);
    this.resize();
  }

  close(): void {
    this.watcher.disconnect();
    cancelAnimationFrame(this.frameAsked);
  }

  /** Shows a step with the leaf where the answer is about it: where it stops, or comes nearest. */
  show(pose: StepPose | null): void {
    this.turning = { from: this.pose, camera: this.camera, share: 1 };
    this.pose = pose;
    this.before.clear();
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

  /** Shows the part on its way into this step: from the step shown before, or as a flat blank from the front. */
  turn(share: number, fresh: boolean): void {
    const { turning } = this;
    this.turning = { from: fresh ? null : turning.from, camera: turning.camera, share };
    this.standingStale = true;
    this.repaint();
  }

  /** Takes the figures of the flats. */
  measure(measured: readonly MeasuredFlat[]): void {
    this.measured = measured;
    this.repaint();
  }

  /** Lights the dimension of that key. */
  light(key: string | null): void {
    this.lit = key;
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
    if (this.pose)
      this.camera = framed(this.pose, width, height, Math.min(width, height) * (height > 200 ? 0.15 : 0.1));
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
    const sharp = devicePixelRatio || 1;
    const { leafPath } = this;
    if (leafPath && this.front.getContext("2d")?.isPointInPath(leafPath, at.x * sharp, at.y * sharp))
      return true;
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
    return this.onPaper ? PAPER : this.screen;
  }

  /** In a phone's strip there is no room for words; the lines below say it all. */
  private hasRoom(): boolean {
    return this.size().height > 200;
  }

  private resize(): void {
    const { width, height } = this.size();
    if (width < 2 || height < 2) return;
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
    const { pose, camera, ink, turning } = this;
    const { width, height } = this.size();
    const front = cleanSheet(this.front, width, height);
    const back = () => cleanSheet(this.back, width, height);
    if (pose && turning.share < 1) {
      paintTurning(back(), front, pose, { turning, camera, ink });
      this.standingStale = true;
      this.onFrame({ pulledDeg: 0, heldDeg: 0, labels: [], camera, width, height });
      return;
    }
    if (this.standingStale) {
      const standing = back();
      this.names = pose ? paintStanding(standing, camera, pose, ink, { names: this.hasRoom() }) : [];
      this.standingStale = false;
    }
    const held = pose ? heldDeg(pose, this.pulled) : 0;
    const labels = pose ? this.paintMoving(front, pose, held) : [];
    this.onFrame({ pulledDeg: this.pulled, heldDeg: held, labels, camera, width, height });
  }

  private paintMoving(front: Sheet, pose: StepPose, held: number): readonly Placed[] {
    const { camera, ink, measured, pulled } = this;
    const { width, height } = front;
    if (held > pose.fromDeg + 1) paintSheet(front, camera, pose, 0, ink, true);
    this.leafPath = paintLeaf(front, camera, pose, held, ink, false);
    paintSheet(front, camera, pose, held, ink, false);
    paintMarkedFace(front, camera, pose, held, ink);
    if (pulled > held + 0.05) {
      paintLeaf(front, camera, pose, pulled, ink, true);
      paintSheet(front, camera, pose, pulled, ink, true);
    }
    // Pulled past the stop, or in each other's way already at rest.
    if (pose.stopDeg !== null && (pulled > held + 0.05 || pose.stopDeg <= 0))
      paintOverlap(front, camera, pose, pulled, ink);
    const lettering = { widthOf: this.widthOf, high: LABEL_HIGH };
    const { asked, sheet } = stageLabels(pose, held, camera, {
      measured,
      lettering,
      size: { width, height },
    });
    const half = (pose.seat.thicknessMm * camera.scale) / 2;
    const found = paintFinding(front, camera, pose, held, ink);
    paintScale(front, camera, pose.job.units, ink);
    if (!this.hasRoom()) return [];
    const marks = found === null ? [] : [found.mark];
    const leafName = paintLeafName(front, camera, leafAtDeg(pose, held), { pieces: sheet, half, ink });
    const foot: Box = { x: width / 2, y: height - FOOT / 2, halfWide: width / 2, halfHigh: FOOT / 2 };
    const taken = [...this.names, ...leafName, foot];
    const placed = placedDimensions(asked, { width, height, sheet, half, taken, marks }, this.before);
    paintDimensions(front, placed, ink, this.lit);
    this.paintFigures(front, pose, held, placed);
    if (found === null) return placed;
    const boxes = [...taken, ...placed.map(({ box }) => box)];
    const lines = placed.flatMap((one) => one.lines);
    const words = paintFindingWords(front, found, ink.paper, { pieces: sheet, half, boxes, lines });
    return [...placed, { key: "finding", box: words, whole: true, lines: [], heads: [] }];
  }

  /** Figures that are not buttons on the screen: the angle, and on paper all of them. */
  private paintFigures(front: Sheet, pose: StepPose, held: number, placed: readonly Placed[]): void {
    const { ink, measured } = this;
    for (const { key, box, whole } of placed) {
      const [kind, index] = key.split(" ");
      const number = `${Number(index) + 1}`;
      if (kind === "angle") drawWords(front, angleWords(bentDeg(pose, held)), box, ink.ink, ink.paper);
      else if (this.onPaper && kind === "bend") drawWords(front, `(${number})`, box, ink.ink, ink.paper);
      else if (this.onPaper) {
        const figure = whole ? `${number}: ${measured[Number(index)]?.words}` : number;
        drawWords(front, figure, box, ink.ink, ink.paper);
      }
    }
  }
}
