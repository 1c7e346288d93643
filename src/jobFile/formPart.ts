/**
 * The part as the brake forms it, with flats from bend tangent line to bend tangent line. What can't be formed is told by
 * the key that would have to change; a nose set too far forward is not a slip of the file but a bend that is refused.
 */
import type { Brake } from "../brake/brake.ts";
import { springbackRatio } from "../metal/springback.ts";
import { type BendFault, formBends } from "../motion/formBends.ts";
import { insideBendSetback } from "../part/bendSetback.ts";
import type { Bend, Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";
import { type Reading, refuse, sayLimit } from "./reading.ts";
import type { AskedPart } from "./readPart.ts";
import type { JobFile } from "./schema.ts";

/** What a flat may be shorter than its bends and still count as nothing: the rounding of inches to mm. */
const ROUNDING_MM: Mm = 1e-6;

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
  const { yieldMpa, modulusMpa } = asked.metal.metal;
  const keptAt = (insideRadiusMm: Mm) =>
    springbackRatio({ insideRadiusMm, thicknessMm, yieldMpa, modulusMpa });
  const bends: Bend[] = [];
  formBends(asked.bends, { thicknessMm, kFactor, brake, keptAt }).forEach((formed, i) => {
    if (formed.ok) bends.push(formed.bend);
    else noteBendFault({ reading, asked, brake, file }, i, formed.fault);
  });
  if (reading.problems.length > before) return undefined;
  const flatsMm = asked.flatsMm.map((dimensionMm, i) => {
    const taken = takenByBends(bends[i - 1], asked) + takenByBends(bends[i], asked);
    if (dimensionMm - taken > ROUNDING_MM) return dimensionMm - taken;
    const limit = sayLimit(reading.units, "least")(taken);
    return refuse(
      reading,
      `part.flats[${i}]`,
      file.part.flats[i],
      `longer than ${limit}, which its bends take up from mold line to bend tangent line`,
    );
  });
  if (reading.problems.length > before) return undefined;
  const { name, lengthMm } = asked;
  return {
    name,
    metal: asked.metal.metal,
    thicknessMm,
    kFactor,
    ...(lengthMm !== undefined && { lengthMm }),
    flatsMm,
    bends,
  };
}

/** What a bend takes off the dimension of a flat that it ends. */
function takenByBends(bend: Bend | undefined, asked: AskedPart): Mm {
  if (bend === undefined || asked.dimensions === "flat") return 0;
  if (asked.dimensions === "outside") return bend.bendSetbackMm;
  return insideBendSetback({ ...bend, thicknessMm: asked.thicknessMm });
}

function noteBendFault(forming: Forming, index: number, fault: BendFault): void {
  if (fault.kind === "noseTooRound") noteNoseTooRound(forming, index);
  else noteSpringsBack(forming, index, fault.kept);
}

function noteNoseTooRound({ reading, brake, file }: Forming, index: number): void {
  const own = file.part.bends[index]?.insideRadius;
  const path = own === undefined ? "part.insideRadius" : `part.bends[${index}].insideRadius`;
  if (reading.problems.some((problem) => problem.path === path)) return;
  const nose = sayLimit(reading.units, "least")(brake.clamp.noseRadiusMm);
  const over = brake.clamp.shimMm ? " over its shim" : "";
  const allowed = `at least the nose radius of the clamp${over}, ${nose}, or the clamp's nose sharper`;
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
