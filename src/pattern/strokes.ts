/**
 * All strokes that a whole part may be bent by: every bend alone, and bends of one line of the blank together in every
 * choice, with either side clamped.
 */
import type { LineBend } from "./pattern.ts";
import { wayOf } from "./strips.ts";
import type { Stroke } from "./strokePlan.ts";
import type { WholePart } from "./wholePart.ts";

/** Lines this near each other are one. */
const ONE_LINE_MM = 0.01;

/** Of more bends on one line than this only all of them are made together. */
const MOST_CHOICES = 4;

/** The strokes, single bends first. */
export function strokesOf({ sheet }: WholePart): Stroke[] {
  const { bends } = sheet.pattern;
  const groups: number[][] = [];
  for (const bend of bends.keys()) {
    const group = groups.find(([first]) => onOneLine(bends[first!]!, bends[bend]!));
    if (group) group.push(bend);
    else groups.push([bend]);
  }
  const together = groups.flatMap((group) => choices(group).filter((choice) => choice.length > 1));
  return [...[...bends.keys()].map((bend) => [bend]), ...together].flatMap((made) => {
    const [first] = sheet.hinges.filter((hinge) => hinge.bend === made[0]);
    return [first!.left[0]!, first!.right[0]!].map((clampedFace) => ({ bends: made, clampedFace }));
  });
}

function choices(group: readonly number[]): number[][] {
  if (group.length > MOST_CHOICES) return [[...group]];
  return Array.from({ length: 2 ** group.length }, (_, set) => group.filter((_bend, i) => (set >>> i) & 1));
}

/** Whether two bends of the blank are alike and lie on one line. */
function onOneLine(a: LineBend, b: LineBend): boolean {
  const alike =
    a.turn === b.turn &&
    a.angleDeg === b.angleDeg &&
    a.insideRadiusMm === b.insideRadiusMm &&
    a.overbendDeg === b.overbendDeg;
  const { ux, uy } = wayOf(a);
  const off = ({ x, y }: { readonly x: number; readonly y: number }) =>
    Math.abs((x - a.from.x) * uy - (y - a.from.y) * ux);
  return alike && off(b.from) < ONE_LINE_MM && off(b.to) < ONE_LINE_MM;
}
