/**
 * Random strokes of random whole parts, the engine's contact held against solids in space.
 */
import { Machine } from "../../src/contact/machine.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { StrokeElements } from "../../src/pattern/elements.ts";
import { strokeBodies } from "../../src/pattern/strokeBodies.ts";
import { strokeContact } from "../../src/pattern/strokeContact.ts";
import { strokePlan } from "../../src/pattern/strokePlan.ts";
import { strokeState } from "../../src/pattern/strokeState.ts";
import { toDeg, toRad } from "../../src/units/quantity.ts";
import { dice, randomWholeFile } from "./randomWhole.ts";
import { freeing } from "./solids.ts";
import { StrokeTruth } from "./strokeTruth.ts";

/** Contact angles may differ by so much: solids in space are looked at one angle at a time. */
const ANGLE_DEG = 0.05;
/** Angles between which the sheet is looked at where the engine has it free. */
const STEP_DEG = 4;

export interface Compared {
  readonly strokes: number;
  readonly contacts: number;
  readonly wrong: readonly string[];
}

/** Folds the part of a seed in a random order and compares every stroke; undefined where the seed makes no part. */
export function compareSeed(seed: number): Compared | undefined {
  const read = readAnyJob(JSON.stringify(randomWholeFile(seed)));
  if (!read.ok || read.kind !== "whole") return undefined;
  const { part, brake, along } = read.job;
  const roll = dice(seed ^ 0x5bd1e995);
  const machine = new Machine(brake, part.thicknessMm);
  const bends = part.sheet.pattern.bends.map((_, i) => i).sort(() => roll() - 0.5);
  const wrong: string[] = [];
  let [made, strokes, contacts] = [0, 0, 0];
  for (const bend of bends) {
    const [hinge] = part.sheet.hinges.filter((one) => one.bend === bend);
    const clampedFace = (roll() < 0.5 ? hinge!.left : hinge!.right)[0]!;
    const planned = strokePlan(part, brake, { bends: [bend], clampedFace });
    const state = planned.ok ? strokeState(new StrokeElements(planned.plan), made) : undefined;
    if (!planned.ok || !state) throw new Error(`seed ${seed}: bend ${bend + 1} makes no stroke`);
    const { lines } = planned.plan;
    const [low, high] = [lines[0]!.from, lines.at(-1)!.to];
    const fingers = along.fingers && randomRow(roll, low, high);
    const { seat } = state.elements;
    const bodies = strokeBodies(machine, seat.noseSetbackMm, fingers ? { fingers } : {});
    const contact = strokeContact(state, bodies, machine);
    const before = made;
    made |= 1 << bend;
    if (contact && contact.face === undefined) continue;
    strokes++;
    const madeBends = new Set(bends.filter((one) => (before >>> one) & 1));
    const { sheet, kFactor } = part;
    const told = freeing(() => {
      const truth = new StrokeTruth({ sheet, kFactor, brake, made: madeBends, bend, clampedFace, fingers });
      return disagreement(truth, contact && toDeg(contact.leafAngleRad), toDeg(seat.sweepRad));
    });
    if (contact) contacts++;
    if (told)
      wrong.push(
        `seed ${seed}, bend ${bend + 1}: ${told}, engine ${contact ? `${contact.member} w ${contact.w.toFixed(2)}` : "free"}`,
      );
    // A part that has met something is not bent on.
    if (contact && contact.leafAngleRad <= 0) break;
  }
  return { strokes, contacts, wrong };
}

/** A few fingers side by side or apart over the bend's line. */
function randomRow(roll: () => number, low: number, high: number) {
  const row: { widthMm: number; fromMm: number }[] = [];
  let fromMm = low + (roll() - 0.4) * 10;
  while (fromMm < high - 3 && row.length < 4) {
    const widthMm = 8 + roll() * 60;
    row.push({ widthMm, fromMm });
    fromMm += widthMm + (roll() < 0.5 ? 0 : roll() * 25);
  }
  return row;
}

/** What the truth says against the engine's contact angle, undefined where they agree. */
function disagreement(
  truth: StrokeTruth,
  contactDeg: number | undefined,
  sweepDeg: number,
): string | undefined {
  const freeDeg = contactDeg === undefined ? sweepDeg : contactDeg - ANGLE_DEG;
  for (let deg = 0; deg <= freeDeg; deg += STEP_DEG)
    if (truth.meets(toRad(deg)))
      return `met at ${deg.toFixed(2)}°, engine at ${contactDeg?.toFixed(3) ?? "none"}`;
  if (freeDeg > 0 && truth.meets(toRad(freeDeg))) return `met at ${freeDeg.toFixed(3)}° already`;
  if (contactDeg === undefined) return undefined;
  // A graze may be over again soon: look a few times.
  for (const share of [1, 0.5, 0.25, 0.1])
    if (!truth.isFree(toRad(Math.min(sweepDeg, contactDeg + share * ANGLE_DEG)))) return undefined;
  return `nothing met up to ${(contactDeg + ANGLE_DEG).toFixed(3)}°`;
}
