/**
 * One bend in one state, checked whole: contact, clearance, loading, unloading, verdict, by sections 3 to 7 of the model.
 * Contact to about 0.01° on levers over a millimetre, clearance to 0.002 mm: what flattening and bisecting leave.
 */
import { type Clearance, leastClearance } from "./clearance.ts";
import { type Contact, firstContact, LeafAlone } from "./contact.ts";
import { type Handling, handlingOf, overlapsBrake } from "./loading.ts";
import { type Stage, stageOf } from "./pairs.ts";
import type { PlainJob, State } from "./plainJob.ts";

/** How far part faces are pulled in for the contact test, mm. */
const INSET = 0.01;
const CONTACT_CHORD = 0.0002;
const FINE_CHORD = 0.00004;
const LOADING_CHORD = 0.002;
const CLEARANCE_CHORD = 0.001;

export type Verdict = "clear" | "tight" | "hits";

export interface BendCheck {
  contact: Contact | null;
  /** Least distance; null where nothing is left to measure, 0 on contact. */
  clearanceMm: number | null;
  clearance: Clearance | null;
  load: Handling;
  unload: Handling;
  noseSetbackMm: number;
  reachedDeg: number;
  relaxesToDeg: number;
  /** Why the bend is not begun at all; nothing is swept then, and nothing measured. */
  refused: "pinched" | null;
  markedFaceUp: boolean;
  verdict: Verdict;
}

/** Contact on finely flattened arcs, looked for a little before the angle that coarser ones give. */
function exactContact(job: PlainJob, state: State, stage: Stage, alone: LeafAlone): Contact | null {
  const coarse = firstContact(stage, alone);
  if (coarse === null || coarse.angleDeg === 0) return coarse;
  const fine = stageOf(job, state, INSET, FINE_CHORD);
  return firstContact(fine, alone, Math.max(0, ((coarse.angleDeg - 0.3) * Math.PI) / 180));
}

/** Checks one bend; the state names the bends made before it. Hand over one `alone` for all states of a job. */
export function checkBend(job: PlainJob, state: State, alone = new LeafAlone()): BendCheck {
  const stage = stageOf(job, state, INSET, CONTACT_CHORD);
  const { bend } = stage.motion;
  const refused = bend.pinched ? "pinched" : null;
  const contact = refused === null ? exactContact(job, state, stage, alone) : null;
  const clearance =
    contact === null && refused === null ? leastClearance(stageOf(job, state, 0, CLEARANCE_CHORD)) : null;
  const coarse = stageOf(job, state, INSET, LOADING_CHORD);
  const handling = (formed: boolean): Handling => {
    const seat = (on: Stage, chordMm: number) =>
      on.motion.seated(on.clampedPieces, on.movingPieces, formed, INSET, chordMm);
    return handlingOf(coarse, seat(coarse, LOADING_CHORD), overlapsBrake(stage, seat(stage, CONTACT_CHORD)));
  };
  const [load, unload] = [handling(false), handling(true)];
  const reachedDeg = refused !== null ? 0 : (contact?.angleDeg ?? (stage.endPhi * 180) / Math.PI);
  const clearanceMm = contact === null ? (clearance?.mm ?? null) : 0;
  const stopped =
    refused !== null ||
    contact !== null ||
    stage.overbendPastSwing ||
    load === "blocked" ||
    unload === "blocked";
  const close = clearanceMm !== null && clearanceMm < (job.margin ?? 0.5);
  return {
    contact,
    clearanceMm,
    clearance,
    load,
    unload,
    noseSetbackMm: stage.noseSetback,
    reachedDeg,
    refused,
    relaxesToDeg: (reachedDeg * bend.theta) / bend.thetaOver,
    markedFaceUp: bend.up,
    verdict: stopped ? "hits" : close ? "tight" : "clear",
  };
}
