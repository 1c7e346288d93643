/**
 * The part on its way from one step to the next: out of the throat, turned end for end or over, and in again. Seen in section
 * a turn about an upright or a level axis is a picture squeezed to nothing and opened the other way round. Shown only, not
 * worked out: nothing is checked on this way.
 */
import { polygon } from "../../src/drawing/polygon.ts";
import { boxOf } from "../../src/plane/bounding.ts";
import type { Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";
import { flatPlaces } from "./flatPlaces.ts";
import { turnsOver } from "./stageLabels.ts";
import { type StepPose, sheetAtDeg } from "./stepPose.ts";

interface Lie {
  readonly middle: Point;
  readonly headingRad: number;
}

/** Where a flat lies, from its end at the lower-numbered bend to the other. */
function lieOf(pose: StepPose, leafDeg: number, flat: number): Lie {
  const places = flatPlaces(pose, leafDeg);
  const place = places.find((one) => one.flat === flat)!;
  // Both sides lead outward from the bend being made: lower numbers lie on one of them.
  const rising = places.filter((one) => one.flat > pose.seat.bend).includes(place);
  const [from, to] = rising ? [place.from, place.to] : [place.to, place.from];
  return {
    middle: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    headingRad: Math.atan2(to.y - from.y, to.x - from.x),
  };
}

/** The sheet at `share` of its way into step `to`, from 0 to 1; `from` null for the flat blank that comes from the front. */
export function sheetOnTheWay(from: StepPose | null, to: StepPose, share: number): Outline {
  const sheet = sheetAtDeg(to, 0);
  const box = boxOf(sheet);
  const size = Math.max(box.maxX - box.minX, box.maxY - box.minY);
  const eased = share * share * (3 - 2 * share);
  const flat = to.seat.clampedChain.flatNumber[0]!;
  const end = lieOf(to, 0, flat);
  const begin =
    from === null
      ? { ...end, middle: { x: end.middle.x + 1.3 * size, y: end.middle.y } }
      : lieOf(from, from.step.reached, flat);
  const mirrored = from !== null && turnsOver(from) !== turnsOver(to);
  const shortest = Math.atan2(
    Math.sin(end.headingRad - begin.headingRad),
    Math.cos(end.headingRad - begin.headingRad),
  );
  const endForEnd = mirrored && Math.abs(shortest) > Math.PI / 2;
  const turn = endForEnd ? shortest - Math.sign(shortest) * Math.PI : shortest;
  const heading = end.headingRad - turn * (1 - eased);
  const along = endForEnd ? 2 * eased - 1 : 1;
  const across = mirrored && !endForEnd ? 2 * eased - 1 : 1;
  const out = from === null ? 0 : 0.7 * size * Math.sin(Math.PI * share);
  const middle = {
    x: begin.middle.x + (end.middle.x - begin.middle.x) * eased + out,
    y: begin.middle.y + (end.middle.y - begin.middle.y) * eased + out * 0.25,
  };
  const [c, s] = [Math.cos(heading), Math.sin(heading)];
  const [ec, es] = [Math.cos(end.headingRad), Math.sin(end.headingRad)];
  return polygon(
    spotsOf(sheet).map((p) => {
      const [dx, dy] = [p.x - end.middle.x, p.y - end.middle.y];
      const [u, v] = [(dx * ec + dy * es) * along, (dy * ec - dx * es) * across];
      return { x: middle.x + u * c - v * s, y: middle.y + u * s + v * c };
    }),
  );
}

/** Corners of an outline, arcs in eighths. */
function spotsOf({ edges }: Outline): Point[] {
  return edges.flatMap((edge) => {
    if (edge.kind === "line") return [edge.from];
    return Array.from({ length: 8 }, (_, i) => {
      const rad = edge.startRad + (edge.sweepRad * i) / 8;
      return {
        x: edge.center.x + edge.radius * Math.cos(rad),
        y: edge.center.y + edge.radius * Math.sin(rad),
      };
    });
  });
}
