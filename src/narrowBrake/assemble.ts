/**
 * A narrow brake as an assembly of solids, from its sizes: nothing is drawn, listed or checked that does not stand here.
 */
import { addBed, addFeet, addHinges, addLeaf, BENCH_MM } from "./bedPieces.ts";
import { addClamp, addHoldDown } from "./clampPieces.ts";
import { PieceMaker } from "./pieceMaker.ts";
import type { Places } from "./places.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import type { BrakeSizes } from "./sizes.ts";
import { type Assembly, type Mounting, rectangle } from "./solid.ts";
import type { Stock } from "./stockSize.ts";

/** How far the vise's own body is taken to reach out in front of its jaws. */
const VISE_BODY_MM = 150;
const BENCH_DEEP_MM = 600;

/** The assembly but for its swing (freeSwing.ts), which takes longer than all else. */
export function assemble(
  requirements: ResolvedRequirements,
  sizes: BrakeSizes,
  places: Places,
  stock: Stock,
): Omit<Assembly, "swing"> {
  const maker = new PieceMaker(requirements.units);
  const barStockMm = stock.flatThicknessesMm.find((t) => t >= sizes.barMm - 1e-6) ?? sizes.barMm;
  addClamp(maker, requirements, sizes, places, barStockMm);
  addBed(maker, requirements, sizes, places);
  addHinges(maker, sizes, places);
  addLeaf(maker, sizes, places);
  addHoldDown(maker, sizes, places, stock);
  addFeet(maker, sizes, places, stock);
  const { pieces } = maker;
  return {
    pieces,
    pivot: [0, 0],
    vise: sizes.held === "vise" ? jaws(requirements, sizes, places) : bench(sizes, places),
  };
}

function jaws({ vise }: ResolvedRequirements, sizes: BrakeSizes, places: Places): Mounting {
  const { jawTopY, spineFrontMm, frontJawMm } = places;
  const backX = -spineFrontMm - sizes.spineMm;
  const lowY = jawTopY - vise.jawHeightMm;
  return {
    held: "vise",
    topY: jawTopY,
    jawWidth: vise.jawWidthMm,
    jawHeight: vise.jawHeightMm,
    bodies: [
      { name: "front jaw", profile: rectangle(-spineFrontMm, lowY, -spineFrontMm + frontJawMm, jawTopY) },
      { name: "back jaw", profile: rectangle(backX - frontJawMm, lowY, backX, jawTopY) },
      {
        name: "body of the vise",
        profile: rectangle(backX - VISE_BODY_MM, lowY - 60, -spineFrontMm + VISE_BODY_MM, lowY),
      },
    ],
  };
}

function bench(sizes: BrakeSizes, places: Places): Mounting {
  const topY = places.spineBottomY - sizes.footMm;
  return {
    held: "bench",
    topY,
    bodies: [
      {
        name: "bench",
        profile: rectangle(-BENCH_DEEP_MM, topY - BENCH_MM, -places.footFrontMm, topY),
      },
    ],
  };
}
