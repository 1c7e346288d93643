/**
 * The part as the brake forms it, with flats from bend tangent line to bend tangent line. What can't be formed is told by
 * the key that would have to change; a nose set too far forward is not a slip of the file but a bend that is refused.
 */
import type { Brake } from "../brake/brake.ts";
import { keptShare } from "../metal/springbackCurves.ts";
import {
  type BendFault,
  type BendFormed,
  type Forming as FormingOf,
  formBends,
} from "../motion/formBends.ts";
import { hemFolded } from "../motion/hemStrokes.ts";
import { bendAllowance } from "../part/allowance.ts";
import { takenAtBend } from "../part/bendSetback.ts";
import { din6935Allowance } from "../part/din6935Allowance.ts";
import { hemBend, LEAST_FOLD_DEG, MOST_FOLD_DEG } from "../part/hem.ts";
import type { Bend, Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { formFlats } from "./formFlats.ts";
import { type Reading, refuse, sayLimit } from "./reading.ts";
import type { AskedBend, AskedPart } from "./readPart.ts";
import type { JobFile } from "./schema.ts";

/** No hand leaf swings further, and nearer to half a turn the formulas of the nose grow without bound. */
const MOST_DOUBTED_DEG: Deg = 175;

/** What a slip is told from; `file` is what the reader wrote. */
interface Forming {
  readonly reading: Reading;
  readonly asked: AskedPart;
  readonly brake: Brake;
  readonly file: JobFile;
}

/** The part as the brake forms it, or undefined with the problems noted. */
export function formPart(reading: Reading, asked: AskedPart, brake: Brake, file: JobFile): Part | undefined {
  const before = reading.problems.length;
  const { thicknessMm, kFactor } = asked;
  const { metal } = asked.metal;
  const keptAt = (insideRadiusMm: Mm) => keptShare(metal, insideRadiusMm, thicknessMm).likely;
  const bends: Bend[] = [];
  formEach(asked, { thicknessMm, kFactor, brake, keptAt }).forEach((formed, i) => {
    const hem = asked.bends[i]?.hem;
    if (formed.ok && hem) bends.push(asHem(formed.bend, hem, asked, keptAt));
    else if (formed.ok) bends.push(withRange(laidFlat(formed.bend, asked, i), asked, i, brake));
    else noteBendFault({ reading, asked, brake, file }, i, formed.fault);
  });
  bends.forEach(({ allowanceMm, deductionMm }, i) => {
    if (allowanceMm > 0) return;
    const most = sayLimit(reading.units, "most")(allowanceMm + deductionMm);
    refuse(
      reading,
      `part.bends[${i}].deduction`,
      file.part.bends[i]?.deduction,
      `less than ${most}, twice the bend setback`,
    );
  });
  if (reading.problems.length > before) return undefined;
  const flatsMm = formFlats({ reading, asked, file }, bends);
  if (reading.problems.length > before) return undefined;
  const { name, lengthMm } = asked;
  const part: Part = {
    name,
    metal,
    thicknessMm,
    kFactor,
    ...(asked.allowanceBy === "din6935" && { allowanceBy: asked.allowanceBy }),
    ...(lengthMm !== undefined && { lengthMm }),
    flatsMm,
    bends,
  };
  noteShortHems(reading, part, brake, file);
  return reading.problems.length > before ? undefined : part;
}

/** The fold over the nose takes up more sheet than the flattened hem, and some of the hem must be left to push on. */
function noteShortHems(reading: Reading, part: Part, brake: Brake, file: JobFile): void {
  part.bends.forEach(({ hem }, bend) => {
    if (!hem) return;
    const folds = [LEAST_FOLD_DEG, Math.max(LEAST_FOLD_DEG, Math.min(MOST_FOLD_DEG, brake.leaf.swingDeg))];
    if (folds.every((foldDeg) => hemFolded(part, brake, bend, foldDeg))) return;
    const flat = bend === 0 ? 0 : bend + 1;
    refuse(
      reading,
      `part.flats[${flat}]`,
      file.part.flats[flat],
      "longer, or the inside radius of the hem smaller: bent over the nose, its fold takes up all of it",
    );
  });
}

/** Every bend formed: hems by themselves, at the leaf angle that their first stroke may go to, since no other bend's setback is theirs. */
function formEach({ bends }: AskedPart, forming: FormingOf): readonly BendFormed[] {
  const plain = formBends(
    bends.filter(({ hem }) => !hem),
    forming,
  );
  const { brake } = forming;
  let next = 0;
  return bends.map((bend) => {
    if (!bend.hem) return plain[next++]!;
    const overbendDeg = Math.max(LEAST_FOLD_DEG, Math.min(MOST_FOLD_DEG, brake.leaf.swingDeg));
    const noseSetback = brake.noseSetback === "one" ? "auto" : brake.noseSetback;
    const fold = {
      ...bend,
      angleDeg: overbendDeg * Math.min(1, Math.max(0.5, forming.keptAt(bend.insideRadiusMm))),
      overbendDeg,
    };
    return formBends([fold], { ...forming, brake: { ...brake, noseSetback } })[0]!;
  });
}

function asHem(
  fold: Bend,
  { kind, gapMm }: NonNullable<AskedBend["hem"]>,
  asked: AskedPart,
  keptAt: FormingOf["keptAt"],
): Bend {
  const kept = Math.min(1, Math.max(0.5, keptAt(fold.insideRadiusMm)));
  return hemBend(fold, { kind, gapMm, foldRadiusMm: fold.insideRadiusMm, kept }, asked.thicknessMm);
}

/**
 * The bend with the leaf angles that it may want: by the doubt that the job has of them, else where its overbend was worked out
 * and not given. No leaf leaves a bend further closed than it swings.
 */
function withRange(bend: Bend, asked: AskedPart, index: number, { doubts }: Brake): Bend {
  const ranged = (low: Deg, high: Deg): Bend => ({
    ...bend,
    overbendRangeDeg: [low, Math.max(bend.overbendDeg, Math.min(high, MOST_DOUBTED_DEG))],
  });
  const either = doubts?.overbendDeg;
  if (either !== undefined)
    return ranged(
      Math.max(Math.min(bend.angleDeg, bend.overbendDeg), bend.overbendDeg - either),
      bend.overbendDeg + either,
    );
  if (asked.bends[index]?.overbendDeg !== undefined) return bend;
  const { most, least } = keptShare(asked.metal.metal, bend.insideRadiusMm, asked.thicknessMm);
  return ranged(bend.angleDeg / most, least > 0 ? bend.angleDeg / least : MOST_DOUBTED_DEG);
}

/**
 * The bend with its allowance by the method that the job chose, or by its own deduction, and the deduction by the way that
 * closed bends are dimensioned: what the outside dimensions are longer than the flat sheet.
 */
function laidFlat(
  bend: Bend,
  { thicknessMm, kFactor, allowanceBy, closedBends, bends }: AskedPart,
  index: number,
): Bend {
  const shape = { ...bend, thicknessMm };
  const outside = 2 * takenAtBend(shape, "outside", closedBends);
  const own = bends[index]?.deductionMm;
  const byMethod = allowanceBy === "din6935" ? din6935Allowance(shape) : bendAllowance(shape, kFactor);
  const allowanceMm = own === undefined ? byMethod : outside - own;
  return { ...bend, allowanceMm, deductionMm: outside - allowanceMm };
}

function noteBendFault(forming: Forming, index: number, fault: BendFault): void {
  if (fault.kind === "noseTooRound") noteNoseTooRound(forming, index, fault.leastMm);
  else noteSpringsBack(forming, index, fault.kept);
}

function noteNoseTooRound({ reading, brake, file }: Forming, index: number, leastMm: Mm): void {
  const own = file.part.bends[index]?.insideRadius;
  const path = own === undefined ? "part.insideRadius" : `part.bends[${index}].insideRadius`;
  if (reading.problems.some((problem) => problem.path === path)) return;
  const nose = sayLimit(reading.units, "least")(leastMm);
  const over = brake.clamp.shimMm ? " over its shim" : "";
  const allowed =
    brake.clamp.kind === "profile"
      ? `at least ${nose}, which the clamp's nose${over} leaves room for, or a sharper nose`
      : `at least the nose radius of the clamp${over}, ${nose}, or the clamp's nose sharper`;
  refuse(reading, path, own ?? file.part.insideRadius, allowed);
}

function noteSpringsBack({ reading, asked }: Forming, index: number, kept: number): void {
  const most = Math.floor(1800 * kept) / 10;
  const allowed =
    kept > 0
      ? `less than ${most} degrees, since this sheet springs back to ${(100 * kept).toFixed(0)} % of the leaf's angle, or a smaller inside radius`
      : "a bend with a smaller inside radius, since at this one the sheet only flexes and springs all the way back";
  refuse(reading, `part.bends[${index}].angle`, asked.bends[index]?.angleDeg, allowed);
}
