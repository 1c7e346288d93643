/**
 * The brake cut square to the bend through a bolt, seen from its right end: cut pieces hatched, bolts, screws and pins whole as is
 * the custom, what stands behind in outline, the far ear and its hidden parts dashed.
 */
import type { Layer, Mark } from "../../drawing/model.ts";
import { polygon } from "../../drawing/polygon.ts";
import type { Mm } from "../../units/quantity.ts";
import { type Assembly, boxOfShape, isRound, type Piece, pieceOf, rectangle, type Xy } from "../solid.ts";

const HATCHED: Readonly<Record<string, Layer>> = {
  "clamp bar": "clamp",
  holder: "clamp",
  "rib of the holder": "clamp",
  "bed cap": "bed",
  spine: "bed",
  "back leg": "bed",
  "screw rail": "frame",
  "heel strip": "frame",
  leaf: "leaf",
  "slotted washer": "frame",
};
const ROUND_POINTS = 48;

/** Where the section is cut: through the bolt nearest to the middle. */
export function sectionPlace({ pieces }: Pick<Assembly, "pieces">): Mm {
  const ws = pieces
    .filter(({ name }) => name === "hold-down bolt")
    .map((bolt) => boxOfShape(bolt.shape).min[2] + boxOfShape(bolt.shape).max[2]);
  return Math.min(...ws.map((w) => Math.abs(w))) / 2;
}

export function sectionThrough(assembly: Assembly): Mark[] {
  const { pieces } = assembly;
  const at = sectionPlace(assembly);
  const cut = pieces.filter(({ shape }) => {
    const { min, max } = boxOfShape(shape);
    return min[2] < at && max[2] > at;
  });
  const behind = [
    ...kinds(pieces, "bed ear"),
    ...kinds(pieces, "leaf ear"),
    ...kinds(pieces, "leaf rest"),
    ...kinds(pieces, "foot"),
  ];
  const handle = pieceOf(assembly, "handle-1");
  const screw = pieces.find(({ name }) => name === "setback screw")!;
  const lock = pieces.find(({ name }) => name === "lock nut")!;
  return [
    ...behind.flatMap((piece) => outlineOf(piece, "hidden")),
    ...outlineOf(pieceOf(assembly, "pin-right"), "hidden"),
    ...outlineOf(handle, "edge"),
    ...cut
      .filter(({ name }) => HATCHED[name] !== undefined)
      .flatMap((piece): Mark[] => [
        {
          kind: "outline",
          layer: HATCHED[piece.name]!,
          outline: polygon(profileOf(piece.shape).map(([x, y]) => ({ x, y }))),
        },
      ]),
    ...[screw, lock, ...cut.filter(({ name }) => HATCHED[name] === undefined)].flatMap((piece): Mark[] => [
      {
        kind: "outline",
        layer: "face",
        outline: polygon(profileOf(piece.shape).map(([x, y]) => ({ x, y }))),
      },
    ]),
    { kind: "cross", layer: "note", at: { x: 0, y: 0 } },
  ];
}

function kinds(pieces: readonly Piece[], name: string): Piece[] {
  return pieces.filter((piece) => piece.name === name).slice(0, 1);
}

/** Straight edges as lines, arcs as arcs, so that both can be dashed. */
function outlineOf({ shape }: Piece, layer: Layer): Mark[] {
  if (isRound(shape) && Math.abs(shape.to[2] - shape.from[2]) > 1e-9) {
    const [x, y] = shape.from;
    return [
      {
        kind: "arc",
        layer,
        center: { x, y },
        radius: shape.diameter / 2,
        startRad: 0,
        sweepRad: 2 * Math.PI,
      },
    ];
  }
  const profile = profileOf(shape);
  const marks: Mark[] = [];
  let arc: { startRad: number; sweepRad: number } | undefined;
  profile.forEach(([x, y], i) => {
    const [nx, ny] = profile[(i + 1) % profile.length]!;
    const [radius, next] = [Math.hypot(x, y), Math.hypot(nx, ny)];
    // Ears are rounded about the pivot, which is the origin.
    if (Math.abs(radius - next) < 1e-6 && Math.hypot(nx - x, ny - y) < radius / 4) {
      const turn = Math.atan2(x * ny - y * nx, x * nx + y * ny);
      arc = { startRad: arc?.startRad ?? Math.atan2(y, x), sweepRad: (arc?.sweepRad ?? 0) + turn };
      return;
    }
    if (arc) marks.push({ kind: "arc", layer, center: { x: 0, y: 0 }, radius, ...arc });
    arc = undefined;
    marks.push({ kind: "line", layer, from: { x, y }, to: { x: nx, y: ny } });
  });
  return marks;
}

function profileOf(shape: Piece["shape"]): readonly Xy[] {
  if (!isRound(shape)) return shape.profile;
  if (Math.abs(shape.to[2] - shape.from[2]) > 1e-9) {
    return Array.from({ length: ROUND_POINTS }, (_, i) => {
      const angle = (2 * Math.PI * i) / ROUND_POINTS;
      return [
        shape.from[0] + (shape.diameter / 2) * Math.cos(angle),
        shape.from[1] + (shape.diameter / 2) * Math.sin(angle),
      ];
    });
  }
  const { min, max } = boxOfShape(shape);
  return rectangle(min[0], min[1], max[0], max[1]);
}
