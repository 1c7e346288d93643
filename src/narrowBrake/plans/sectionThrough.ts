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
          outline: polygon(profileOf(piece).map(([x, y]) => ({ x, y }))),
        },
      ]),
    ...[screw, lock, ...cut.filter(({ name }) => HATCHED[name] === undefined)].flatMap((piece): Mark[] => [
      { kind: "outline", layer: "face", outline: polygon(profileOf(piece).map(([x, y]) => ({ x, y }))) },
    ]),
    { kind: "cross", layer: "note", at: { x: 0, y: 0 } },
  ];
}

function kinds(pieces: readonly Piece[], name: string): Piece[] {
  return pieces.filter((piece) => piece.name === name).slice(0, 1);
}

function outlineOf(piece: Piece, layer: Layer): Mark[] {
  const profile = profileOf(piece);
  return profile.map(([x, y], i) => {
    const [nx, ny] = profile[(i + 1) % profile.length]!;
    return { kind: "line", layer, from: { x, y }, to: { x: nx, y: ny } };
  });
}

function profileOf({ shape }: Piece): readonly Xy[] {
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
