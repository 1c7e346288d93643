/**
 * Figures of a part that can be read but are probably not what was meant: a gauge of another metal's family, millimetres
 * typed into a job in inches. They are asked about, not refused. Common practice, no source.
 */
import { type GaugeFamily, gaugeThickness, parseGauge } from "../units/gauge.ts";
import { MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { JobFile } from "./schema.ts";

export type OddFigure =
  /** `would` is what that number means in the metal's own family, undefined where it has no such number. */
  | {
      readonly kind: "gauge";
      readonly written: string;
      readonly metal: string;
      readonly family: GaugeFamily;
      readonly wouldMm: Mm | undefined;
    }
  /** Flat from 1, so many times the sheet's thickness. */
  | { readonly kind: "millimetres"; readonly flat: number; readonly written: number; readonly times: number };

/** Inch dimensions longer than this lie on a sixteenth where they are meant. */
const LONG_IN = 5;
/** A flat this many times as long as the sheet is thick is long for a bent part. */
const MANY_THICKNESSES = 200;
const SIXTEENTH_WITHIN_IN = 0.0005;

/** What to ask about a part of this thickness and metal. */
export function oddFigures({ part, units }: JobFile, metal: string, thicknessMm: Mm): OddFigure[] {
  return [
    ...oddGauge(part.thickness, metal),
    ...(units === "in" ? metricFlats(part.flats, thicknessMm) : []),
  ];
}

function oddGauge(written: string | number, metal: string): OddFigure[] {
  const gauge = parseGauge(written);
  const family = familyOf(metal);
  if (gauge === undefined || family === undefined || fits(gauge.family, family)) return [];
  const wouldMm = gaugeThickness(gauge.number, family);
  return [{ kind: "gauge", written: String(written), metal, family, wouldMm }];
}

/** Galvanized sheet is steel under its zinc. */
function fits(gauge: GaugeFamily, metal: GaugeFamily): boolean {
  return gauge === metal || (gauge === "galvanized" && metal === "steel");
}

/** The family that a metal's gauge numbers are of, by its name; undefined for a name that says nothing of it. */
export function familyOf(metal: string): GaugeFamily | undefined {
  const name = metal.toLowerCase();
  if (/galvani/u.test(name)) return "galvanized";
  if (/stainless|^(30[1-9]|31[0-9]|321|347)\b|^1\.4\d{3}/u.test(name)) return "stainless";
  if (/alumin|brass|^\d{4}-?[a-z]/u.test(name)) return "aluminum";
  return /steel|^4130|^s235|^dc0\d/u.test(name) ? "steel" : undefined;
}

function metricFlats(flats: JobFile["part"]["flats"], thicknessMm: Mm): OddFigure[] {
  return flats.flatMap((written, i): OddFigure[] => {
    const inches = typeof written === "number" ? written : Number(written);
    const times = (inches * MM_PER_INCH) / thicknessMm;
    const onSixteenth = Math.abs(inches * 16 - Math.round(inches * 16)) <= 16 * SIXTEENTH_WITHIN_IN;
    if (!(inches > LONG_IN) || times < MANY_THICKNESSES || onSixteenth) return [];
    return [{ kind: "millimetres", flat: i + 1, written: inches, times: Math.round(times) }];
  });
}
