/**
 * Sheet of a stroke that lies flat on bed or leaf, joined to the bend: in the section a thin run. Where the moving run lies
 * in the stretch of w of the stroke's own strips, its start belongs to the bend zone for as long as the zone grows over it
 * (design, section 5); sheet beside the strips counts in full.
 */
import { Features } from "../contact/features.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { type Laid, laidAs, laidHull, laidRun } from "./laid.ts";
import type { Ring } from "./ring.ts";
import { clippedW, finishedRing, isUpright, LaidShape, type Setting, type Swept } from "./shape.ts";

/** Convex pieces of a run, x as in the section and y for w, each with its face. */
export interface RunPiece {
  readonly ring: Ring;
  readonly face: number;
}

/** Ends of two spans nearer than this are one place. */
const SAME_MM: Mm = 1e-6;

interface Span {
  readonly from: Mm;
  readonly to: Mm;
}

/** Sheet that counts in full: the clamped run, or moving sheet beside the strips. */
export class RunShape extends LaidShape {
  readonly straight: boolean;
  readonly run = true;

  constructor(
    setting: Setting,
    protected readonly parts: readonly RunPiece[],
  ) {
    const ws = parts.flatMap(({ ring }) => ring.map(({ y }) => y));
    const [low, high] = [Math.min(...ws), Math.max(...ws)];
    super(setting, low, high);
    const long = ({ ring }: RunPiece) =>
      Math.max(...ring.map(({ y }) => y)) - Math.min(...ring.map(({ y }) => y));
    this.straight = parts.every((part) => isUpright(part.ring) && long(part) > high - low - SAME_MM);
  }

  protected layRest(from: number, to: number): readonly Laid[] {
    const { thicknessMm, insetMm, pivot } = this.setting;
    return this.spans(from, to).map((span) => laidRun(span, thicknessMm, insetMm, pivot, true));
  }

  protected layFinished(from: number, to: number): readonly Laid[] {
    const { thicknessMm, insetMm, pivot } = this.setting;
    return this.spans(from, to).map((span) => {
      const corners = [
        { x: span.from, y: insetMm },
        { x: span.to, y: insetMm },
        { x: span.to, y: thicknessMm - insetMm },
        { x: span.from, y: thicknessMm - insetMm },
      ];
      return laidHull(finishedRing(this.setting, corners), pivot);
    });
  }

  placeOf({ x }: Point, from: number, to: number) {
    let [best, bestOff] = [{ w: (from + to) / 2, face: this.parts[0]!.face }, Infinity];
    for (const { ring, face } of this.parts) {
      const kept = clippedW(ring, from, to);
      if (kept.length === 0) continue;
      const xs = kept.map((point) => point.x);
      const at = Math.min(Math.max(x, Math.min(...xs)), Math.max(...xs));
      if (Math.abs(at - x) >= bestOff) continue;
      bestOff = Math.abs(at - x);
      const ws = kept.flatMap((point, i) => {
        const next = kept[(i + 1) % kept.length]!;
        if (at < Math.min(point.x, next.x) - SAME_MM || at > Math.max(point.x, next.x) + SAME_MM) return [];
        if (Math.abs(next.x - point.x) < SAME_MM) return [point.y, next.y];
        const t = Math.min(1, Math.max(0, (at - point.x) / (next.x - point.x)));
        return [point.y + t * (next.y - point.y)];
      });
      best = { w: (Math.min(...ws) + Math.max(...ws)) / 2, face };
    }
    return best;
  }

  /** Where the run has sheet over an interval of w, along x. */
  protected spans(from: number, to: number): Span[] {
    const all = this.parts.flatMap(({ ring }): Span[] => {
      const kept = clippedW(ring, from, to);
      if (kept.length < 2) return [];
      const xs = kept.map(({ x }) => x);
      return [{ from: Math.min(...xs), to: Math.max(...xs) }];
    });
    const merged: Span[] = [];
    for (const span of all.sort((a, b) => a.from - b.from)) {
      const last = merged.at(-1);
      if (last && span.from <= last.to + SAME_MM) {
        merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
      } else merged.push(span);
    }
    return merged;
  }
}

/** The moving run in the stretch of one of the stroke's own strips. */
export class ZoneRunShape extends RunShape {
  private get startX(): Mm {
    return this.setting.pieces.seat.movingTangentX;
  }

  protected override layRest(from: number, to: number): readonly Laid[] {
    const { thicknessMm, insetMm, pivot } = this.setting;
    return this.spans(from, to).flatMap((span) => {
      // At rest what is not yet past the leaf's pivot line is bend zone.
      const past = Math.max(span.from, pivot.x);
      if (past >= span.to) return [];
      const bareStart = span.from > this.startX + SAME_MM;
      return [laidRun({ from: past, to: span.to }, thicknessMm, insetMm, pivot, bareStart)];
    });
  }

  protected override laySwept(from: number, to: number): readonly Swept[] {
    const { thicknessMm, insetMm, pivot, pieces, closed } = this.setting;
    const swept: Swept[] = [];
    for (const span of this.spans(from, to)) {
      const atStart = span.from <= this.startX + SAME_MM;
      const start = new Features(1, 2, 0);
      pieces.movingStart(start, insetMm);
      const run = laidRun(span, thicknessMm, insetMm, pivot, !atStart || closed);
      if (pieces.startCut) markLike(run.features, start);
      swept.push({ laid: run, swing: pieces.turning, ridesLeaf: true });
      if (atStart && !closed) swept.push({ laid: laidAs(start), swing: pieces.turning, ridesLeaf: true });
      const cut = new Features(1, 2, 0);
      if (!pieces.startCut || !pieces.cutStart(cut, 0, 0, insetMm)) continue;
      cut.cutFrom = Math.max(0, span.from - this.startX);
      cut.cutTo = span.to - this.startX;
      swept.push({ laid: laidAs(cut), swing: pieces.startCut, ridesLeaf: false });
    }
    return swept;
  }
}

/** Marks a run as cut by the growing bend zone, with the figures that the kernel gave its start. */
function markLike(run: Features, start: Features): void {
  run.cutRule = "pastZone";
  run.cutTan = start.cutTan;
  run.cutStart = start.cutStart;
  run.cutSlide = start.cutSlide;
}
