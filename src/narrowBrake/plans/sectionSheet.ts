/**
 * The section through a bolt on a page of its own, to a stated scale, with the names of what is cut and the heights and depths that the
 * pieces' own drawings don't have.
 */
import type { Mark } from "../../drawing/model.ts";
import { onPaper, type Page, type Placed } from "../../drawing/page.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "../../drawing/pageSize.ts";
import type { Point } from "../../plane/point.ts";
import { formatLength, type LengthUnit } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import type { NarrowBrakePlan } from "../narrowBrake.ts";
import { boxOfShape, pieceOf } from "../solid.ts";
import { largerOf } from "./scales.ts";
import { sectionPlace, sectionThrough } from "./sectionThrough.ts";
import { leaders, measured, placer, ROW_MM, titleMarks, unitName } from "./sheetParts.ts";

/** Room beside the section for names and dimensions, millimetres of the page. */
const BESIDE_MM: Mm = 40;

export function sectionSheet(plan: NarrowBrakePlan, units: LengthUnit, upright: PageSize): Page {
  const { assembly, places } = plan;
  const { pieces } = assembly;
  const box = (id: string) => boxOfShape(pieceOf(assembly, id).shape);
  const boxes = pieces
    .filter(({ name }) => name !== "handle" && name !== "foot bolt")
    .map(({ shape }) => boxOfShape(shape));
  const leaf = box("leaf");
  const handleShown = leaf.max[0] + 35;
  const min = {
    x: Math.min(...boxes.map((one) => one.min[0])),
    y: Math.min(...boxes.map((one) => one.min[1])),
  };
  const max = { x: handleShown, y: Math.max(...boxes.map((one) => one.max[1])) };
  const window = { min, max, wideMm: max.x - min.x, highMm: max.y - min.y };
  const { size, scale } = largerOf(upright, units, window, ({ widthMm, heightMm }) => ({
    wideMm: widthMm - 2 * PRINTER_MARGIN_MM - 2 * BESIDE_MM - 14,
    highMm: heightMm - 2 * PRINTER_MARGIN_MM - 62,
  }));
  const at = { x: size.widthMm / 2, top: size.heightMm - PRINTER_MARGIN_MM - 46 };
  const place = placer(window, at, scale);
  const words = (mm: Mm) => formatLength(mm, units);
  const drawing: Placed = {
    drawing: {
      sentence: "Section through a bolt.",
      window: { min: { x: min.x - 1, y: min.y - 1 }, max: { x: max.x, y: max.y + 1 } },
      marks: sectionThrough(assembly),
    },
    at: place({ x: min.x - 1, y: min.y - 1 }),
    scale: scale.ratio,
  };
  const [bar, holder, spine, cap, bolt] = ["bar", "holder", "spine", "cap", "bolt-1"].map(box) as [
    ReturnType<typeof box>,
    ReturnType<typeof box>,
    ReturnType<typeof box>,
    ReturnType<typeof box>,
    ReturnType<typeof box>,
  ];
  const boltX = (bolt.min[0] + bolt.max[0]) / 2;
  const topY = max.y;
  const level = (fromX: Mm, toX: Mm, y: Mm, rows: number) => {
    const distance = Math.abs(toX - fromX);
    return measured(place({ x: fromX, y }), place({ x: toX, y }), words(distance), rows * ROW_MM);
  };
  const dims: Mark[] = [
    level(holder.max[0], bar.max[0], topY, 0.7),
    level(boltX, 0, topY, 1.7),
    level(spine.max[0], 0, topY, 2.7),
    level(0, cap.min[0], min.y, 1),
  ];
  const named: readonly (readonly [string, Point])[] = [
    ["clamp bar", { x: bar.max[0] - 3, y: (bar.min[1] + bar.max[1]) / 2 }],
    ...(assembly.pieces.some(({ id }) => id === "rib")
      ? [["rib of the holder", { x: box("rib").max[0] - 1, y: box("rib").max[1] - 4 }] as const]
      : []),
    ["holder", { x: holder.max[0] - 4, y: (holder.min[1] + holder.max[1]) / 2 }],
    ["hold-down bolt, nut, washer", { x: boltX, y: box("nut-1").max[1] - 2 }],
    ["leaf", { x: leaf.max[0] / 2, y: leaf.min[1] * 0.3 }],
    ["handle", { x: handleShown - 8, y: (box("handle-1").min[1] + box("handle-1").max[1]) / 2 }],
    ["pivot on the cap's edge", { x: 0, y: 0 }],
  ];
  const namedLeft: readonly (readonly [string, Point])[] = [
    ["setback screw, lock nut", { x: box("setback-screw-1").min[0] + 2, y: places.screwY }],
    ["screw rail", { x: -places.railBackMm + places.railMm / 2, y: places.railHighMm - 1.5 }],
    ["heel strip", { x: -places.stripFrontMm - 3, y: 0.3 }],
    ["bed cap", { x: cap.min[0] + 8, y: cap.min[1] / 2 }],
    ...(places.legHighMm > 0
      ? [["back leg", { x: cap.min[0] + 2, y: cap.min[1] - places.legHighMm * 0.5 }] as const]
      : []),
    ["spine", { x: (spine.min[0] + spine.max[0]) / 2, y: spine.min[1] * 0.8 }],
    ["bed ear, behind", { x: -places.bedEarLongMm + places.earRadiusMm + 2, y: places.bedEarLowY + 3 }],
  ];
  return {
    size,
    placed: [
      drawing,
      onPaper(size, "Section of the narrow brake.", [
        ...titleMarks(
          [
            `Section through a bolt, ${words(Math.abs(sectionPlace(assembly)))} ${units} from the middle, ${scale.words}. Lengths in ${unitName(units)}.`,
            `Dashed: hidden. Handles cut short: they reach ${words(places.handleEndX)} from the pivot.`,
          ],
          size,
        ),
        ...dims,
        ...leaders(named, place, size.widthMm - PRINTER_MARGIN_MM - BESIDE_MM + 2, "start"),
        ...leaders(namedLeft, place, PRINTER_MARGIN_MM + BESIDE_MM - 2, "end"),
      ]),
    ],
  };
}
