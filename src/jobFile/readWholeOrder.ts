/**
 * An order of a whole part as the user gives it: every bend in one stroke, for each stroke a point of the blank on the side
 * that lies clamped, and the fingers if they are set. Bends count from 1 in the file and from 0 in the job.
 */
import type { Brake } from "../brake/brake.ts";
import { StrokeElements } from "../pattern/elements.ts";
import { strokePlan } from "../pattern/strokePlan.ts";
import { faceBeside, type WholePart } from "../pattern/wholePart.ts";
import { lengthAt, type Reading, refuse } from "./reading.ts";
import type { WholeStep } from "./wholeJob.ts";
import type { WholeFile } from "./wholeSchema.ts";

type OrderFile = NonNullable<WholeFile["order"]>;

/** The order, or undefined with the problems noted. */
export function readWholeOrder(
  reading: Reading,
  file: OrderFile,
  part: WholePart,
  brake: Brake,
): readonly WholeStep[] | undefined {
  const before = reading.problems.length;
  const count = part.sheet.pattern.bends.length;
  const made = new Set<number>();
  const steps = file.map((step, i) => {
    const read = readStep(reading, step, `order[${i}]`, part);
    for (const [j, bend] of step.bends.entries()) {
      const path = `order[${i}].bends[${j}]`;
      if (bend < 1 || bend > count) refuse(reading, path, bend, `the number of a bend, from 1 to ${count}`);
      else if (made.has(bend - 1)) refuse(reading, path, bend, "a bend that is not made before");
      made.add(bend - 1);
    }
    return read;
  });
  if (reading.problems.length > before) return undefined;
  if (made.size < count) {
    const missing = Array.from({ length: count }, (_, i) => i).filter((bend) => !made.has(bend));
    const allowed = `steps for all bends; ${missing.map((bend) => bend + 1).join(", ")} ${missing.length === 1 ? "is" : "are"} missing`;
    refuse(reading, "order", file, allowed);
    return undefined;
  }
  checkStrokes(reading, file, part, brake, steps as WholeStep[]);
  return reading.problems.length > before ? undefined : (steps as WholeStep[]);
}

function readStep(
  reading: Reading,
  step: OrderFile[number],
  path: string,
  part: WholePart,
): WholeStep | undefined {
  const [x, y] = step.clampedAt.map((value, i) => lengthAt(reading, `${path}.clampedAt[${i}]`, value, "any"));
  const clampedAt = { x: x!, y: y! };
  const known = !Number.isNaN(x) && !Number.isNaN(y);
  const clampedFace = known ? faceBeside(part, clampedAt) : undefined;
  if (known && clampedFace === undefined) {
    const found = `[${step.clampedAt.join(", ")}], where there is no sheet`;
    reading.problems.push({ path: `${path}.clampedAt`, found, allowed: "a point of the flat blank" });
  }
  const fingers = step.fingers?.map(({ width, from }, i) => ({
    widthMm: lengthAt(reading, `${path}.fingers[${i}].width`, width, "above0"),
    fromMm: lengthAt(reading, `${path}.fingers[${i}].from`, from, "any"),
  }));
  const inOrder = fingers && [...fingers].sort((a, b) => a.fromMm - b.fromMm);
  const meeting = inOrder?.findIndex(({ fromMm }, i) => {
    const last = inOrder[i - 1];
    return last !== undefined && fromMm < last.fromMm + last.widthMm - 1e-6;
  });
  if (inOrder && meeting !== undefined && meeting > 0) {
    const found = `fingers ${meeting} and ${meeting + 1} from the left in one place`;
    reading.problems.push({ path: `${path}.fingers`, found, allowed: "side by side" });
  }
  if (clampedFace === undefined) return undefined;
  return {
    bends: step.bends.map((bend) => bend - 1),
    clampedFace,
    clampedAt,
    ...(inOrder && { fingers: inOrder }),
    ...(step.placed !== undefined && { placedMm: lengthAt(reading, `${path}.placed`, step.placed, "any") }),
  };
}

/** Bends of one step that can't be made in one swing. */
function checkStrokes(
  reading: Reading,
  file: OrderFile,
  part: WholePart,
  brake: Brake,
  steps: readonly WholeStep[],
): void {
  let made = 0;
  for (const [i, step] of steps.entries()) {
    const first = step.bends[0]! + 1;
    const refused = (allowed: string) => refuse(reading, `order[${i}].bends`, file[i]!.bends, allowed);
    const result = strokePlan(part, brake, step);
    if (!result.ok)
      refused(`bends of one turn, angle and radius; ${first} and ${result.fault.other + 1} differ`);
    else {
      const astray = new StrokeElements(result.plan).onOneLine(made);
      if (astray)
        refused(`bends on one line as the part stands then; ${first} and ${astray.hinge.bend + 1} are not`);
    }
    for (const bend of step.bends) made |= 1 << bend;
  }
}
