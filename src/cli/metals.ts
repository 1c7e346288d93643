/**
 * `noseroom metals [NAME]`: the metals that the shop keeps, with every figure; the source of each stands below it.
 */
import type { RadiusTable, TabulatedMetal } from "../metal/metal.ts";
import { metalNamed, metalNames } from "../metal/metals.ts";
import { keptShare, SPRINGBACK_TABLE } from "../metal/springbackCurves.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";
import { type Ink, inkFor } from "./ink.ts";
import { unitsOption } from "./optionLengths.ts";
import { Refusal } from "./refusal.ts";
import { table } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";

export interface MetalsOptions {
  readonly units?: string;
  readonly json?: boolean;
}

const MPA_PER_KSI = 6.894757;
const KG_M3_PER_LB_IN3 = 27_679.9;

/**
 * Runs the command and gives its exit status, 0.
 * @throws Refusal for a metal that is not kept
 */
export async function runMetals(name: string | undefined, options: MetalsOptions): Promise<number> {
  const units = unitsOption(options.units);
  const kept = metalNames().flatMap((one) => metalNamed(one) ?? []);
  const asked = name === undefined ? undefined : metalNamed(name);
  if (name !== undefined && asked === undefined) {
    throw new Refusal(
      `There is no metal "${name}". There are: ${metalNames().join(", ")}. Your own goes into the job as {name, yield, modulus} in MPa.`,
    );
  }
  if (options.json) {
    process.stdout.write(`${JSON.stringify(asked ?? kept, null, 2)}\n`);
    return 0;
  }
  const ink = inkFor(process.stdout, process.env);
  const columns = columnsOf(process.stdout);
  const lines = asked === undefined ? listLines(kept, units, ink) : metalLines(asked, units, ink);
  const long = lines.flatMap((line) => wrapped(line, columns));
  process.stdout.write(`${long.join("\n")}\n`);
  return 0;
}

/** Sentences are broken for a terminal, rows of a table are not: they have runs of blanks. */
function wrapped(line: string, columns: number): string[] {
  if (line.length <= columns || /\S {2}/u.test(line)) return [line];
  const indent = /^ */u.exec(line)?.[0] ?? "";
  return wrap(line.trim(), columns, indent);
}

interface Figures {
  readonly strength: (mpa: number) => string;
  readonly modulus: (mpa: number) => string;
  readonly density: (kgM3: number) => string;
  readonly units: readonly [strength: string, modulus: string, density: string];
}

function figuresIn(units: LengthUnit): Figures {
  if (units === "mm") {
    return {
      strength: (mpa) => mpa.toFixed(0),
      modulus: (mpa) => (mpa / 1000).toFixed(0),
      density: (kgM3) => kgM3.toFixed(0),
      units: ["MPa", "GPa", "kg/m³"],
    };
  }
  return {
    strength: (mpa) => (mpa / MPA_PER_KSI).toFixed(0),
    modulus: (mpa) => String(Number((mpa / MPA_PER_KSI / 1000).toFixed(1))),
    density: (kgM3) => (kgM3 / KG_M3_PER_LB_IN3).toFixed(3),
    units: ["ksi", "million psi", "lb/in³"],
  };
}

/** All metals in a table, then each source with the metals that it holds for. */
function listLines(metals: readonly TabulatedMetal[], units: LengthUnit, ink: Ink): string[] {
  const figures = figuresIn(units);
  const [strength, modulus, density] = figures.units;
  const headings = ["", "yield", "ultimate", "modulus", "density", "K-factor", "least radius"];
  const unitRow = ["", strength, strength, modulus, density, "", "× T"];
  const rows = metals.map((metal) => [
    metal.name,
    figures.strength(metal.yieldMpa),
    figures.strength(metal.ultimateMpa),
    figures.modulus(metal.modulusMpa),
    figures.density(metal.densityKgM3),
    String(metal.kFactor),
    radiusRange(metal.radii),
  ]);
  return [
    ink.strong("Metals that a job can name"),
    "Typical figures: a test strip of your own sheet is better. Least inside radius of a 90° bend across the grain, in thicknesses T of the sheet, thin sheet to thick; noseroom metals NAME has it by thickness.",
    "",
    ...table(
      [headings, unitRow, ...rows],
      headings.map((_, i) => (i === 0 ? "left" : "right")),
    ),
    "",
    ink.strong("Where the figures come from"),
    ...sourceLines("Strength", metals, ({ sources }) => sources.strength),
    ...sourceLines("Modulus", metals, ({ sources }) => sources.modulus),
    ...sourceLines("Density", metals, ({ sources }) => sources.density),
    ...sourceLines("K-factor", metals, ({ sources }) => sources.kFactor),
    ...sourceLines("Least radius", metals, ({ radii }) => radii.source),
  ];
}

function radiusRange({ columns }: RadiusTable): string {
  const least = columns.map((column) => column.least);
  const [thin, thick] = [Math.min(...least), Math.max(...least)];
  return thin === thick ? `${thin}` : `${thin} to ${thick}`;
}

/** Each source once, with its metals behind it. */
function sourceLines(
  what: string,
  metals: readonly TabulatedMetal[],
  sourceOf: (metal: TabulatedMetal) => string,
): string[] {
  return [...new Set(metals.map(sourceOf))].map((source) => {
    const names = metals.filter((metal) => sourceOf(metal) === source).map(({ name }) => name);
    return `  ${what} of ${names.join(", ")}: ${source}.`;
  });
}

/** Inside radii over thickness that springback is shown for. */
const SHOWN_RATIOS = [1, 2.5, 4, 10];

/** The second table of a metal, by thickness. */
function otherRows({ columns, source }: RadiusTable, units: LengthUnit): string[] {
  const [only, ...more] = columns;
  const rows = columns.map(({ thicknessMm, least }) => [
    `  ${formatLength(thicknessMm, units)} ${units}`,
    `${least} T`,
  ]);
  return [
    "  Another table:",
    ...(only !== undefined && more.length === 0
      ? [`  any thickness  ${only.least} T`]
      : table(rows, ["left", "left"])),
    `  Source: ${source}.`,
  ];
}

/** One metal: a figure a row with its source, and its radii by thickness. */
function metalLines(metal: TabulatedMetal, units: LengthUnit, ink: Ink): string[] {
  const figures = figuresIn(units);
  const [strength, modulus, density] = figures.units;
  const { sources, radii } = metal;
  const rows = [
    ["yield", `${figures.strength(metal.yieldMpa)} ${strength}`, sources.strength],
    ["ultimate", `${figures.strength(metal.ultimateMpa)} ${strength}`, "the same"],
    ["modulus", `${figures.modulus(metal.modulusMpa)} ${modulus}`, sources.modulus],
    ["density", `${figures.density(metal.densityKgM3)} ${density}`, sources.density],
    ["K-factor to start with", String(metal.kFactor), sources.kFactor],
  ];
  const times = (least: number, easy: number) =>
    least === easy ? `${least} T` : `${least} T at least, easy from ${easy} T`;
  const [only, ...more] = radii.columns;
  const radiusRows = radii.columns.map(({ thicknessMm, least, easy }) => [
    `  ${formatLength(thicknessMm, units)} ${units}`,
    times(least, easy),
  ]);
  return [
    ink.strong(metal.name),
    ...table(rows, ["left", "left", "left"]),
    "",
    ink.strong("Inside radius of a 90° bend across the grain, by thickness T"),
    ...(only !== undefined && more.length === 0
      ? [`  any thickness  ${times(only.least, only.easy)}`]
      : table(radiusRows, ["left", "left"])),
    `  Source: ${radii.source}.`,
    ...(metal.otherRadii ? otherRows(metal.otherRadii, units) : []),
    "",
    ink.strong("Part of the leaf angle that a bend keeps after springback, by inside radius over thickness"),
    ...table(
      SHOWN_RATIOS.map((ratio) => {
        const { most, likely, least } = keptShare(metal, ratio, 1);
        return [`  ${ratio} T`, likely.toFixed(3), `${least.toFixed(3)} to ${most.toFixed(3)}`];
      }),
      ["left", "left", "left"],
    ),
    `  Source: ${metal.springback ? `${SPRINGBACK_TABLE}, row ${metal.springback.row}` : "reckoned from yield and modulus; no table has this metal"}.`,
    "",
    "Bends along the grain want more (common practice). Typical figures: bend a scrap of your own sheet first.",
  ];
}
