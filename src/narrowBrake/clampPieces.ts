/**
 * The clamp of a narrow brake in solids: bar under its holder, bolts and nuts that hold both down, springs that lift them.
 * Drawn closed on the thinnest sheet at the least nose setback. Section frame, w from the middle.
 */
import { type Deg, type Mm, toRad } from "../units/quantity.ts";
import { type PieceMaker, standing, upright } from "./pieceMaker.ts";
import { evenly, NUT_CORNERS, NUT_HIGH, type Places } from "./places.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import type { BrakeSizes } from "./sizes.ts";
import { arcPoints, rectangle, type Xy } from "./solid.ts";
import type { Stock } from "./stockSize.ts";

/** A flange nut's flange is at least twice as wide as its bolt (ISO 4161, ASME B18.2.2, from memory): it can't drop into the holder's hole. */
const FLANGE_OF_NUT = 2;
/** Threads that stand out of a nut. */
const THREADS_OUT = 2;

/** Bar, holder and rib. */
export function addClamp(
  maker: PieceMaker,
  { overhangMm, noseRadiusMm, frontBevelDeg }: ResolvedRequirements,
  sizes: BrakeSizes,
  places: Places,
  barStockMm: Mm,
): void {
  const { noseX, sheetMm, holderUnderY, holderTopY, barLongMm, holderLongMm, flatHead } = places;
  const [barTop, barBackX] = [holderUnderY, -places.barBackMm];
  const holderFrontX = noseX - overhangMm;
  const boltX = noseX - places.frontMm;
  const boltWs = boltPlaces(places, sizes);
  const headWs = flatHeadPlaces(places, sizes);
  const throughBar = places.inside
    ? boltWs.map((w) => upright(boltX, w, [sheetMm, barTop], places.boltHoleMm))
    : [];
  const planed = barStockMm > sizes.barMm + 1e-6 ? `, planed to ${maker.words(sizes.barMm)}` : "";
  maker.add("bar", {
    name: "clamp bar",
    stock: `${maker.flat(barStockMm, places.barDepthMm, "cold-finished")}${planed}`,
    shape: {
      profile: barProfile(sizes.barMm, barBackX, { noseX, sheetMm, noseRadiusMm, frontBevelDeg }),
      from: -barLongMm / 2,
      to: barLongMm / 2,
    },
    holes: [
      ...throughBar,
      ...headWs.map((w) => upright(boltX, w, [sheetMm, barTop], places.flatHeadHoleMm)),
      ...headWs.map((w) =>
        upright(boltX, w, [sheetMm, sheetMm + Math.min(flatHead.headHighMm, sizes.barMm)], flatHead.headMm, {
          reason: "countersink",
        }),
      ),
    ],
    boltedTo: [
      "holder",
      ...headWs.map((_, i) => `bar-screw-${i + 1}`),
      ...(places.inside ? boltIds(boltWs) : []),
    ],
  });
  const pockets = [-places.springW, places.springW].map((w) =>
    upright(-places.springX, w, [holderUnderY, holderUnderY + places.pocketDeepMm], places.pocketMm, {
      reason: "a blind pocket that only keeps the spring in its place",
    }),
  );
  maker.add("holder", {
    name: "holder",
    stock: maker.flat(sizes.holderMm, places.holderDepthMm, "cold-finished"),
    shape: {
      profile: rectangle(holderFrontX - places.holderDepthMm, holderUnderY, holderFrontX, holderTopY),
      from: -holderLongMm / 2,
      to: holderLongMm / 2,
    },
    holes: [
      ...boltWs.map((w) => upright(boltX, w, [holderUnderY, holderTopY], places.boltHoleMm)),
      ...headWs.map((w) =>
        upright(boltX, w, [holderUnderY, holderUnderY + places.flatHeadDeepMm], flatHead.diameterMm, {
          tapped: flatHead.name,
        }),
      ),
      ...(places.pocketDeepMm > 0 ? pockets : []),
    ],
    weldedTo: sizes.ribHighMm > 0 ? ["rib"] : [],
    boltedTo: [
      "bar",
      ...headWs.map((_, i) => `bar-screw-${i + 1}`),
      ...boltIds(boltWs),
      ...(places.pocketDeepMm > 0 ? ["spring-1", "spring-2"] : []),
    ],
  });
  if (sizes.ribHighMm > 0) {
    const backX = holderFrontX - places.holderDepthMm + 3;
    maker.add("rib", {
      name: "rib of the holder",
      stock: maker.flat(sizes.ribMm, sizes.ribHighMm, "hot-rolled"),
      shape: {
        profile: rectangle(backX, holderTopY, backX + sizes.ribMm, holderTopY + sizes.ribHighMm),
        from: -holderLongMm / 2,
        to: holderLongMm / 2,
      },
      weldedTo: ["holder"],
    });
  }
  headWs.forEach((w, i) => {
    maker.add(`bar-screw-${i + 1}`, {
      name: "bar screw",
      stock: `${flatHead.name} flat head screw`,
      shape: standing(boltX, w, [sheetMm, holderUnderY + places.flatHeadDeepMm], flatHead.diameterMm),
      boltedTo: ["bar", "holder"],
    });
  });
}

/** Rods, washers, nuts and springs. */
export function addHoldDown(maker: PieceMaker, sizes: BrakeSizes, places: Places, stock: Stock): void {
  const { holderTopY, washerMm, washerThickMm, boltFromEdge } = places;
  const { bolt } = sizes;
  const d = bolt.diameterMm;
  const nutHigh = NUT_HIGH * d;
  const washerTop = holderTopY + washerThickMm;
  const lowY = -sizes.capMm - nutHigh - THREADS_OUT * bolt.pitchMm;
  const topY = boltTop(sizes, places);
  const boltX = -boltFromEdge;
  boltPlaces(places, sizes).forEach((w, i) => {
    const id = `bolt-${i + 1}`;
    maker.add(id, {
      name: "hold-down bolt",
      stock: `${bolt.name} threaded rod, ${stock.boltGrade.name}`,
      shape: standing(boltX, w, [lowY, topY], d),
      boltedTo: [
        "cap",
        "holder",
        ...(places.inside ? ["bar"] : []),
        ...["washer", "nut", "lower-nut"].map((one) => `${one}-${i + 1}`),
      ],
    });
    maker.add(`washer-${i + 1}`, {
      name: "slotted washer",
      stock: maker.flat(washerThickMm, washerMm, "hot-rolled"),
      shape: {
        profile: rectangle(boltX - washerMm / 2, holderTopY, boltX + washerMm / 2, washerTop),
        from: w - washerMm / 2,
        to: w + washerMm / 2,
      },
      holes: [
        upright(boltX, w, [holderTopY, washerTop], places.washerHoleMm, {
          slot: true,
          reason: "slotted to the back: its bending and its pressure are checked",
        }),
      ],
      boltedTo: [id, "holder", `nut-${i + 1}`],
    });
    maker.add(`nut-${i + 1}`, {
      name: "hold-down nut",
      stock: `${bolt.name} flange nut`,
      shape: standing(boltX, w, [washerTop, washerTop + nutHigh], FLANGE_OF_NUT * d),
      boltedTo: [id, `washer-${i + 1}`],
    });
    maker.add(`lower-nut-${i + 1}`, {
      name: "lower nut",
      stock: `${bolt.name} hex nut`,
      shape: standing(boltX, w, [-sizes.capMm - nutHigh, -sizes.capMm], NUT_CORNERS * d),
      boltedTo: [id, "cap"],
    });
  });
  [-places.springW, places.springW].forEach((w, i) => {
    maker.add(`spring-${i + 1}`, {
      name: "lift spring",
      stock: `compression spring ${maker.words(places.springMm)} outside`,
      shape: standing(-places.springX, w, [0, places.holderUnderY + places.pocketDeepMm], places.springMm),
      boltedTo: ["holder"],
    });
  });
}

/** Top of the bolts: through washer and nut, with the turns that open it and two threads over it, to a length that one can cut. */
function boltTop(sizes: BrakeSizes, places: Places): Mm {
  const d = sizes.bolt.diameterMm;
  const lowY = -sizes.capMm - NUT_HIGH * d - THREADS_OUT * sizes.bolt.pitchMm;
  const topY =
    places.holderTopY +
    places.washerThickMm +
    NUT_HIGH * d +
    (places.openingTurns + THREADS_OUT) * sizes.bolt.pitchMm;
  return lowY + Math.ceil((topY - lowY) / places.markMm - 1e-4) * places.markMm;
}

/** Where the bolts stand along the bend. */
export function boltPlaces(places: Places, sizes: BrakeSizes): Mm[] {
  return evenly(sizes.boltGaps + 1, places.pitchMm);
}

/** Flat heads stand midway between the bolts; where there are but two bolts, at the quarters, or one in the middle of a short bar. */
function flatHeadPlaces(places: Places, sizes: BrakeSizes): Mm[] {
  const { barLongMm, pitchMm, markMm } = places;
  if (places.inside && sizes.boltGaps > 1) return evenly(sizes.boltGaps, pitchMm);
  if (places.inside) {
    const apart = Math.floor(pitchMm / 2 / (2 * markMm)) * 2 * markMm;
    const room = places.flatHead.headMm + markMm;
    const fits = apart >= room && (pitchMm - apart) / 2 >= (room + places.boltHoleMm) / 2;
    return fits ? evenly(2, apart) : evenly(1, 0);
  }
  const gaps = Math.max(1, Math.ceil(barLongMm / 150));
  const apart = Math.floor((barLongMm * 0.5) / gaps / (2 * markMm)) * 2 * markMm;
  return evenly(gaps + 1, apart);
}

function boltIds(ws: readonly Mm[]): string[] {
  return ws.map((_, i) => `bolt-${i + 1}`);
}

/** The bar's section: nose rounded and front leaning back, its top front edge broken by a flat of the same size. */
function barProfile(
  thickMm: Mm,
  backX: Mm,
  nose: {
    readonly noseX: Mm;
    readonly sheetMm: Mm;
    readonly noseRadiusMm: Mm;
    readonly frontBevelDeg: Deg;
  },
): Xy[] {
  const { noseX, sheetMm, noseRadiusMm: r, frontBevelDeg } = nose;
  const bevel = toRad(frontBevelDeg);
  const center: Xy = [noseX - r, sheetMm + r];
  // From the underside round the nose's foremost point to where the front begins to lean back.
  const round = [
    ...arcPoints(center, r, -Math.PI / 2, Math.PI / 2),
    ...(bevel > 0 ? arcPoints(center, r, 0, bevel).slice(1) : []),
  ];
  const [endX, endY] = round.at(-1)!;
  const top = sheetMm + thickMm;
  const topX = endX - (top - endY) * Math.tan(bevel);
  return [[backX, sheetMm], ...round, [topX, top], [backX, top]];
}
