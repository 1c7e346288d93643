/**
 * One bend in one state, checked whole: contact, clearance, loading, unloading, verdict, by sections 3 to 7 of the model.
 * Contact to about 0.01° on levers over a millimetre, clearance to 0.002 mm: what flattening and bisecting leave.
 */
import { type Clearance, leastClearance } from "./clearance.ts";
import { type Contact, firstContact, LeafAlone } from "./contact.ts";
import { type Handling, handlingOf } from "./loading.ts";
import { stageOf } from "./pairs.ts";
import type { PlainJob, State } from "./plainJob.ts";

/** How far part faces are pulled in for the contact test, mm. */
const INSET = 0.01;
const CONTACT_CHORD = 0.0002;
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
  markedFaceUp: boolean;
  verdict: Verdict;
}

/** Checks one bend; the state names the bends made before it. Hand over one `alone` for all states of a job. */
export function checkBend(job: PlainJob, state: State, alone = new LeafAlone()): BendCheck {
  const stage = stageOf(job, state, INSET, CONTACT_CHORD);
  const { bend } = stage.motion;
  const contact = firstContact(stage, alone);
  const clearance = contact === null ? leastClearance(stageOf(job, state, 0, CLEARANCE_CHORD)) : null;
  const coarse = stageOf(job, state, INSET, LOADING_CHORD);
  const seated = (formed: boolean) =>
    coarse.motion.seated(coarse.clampedPieces, coarse.movingPieces, formed, INSET, LOADING_CHORD);
  const load = handlingOf(coarse, seated(false));
  const unload = handlingOf(coarse, seated(true));
  const reachedDeg = contact?.angleDeg ?? (stage.endPhi * 180) / Math.PI;
  const clearanceMm = contact === null ? (clearance?.mm ?? null) : 0;
  const stopped = contact !== null || stage.overbendPastSwing || load === "blocked" || unload === "blocked";
  const close = clearanceMm !== null && clearanceMm < (job.margin ?? 0.5);
  return {
    contact,
    clearanceMm,
    clearance,
    load,
    unload,
    noseSetbackMm: stage.noseSetback,
    reachedDeg,
    relaxesToDeg: (reachedDeg * bend.theta) / bend.thetaOver,
    markedFaceUp: bend.up,
    verdict: stopped ? "hits" : close ? "tight" : "clear",
  };
}
