/**
 * A way out in the foreman's words, with figures in the user's unit.
 * Lengths in fractions of an inch where they are 64ths; what is left over is told as room to spare.
 */

import type { OrderedBend } from "../jobFile/change.ts";
import type { Job } from "../jobFile/job.ts";
import type { Way } from "../jobFile/way.ts";
import type { WayOut } from "../jobFile/wayOut.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";
import { capital } from "./capital.ts";
import { lengthWords } from "./lengthWords.ts";
import { throatWords } from "./stepWords.ts";

/** @example lengthIn(9.525, "in") // "3/8 in" */
export function lengthIn(lengthMm: Mm, units: LengthUnit): string {
  return `${formatLength(lengthMm, units)} ${units}`;
}

/** A bend left part way is finished where it comes again. @example orderWords([{ bend: 2, clamped: "end" }], 2) // "bend 2 with flat 3 in the throat" */
export function orderWords(order: readonly OrderedBend[], bendCount: number): string {
  const begun = new Set<number>();
  return order
    .map(({ bend, clamped, to }) => {
      const flats = throatWords({ bend, clamped }, bendCount);
      const finish = begun.has(bend) ? "the rest of " : "";
      if (to !== undefined) begun.add(bend);
      const partWay = to === undefined ? "" : `, part way to ${angleWords(to)},`;
      return `${finish}bend ${bend}${partWay} with ${flats} in the throat`;
    })
    .join(", then ");
}

/** What to do, as one sentence; how it comes out is the second half. */
export function waySentence(job: Job, way: Way, leftOpen: WayOut["leftOpen"]): string {
  return `${instruction(job, way, leftOpen)}. ${outcomeSentence(way, job.units)}`;
}

/** @example outcomeSentence({ verdict: "tight", clearanceMm: 0.3 }, "mm") // "It then folds with 0.30 mm to spare, which is tight." */
export function outcomeSentence(
  { verdict, clearanceMm }: Pick<Way, "verdict" | "clearanceMm">,
  units: LengthUnit,
): string {
  const spare = clearanceMm === null ? "nothing near" : `${lengthWords(clearanceMm, units)} to spare`;
  return `It then folds with ${spare}${verdict === "tight" ? ", which is tight" : ""}.`;
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
      return `Let the leaf swing to ${angleWords(to)} instead of ${angleWords(from)}, if what stops it can be moved`;
    case "setback":
      if (job.brake.noseSetback !== "one" && typeof job.brake.noseSetback === "string")
        return `Set the nose ${length(to)} back for every bend instead of ${length(from)} at most, which forms a larger inside radius`;
      return `Set the nose ${length(to)} back instead of ${length(from)}, which forms a ${to > from ? "larger" : "smaller"} inside radius`;
    case "openEnds":
      return "Take away what stands at one end of the clamp, so that the part slides in and out along the bend line";
    case "automaticSetback":
      return "Set the nose back for each bend by its own radius";
    case "topRadius":
      return `Round the top front edge of the ${clamp} to a radius of ${length(to)}`;
    case "trimFlat":
      return `Trim ${which("flat", way)} by ${length(Math.abs(to))}`;
    case "widenFlat":
      return `Make ${which("flat", way)} longer by ${length(to)}`;
    case "leaveOpen":
      return leaveOpenWords(way, leftOpen, units);
    case "leaveAllOpen":
      return `Stop every bend ${angleWords(to)} short after springback, a milder bend less in proportion, and close them all by hand over a straight edge`;
    case "twoFlats":
    case "flatAndLeaf":
      return pairWords(way, length);
    case "noseAngle":
      return `Grind the front of the ${clamp} back from ${angleWords(from)} to ${angleWords(to)} over the underside`;
    case "relief": {
      const [relief] = way.changes.flatMap((change) => (change.kind === "relief" ? [change.toDeg] : []));
      return `Grind the front of the ${clamp} back to ${angleWords(relief ?? 0)}, down from its top to ${length(to)} over the underside`;
    }
    case "thinnerBar":
      return `Use a bar ${length(to)} thick instead of ${length(from)}`;
    case "leafFace":
      return `Use a leaf whose face reaches out ${length(to)} instead of ${length(from)}`;
  }
}

/** Two changes of one size, each as it is made. */
function pairWords({ changes }: Way, length: (mm: Mm) => string): string {
  const said = changes.flatMap((change) => {
    if (change.kind === "flat") {
      const by = length(Math.abs(change.byMm));
      return [
        change.byMm < 0 ? `trim flat ${change.flat} by ${by}` : `make flat ${change.flat} longer by ${by}`,
      ];
    }
    return change.kind === "leafFace" ? [`use a leaf whose face reaches out ${length(change.toMm)}`] : [];
  });
  return capital(said.join(" and "));
}

/** The flat or bend, and the one that may be changed in its place. */
function which(what: "flat" | "bend", { index, twin }: Way): string {
  return twin === undefined ? `${what} ${index}` : `${what} ${index} or ${what} ${twin}`;
}

function leaveOpenWords(way: Way, leftOpen: WayOut["leftOpen"], units: LengthUnit): string {
  if (!leftOpen) return `Leave ${which("bend", way)} at ${angleWords(way.to ?? 0)}`;
  const over =
    leftOpen.filler === null
      ? "over a straight edge"
      : `over a filler bar ${lengthIn(leftOpen.filler, units)} thick`;
  return `Stop ${which("bend", way)} with the leaf at ${angleWords(leftOpen.leafTo)}, where it relaxes to ${angleWords(way.to ?? 0)}, and close the last ${angleWords(leftOpen.toClose)} by hand ${over}`;
}

/** The limit itself, where it says more than the figure that was rounded. */
export function limitWords(way: Way, units: LengthUnit): string | undefined {
  if (way.thisOrderOnly) return "We did not try every order of bends at less: less may do.";
  if (!way.limit) return undefined;
  const { figure } = way.limit;
  const exact = (mm: Mm) => lengthWords(mm, units);
  switch (way.kind) {
    case "trimFlat":
    case "widenFlat":
    case "twoFlats":
    case "flatAndLeaf":
      return `Less than ${exact(Math.abs(figure))} does not help.`;
    case "partWay":
      return `You may leave it anywhere from ${(way.notUnder ?? 0).toFixed(1)}° to ${figure.toFixed(1)}°, after springback.`;
    case "leaveAllOpen":
      return `The blank stays as it is. With less than ${figure.toFixed(1)}° left the part hits.`;
    case "leaveOpen":
      return `The blank stays as it is. Past ${figure.toFixed(1)}°, relaxed, the part hits.`;
    case "lift":
      return `Less than ${exact(figure)} does not help.`;
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

/** What is said of a way that only just does. */
export function scantWords(units: LengthUnit): string {
  return `That leaves under ${lengthWords(0.1, units)}, less than a shop can hold: take it only where nothing else does.`;
}

/** From which figure on the job is clear, where the way told is tight. */
export function clearWords({ kind, clearFrom }: Way, units: LengthUnit): string | undefined {
  if (clearFrom === undefined) return undefined;
  const isAngle = kind === "noseAngle" || kind === "leaveOpen" || kind === "leaveAllOpen" || kind === "swing";
  return `It is clear, no longer tight, from ${isAngle ? angleWords(clearFrom) : lengthIn(Math.abs(clearFrom), units)}.`;
}
