/**
 * Whether two brakes are the same, whatever units and words their figures are written in ("3/8", 0.375, "9.525 mm").
 * Names and days of measuring count too. Lengths are the same within 0.002 mm: units switched there and back stay one.
 */
import { type LengthUnit, parseLength } from "../../src/units/length.ts";
import type { BrakeFile } from "./jobFile.ts";

interface Mounted {
  readonly units: LengthUnit;
  readonly brake: BrakeFile;
}

const SAME_MM = 0.002;
/** Keys whose figures are no lengths. */
const NO_LENGTH = new Set(["noseAngle", "swing", "yield", "overbend"]);

export function sameFigures(one: Mounted, other: Mounted): boolean {
  const whole = ({ brake }: Mounted) => ({
    ...brake,
    setback: brake.setback ?? "auto",
    frame: brake.frame ?? [],
  });
  return same(whole(one), whole(other), "", [one.units, other.units]);
}

function same(one: unknown, other: unknown, key: string, units: readonly [LengthUnit, LengthUnit]): boolean {
  if (one === other && units[0] === units[1]) return true;
  if (isBag(one) && isBag(other)) {
    const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
    return [...keys].every((k) => same(one[k], other[k], Array.isArray(one) ? key : k, units));
  }
  const [a, b] = [figure(one, key, units[0]), figure(other, key, units[1])];
  return typeof a === "number" && typeof b === "number" ? Math.abs(a - b) <= SAME_MM : a === b;
}

const isBag = (v: unknown): v is Record<string, unknown> => typeof v === "object" && v !== null;

function figure(value: unknown, key: string, units: LengthUnit): unknown {
  if (typeof value !== "number" && typeof value !== "string") return value;
  if (key === "name" || key === "measured") return value;
  if (NO_LENGTH.has(key)) return Number.isFinite(Number(value)) ? Number(value) : value;
  return parseLength(value, units) ?? value;
}
