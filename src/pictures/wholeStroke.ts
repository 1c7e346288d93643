/**
 * The three pictures of a stroke of a whole part: part in the brake from the front left and above, the section at the worst
 * station, and the row of fingers from the front. Millimetres of the brake; nothing is written in the first two.
 */
import { Machine } from "../contact/machine.ts";
import type { Drawing, Layer, Mark } from "../drawing/model.ts";
import { polygon, rectangle } from "../drawing/polygon.ts";
import type { WholeAnswer, WholeStepAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { cutAt } from "../pattern/convex.ts";
import { StrokeElements } from "../pattern/elements.ts";
import { type BodyInSpace, brakeInSpace, partInSpace } from "../pattern/inBrake.ts";
import type { Spot } from "../pattern/space.ts";
import type { Tooling } from "../pattern/strokeBodies.ts";
import { type BendSet, strokePlan } from "../pattern/strokePlan.ts";
import { convexHull } from "../plane/convexHull.ts";
import type { Point } from "../plane/point.ts";
import { type Mm, type Rad, toRad } from "../units/quantity.ts";
import { lengthFigure } from "../words/lengthWords.ts";
import { strokeName } from "../words/wholeWords.ts";
import { FROM_FRONT, fromFrontLeft, onPage, seenLines, type View } from "./seenFrom.ts";

export interface StrokePictures {
  readonly view: Drawing;
  readonly section: Drawing;
  readonly fingers: Drawing;
}

/** From so far to the left and above you see into a box and under its lips. */
const VIEW = fromFrontLeft(32, 28);
/** Places along an edge, as a share of the picture's width. */
const STEP_SHARE = 1 / 150;
/** So much of the brake is shown round the part. */
const ROUND_MM: Mm = 12;
/** Sheet narrower than so many thicknesses, as seen from the front, is seen edge on. */
const MOST_THIN = 6;
/** A finger narrower than this share of its picture has no room for its width; the sentence beside it has the figure. */
const LEAST_NAMED_SHARE = 0.12;
/** Angles of the leaf whose bodies are kept. */
const MOST_KEPT = 3;
/** Of the leaf and bed under the part. */
const UNDER_MM: Mm = 30;

/** The pictures of stroke `index` (from 0) of the order. */
export function drawWholeStroke(job: WholeJob, answer: WholeAnswer, index: number): StrokePictures {
  const scene = new StrokeScene(job, answer, index);
  const { reachedRad } = scene;
  return {
    view: scene.view(VIEW, reachedRad, scene.windowOf(VIEW, [reachedRad])),
    section: scene.section(scene.worst, reachedRad, scene.sectionWindow(scene.worst, [reachedRad])),
    fingers: scene.fingers(),
  };
}

/** One stroke of the order (from 0) in its brake, to be seen from any side and cut anywhere, its leaf at any angle. */
export class StrokeScene {
  /** How far the leaf comes. */
  readonly reachedRad: Rad;
  /** Where along the bend the part meets something or comes nearest to it. */
  readonly worst: Mm;
  private readonly step: WholeStepAnswer;
  private readonly elements: StrokeElements;
  private readonly machine: Machine;
  private readonly made: BendSet;
  /** By the angle of the leaf: at rest, at its end, and in between. */
  private readonly known = new Map<Rad, readonly BodyInSpace[]>();

  constructor(
    private readonly job: WholeJob,
    answer: WholeAnswer,
    index: number,
  ) {
    this.step = answer.order[index]!;
    this.made = answer.order
      .slice(0, index)
      .reduce((set, { bends }) => bends.reduce((all, bend) => all | (1 << (bend - 1)), set), 0);
    const { bends, clampedFace, reached } = this.step;
    const stroke = { bends: bends.map((bend) => bend - 1), clampedFace: clampedFace - 1 };
    const planned = strokePlan(job.part, job.brake, stroke);
    if (!planned.ok) throw new RangeError("a stroke of the answer can be planned");
    this.elements = new StrokeElements(planned.plan);
    this.machine = new Machine(job.brake, job.part.thicknessMm);
    this.reachedRad = toRad(reached);
    this.worst = worstStation(this.step, planned.plan.lines);
  }

  /** Where the part begins and ends along the bend line, the leaf at rest. */
  get span(): readonly [from: Mm, to: Mm] {
    const ws = cornersOf(partInSpace(this.elements, this.made, 0)).map(([, , w]) => w);
    return [Math.min(...ws), Math.max(...ws)];
  }

  /** Part and fingers from a side, at all of these angles of the leaf, with room round them. */
  windowOf(view: View, leafRads: readonly Rad[]): Drawing["window"] {
    const near = leafRads.flatMap((leafRad) =>
      this.bodies(leafRad).filter(({ member }) => member === "part" || member === "finger"),
    );
    return grown(boxRound(cornersOf(near).map((corner) => onPage(view, corner))), ROUND_MM);
  }

  /** Hidden lines are left out; places along an edge are looked at every `stepShare` of the window. */
  view(view: View, leafRad: Rad, window: Drawing["window"], stepShare = STEP_SHARE): Drawing {
    const lines = seenLines(this.bodies(leafRad), view, (window.max.x - window.min.x) * stepShare);
    const marks = lines.map(({ body, from, to }): Mark => {
      return { kind: "line", layer: body.member === "part" ? "edge" : "dimension", from, to };
    });
    const sentence = `${this.said}: the part in the brake with the leaf swung, seen from the front left and above.`;
    const at = this.metAt(leafRad);
    return { sentence, window, marks: at ? [...marks, contact(onPage(view, at))] : marks };
  }

  /** Part and clamp cut at a station, at all of these angles of the leaf. */
  sectionWindow(w: Mm, leafRads: readonly Rad[]): Drawing["window"] {
    const near = leafRads.flatMap((leafRad) =>
      this.cut(w, leafRad).flatMap(({ layer, ring }) => (layer === "part" || layer === "clamp" ? ring : [])),
    );
    const box = grown(boxRound(near.length > 0 ? near : [{ x: 0, y: 0 }]), ROUND_MM);
    return { min: { x: box.min.x, y: Math.max(box.min.y, -UNDER_MM) }, max: box.max };
  }

  /** The section at a station. */
  section(w: Mm, leafRad: Rad, window: Drawing["window"]): Drawing {
    const marks = this.cut(w, leafRad).map(({ layer, ring }): Mark => {
      return { kind: "outline", layer, outline: polygon(ring) };
    });
    const at = this.metAt(leafRad);
    const here = at && Math.abs(at[2] - w) <= this.job.part.thicknessMm;
    return {
      sentence: `${this.said}: section at the worst station.`,
      window,
      marks: here ? [...marks, contact({ x: at[0], y: at[1] })] : marks,
    };
  }

  /** The row of fingers from the front. */
  fingers(): Drawing {
    const { lines } = this.elements.plan;
    return fingersOf(this.job, this.step, partInSpace(this.elements, this.made, 0), lines, this.said);
  }

  private get said(): string {
    return strokeName(this.step);
  }

  /** Where metal meets metal, once the leaf has come so far. */
  private metAt(leafRad: Rad): Spot | undefined {
    const { contact: met } = this.step;
    return met && leafRad >= toRad(met.angle) - 1e-6 ? met.point : undefined;
  }

  private bodies(leafRad: Rad): readonly BodyInSpace[] {
    const known = this.known.get(leafRad);
    if (known) return known;
    const tooling = toolingOf(this.job, this.step);
    const bodies = [
      ...partInSpace(this.elements, this.made, leafRad),
      ...brakeInSpace(this.elements, this.machine, tooling, leafRad),
    ];
    if (this.known.size > MOST_KEPT) this.known.clear();
    this.known.set(leafRad, bodies);
    return bodies;
  }

  private cut(w: Mm, leafRad: Rad): { readonly layer: Layer; readonly ring: readonly Point[] }[] {
    return this.bodies(leafRad).flatMap(({ member, solids, profile }) => {
      const layer = member === "part" ? ("part" as const) : LAYERS[member];
      if (profile) return w < profile.from || w > profile.to ? [] : [{ layer, ring: profile.ring }];
      return solids.flatMap((solid) => {
        const ring = cutAt(solid, w);
        return ring.length < 3 ? [] : [{ layer, ring }];
      });
    });
  }
}

const contact = (at: Point): Mark => ({ kind: "cross", layer: "contact", at });

function cornersOf(bodies: readonly BodyInSpace[]): Spot[] {
  return bodies.flatMap(({ solids }) => solids.flatMap(({ corners }) => corners));
}

function toolingOf({ along }: WholeJob, { fingers, placed }: WholeStepAnswer): Tooling {
  return {
    ...(along.fingers || fingers.length > 0
      ? { fingers: fingers.map(({ width, from }) => ({ widthMm: width, fromMm: from })) }
      : {}),
    ...(along.clampLengthMm !== undefined && { clampLengthMm: along.clampLengthMm }),
    ...(along.brakeLengthMm !== undefined && { brakeLengthMm: along.brakeLengthMm }),
    ...(placed !== undefined && { placedMm: placed }),
  };
}

const LAYERS: Readonly<Record<BodyInSpace["member"], Layer>> = {
  part: "edge",
  finger: "clamp",
  clamp: "clamp",
  holder: "clamp",
  bed: "bed",
  leaf: "leaf",
  frame: "frame",
};

/** Where along the bend the part meets something or comes nearest to it; the middle of the longest line where nothing is near. */
function worstStation(
  { contact, clearancePoints }: WholeStepAnswer,
  lines: readonly { readonly from: number; readonly to: number }[],
): number {
  const at = contact?.point[2] ?? clearancePoints?.[0][2];
  if (at !== undefined) return at;
  const [longest] = [...lines].sort((a, b) => b.to - b.from - (a.to - a.from));
  return (longest!.from + longest!.to) / 2;
}

function fingersOf(
  { part, brake, units }: WholeJob,
  { fingers }: WholeStepAnswer,
  sheet: readonly BodyInSpace[],
  lines: readonly { readonly from: number; readonly to: number }[],
  said: string,
): Drawing {
  const hulls = sheet.map(({ solids }) =>
    convexHull(solids.flatMap(({ corners }) => corners.map((corner) => onPage(FROM_FRONT, corner)))),
  );
  // Sheet that you see edge on stands between the fingers; what is wider stands behind them or before.
  const isThin = (hull: readonly Point[]) => wideOf(hull) < MOST_THIN * part.thicknessMm;
  const high = Math.max(...brake.clamp.outlines[0]!.edges.flatMap(({ from, to }) => [from.y, to.y]));
  const foot = part.thicknessMm;
  const rows = fingers.map(({ width, from }) => ({
    width,
    box: rectangle({ x: from, y: foot }, { x: from + width, y: foot + high }),
    words: lengthFigure(width, units),
    at: { x: from + width / 2, y: foot + high / 2 },
  }));
  // Fingers and bend lines, and of the sheet what stands or hangs near them: a large part would make them too small to read.
  const near = boxRound([
    ...rows.flatMap(({ box }) => box.edges.map(({ from }) => from)),
    ...lines.flatMap(({ from, to }) => [from, to].map((x) => ({ x, y: 0 }))),
  ]);
  const sheetBox = boxRound([...hulls.flat(), near.min, near.max]);
  const beside = (near.max.x - near.min.x) / 8;
  const window = grown(
    {
      min: {
        x: Math.max(sheetBox.min.x, near.min.x - beside),
        y: Math.max(sheetBox.min.y, near.min.y - high / 2),
      },
      max: {
        x: Math.min(sheetBox.max.x, near.max.x + beside),
        y: Math.min(sheetBox.max.y, near.max.y + high / 4),
      },
    },
    ROUND_MM / 3,
  );
  const wide = window.max.x - window.min.x;
  const heightMm = wide * 0.035;
  const marks: Mark[] = [
    ...hulls.filter((hull) => !isThin(hull)).flatMap(edgesOf),
    // Seen, not cut: no hatch.
    ...rows.map(({ box }): Mark => ({ kind: "outline", layer: "face", outline: box })),
    ...hulls.filter(isThin).map((hull): Mark => ({ kind: "outline", layer: "part", outline: polygon(hull) })),
    ...lines.map(
      ({ from, to }): Mark => ({
        kind: "line",
        layer: "sightLine",
        from: { x: from, y: 0 },
        to: { x: to, y: 0 },
      }),
    ),
    ...rows
      .filter(({ width }) => width > LEAST_NAMED_SHARE * wide)
      .map(({ words, at }): Mark => ({ kind: "text", layer: "note", at, words, heightMm, anchor: "middle" })),
  ];
  return {
    sentence: `${said}: the row of fingers from the front, with the walls that stand between them.`,
    window,
    marks,
  };
}

function wideOf(hull: readonly Point[]): Mm {
  const xs = hull.map(({ x }) => x);
  return Math.max(...xs) - Math.min(...xs);
}

function edgesOf(hull: readonly Point[]): Mark[] {
  return hull.map((from, i) => ({ kind: "line", layer: "hidden", from, to: hull[(i + 1) % hull.length]! }));
}

function boxRound(points: readonly Point[]): Drawing["window"] {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { min: { x: Math.min(...xs), y: Math.min(...ys) }, max: { x: Math.max(...xs), y: Math.max(...ys) } };
}

function grown({ min, max }: Drawing["window"], by: Mm): Drawing["window"] {
  return { min: { x: min.x - by, y: min.y - by }, max: { x: max.x + by, y: max.y + by } };
}
