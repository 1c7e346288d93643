/**
 * Blank and faces of a whole part as the answer tells them: outline and holes with the radii as written, bend lines and
 * tangent lines as far as there is sheet, relief holes.
 */
import { wholeReliefs } from "../blank/wholeReliefs.ts";
import type { PointPair } from "../jobFile/answer.ts";
import type { FaceAnswer, WholeAnswer, WholeBlankBend } from "../jobFile/wholeAnswer.ts";
import { foldOf } from "../pattern/folding.ts";
import type { LineBend } from "../pattern/pattern.ts";
import type { Ring } from "../pattern/ring.ts";
import type { WholePart } from "../pattern/wholePart.ts";
import type { Corner } from "../plane/fillet.ts";
import type { Point } from "../plane/point.ts";

type BlankAnswer = WholeAnswer["blank"];

/** The faces with their outlines in the blank. */
export function facesAnswer({ sheet }: WholePart): FaceAnswer[] {
  return sheet.faces.map(({ outer, holes }, i) => ({
    face: i + 1,
    name: sheet.names[i]!,
    outline: outer.map(pair),
    holes: holes.map((hole) => hole.map(pair)),
  }));
}

/** The blank. */
export function blankAnswer({ sheet, thicknessMm }: WholePart): BlankAnswer {
  const { outline, holes, bends } = sheet.pattern;
  return {
    outline: outline.map(corner),
    holes: holes.map((hole) => hole.map(corner)),
    reliefHoles: wholeReliefs(sheet).map(({ center, diameterMm, bends: [one, other] }) => ({
      x: center.x,
      y: center.y,
      diameter: diameterMm,
      bends: [one + 1, other + 1],
    })),
    bends: bends.map((bend, i): WholeBlankBend => {
      const strips = sheet.hinges.filter((hinge) => hinge.bend === i).flatMap((hinge) => hinge.strips);
      const rings = strips.map(({ outer }) => outer);
      return {
        bend: i + 1,
        line: crossingEnds(rings, bend, bend.allowanceMm / 2, thicknessMm),
        tangents: [
          crossingEnds(rings, bend, 0, thicknessMm),
          crossingEnds(rings, bend, bend.allowanceMm, thicknessMm),
        ],
        allowance: bend.allowanceMm,
        deduction: bend.deductionMm,
      };
    }),
  };
}

function pair({ x, y }: Point): PointPair {
  return [x, y];
}

function corner({ x, y, radius }: Corner): BlankAnswer["outline"][number] {
  return radius === undefined || radius === 0 ? [x, y] : [x, y, radius];
}

/** A point this near a line along the bend lies on it. */
const ON_LINE_MM = 0.02;

/** The outermost points of a bend's strips on a line along it, `offMm` past its left tangent line. */
function crossingEnds(
  rings: readonly Ring[],
  bend: LineBend,
  offMm: number,
  thicknessMm: number,
): readonly [PointPair, PointPair] {
  const { tangent, nx, ny } = foldOf(bend, thicknessMm, "left");
  const off = ({ x, y }: Point) => (x - tangent.x) * nx + (y - tangent.y) * ny - offMm;
  const points = rings.flatMap((ring) =>
    ring.flatMap((a, i): Point[] => {
      const b = ring[(i + 1) % ring.length]!;
      const [da, db] = [off(a), off(b)];
      if (Math.abs(da) < ON_LINE_MM) return [a];
      if (da > 0 === db > 0 || Math.abs(db) < ON_LINE_MM) return [];
      const t = da / (da - db);
      return [{ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) }];
    }),
  );
  const along = ({ x, y }: Point) =>
    (x - bend.from.x) * (bend.to.x - bend.from.x) + (y - bend.from.y) * (bend.to.y - bend.from.y);
  const sorted = points.sort((a, b) => along(a) - along(b));
  return [pair(sorted[0]!), pair(sorted.at(-1)!)];
}
