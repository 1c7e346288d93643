/**
 * The metal's figures on asking, each with its source; and the rule behind a gauge number.
 */
import type { Metal } from "../../src/metal/metal.ts";
import { MM_PER_INCH } from "../../src/units/length.ts";

/** MPa, with ksi beside it where the job is in inches (1 ksi = 6.894757 MPa). */
function strengthWords(mpa: number, units: "mm" | "in"): string {
  return units === "mm"
    ? `${Math.round(mpa)} MPa`
    : `${Math.round(mpa)} MPa (${Math.round(mpa / 6.894757)} ksi)`;
}

/** Least and easy inside radius of the column for this thickness, in multiples of it. */
function radiusWords(metal: Metal, thicknessMm: number, units: "mm" | "in"): string | null {
  const columns = metal.radii?.columns ?? [];
  const column = columns.find((c) => c.thicknessMm >= thicknessMm - 1e-6) ?? columns.at(-1);
  if (column === undefined) return null;
  const size = (times: number) => {
    const mm = times * thicknessMm;
    return units === "mm" ? `${mm.toFixed(1)} mm` : `${(mm / MM_PER_INCH).toFixed(3)} in`;
  };
  return `Inside radius for 90°: under ${size(column.least)} it cracks, from ${size(column.easy)} on it is safe`;
}

export function MetalFigures({
  metal,
  kFactor,
  thicknessMm,
  units,
}: {
  readonly metal: Metal;
  readonly kFactor: number;
  readonly thicknessMm: number;
  readonly units: "mm" | "in";
}) {
  const { sources } = metal;
  const radius = radiusWords(metal, thicknessMm, units);
  const rows: readonly (readonly [string, string | undefined])[] = [
    [`Yield ${strengthWords(metal.yieldMpa, units)}`, sources?.strength],
    ...(metal.ultimateMpa === undefined
      ? []
      : [[`Ultimate ${strengthWords(metal.ultimateMpa, units)}`, sources?.strength] as const]),
    [`Elastic modulus ${strengthWords(metal.modulusMpa, units)}`, sources?.modulus],
    [`K-factor ${kFactor}`, kFactor === metal.kFactor ? sources?.kFactor : "as given in this job"],
    ...(radius ? [[radius, metal.radii?.source] as const] : []),
  ];
  return (
    <details class="more">
      <summary>Where the figures of {metal.name} come from</summary>
      <dl class="sources">
        {rows.map(([figure, source]) => (
          <div key={figure}>
            <dt>{figure}</dt>
            <dd>{source ?? "as given in this job"}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
