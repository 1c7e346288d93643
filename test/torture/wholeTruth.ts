/**
 * One bend by the engine against the whole reference: contact, clearance, loading, verdict. Where the two differ and
 * the reference itself changes its mind when the sheet's faces or the lift move by a few thousandths of a millimetre,
 * the case stands on the edge and counts as a tie; everything else is a disagreement.
 */
import type { Step } from "../../src/contact/step.ts";
import { toDeg, toRad } from "../../src/units/quantity.ts";
import { checkBend } from "../reference/bendCheck.ts";
import type { LeafAlone } from "../reference/contact.ts";
import { type Handling, handlingOf, overlapsBrake } from "../reference/loading.ts";
import { stageOf } from "../reference/pairs.ts";
import type { PlainJob, State } from "../reference/plainJob.ts";
import type { Corner } from "../reference/shape.ts";
import { LENGTH_MM, meetsRightAfter, onlyTouches } from "./sampledTruth.ts";

const ANGLE_DEG = 0.05;
const INSET_MM = 0.01;
const HAIR_MM = 0.003;
const LEAF_OFF_MM = 0.001;
const CHORD_MM = 0.0005;

/** A disagreement in a sentence; "tie" on the edge between two answers; undefined where they agree. */
export function wholeFault(
  file: PlainJob,
  state: State,
  step: Step,
  alone: LeafAlone,
): { readonly fault?: string; readonly tie?: true } {
  const truth = checkBend(file, state, alone);
  const contactDeg = step.contact && toDeg(step.contact.leafAngleRad);
  const [mineDeg, theirsDeg] = [contactDeg ?? truth.reachedDeg + 1, truth.contact?.angleDeg ?? Infinity];
  if (Math.min(mineDeg, theirsDeg) <= truth.reachedDeg && Math.abs(mineDeg - theirsDeg) > ANGLE_DEG) {
    // Bodies that slide along each other, or graze by less than a hair: on the edge between two answers, as long as the
    // engine's contact, if it is the sooner, is one.
    const sooner = contactDeg !== undefined && contactDeg < theirsDeg;
    const lastDeg = Math.min(Math.max(mineDeg, theirsDeg), toDeg(stageEnd(file, state))) - ANGLE_DEG;
    const tried = step.contact && step.contact.tag < 0 ? withLeafOff(file) : file;
    const real = !sooner || meetsRightAfter(tried, state, toRad(contactDeg));
    if (real && onlyTouches(file, state, toRad(Math.min(mineDeg, theirsDeg)), toRad(lastDeg)))
      return { tie: true };
    return { fault: `contact at ${contactDeg}°, reference ${truth.contact?.angleDeg}°` };
  }
  if (contactDeg !== undefined && contactDeg > 0 && !truth.contact!.members.includes(step.contact!.member))
    return { fault: `met ${step.contact!.member}, reference ${truth.contact!.members}` };
  const [mine, theirs] = [step.clearanceMm ?? null, truth.clearanceMm];
  if ((mine === null) !== (theirs === null) || Math.abs((mine ?? 0) - (theirs ?? 0)) > LENGTH_MM)
    return { fault: `clearance ${mine}, reference ${theirs}` };
  if (step.load !== truth.load || step.unload !== truth.unload) {
    const [loads, unloads] = [nearHandlings(file, state, false), nearHandlings(file, state, true)];
    if (loads.has(step.load) && unloads.has(step.unload)) return { tie: true };
    return {
      fault: `in by ${step.load}, out by ${step.unload}; reference ${truth.load}, ${truth.unload}`,
    };
  }
  if (step.verdict === truth.verdict) return {};
  const margin = file.margin ?? 0.5;
  if (theirs !== null && Math.abs(theirs - margin) < LENGTH_MM) return { tie: true };
  return { fault: `verdict ${step.verdict}, reference ${truth.verdict}` };
}

/** The job with its leaf drawn off bed and clamp as the model does for the leaf's own contact with them (contact/gaps.ts). */
function withLeafOff(file: PlainJob): PlainJob {
  const { leaf } = file.brake;
  const profile = leaf.profile.map(
    ([x, y, radius = 0]): Corner => [x + LEAF_OFF_MM, y - LEAF_OFF_MM, radius],
  );
  return { ...file, brake: { ...file.brake, leaf: { ...leaf, profile } } };
}

function stageEnd(file: PlainJob, state: State): number {
  return stageOf(file, state, INSET_MM, CHORD_MM).endPhi;
}

/** All that the reference says of loading when lift and faces move by a hair. */
function nearHandlings(file: PlainJob, state: State, formed: boolean): ReadonlySet<Handling> {
  const found = new Set<Handling>();
  for (const inset of [INSET_MM - HAIR_MM, INSET_MM, INSET_MM + HAIR_MM]) {
    for (const more of [-HAIR_MM, 0, HAIR_MM]) {
      const brake = { ...file.brake, lift: Math.max(0, file.brake.lift + more) };
      const stage = stageOf({ ...file, brake }, state, inset, CHORD_MM);
      const seated = stage.motion.seated(stage.clampedPieces, stage.movingPieces, formed, inset, CHORD_MM);
      found.add(handlingOf(stage, seated, overlapsBrake(stage, seated)));
    }
  }
  return found;
}
