/**
 * The bed of a narrow brake in solids: a cap with a true sharp edge on a spine on edge, rail and setback screws, heel strip,
 * ears at the spine's ends with their pins and rests, feet where it stands on a bench.
 * Section frame, w from the middle.
 */
import type { Mm } from "../units/quantity.ts";
import { boltPlaces } from "./clampPieces.ts";
import { along, level, type PieceMaker, standing, upright } from "./pieceMaker.ts";
import { evenly, footBoltOver, NUT_CORNERS, NUT_HIGH, type Places } from "./places.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import type { BrakeSizes } from "./sizes.ts";
import { arcPoints, rectangle } from "./solid.ts";
import type { Stock } from "./stockSize.ts";

/** A lock nut is half as high as it is thick inside. */
const LOCK_NUT_HIGH = 0.5;
/** What is left of a setback screw behind its lock nut, to turn it by. */
const SCREW_TAIL_MM = 12;

export function addBed(
  maker: PieceMaker,
  { overhangMm }: ResolvedRequirements,
  sizes: BrakeSizes,
  places: Places,
): void {
  const { capDepthMm, railBackMm, spineFrontMm, spineBottomY, railMm, screwY, sheetMm } = places;
  const { screw } = sizes;
  const boltWs = boltPlaces(places, sizes);
  const screwWs = evenly(places.screws, places.screwPitchMm);
  const screwIds = screwWs.map((_, i) => `setback-screw-${i + 1}`);
  const feet = sizes.held === "bench" ? ["foot-1", "foot-2"] : [];
  maker.add("cap", {
    name: "bed cap",
    stock: maker.flat(sizes.capMm, capDepthMm, "cold-finished"),
    shape: {
      profile: rectangle(-capDepthMm, -sizes.capMm, 0, 0),
      from: -places.capLongMm / 2,
      to: places.capLongMm / 2,
    },
    holes: boltWs.map((w) =>
      upright(-places.boltFromEdge, w, [-sizes.capMm, 0], sizes.bolt.diameterMm, { tapped: sizes.bolt.name }),
    ),
    weldedTo: [
      "spine",
      ...(places.legHighMm > 0 ? ["leg"] : []),
      ...railsOf(places, screwWs).map(({ id }) => id),
    ],
    boltedTo: [...boltWs.flatMap((_, i) => [`bolt-${i + 1}`, `lower-nut-${i + 1}`])],
  });
  const spineEndW = places.bedEarW;
  maker.add("spine", {
    name: "spine",
    stock: maker.flat(sizes.spineMm, places.spineHighMm, "hot-rolled"),
    shape: {
      profile: rectangle(-spineFrontMm - sizes.spineMm, spineBottomY, -spineFrontMm, -sizes.capMm),
      from: -spineEndW,
      to: spineEndW,
    },
    weldedTo: ["cap", "bed-ear-left", "bed-ear-right", ...feet],
  });
  if (places.legHighMm > 0) {
    maker.add("leg", {
      name: "back leg",
      stock: maker.flat(sizes.spineMm, places.legHighMm, "hot-rolled"),
      shape: {
        profile: rectangle(
          -capDepthMm,
          -sizes.capMm - places.legHighMm,
          -capDepthMm + sizes.spineMm,
          -sizes.capMm,
        ),
        from: -places.capLongMm / 2,
        to: places.capLongMm / 2,
      },
      weldedTo: ["cap"],
    });
  }
  for (const rail of railsOf(places, screwWs)) {
    maker.add(rail.id, {
      name: "screw rail",
      stock: maker.flat(railMm, places.railHighMm, "hot-rolled"),
      shape: {
        profile: rectangle(-railBackMm, 0, -railBackMm + railMm, places.railHighMm),
        from: rail.from,
        to: rail.to,
      },
      holes: rail.screws.map((i) => ({
        diameter: screw.diameterMm,
        tapped: screw.name,
        from: [-railBackMm, screwY, screwWs[i]!] as const,
        to: [-railBackMm + railMm, screwY, screwWs[i]!] as const,
        ...(screwY < 1.5 * screw.diameterMm && { reason: "the rail's lower edge is welded to the cap" }),
      })),
      weldedTo: ["cap"],
      boltedTo: rail.screws.flatMap((i) => [screwIds[i]!, `${screwIds[i]}-nut`]),
    });
  }
  const holderBackX = places.noseX - overhangMm - places.holderDepthMm;
  screwWs.forEach((w, i) => {
    const lockHigh = LOCK_NUT_HIGH * screw.diameterMm;
    const endX = -railBackMm - lockHigh - SCREW_TAIL_MM;
    const long = Math.ceil((holderBackX - endX) / places.markMm - 1e-4) * places.markMm;
    maker.add(screwIds[i]!, {
      name: "setback screw",
      stock: `${screw.name} set screw, flat point`,
      shape: level(screwY, w, [holderBackX - long, holderBackX], screw.diameterMm),
      boltedTo: [railAt(places, w), `${screwIds[i]}-nut`],
    });
    maker.add(`${screwIds[i]}-nut`, {
      name: "lock nut",
      stock: `${screw.name} half nut`,
      shape: level(screwY, w, [-railBackMm - lockHigh, -railBackMm], NUT_CORNERS * screw.diameterMm),
      boltedTo: [screwIds[i]!, railAt(places, w)],
    });
  });
  maker.add("heel-strip", {
    name: "heel strip",
    stock: `sheet of the job, ${maker.words(sheetMm)} thick`,
    shape: {
      profile: rectangle(-railBackMm + railMm, 0, -places.stripFrontMm, sheetMm),
      from: -places.barLongMm / 2,
      to: places.barLongMm / 2,
    },
  });
}

/** Ears, pins and rests at both ends. */
export function addHinges(maker: PieceMaker, sizes: BrakeSizes, places: Places): void {
  const { earRadiusMm: r, bedEarW, leafEndW, restX, restY } = places;
  const earBackX = r - places.bedEarLongMm;
  for (const [side, sign] of [
    ["left", -1],
    ["right", 1],
  ] as const) {
    const between = (near: Mm, far: Mm): readonly [Mm, Mm] => (sign > 0 ? [near, far] : [-far, -near]);
    const [earFrom, earTo] = between(bedEarW, bedEarW + sizes.bedEarMm);
    const [leafFrom, leafTo] = between(leafEndW, leafEndW + sizes.leafEarMm);
    maker.add(`bed-ear-${side}`, {
      name: "bed ear",
      stock: maker.flat(sizes.bedEarMm, places.bedEarHighMm, "hot-rolled"),
      shape: {
        profile: [
          [earBackX, places.bedEarLowY],
          [r, places.bedEarLowY],
          ...arcPoints([0, 0], r, 0, Math.PI / 2),
          [earBackX, r],
        ],
        from: earFrom,
        to: earTo,
      },
      holes: [
        { diameter: sizes.pinMm, from: [0, 0, earFrom], to: [0, 0, earTo] },
        { diameter: sizes.restMm, from: [restX, restY, earFrom], to: [restX, restY, earTo] },
      ],
      weldedTo: ["spine"],
      boltedTo: [`pin-${side}`, `rest-${side}`],
    });
    maker.add(`leaf-ear-${side}`, {
      name: "leaf ear",
      stock: maker.flat(sizes.leafEarMm, places.earWideMm, "hot-rolled"),
      shape: {
        // In two quarters, so that one point is its very top.
        profile: [
          [-r, places.leafEarLowY],
          [r, places.leafEarLowY],
          ...arcPoints([0, 0], r, 0, Math.PI / 2),
          ...arcPoints([0, 0], r, Math.PI / 2, Math.PI / 2).slice(1),
        ],
        from: leafFrom,
        to: leafTo,
      },
      holes: [{ diameter: places.earHoleMm, from: [0, 0, leafFrom], to: [0, 0, leafTo] }],
      turnsWithLeaf: true,
      weldedTo: ["leaf"],
    });
    const [pinFrom, pinTo] = between(leafEndW, bedEarW + sizes.bedEarMm);
    maker.add(`pin-${side}`, {
      name: "hinge pin",
      stock: maker.round(sizes.pinMm),
      shape: along(0, 0, [pinFrom, pinTo], sizes.pinMm),
      boltedTo: [`bed-ear-${side}`],
    });
    maker.add(`rest-${side}`, {
      name: "leaf rest",
      stock: maker.round(sizes.restMm),
      shape: along(restX, restY, [pinFrom, pinTo], sizes.restMm),
      boltedTo: [`bed-ear-${side}`],
    });
  }
}

export function addLeaf(maker: PieceMaker, sizes: BrakeSizes, places: Places): void {
  const { leafHighMm, leafEndW, handleW, handleY, handleRootX, handleEndX } = places;
  maker.add("leaf", {
    name: "leaf",
    stock: maker.flat(sizes.leafMm, leafHighMm, "cold-finished"),
    shape: { profile: rectangle(0, -leafHighMm, sizes.leafMm, 0), from: -leafEndW, to: leafEndW },
    holes: [-handleW, handleW].map((w) => ({
      diameter: sizes.handleMm,
      from: [0, handleY, w] as const,
      to: [sizes.leafMm, handleY, w] as const,
      ...(-handleY < 1.5 * sizes.handleMm && {
        reason:
          "the handle fills it, welded round, beyond the ends of the sheet where the leaf carries little",
      }),
    })),
    turnsWithLeaf: true,
    weldedTo: ["leaf-ear-left", "leaf-ear-right", "handle-1", "handle-2"],
  });
  [-handleW, handleW].forEach((w, i) => {
    maker.add(`handle-${i + 1}`, {
      name: "handle",
      stock: maker.round(sizes.handleMm),
      shape: level(handleY, w, [handleRootX, handleEndX], sizes.handleMm),
      turnsWithLeaf: true,
      weldedTo: ["leaf"],
    });
  });
}

/** Feet for the bench with the bolts that hold them down. */
export function addFeet(maker: PieceMaker, sizes: BrakeSizes, places: Places, stock: Stock): void {
  if (sizes.held === "vise") return;
  const { footBolt, footMm } = sizes;
  const d = footBolt.diameterMm;
  const topY = places.spineBottomY;
  const boltXs = footBoltXs(places);
  [-places.footW, places.footW].forEach((w, i) => {
    const id = `foot-${i + 1}`;
    maker.add(id, {
      name: "foot",
      stock: maker.flat(footMm, places.footWideMm, "hot-rolled"),
      shape: {
        profile: rectangle(-places.footFrontMm - places.footLongMm, topY - footMm, -places.footFrontMm, topY),
        from: w - places.footWideMm / 2,
        to: w + places.footWideMm / 2,
      },
      holes: boltXs.map((x) => upright(x, w, [topY - footMm, topY], places.footHoleMm)),
      weldedTo: ["spine"],
      boltedTo: boltXs.map((_, k) => `foot-bolt-${2 * i + k + 1}`),
    });
    boltXs.forEach((x, k) => {
      const boltId = `foot-bolt-${2 * i + k + 1}`;
      const nutTop = topY + NUT_HIGH * d;
      maker.add(boltId, {
        name: "foot bolt",
        stock: `${footBolt.name} bolt, ${stock.boltGrade.name}, as long as the bench is thick and ${maker.words(footBoltOver(sizes, stock.units))} more`,
        shape: standing(x, w, [topY - footMm - BENCH_MM, nutTop], d),
        boltedTo: [id, `${boltId}-nut`],
      });
      maker.add(`${boltId}-nut`, {
        name: "foot nut",
        stock: `${footBolt.name} hex nut`,
        shape: standing(x, w, [topY, nutTop], NUT_CORNERS * d),
        boltedTo: [boltId, id],
      });
    });
  });
}

/** A bench top as it is taken where its thickness isn't known. */
export const BENCH_MM = 40;

/** Bolts of a foot: one before the spine, one far behind it. */
function footBoltXs(places: Places): readonly [front: Mm, back: Mm] {
  const edge = Math.ceil((1.5 * places.footHoleMm) / places.markMm) * places.markMm;
  return [-places.footFrontMm - edge, -places.footFrontMm - places.footLongMm + edge];
}

interface RailRun {
  readonly id: string;
  readonly from: Mm;
  readonly to: Mm;
  /** Which of the setback screws it carries. */
  readonly screws: readonly number[];
}

/** One rail along the holder's back, or two short ones beyond the sheet's ends where the sheet goes deeper than the bolts. */
function railsOf(places: Places, screwWs: readonly Mm[]): RailRun[] {
  const half = Math.min(places.holderLongMm, places.capLongMm) / 2;
  if (places.inside) return [{ id: "rail", from: -half, to: half, screws: screwWs.map((_, i) => i) }];
  const near = places.barLongMm / 2 + 2;
  return [
    { id: "rail-left", from: -half, to: -near, screws: [0] },
    { id: "rail-right", from: near, to: half, screws: [screwWs.length - 1] },
  ];
}

function railAt(places: Places, w: Mm): string {
  if (places.inside) return "rail";
  return w < 0 ? "rail-left" : "rail-right";
}
