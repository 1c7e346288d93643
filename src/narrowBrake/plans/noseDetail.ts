/**
 * The nose of the clamp bar, enlarged: its radius, how far its front leans back, the sheet under it and the cap's edge before it.
 */
import type { Block } from "../../drawing/block.ts";
import type { Mark } from "../../drawing/model.ts";
import type { Placed } from "../../drawing/page.ts";
import { paragraph } from "../../drawing/paragraph.ts";
import { polygon, rectangle } from "../../drawing/polygon.ts";
import { formatLength } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import type { NarrowBrakePlan } from "../narrowBrake.ts";
import type { ResolvedRequirements } from "../requirements.ts";
import { boxOfShape, isRound, pieceOf } from "../solid.ts";

const ENLARGED = 4;
const WIDE_MM: Mm = 72;
const WORDS_MM: Mm = 3;

/** The nose four times as large, with what a file and a radius gauge need beside it. */
export function noseDetail(
  { assembly, places }: NarrowBrakePlan,
  { units, noseRadiusMm, frontBevelDeg }: ResolvedRequirements,
  widthMm: Mm,
): Block {
  const bar = pieceOf(assembly, "bar");
  const { max } = boxOfShape(bar.shape);
  const lowY = -4;
  const window = { min: { x: -WIDE_MM / ENLARGED + 4, y: lowY }, max: { x: 4, y: max[1] + 1.5 } };
  const heightMm = (window.max.y - window.min.y) * ENLARGED;
  const profile = isRound(bar.shape) ? [] : bar.shape.profile;
  const marks: Mark[] = [
    { kind: "outline", layer: "clamp", outline: polygon(profile.map(([x, y]) => ({ x, y }))) },
    { kind: "outline", layer: "bed", outline: rectangle({ x: -60, y: -20 }, { x: 0, y: 0 }) },
    { kind: "outline", layer: "leaf", outline: rectangle({ x: 0, y: -20 }, { x: 20, y: 0 }) },
    { kind: "outline", layer: "part", outline: rectangle({ x: -60, y: 0 }, { x: 20, y: places.sheetMm }) },
  ];
  const words = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const told = paragraph(
    `Nose of the clamp bar, ${ENLARGED}:1, closed on the thinnest sheet. Radius ${words(noseRadiusMm)} all along, no flats. The front leans back ${frontBevelDeg}° from square. Foremost point ${words(Math.abs(places.noseX))} ${places.noseX > 0 ? "in front of" : "behind"} the cap's edge, set with the setback screws: the sheet's own setback is in the check of each part.`,
    WORDS_MM,
    widthMm - WIDE_MM - 8,
  );
  return {
    heightMm: Math.max(heightMm, told.heightMm),
    put: (leftMm, topMm) => {
      const placed: Placed = {
        drawing: { sentence: "Nose of the clamp bar.", window, marks },
        at: { x: leftMm, y: topMm - heightMm },
        scale: ENLARGED,
      };
      return { marks: told.put(leftMm + WIDE_MM + 8, topMm).marks, placed: [placed] };
    },
  };
}
