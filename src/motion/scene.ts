/**
 * Everything there is to see of one bend at one leaf angle: brake and sheet as outlines in the section frame. Pictures
 * are made from this; contact/ has its own arrays, and two of its points lie off this rim: a nose that has come through
 * the bend zone meets the section where the moving flat starts, inside the sheet drawn; and with a pivot far out and up
 * the zone is drawn from before the clamped tangent line, to which contact keeps the flat (0.03 mm over leaves of 0.5 mm).
 */
import type { Brake } from "../brake/brake.ts";
import { formedJoints } from "../part/chain.ts";
import { facesOf } from "../part/faces.ts";
import type { End, Part } from "../part/part.ts";
import { mirroredOutline, movedOutline, turnedOutline } from "../plane/move.ts";
import type { Edge, Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import { type Rad, toRad } from "../units/quantity.ts";
import { type Seat, seatFor } from "./seat.ts";
import type { Stage } from "./stages.ts";
import { slideAt } from "./swing.ts";

export interface Scene {
  readonly clamp: readonly Outline[];
  readonly bed: Outline;
  readonly leaf: Outline;
  readonly frame: readonly Outline[];
  /** The whole sheet, bend zone included, as one closed outline. */
  readonly sheet: Outline;
}

/**
 * The scene while `bend` (from 0) is being made with the `clamped` end in the throat.
 * `bendsDone` is the set of bends made before, bend 1 in bit 0.
 */
export function sceneAt(
  part: Part,
  brake: Brake,
  bendsDone: number,
  bend: number,
  clamped: End,
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
  const sheetRad = Math.max(leafAngleRad, toRad(begun?.fromDeg ?? 0));
  const scene = sceneAt(part, brake, bendsDone, bend, clamped, sheetRad);
  if (sheetRad === leafAngleRad) return scene;
  return { ...scene, leaf: turnedOutline(brake.leaf.outline, brake.leaf.pivot, leafAngleRad) };
}

/** The sheet alone, as a closed outline in the section frame. */
export function sheetAt(seat: Seat, bendsDone: number, leafAngleRad: Rad): Outline {
  const T = seat.thicknessMm;
  const { pivot } = seat;
  const half = Math.tan(leafAngleRad / 2);
  const apexX = pivot.x + pivot.y * half;
  const reach = seat.bendZoneTan * half;
  const onLeafX = seat.movingTangentX + slideAt(seat, leafAngleRad);
  // Leaf at rest: the apex measured along the leaf; the moving flat starts past the bend zone.
  const zoneEndX = Math.max(onLeafX, pivot.x - pivot.y * half + reach);
  const zoneStartX = Math.min(seat.clampedTangentX, apexX - reach);

  const clamped = facesOf(
    seat.clampedChain,
    formedJoints(seat.clampedChain, bendsDone),
    T,
    Math.min(seat.clampedTangentX - zoneStartX, 0.999 * seat.clampedChain.flatMm[0]!),
  );
  const moving = facesOf(
    seat.movingChain,
    formedJoints(seat.movingChain, bendsDone),
    T,
    Math.min(zoneEndX - onLeafX, 0.999 * seat.movingChain.flatMm[0]!),
  );
  const inThroat = (edges: readonly Edge[]) =>
    movedOutline(mirroredOutline({ edges }), seat.clampedTangentX, 0).edges;
  const onLeaf = (edges: readonly Edge[]) =>
    turnedOutline(movedOutline({ edges }, onLeafX, 0), pivot, leafAngleRad).edges;

  // Mirroring turns a run of edges round, so the clamped side's faces already lead toward the bend.
  const under = [...inThroat(clamped.under), ...onLeaf(moving.under)];
  const over = [...inThroat(clamped.over), ...onLeaf(moving.over)];
  const arcOf = (radius: number): Edge[] => {
    if (leafAngleRad <= 0) return [];
    const center = { x: apexX - reach, y: T + seat.insideRadiusMm };
    const at = (turned: Rad): Point => ({
      x: center.x + radius * Math.sin(turned),
      y: center.y - radius * Math.cos(turned),
    });
    const startRad = -Math.PI / 2;
    return [
      { kind: "arc", from: at(0), to: at(leafAngleRad), center, radius, startRad, sweepRad: leafAngleRad },
    ];
  };
  const joinedUnder = joined(under, inThroat(clamped.under).length, arcOf(seat.bendZoneTan));
  const joinedOver = joined(over, inThroat(clamped.over).length, arcOf(seat.insideRadiusMm));
  return { edges: closed(joinedUnder, joinedOver) };
}

/** Puts the bend's arc between the two sides of a face, with straight pieces where the ends do not meet. */
function joined(face: readonly Edge[], clampedCount: number, arc: readonly Edge[]): Edge[] {
  const run = [...face.slice(0, clampedCount), ...arc, ...face.slice(clampedCount)];
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
