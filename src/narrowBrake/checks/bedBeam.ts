/**
 * The bed as a beam between its hinges: cap and spine, and a back leg where it is long.
 * The sheet pulls its front edge up at the start of a bend and pushes it back at the end, both with the leaf's whole force; the pins hold
 * its ends. The edge stands out in front of the spine, so the pull also twists the bed: without a back leg that is torsion of flats; with
 * one, spine and leg bend against each other, each with its half of the cap, as a lever from the edge over the spine to the leg.
 * Bound: holder and bar, bolted on, and the bench under the feet are not counted to its stiffness; with a leg neither is its torsion.
 */
import { toDeg } from "../../units/quantity.ts";
import { GERE_BEAM, ROARK_TORSION, SHIGLEY_WELD, STATICS } from "../handbooks.ts";
import type { Growth } from "../sizes.ts";
import { centralMoment, centralSag, middleTwist } from "../strength/centralLoad.ts";
import { shearModulus } from "../strength/plateCantilever.ts";
import { freeModulus, freeSecondMoment, type Rectangle, sectionOf } from "../strength/rectangles.ts";
import { THROAT_OF_LEG, WELD_ALLOWED_MPA } from "../strength/weldLines.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";
import { clampForces, TORQUE_SCATTER } from "./clampForces.ts";
import { allowed, measured, type UnderLoad, WELDED_COLD } from "./under.ts";

/** Fillets are run for half of the length: 50 mm in every 100. */
export const WELDED_SHARE = 0.5;

/** All that makes a bed stiffer along. */
const STIFFER = {
  grows: "spineHighMm",
  orGrows: ["capDepthMm", "legHighMm", "capMm"],
} as const satisfies Pick<StrengthCheck, "grows" | "orGrows">;

export function bedBeamChecks(under: UnderLoad): StrengthCheck[] {
  const { requirements, loads, sizes, places } = under;
  const { steel, give } = requirements;
  const cap = measured(under, "cap");
  const spine = measured(under, "spine");
  const leg = places.legHighMm > 0 ? measured(under, "leg") : undefined;
  const ears = [measured(under, "bed-ear-left"), measured(under, "bed-ear-right")] as const;
  const spanMm = (ears[1].minW + ears[1].maxW - ears[0].minW - ears[0].maxW) / 2;
  const beam = { loadNPerMm: loads.leafNPerMm.value, loadedMm: loads.longestPartMm, spanMm };
  const all: Rectangle[] = leg ? [cap, spine, leg] : [cap, spine];
  const whole = sectionOf(all);
  const bolts = boltLoad(under);
  const lever = leg && leverOf({ cap, spine, leg }, under);

  // Up: the edge's own pull, and between bolts beyond the ends what these pull.
  const upMpa = lever
    ? Math.max(
        ...lever.legs.map(({ share, section }) => (share * centralMoment(beam)) / section.modulusXMm3),
      ) +
      bolts.moment / whole.modulusXMm3
    : Math.max(centralMoment(beam), bolts.moment) / freeModulus(all, whole, "up");
  const boltSag = bolts.sag(steel.modulusMpa * freeSecondMoment(whole, "up"));
  const backMpa = centralMoment(beam) / freeModulus(all, whole, "back");
  const sagBack = centralSag(beam, steel.modulusMpa * freeSecondMoment(whole, "back"));

  // Twist: the folding moment, and the edge's pull times its way to the spine.
  const outMm = cap.maxX - (spine.minX + spine.maxX) / 2;
  const turnPerMm = loads.momentPerLength.value + (leg ? 0 : loads.leafNPerMm.value * outMm);
  const twist = (moment: number) =>
    middleTwist(moment, loads.longestPartMm, shearModulus(steel.modulusMpa), whole.torsionMm4);
  const level = lever
    ? lever.edge((stiffness, share) => share * centralSag(beam, stiffness))
    : {
        edgeMm: centralSag(beam, steel.modulusMpa * freeSecondMoment(whole, "up")) + twist(turnPerMm) * outMm,
        tiltRad: twist(turnPerMm),
      };
  const lost = (sag: number, tilt: number) => toDeg(Math.atan2(sag, loads.leafLeverMm) + tilt);
  const torque = (turnPerMm * loads.longestPartMm) / 2;
  const thickest = Math.max(cap.highMm, spine.wideMm);
  const ends = ["cap", "spine", ...(leg ? ["leg"] : []), "bed-ear-left", "bed-ear-right"];
  const weldGrows: Growth =
    sizes.weldMm < 0.75 * Math.min(spine.wideMm, sizes.leafEarMm) ? "weldMm" : "spineMm";
  return [
    checkOf({
      member: "bed",
      check: "bending up or down between the hinges",
      value: upMpa,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: leg ? "σ = k·M/Z of spine and of leg, M = w·L·(2·S − L)/8" : "σ = M/Z, M = w·L·(2·S − L)/8",
      source: `${STATICS}; ${GERE_BEAM}`,
      assumptions: [
        leg
          ? "cap's halves with spine and leg, the edge's pull shared as by a lever"
          : "cap and spine as one",
        "holder and bar not counted",
        WELDED_COLD,
      ],
      pieces: ends,
      ...STIFFER,
    }),
    checkOf({
      member: "bed",
      check: "bending back between the hinges",
      value: backMpa,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = M/Z, M = w·L·(2·S − L)/8",
      source: `${STATICS}; ${GERE_BEAM}`,
      assumptions: ["leaf upright, its whole force level", "all that is welded to the cap", WELDED_COLD],
      pieces: ends,
      ...STIFFER,
    }),
    checkOf({
      member: "bed",
      check: "bend angle lost at mid-length, leaf level",
      value: lost(level.edgeMm + boltSag, level.tiltRad),
      limit: give.angleDeg,
      unit: "deg",
      formula: leg
        ? "Δθ = atan(δ/a) + α, δ and α of the edge on spine and leg"
        : "Δθ = atan((δ + α·x)/a) + α, δ = w·L·(8·S³ − 4·S·L² + L³)/(384·E·I), α = (m + w·x)·L²/(8·G·J)",
      source: `${STATICS}; ${GERE_BEAM}; ${ROARK_TORSION}`,
      assumptions: [
        "before the bar is set forward in the middle",
        "held at its ends only",
        "the edge's pull twists the bed about its spine",
      ],
      pieces: ends,
      ...STIFFER,
    }),
    checkOf({
      member: "bed",
      check: "bend angle lost at mid-length, leaf upright",
      value: lost(sagBack, twist(loads.momentPerLength.value)),
      limit: give.angleDeg,
      unit: "deg",
      formula: "Δθ = atan(δ/a) + m·L²/(8·G·J), δ = w·L·(8·S³ − 4·S·L² + L³)/(384·E·I)",
      source: `${STATICS}; ${GERE_BEAM}; ${ROARK_TORSION}`,
      assumptions: ["before the bar is set forward in the middle", "all that is welded to the cap"],
      pieces: ends,
      ...STIFFER,
    }),
    checkOf({
      member: "bed",
      check: "twist",
      value: (torque * thickest) / whole.torsionMm4,
      limit: allowed(under).welded / Math.sqrt(3),
      unit: "MPa",
      formula: leg ? "τ = T·t/J, T = m·L/2" : "τ = T·t/J, T = (m + w·x)·L/2",
      source: ROARK_TORSION,
      assumptions: ["held at its middle, turned at both hinges"],
      pieces: ends.slice(0, leg ? 3 : 2),
      grows: "spineMm",
    }),
    weldCheck(under, { all, whole, weldGrows }),
  ];
}

/** Between bolts that stand beyond the ends of the part the bed carries what they pull. */
function boltLoad(under: UnderLoad) {
  const { requirements, loads, places } = under;
  if (places.inside) return { moment: 0, sag: () => 0 };
  const { noseNPerMm, frontMm, backMm } = clampForces(under);
  const pull = {
    loadNPerMm: noseNPerMm * (1 + frontMm / backMm),
    loadedMm: loads.longestPartMm,
    spanMm: places.boltSpanMm,
  };
  const foldings = requirements.safety.bolt * (1 + TORQUE_SCATTER);
  return {
    moment: centralMoment(pull),
    sag: (stiffness: number) => centralSag(pull, stiffness) / foldings,
  };
}

type Flats = Readonly<Record<"cap" | "spine" | "leg", Rectangle>>;

/** The edge over spine and leg: what each takes of its pull, and how far the edge and the cap's tilt go for their sags. */
function leverOf({ cap, spine, leg }: Flats, { requirements, loads }: UnderLoad) {
  const [spineX, legX] = [spine, leg].map(({ minX, maxX }) => (minX + maxX) / 2) as [number, number];
  const half = (spineX + legX) / 2;
  const apart = spineX - legX;
  const front = sectionOf([{ ...cap, minX: half }, spine]);
  const back = sectionOf([{ ...cap, maxX: half }, leg]);
  // The pull's own lever in front of the edge is that of the folding moment.
  const out = cap.maxX - spineX + loads.momentPerLength.value / loads.leafNPerMm.value;
  const [frontShare, backShare] = [1 + out / apart, out / apart];
  return {
    legs: [
      { share: frontShare, section: front },
      { share: backShare, section: back },
    ],
    edge: (sagOf: (stiffness: number, share: number) => number) => {
      const modulus = requirements.steel.modulusMpa;
      const [up, down] = [
        sagOf(modulus * front.secondMomentXMm4, frontShare),
        sagOf(modulus * back.secondMomentXMm4, backShare),
      ];
      const tiltRad = (up + down) / apart;
      return { edgeMm: up + tiltRad * (cap.maxX - spineX), tiltRad };
    },
  };
}

/** Shear flow between the cap and what is welded under it, V·Q/I either way, and the handles' turning as a couple over the spine's thickness. */
function weldCheck(
  under: UnderLoad,
  {
    all,
    whole,
    weldGrows,
  }: {
    readonly all: readonly Rectangle[];
    readonly whole: ReturnType<typeof sectionOf>;
    readonly weldGrows: Growth;
  },
): StrengthCheck {
  const { loads, sizes } = under;
  const cap = measured(under, "cap");
  const spine = measured(under, "spine");
  const shear = (loads.leafNPerMm.value * loads.longestPartMm) / 2;
  const area = ({ minX, maxX, minY, maxY }: Rectangle) => (maxX - minX) * (maxY - minY);
  const flows = all.slice(1).map((flat) => {
    const up = area(flat) * Math.abs((flat.minY + flat.maxY) / 2 - whole.centroidYMm);
    const back = area(flat) * Math.abs((flat.minX + flat.maxX) / 2 - whole.centroidXMm);
    return Math.max(up / freeSecondMoment(whole, "up"), back / freeSecondMoment(whole, "back"));
  });
  const flow = (shear * Math.max(...flows)) / 2;
  const couple = loads.turningNmm.value / cap.longMm / spine.wideMm;
  return checkOf({
    member: "weld of cap and spine",
    check: "shear in the throat",
    value: Math.hypot(flow, couple) / WELDED_SHARE / (THROAT_OF_LEG * sizes.weldMm),
    limit: WELD_ALLOWED_MPA,
    unit: "MPa",
    formula: "τ = √((V·Q/(2·I))² + (M/(L·t))²)/(share·0.707·h)",
    source: SHIGLEY_WELD,
    assumptions: ["a fillet on each side of spine and leg, for half of their length", "worse of up and back"],
    pieces: all.length > 2 ? ["cap", "spine", "leg"] : ["cap", "spine"],
    grows: weldGrows,
  });
}
