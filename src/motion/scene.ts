/**
 * Everything there is to see of one bend at one leaf angle: brake and sheet as outlines in the section frame. Pictures
 * are made from this; contact/ has its own arrays, and two of its points lie off this rim: a nose that has come through
 * the bend zone meets the section where the moving flat starts, inside the sheet drawn; and with a pivot far out and up
 * the zone is drawn from before the clamped tangent line, to which contact keeps the flat (0.03 mm over leaves of 0.5 mm).
 */
import type { Brake } from "../brake/brake.ts";
import { type Chain, formedJoints } from "../part/chain.ts";
import { facesOf } from "../part/faces.ts";
import type { Part } from "../part/part.ts";
import { mirroredOutline, movedOutline, turnedOutline } from "../plane/move.ts";
import type { Edge, Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import { type Mm, type Rad, toRad } from "../units/quantity.ts";
import type { Flattening } from "./hemStrokes.ts";
import { type Seat, seatFor } from "./seat.ts";
import { slideAt } from "./slide.ts";
import type { BendInTurn, Stage } from "./stages.ts";

export interface Scene {
  readonly clamp: readonly Outline[];
  readonly bed: Outline;
  readonly leaf: Outline;
  readonly frame: readonly Outline[];
  /** The whole sheet, bend zone included, as one closed outline. */
  readonly sheet: Outline;
}

/** The scene while a bend is being made. */
export function sceneAt(
  part: Part,
  brake: Brake,
  { bendsDone, bend, clamped }: BendInTurn,
  leafAngleRad: Rad,
): Scene {
  const seat = seatFor(part, brake, bend, clamped);
  return {
    clamp: brake.clamp.outlines.map((o) => movedOutline(o, -seat.noseSetbackMm, seat.thicknessMm)),
    bed: brake.bed,
    leaf: turnedOutline(brake.leaf.outline, seat.pivot, leafAngleRad),
    frame: brake.frame,
    sheet: sheetAt(seat, bendsDone, leafAngleRad),
  };
}

/** The scene of a stage of an order. A bend that was begun before keeps its angle until the leaf comes up to it. */
export function stageScene(stage: Stage, leafAngleRad: Rad): Scene {
  const { part, brake, bendsDone, bend, clamped, begun } = stage;
  if (stage.hem !== undefined && stage.hem !== "fold" && stage.hem.flattening)
    return hemScene(stage, stage.hem.flattening);
  const sheetRad = Math.max(leafAngleRad, toRad(begun?.fromDeg ?? 0));
  const scene = sceneAt(part, brake, { bendsDone, bend, clamped }, sheetRad);
  if (sheetRad === leafAngleRad) return scene;
  return { ...scene, leaf: turnedOutline(brake.leaf.outline, brake.leaf.pivot, leafAngleRad) };
}

/** A hem under the clamp: the whole sheet with the hem folded flat, and the clamp down on both layers. */
function hemScene({ bendsDone, bend, clamped }: Stage, { drawn, brake, underClampMm }: Flattening): Scene {
  const [at, made] = bend === 0 ? [1, (bendsDone << 1) | 1] : [bend, bendsDone | (1 << (bend + 1))];
  const seat = seatFor(drawn, brake, at, clamped);
  return {
    clamp: brake.clamp.outlines.map((o) => movedOutline(o, -seat.noseSetbackMm, underClampMm)),
    bed: brake.bed,
    leaf: brake.leaf.outline,
    frame: brake.frame,
    sheet: sheetAt(seat, made, 0),
  };
}

/** The sheet alone, as a closed outline in the section frame. */
export function sheetAt(seat: Seat, bendsDone: number, leafRad: Rad): Outline {
  const { pivot } = seat;
  // A leaf whose face lies low comes up to the sheet first.
  const leafAngleRad = Math.max(0, leafRad - seat.leafAheadRad);
  const half = Math.tan(leafAngleRad / 2);
  const reach = seat.bendZoneTan * half;
  const onLeafX = seat.movingTangentX + slideAt(seat, leafAngleRad);
  const zoneStartX = Math.min(seat.clampedTangentX, pivot.x + pivot.y * half - reach);
  return sheetPosed(seat, bendsDone, {
    arcFromX: pivot.x + pivot.y * half - reach,
    arcRad: leafAngleRad,
    clampedCutMm: seat.clampedTangentX - zoneStartX,
    // Leaf at rest: the apex measured along the leaf; the moving flat starts past the bend zone.
    movingCutMm: Math.max(0, pivot.x - pivot.y * half + reach - onLeafX),
    onLeaf: (moving) => turnedOutline(movedOutline(moving, onLeafX, 0), pivot, leafAngleRad),
  });
}

/** The sheet once the leaf has let go: relaxed to the bend's own angle, on its own apex, still where it was clamped. */
export function relaxedSheet(seat: Seat, bendsDone: number): Outline {
  const { clampedTangentX, relaxedTangentMm, angleRad } = seat;
  const apex = { x: clampedTangentX + relaxedTangentMm, y: 0 };
  return sheetPosed(seat, bendsDone, {
    arcFromX: clampedTangentX,
    arcRad: angleRad,
    clampedCutMm: 0,
    movingCutMm: 0,
    onLeaf: (moving) => turnedOutline(movedOutline(moving, apex.x + relaxedTangentMm, 0), apex, angleRad),
  });
}

/** Where the bend being made stands, and what of the flats on its two sides it takes with it. */
interface BendPose {
  readonly arcFromX: Mm;
  readonly arcRad: Rad;
  readonly clampedCutMm: Mm;
  readonly movingCutMm: Mm;
  /** Brings the moving side from its own frame into the section. */
  readonly onLeaf: (moving: Outline) => Outline;
}

function sheetPosed(seat: Seat, bendsDone: number, pose: BendPose): Outline {
  const { clampedChain, movingChain, thicknessMm: T, insideRadiusMm } = seat;
  const facesCut = (chain: Chain, cutMm: Mm) =>
    facesOf(chain, formedJoints(chain, bendsDone), T, Math.min(cutMm, 0.999 * chain.flatMm[0]!));
  const clamped = facesCut(clampedChain, pose.clampedCutMm);
  const moving = facesCut(movingChain, pose.movingCutMm);
  const inThroat = (edges: readonly Edge[]) =>
    movedOutline(mirroredOutline({ edges }), seat.clampedTangentX, 0).edges;
  const onLeaf = (edges: readonly Edge[]) => pose.onLeaf({ edges }).edges;
  const arcOf = (radius: number): Edge[] => {
    if (pose.arcRad <= 0) return [];
    const center = { x: pose.arcFromX, y: T + insideRadiusMm };
    const at = (turned: Rad): Point => ({
      x: center.x + radius * Math.sin(turned),
      y: center.y - radius * Math.cos(turned),
    });
    const [startRad, sweepRad] = [-Math.PI / 2, pose.arcRad];
    return [{ kind: "arc", from: at(0), to: at(sweepRad), center, radius, startRad, sweepRad }];
  };
  // Mirroring turns a run of edges round, so the clamped side's faces already lead toward the bend.
  const faceOf = (held: readonly Edge[], swung: readonly Edge[], radius: number) =>
    joined([...inThroat(held), ...arcOf(radius), ...onLeaf(swung)]);
  return {
    edges: closed(
      faceOf(clamped.under, moving.under, seat.bendZoneTan),
      faceOf(clamped.over, moving.over, insideRadiusMm),
    ),
  };
}

/** A face without gaps: straight pieces where one edge does not end on the next. */
function joined(run: readonly Edge[]): Edge[] {
  return run.flatMap((edge, i): Edge[] => {
    const before = run[i - 1];
    return before && apart(before.to, edge.from)
      ? [{ kind: "line", from: before.to, to: edge.from }, edge]
      : [edge];
  });
}

function closed(under: readonly Edge[], over: readonly Edge[]): Edge[] {
  const back = over.map((edge): Edge => {
    if (edge.kind === "line") return { kind: "line", from: edge.to, to: edge.from };
    return {
      ...edge,
      from: edge.to,
      to: edge.from,
      startRad: edge.startRad + edge.sweepRad,
      sweepRad: -edge.sweepRad,
    };
  });
  back.reverse();
  const cap = (from: Point, to: Point): Edge => ({ kind: "line", from, to });
  const [firstUnder, lastUnder] = [under[0]!, under[under.length - 1]!];
  const [firstBack, lastBack] = [back[0]!, back[back.length - 1]!];
  return [...under, cap(lastUnder.to, firstBack.from), ...back, cap(lastBack.to, firstUnder.from)];
}

function apart(a: Point, b: Point): boolean {
  return Math.abs(a.x - b.x) + Math.abs(a.y - b.y) > 1e-9;
}
