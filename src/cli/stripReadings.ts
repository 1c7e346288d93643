/**
 * What was read off a test strip, from the options of `noseroom strip` and, where one is named, a job.
 * Options beat the job. Either half will do: width and flanges for the bend deduction, leaf and relaxed for springback.
 */
import type { Job } from "../jobFile/job.ts";
import type { Metal } from "../metal/metal.ts";
import { metalNamed, metalNames } from "../metal/metals.ts";
import { parseThickness, thicknessHint } from "../units/gauge.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { lengthOption, pairOption, unitsOption } from "./optionLengths.ts";
import { Refusal } from "./refusal.ts";
import type { WriteOptions } from "./writeOut.ts";

export interface StripOptions extends WriteOptions {
  readonly before?: string;
  readonly flanges?: string;
  readonly angle?: string;
  readonly leaf?: string;
  readonly relaxed?: string;
  readonly metal?: string;
  readonly thickness?: string;
  readonly radius?: string;
  readonly brake?: string;
  readonly date?: string;
  readonly units?: string;
  readonly json?: boolean;
  readonly output?: string;
  /** File to keep the record in. */
  readonly keep?: string;
  /** File with a record kept before. */
  readonly record?: string;
}

export interface StripReadings {
  readonly units: LengthUnit;
  readonly date: string;
  /** Null where neither job nor option names it. */
  readonly brake: string | null;
  /** Null where it was not said: deduction and springback ratio need none. */
  readonly metal: Metal | null;
  readonly thicknessMm: Mm;
  readonly insideRadiusMm: Mm;
  /** Bend angle at which the flanges were measured. */
  readonly angleDeg: Deg;
  readonly widths: { readonly beforeMm: Mm; readonly flangesMm: readonly [Mm, Mm] } | null;
  readonly spring: { readonly leafReadDeg: Deg; readonly relaxedDeg: Deg } | null;
}

/** @throws Refusal where something is missing or cannot be worked with */
export function stripReadings(job: Job | undefined, options: StripOptions, today: string): StripReadings {
  const units = unitsOption(options.units, job?.units);
  together(options.before, "--before", options.flanges, "--flanges");
  together(options.leaf, "--leaf", options.relaxed, "--relaxed");
  if (options.before === undefined && options.leaf === undefined) {
    throw new Refusal(
      "A strip wants --before and --flanges for its bend deduction, or --leaf and --relaxed for its springback, or all four.",
    );
  }
  const relaxedDeg = angleOption(options.relaxed, "--relaxed");
  const leafReadDeg = angleOption(options.leaf, "--leaf");
  const widths =
    options.before === undefined || options.flanges === undefined
      ? null
      : {
          beforeMm: lengthOption(options.before, "--before", units),
          flangesMm: pairOption(options.flanges, "--flanges", units, '"1 1/32, 1 1/32 in"', /\s*[,;]\s*/u),
        };
  return {
    units,
    date: dateOption(options.date, today),
    brake: options.brake ?? job?.brake.name ?? null,
    metal: metalOption(options.metal) ?? job?.part.metal ?? null,
    thicknessMm: thicknessOf(job, options.thickness, units),
    insideRadiusMm: radiusOf(job, options.radius, units),
    angleDeg: angleOption(options.angle, "--angle") ?? relaxedDeg ?? 90,
    widths,
    spring: leafReadDeg === undefined || relaxedDeg === undefined ? null : { leafReadDeg, relaxedDeg },
  };
}

function together(one: string | undefined, oneName: string, other: string | undefined, otherName: string) {
  if ((one === undefined) === (other === undefined)) return;
  const [there, missing] = one === undefined ? [otherName, oneName] : [oneName, otherName];
  throw new Refusal(`${there} wants ${missing} beside it.`);
}

function angleOption(written: string | undefined, option: string): Deg | undefined {
  if (written === undefined) return undefined;
  const angle = Number(written.replace(/\s*(°|deg|degrees)\s*$/u, ""));
  if (written.trim() !== "" && angle > 0 && angle < 180) return angle;
  throw new Refusal(`${option} is "${written}"; it may be degrees from flat, above 0 and under 180.`);
}

function dateOption(written: string | undefined, today: string): string {
  if (written === undefined) return today;
  const day = /^\d{4}-\d{2}-\d{2}$/u.test(written) ? new Date(`${written}T00:00:00Z`) : undefined;
  // A day that is in no calendar, 2026-02-30, comes back as another one.
  if (day && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(written)) return written;
  throw new Refusal(`--date is "${written}"; it may be a day such as 2026-05-30.`);
}

function metalOption(written: string | undefined): Metal | undefined {
  if (written === undefined) return undefined;
  const metal = metalNamed(written);
  if (metal === undefined) {
    throw new Refusal(`--metal is "${written}"; it may be one of ${metalNames().join(", ")}.`);
  }
  return metal;
}

function thicknessOf(job: Job | undefined, written: string | undefined, units: LengthUnit): Mm {
  if (written === undefined) {
    if (job) return job.part.thicknessMm;
    throw new Refusal("A strip wants --thickness, or a job that has it.");
  }
  const thicknessMm = parseThickness(written, units);
  if (thicknessMm !== undefined && thicknessMm > 0) return thicknessMm;
  throw new Refusal(`--thickness is "${written}"; it may be ${thicknessHint}.`);
}

function radiusOf(job: Job | undefined, written: string | undefined, units: LengthUnit): Mm {
  if (written !== undefined) return lengthOption(written, "--radius", units);
  const radii = new Set(job?.part.bends.map((bend) => bend.insideRadiusMm));
  const [only] = radii;
  if (radii.size === 1 && only !== undefined) return only;
  throw new Refusal(
    job === undefined
      ? "A strip wants --radius, the inside radius that it was bent to, or a job that has it."
      : "The bends of this job have several inside radii: give the strip's with --radius.",
  );
}
