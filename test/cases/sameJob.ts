/**
 * The same job told another way: from the part's other end, in inches, or at another size. What must not change then
 * is what the tests ask: verdict, count, rank, angles; lengths go with the scale.
 */
import type { PlainJob } from "../reference/plainJob.ts";
import type { Corner } from "../reference/shape.ts";

/** A job file with numbers only, as in this folder and as made at random. */
export type NumbersJob = PlainJob & {
  readonly noseroom: 1;
  readonly units: "mm" | "in";
  readonly part: PlainJob["part"] & { readonly length?: number };
  readonly brake: PlainJob["brake"] & {
    readonly rated?: { readonly thickness: number; readonly length: number; readonly yield: number };
  };
};

/** The part turned end for end: chain reversed, start and end swapped in the order. */
export function fromOtherEnd(job: NumbersJob): NumbersJob {
  const { part, order, ...rest } = job;
  const turned = { ...part, flats: part.flats.toReversed(), bends: part.bends.toReversed() };
  if (!order) return { ...rest, part: turned };
  const steps = order.map(({ bend, clamped }) => {
    const other = clamped === "start" ? ("end" as const) : ("start" as const);
    return { bend: part.bends.length + 1 - bend, clamped: other };
  });
  return { ...rest, part: turned, order: steps };
}

/** Every length of the job, margin too, times `factor`. */
export function atScale(job: NumbersJob, factor: number): NumbersJob {
  const scaled = (profile: Corner[]) =>
    profile.map((corner) => corner.map((length) => length * factor) as unknown as Corner);
  const { part, brake } = job;
  const { clamp, leaf, rated, setback } = brake;
  const bends = part.bends.map((bend) =>
    bend.insideRadius === undefined ? bend : { ...bend, insideRadius: bend.insideRadius * factor },
  );
  return {
    ...job,
    margin: (job.margin ?? 0.5) * factor,
    part: {
      ...part,
      thickness: part.thickness * factor,
      insideRadius: part.insideRadius * factor,
      flats: part.flats.map((length) => length * factor),
      bends,
      ...(part.length !== undefined && { length: part.length * factor }),
    },
    brake: {
      ...brake,
      clamp: clampAt(clamp, factor, scaled),
      bed: { profile: scaled(brake.bed.profile) },
      leaf: {
        ...leaf,
        profile: scaled(leaf.profile),
        pivot: [(leaf.pivot?.[0] ?? 0) * factor, (leaf.pivot?.[1] ?? 0) * factor],
      },
      frame: (brake.frame ?? []).map(scaled),
      lift: brake.lift * factor,
      // The least grip of 3 mm would not grow with the job.
      ...{ leastGrip: Math.max(3, 4 * part.thickness) * factor },
      ...(setback !== undefined && { setback: typeof setback === "string" ? setback : setback * factor }),
      ...(rated && {
        rated: { ...rated, thickness: rated.thickness * factor, length: rated.length * factor },
      }),
    },
  };
}

/** All of a clamp's keys are lengths but its kind and its nose angle. */
function clampAt(
  clamp: PlainJob["brake"]["clamp"],
  factor: number,
  scaled: (profile: Corner[]) => Corner[],
): PlainJob["brake"]["clamp"] {
  if (clamp.type === "profile") {
    const shim = clamp.shim !== undefined && { shim: clamp.shim * factor };
    return { ...clamp, noseRadius: clamp.noseRadius * factor, profiles: clamp.profiles.map(scaled), ...shim };
  }
  const keys = Object.entries(clamp).map(([key, value]) =>
    typeof value === "number" && key !== "noseAngle" ? [key, value * factor] : [key, value],
  );
  return Object.fromEntries(keys) as PlainJob["brake"]["clamp"];
}

/** The same job written in inches. */
export function inInches(job: NumbersJob): NumbersJob {
  return { ...atScale(job, 1 / 25.4), units: "in" };
}
