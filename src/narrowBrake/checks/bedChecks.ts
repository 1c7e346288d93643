/**
 * The bed between its hinges and between its bolts: cap and spine as one beam, the cap across, their weld, the rail.
 * The sheet pulls the bed up at the start of a bend and pushes it back at its end; both with the leaf's whole force.
 * Bound: holder and bar, bolted on, are not counted to its stiffness.
 */
import { toDeg } from "../../units/quantity.ts";
import { GERE_BEAM, ROARK_TORSION, SHIGLEY_WELD, STATICS } from "../handbooks.ts";
import { centralMoment, centralSag, middleTwist } from "../strength/centralLoad.ts";
import { shearModulus } from "../strength/plateCantilever.ts";
import { sectionOf } from "../strength/rectangles.ts";
import { screwStress } from "../strength/screwStress.ts";
import { THROAT_OF_LEG, WELD_ALLOWED_MPA } from "../strength/weldLines.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";
import { clampForces } from "./clampForces.ts";
import { allowed, measured, type UnderLoad, WELDED_COLD } from "./under.ts";

/** Fillets are run for half of the length: 50 mm in every 100. */
export const WELDED_SHARE = 0.5;

export function bedChecks(under: UnderLoad): StrengthCheck[] {
  return [...capChecks(under), ...beamChecks(under), ...railChecks(under)];
}

function capChecks(under: UnderLoad): StrengthCheck[] {
  const { places } = under;
  const forces = clampForces(under);
  const cap = measured(under, "cap");
  const spine = measured(under, "spine");
  const bar = measured(under, "bar");
  const bolt = cap.holes[0]!;
  const fromBolts = bar.maxX - bolt.from[0];
  const strip = Math.min(forces.shareMm, 2 * fromBolts + 2 * bolt.diameter) - bolt.diameter;
  // Rods inside pull at their own line; with bolts beyond the ends the spine carries the cap instead.
  const value = places.inside
    ? (6 * forces.noseNPerMm * forces.shareMm * fromBolts) / strip / cap.highMm ** 2
    : (6 * forces.noseNPerMm * (bar.maxX - spine.maxX)) / cap.highMm ** 2;
  return [
    checkOf({
      member: "bed cap",
      check: "bending across, from nose to bolts",
      value,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: places.inside ? "σ = 6·q·p·a/(b·t²)" : "σ = 6·q·a/t²",
      source: STATICS,
      assumptions: ["bolts tightened as far as their torque may come out, 28 % past its mark", WELDED_COLD],
      pieces: ["cap", "bar", "spine"],
      grows: "capMm",
    }),
  ];
}

function beamChecks(under: UnderLoad): StrengthCheck[] {
  const { requirements, loads, sizes, places } = under;
  const { steel, give } = requirements;
  const forces = clampForces(under);
  const cap = measured(under, "cap");
  const spine = measured(under, "spine");
  const ears = [measured(under, "bed-ear-left"), measured(under, "bed-ear-right")] as const;
  const spanMm = (ears[1].minW + ears[1].maxW - ears[0].minW - ears[0].maxW) / 2;
  const beam = { loadNPerMm: loads.leafNPerMm.value, loadedMm: loads.longestPartMm, spanMm };
  const both = sectionOf([cap, spine]);
  const back = sectionOf([cap]);
  const boltLoad = forces.noseNPerMm * (1 + forces.frontMm / forces.backMm);
  const betweenBolts = places.inside
    ? 0
    : centralMoment({ loadNPerMm: boltLoad, loadedMm: loads.longestPartMm, spanMm: places.boltSpanMm });
  const up = Math.max(centralMoment(beam), betweenBolts) / both.modulusXMm3;
  const backward = centralMoment(beam) / back.modulusYMm3;
  const sagUp =
    centralSag(beam, steel.modulusMpa * both.secondMomentXMm4) +
    (places.inside
      ? 0
      : centralSag(
          {
            loadNPerMm: boltLoad / (requirements.safety.bolt * 1.28),
            loadedMm: loads.longestPartMm,
            spanMm: places.boltSpanMm,
          },
          steel.modulusMpa * both.secondMomentXMm4,
        ));
  const sagBack = centralSag(beam, steel.modulusMpa * back.secondMomentYMm4);
  const twistDeg = toDeg(
    middleTwist(
      loads.momentPerLength.value,
      loads.longestPartMm,
      shearModulus(steel.modulusMpa),
      both.torsionMm4,
    ),
  );
  const lost = (sag: number) => toDeg(Math.atan2(sag, loads.leafLeverMm)) + twistDeg;
  const torque = (loads.momentPerLength.value * loads.longestPartMm) / 2;
  const thickest = Math.max(cap.highMm, spine.wideMm);
  // Shear flow between cap and spine, V·Q/I, and the turning of the handles as a couple over the spine's thickness.
  const shear = (loads.leafNPerMm.value * loads.longestPartMm) / 2;
  const firstMoment = cap.wideMm * cap.highMm * Math.abs((cap.minY + cap.maxY) / 2 - both.centroidYMm);
  const flow = (shear * firstMoment) / both.secondMomentXMm4 / 2;
  const couple = loads.turningNmm.value / cap.longMm / spine.wideMm;
  const weldMpa = Math.hypot(flow, couple) / WELDED_SHARE / (THROAT_OF_LEG * sizes.weldMm);
  const ends = ["cap", "spine", "bed-ear-left", "bed-ear-right"];
  return [
    checkOf({
      member: "bed",
      check: "bending up or down between the hinges",
      value: up,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = M/Z, M = w·L·(2·S − L)/8",
      source: `${STATICS}; ${GERE_BEAM}`,
      assumptions: ["cap and spine as one section", "holder and bar not counted", WELDED_COLD],
      pieces: ends,
      grows: "spineHighMm",
    }),
    checkOf({
      member: "bed",
      check: "bending back between the hinges",
      value: backward,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = M/Z, M = w·L·(2·S − L)/8",
      source: `${STATICS}; ${GERE_BEAM}`,
      assumptions: ["leaf upright, its whole force level", "the cap alone", WELDED_COLD],
      pieces: ends,
      grows: "capDepthMm",
    }),
    checkOf({
      member: "bed",
      check: "bend angle lost at mid-length, leaf level",
      value: lost(sagUp),
      limit: give.angleDeg,
      unit: "deg",
      formula: "Δθ = atan(δ/a) + m·L²/(8·G·J), δ = w·L·(8·S³ − 4·S·L² + L³)/(384·E·I)",
      source: `${STATICS}; ${GERE_BEAM}; ${ROARK_TORSION}`,
      assumptions: ["before the bar is set forward in the middle", "held at its ends only"],
      pieces: ends,
      grows: "spineHighMm",
    }),
    checkOf({
      member: "bed",
      check: "bend angle lost at mid-length, leaf upright",
      value: lost(sagBack),
      limit: give.angleDeg,
      unit: "deg",
      formula: "Δθ = atan(δ/a) + m·L²/(8·G·J), δ = w·L·(8·S³ − 4·S·L² + L³)/(384·E·I)",
      source: `${STATICS}; ${GERE_BEAM}; ${ROARK_TORSION}`,
      assumptions: ["before the bar is set forward in the middle", "the cap alone"],
      pieces: ends,
      grows: "capDepthMm",
    }),
    checkOf({
      member: "bed",
      check: "twist",
      value: (torque * thickest) / both.torsionMm4,
      limit: allowed(under).welded / Math.sqrt(3),
      unit: "MPa",
      formula: "τ = T·t/J, T = m·L/2",
      source: ROARK_TORSION,
      assumptions: ["held at its middle, turned at both hinges"],
      pieces: ["cap", "spine"],
      grows: "spineMm",
    }),
    checkOf({
      member: "weld of cap and spine",
      check: "shear in the throat",
      value: weldMpa,
      limit: WELD_ALLOWED_MPA,
      unit: "MPa",
      formula: "τ = √((V·Q/(2·I))² + (M/(L·t))²)/(share·0.707·h)",
      source: SHIGLEY_WELD,
      assumptions: ["a fillet on each side of the spine, for half of its length"],
      pieces: ["cap", "spine"],
      grows: sizes.weldMm < 0.75 * Math.min(spine.wideMm, sizes.leafEarMm) ? "weldMm" : "spineMm",
    }),
  ];
}

function railChecks(under: UnderLoad): StrengthCheck[] {
  const { loads, sizes, stock, assembly } = under;
  const ids = assembly.pieces.filter(({ name }) => name === "screw rail").map(({ id }) => id);
  const rails = ids.map((id) => measured(under, id));
  const rail = rails[0]!;
  const longMm = rails.reduce((sum, one) => sum + one.longMm, 0);
  const [first] = rail.holes;
  const screws = rails.reduce((sum, { holes }) => sum + holes.length, 0);
  const push = loads.pushN.value;
  const high = first!.from[1] - rail.minY;
  // A short rail is welded all along.
  const welded = (rails.length > 1 ? 1 : WELDED_SHARE) * longMm;
  const couple = (push * high) / rail.wideMm / welded;
  const direct = push / 2 / welded;
  return [
    checkOf({
      member: "setback screws",
      check: "push in the core",
      value: screwStress(push / screws, sizes.screw),
      limit: stock.boltGrade.proofMpa / 1.5,
      unit: "MPa",
      formula: "σ = F/(n·At)",
      source: STATICS,
      assumptions: ["friction under the bar not counted", "one and a half against proof"],
      pieces: [...ids, "setback-screw-1"],
      grows: "screw",
    }),
    checkOf({
      member: "screw rail",
      check: "bending at its foot",
      value: (6 * push * high) / longMm / rail.wideMm ** 2,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = 6·F·y/(L·t²)",
      source: STATICS,
      assumptions: ["the screws' push spread along the rail"],
      pieces: ids,
      grows: "railMm",
    }),
    checkOf({
      member: "weld of the rail",
      check: "shear in the throat",
      value: Math.hypot(couple, direct) / (THROAT_OF_LEG * sizes.railWeldMm),
      limit: WELD_ALLOWED_MPA,
      unit: "MPa",
      formula: "τ = √((F·y/(t·l))² + (F/(2·l))²)/(0.707·h)",
      source: SHIGLEY_WELD,
      assumptions: ["a fillet before and behind, for half of its length"],
      pieces: [...ids, "cap"],
      grows: "railWeldMm",
    }),
  ];
}
