/**
 * What must hold of every answer whatever the job: the same part turned end for end or written in inches, the same
 * answer; points that lie on what they name. No reference needed: source is the model's own symmetry (1 in = 25.4 mm).
 */
import type { Step } from "../../src/contact/step.ts";
import { judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { sceneAt } from "../../src/motion/scene.ts";
import { slideAt } from "../../src/motion/slide.ts";
import { distanceToEdge } from "../../src/plane/edge.ts";
import type { Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";
import type { Rad } from "../../src/units/quantity.ts";
import type { State } from "../reference/plainJob.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import { LENGTH_MM } from "./sampledTruth.ts";

/** Two ways of writing one job round differently in the last digits, and a graze can feel that. */
const SAME_RAD = 1e-6;
const SAME_MM = 1e-6;
const INSET_MM = 0.01;

/** The same part seen from its other end. */
export function turnedFile(file: RandomJob): RandomJob {
  const { flats, bends } = file.part;
  return { ...file, part: { ...file.part, flats: flats.toReversed(), bends: bends.toReversed() } };
}

/** The same job in inches: every length over 25.4, angles as they are. */
export function inchFile(file: RandomJob): object {
  const kept = new Set(["kFactor", "angle", "overbend", "noseAngle", "swing", "noseroom"]);
  const over = (value: unknown): unknown => {
    if (typeof value === "number") return value / 25.4;
    if (Array.isArray(value)) return value.map(over);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, item]) => [key, kept.has(key) ? item : over(item)]),
    );
  };
  return { ...(over(file) as object), units: "in" };
}

/** Judges the state of the turned part: bends counted from the other end, the other end clamped. */
export function judgeTurned(turned: Job, bends: number, bendsDone: number, state: State): Step {
  let done = 0;
  for (let i = 0; i < bends; i++) if ((bendsDone >> i) & 1) done |= 1 << (bends - 1 - i);
  const end = state.end === "start" ? "end" : "start";
  return judgeStep(
    turned.part,
    turned.brake,
    { bendsDone: done, bend: bends - 1 - state.bend, clamped: end },
    turned.marginMm,
  );
}

/** What two answers that should be one differ in; undefined where they agree. */
export function differs(a: Step, b: Step, what: string): string | undefined {
  if (a.refused !== b.refused) return `${what}: refused ${a.refused} and ${b.refused}`;
  const [x, y] = [a.contact?.leafAngleRad, b.contact?.leafAngleRad];
  if ((x === undefined) !== (y === undefined)) return `${what}: contact at ${x} and at ${y}`;
  if (x !== undefined && Math.abs(x - y!) > SAME_RAD) return `${what}: contact at ${x} and at ${y}`;
  const [m, n] = [a.clearanceMm, b.clearanceMm];
  if ((m === undefined) !== (n === undefined) || Math.abs((m ?? 0) - (n ?? 0)) > SAME_MM)
    return `${what}: clearance ${m} and ${n}`;
  if (a.load !== b.load || a.unload !== b.unload)
    return `${what}: in by ${a.load}, out by ${a.unload}; and ${b.load}, ${b.unload}`;
  return undefined;
}

function offOutline(point: Point, outlines: readonly Outline[]): number {
  return Math.min(...outlines.flatMap((o) => o.edges.map((edge) => distanceToEdge(point, edge))));
}

/**
 * How far a contact's point is off the sheet. The picture joins the two sides by what stands in the bend zone: where that
 * begins before the clamped tangent line the clamped side is looked for as it lies at rest, and the cross-section at which
 * the moving flat starts lies within the picture's sheet, on no rim of it.
 */
function offSheet({ part, brake }: Job, step: Step, point: Point, leafAngleRad: Rad, tag: number): number {
  const { bendsDone, seat } = step;
  const number = tag >> 2;
  const ofBend = (tag & 2) !== 0;
  const onStart = ofBend ? number < seat.bend : number <= seat.bend;
  const clamped = onStart === (seat.clamped === "start");
  const sheetAt = (phi: Rad) =>
    sceneAt(part, brake, { bendsDone, bend: seat.bend, clamped: seat.clamped }, phi).sheet;
  const off = offOutline(point, [sheetAt(leafAngleRad)]);
  if (clamped) return Math.min(off, offOutline(point, [sheetAt(0)]));
  // Turned back to where the leaf lies at rest.
  const { pivot, thicknessMm } = seat;
  const [dx, dy] = [point.x - pivot.x, point.y - pivot.y];
  const [c, s] = [Math.cos(leafAngleRad), Math.sin(leafAngleRad)];
  const [x, y] = [pivot.x + c * dx + s * dy, pivot.y + c * dy - s * dx];
  const zoneEnd = pivot.x + (seat.bendZoneTan - pivot.y) * Math.tan(leafAngleRad / 2);
  const start = Math.max(seat.movingTangentX + slideAt(seat, leafAngleRad), zoneEnd);
  return Math.min(off, Math.hypot(x - start, Math.max(0, -y, y - thicknessMm)));
}

/** Whether the contact's point lies on the sheet (or leaf) and on the member met, as the scene draws them. */
export function pointFault(job: Job, step: Step): string | undefined {
  const { contact, seat } = step;
  if (!contact) {
    const [points, mm] = [step.clearancePoints, step.clearanceMm];
    if (!points || mm === undefined) return undefined;
    const apart = Math.hypot(points[0].x - points[1].x, points[0].y - points[1].y);
    // Faces that overlap within the inset of both leave nothing, and points that far apart.
    const most = mm === 0 ? 2 * INSET_MM + SAME_MM : SAME_MM;
    return Math.abs(apart - mm) < most ? undefined : `points ${apart} apart, clearance ${mm}`;
  }
  const { part, brake } = job;
  const { point, tag, leafAngleRad } = contact;
  const scene = sceneAt(
    part,
    brake,
    { bendsDone: step.bendsDone, bend: seat.bend, clamped: seat.clamped },
    leafAngleRad,
  );
  const bodies = { ...scene, bed: [scene.bed], leaf: [scene.leaf], part: [scene.sheet] };
  const onPart = tag < 0 ? offOutline(point, bodies.leaf) : offSheet(job, step, point, leafAngleRad, tag);
  const onMember = offOutline(point, bodies[contact.member]);
  // Bodies that overlap at rest already share more than a border: then the point lies somewhere in both.
  const most = leafAngleRad > 0 ? LENGTH_MM : part.thicknessMm;
  if (Math.max(onPart, onMember) < most) return undefined;
  return `contact point ${onPart} off its own body and ${onMember} off the ${contact.member}`;
}
