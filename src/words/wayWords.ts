/**
 * A way out in the foreman's words, with figures in the user's unit.
 * Lengths in fractions of an inch where they are 64ths; what is left over is told as room to spare.
 */
import type { OrderedBend } from "../jobFile/change.ts";
import type { Job } from "../jobFile/job.ts";
import type { Way } from "../jobFile/way.ts";
import type { WayOut } from "../jobFile/wayOut.ts";
import { formatLength, type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";

/** @example lengthIn(9.525, "in") // "3/8 in" */
export function lengthIn(lengthMm: Mm, units: LengthUnit): string {
  return `${formatLength(lengthMm, units)} ${units}`;
}

/** An angle to a tenth of a degree. @example degrees(75.25) // "75.3°" */
export function degrees(angleDeg: Deg): string {
  return `${Number(angleDeg.toFixed(1))}°`;
}

/** Room to spare, in decimals: 64ths would be too coarse. @example roomWords(0.31, "mm") // "0.31 mm to spare" */
export function roomWords(clearanceMm: Mm | null, units: LengthUnit): string {
  if (clearanceMm === null) return "nothing near";
  const figure = units === "in" ? (clearanceMm / MM_PER_INCH).toFixed(3) : clearanceMm.toFixed(2);
  return `${figure} ${units} to spare`;
}

/** A bend left part way is finished where it comes again. @example orderWords([{ bend: 2, clamped: "end" }], 2) // "bend 2 with flat 3 in the throat" */
export function orderWords(order: readonly OrderedBend[], bendCount: number): string {
  const begun = new Set<number>();
  return order
    .map(({ bend, clamped, to }) => {
      const [first, last] = clamped === "start" ? [1, bend] : [bend + 1, bendCount + 1];
      const between = first + 1 === last ? "and" : "to";
      const flats = first === last ? `flat ${first}` : `flats ${first} ${between} ${last}`;
      const finish = begun.has(bend) ? "the rest of " : "";
      if (to !== undefined) begun.add(bend);
      const partWay = to === undefined ? "" : `, part way to ${degrees(to)},`;
      return `${finish}bend ${bend}${partWay} with ${flats} in the throat`;
    })
    .join(", then ");
}

/** What to do, as one sentence; how it comes out is the second half. */
export function waySentence(job: Job, way: Way, leftOpen: WayOut["leftOpen"]): string {
  return `${instruction(job, way, leftOpen)}: ${outcomeWords(way, job.units)}.`;
}

/** @example outcomeWords({ verdict: "tight", clearanceMm: 0.3 }, "mm") // "folds, but only just, 0.30 mm to spare" */
export function outcomeWords(
  { verdict, clearanceMm }: Pick<Way, "verdict" | "clearanceMm">,
  units: LengthUnit,
): string {
  return `folds${verdict === "tight" ? ", but only just" : ""}, ${roomWords(clearanceMm, units)}`;
}

function instruction(job: Job, way: Way, leftOpen: WayOut["leftOpen"]): string {
  const { units, part } = job;
  const [from, to] = [way.from ?? 0, way.to ?? 0];
  const length = (mm: Mm) => lengthIn(mm, units);
  const clamp = job.brake.clamp.kind === "finger" ? "fingers" : "bar";
  switch (way.kind) {
    case "side": {
      const other = way.order.filter(
        ({ bend, clamped }) => job.order?.find((step) => step.bend === bend - 1)?.clamped !== clamped,
      );
      return `Keep the order, but make ${orderWords(other, part.bends.length)}`;
    }
    case "order":
      return `In another order: ${orderWords(way.order, part.bends.length)}`;
    case "partWay":
      return `Make bend ${way.index} in two strokes: ${orderWords(way.order, part.bends.length)}`;
    case "lift":
      return `Open the clamp to ${length(to)} instead of ${length(from)}`;
    case "swing":
      return `Let the leaf swing to ${degrees(to)} instead of ${degrees(from)}, if what stops it can be moved`;
    case "setback":
      return `Set the nose ${length(to)} back instead of ${length(from)}, which forms a ${to > from ? "larger" : "smaller"} inside radius`;
    case "openEnds":
      return "Take away what stands at one end of the clamp, so that the part slides in and out along the bend line";
    case "automaticSetback":
      return "Set the nose back for each bend by its own radius";
    case "topRadius":
      return `Round the top front edge of the ${clamp} to a radius of ${length(to)}`;
    case "trimFlat":
      return `Take ${length(Math.abs(to))} off flat ${which(way)}`;
    case "widenFlat":
      return `Make flat ${which(way)} longer by ${length(to)}`;
    case "leaveOpen":
      return leaveOpenWords(way, leftOpen, units);
    case "noseAngle":
      return `Grind the front of the ${clamp} back from ${degrees(from)} to ${degrees(to)} over the underside`;
    case "relief": {
      const [relief] = way.changes.flatMap((change) => (change.kind === "relief" ? [change.toDeg] : []));
      return `Grind the front of the ${clamp} back to ${degrees(relief ?? 0)}, down from its top to ${length(to)} over the underside`;
    }
    case "thinnerBar":
      return `Use a bar ${length(to)} thick instead of ${length(from)}`;
    case "leafFace":
      return `Use a leaf whose face reaches out ${length(to)} instead of ${length(from)}`;
  }
}

/** The flat or bend, and the one that may be changed in its place. */
function which({ index, twin }: Way): string {
  return twin === undefined ? `${index}` : `${index} or ${twin}`;
}

function leaveOpenWords(way: Way, leftOpen: WayOut["leftOpen"], units: LengthUnit): string {
  if (!leftOpen) return `Leave bend ${which(way)} at ${degrees(way.to ?? 0)}`;
  const over =
    leftOpen.filler === null
      ? "over a straight edge"
      : `over a filler bar ${lengthIn(leftOpen.filler, units)} thick`;
  return `Stop bend ${which(way)} with the leaf at ${degrees(leftOpen.leafTo)}, where it relaxes to ${degrees(way.to ?? 0)}, and close the last ${degrees(leftOpen.toClose)} by hand ${over}`;
}

/** The limit itself, where it says more than the figure that was rounded. */
export function limitWords(way: Way, units: LengthUnit): string | undefined {
  if (way.thisOrderOnly) return "Less may do in another order of bends: not all were tried.";
  if (!way.limit) return undefined;
  const { figure } = way.limit;
  const exact = (mm: Mm) => (units === "in" ? `${(mm / MM_PER_INCH).toFixed(3)} in` : `${mm.toFixed(2)} mm`);
  switch (way.kind) {
    case "trimFlat":
    case "widenFlat":
      return `The least that helps is ${exact(Math.abs(figure))}.`;
    case "partWay":
      return `It may be left anywhere from ${(way.notUnder ?? 0).toFixed(1)}° to ${figure.toFixed(1)}°, after springback.`;
    case "leaveOpen":
      return `The farthest that clears relaxes to ${figure.toFixed(1)}°; the blank stays as it is.`;
    case "lift":
      return `The least that helps is ${exact(figure)}.`;
    case "thinnerBar":
      return `The thickest that clears is ${exact(figure)}.`;
    case "leafFace":
      return `The longest face that clears is ${exact(figure)}.`;
    case "relief":
      return `It must go down to ${exact(figure)} at least; the nose stays as it is.`;
    case "noseAngle":
      return `The steepest front that clears is ${figure.toFixed(2)}°.`;
    case "swing":
      return `It must swing to ${figure.toFixed(1)}° at least.`;
    case "topRadius":
      return `The least radius that helps is ${exact(figure)}.`;
    default:
      return undefined;
  }
}

/** From which figure on the job is clear, where the way told is tight. */
export function clearWords({ kind, clearFrom }: Way, units: LengthUnit): string | undefined {
  if (clearFrom === undefined) return undefined;
  const isAngle = kind === "noseAngle" || kind === "leaveOpen" || kind === "swing";
  return `Clear, and not only just, from ${isAngle ? degrees(clearFrom) : lengthIn(Math.abs(clearFrom), units)}.`;
}
