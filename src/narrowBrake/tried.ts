/**
 * One trial of a narrow brake: its sizes put together, with all checks on it.
 */
import { assemble } from "./assemble.ts";
import { bedChecks } from "./checks/bedChecks.ts";
import { clampChecks } from "./checks/clampChecks.ts";
import { hingeChecks } from "./checks/hingeChecks.ts";
import { leafChecks } from "./checks/leafChecks.ts";
import { mountChecks } from "./checks/mountChecks.ts";
import type { UnderLoad } from "./checks/under.ts";
import { governingLoads } from "./governingLoads.ts";
import { placesOf } from "./places.ts";
import { MOST_LOST_IN_ALL, type ResolvedRequirements } from "./requirements.ts";
import type { BrakeSizes } from "./sizes.ts";
import type { Stock } from "./stockSize.ts";
import { checkOf, type StrengthCheck } from "./strengthCheck.ts";

/** Undefined where the rack or the part leaves no room for it. */
export function underLoad(
  requirements: ResolvedRequirements,
  sizes: BrakeSizes,
  stock: Stock,
): UnderLoad | undefined {
  const loads = governingLoads(requirements, sizes.leafMm);
  const places = placesOf(requirements, sizes, stock, loads.turningNmm.value);
  if (places === undefined || Object.values(places).some((place) => Number.isNaN(place))) return undefined;
  const assembly = assemble(requirements, sizes, places, stock);
  return { requirements, loads, sizes, places, assembly, stock };
}

export function checksOf(under: UnderLoad): StrengthCheck[] {
  const checks = [
    ...leafChecks(under),
    ...hingeChecks(under),
    ...clampChecks(under),
    ...bedChecks(under),
    ...mountChecks(under),
  ];
  return [...checks, lostInAll(checks, under)];
}

/** What leaf, bed and holder lose together: the bar's front leans back by as much. */
function lostInAll(checks: readonly StrengthCheck[], { requirements }: UnderLoad): StrengthCheck {
  const lost = checks.filter(({ check }) => check.startsWith("bend angle lost"));
  const of = (member: string) =>
    lost.filter((one) => one.member === member).reduce((a, b) => (b.value > a.value ? b : a));
  const worst = [of("leaf"), of("bed"), of("holder")].sort((a, b) => b.value - a.value);
  return checkOf({
    member: "brake",
    check: "bend angle lost in all at mid-length",
    value: worst.reduce((sum, { value }) => sum + value, 0),
    limit: MOST_LOST_IN_ALL * requirements.give.angleDeg,
    unit: "deg",
    formula: "sum of what leaf, bed and holder lose",
    source: "the checks above",
    assumptions: [
      "before the bar is set forward in the middle",
      "the bar's front leans back so far that it clears",
    ],
    pieces: [...new Set(worst.flatMap(({ pieces }) => pieces))],
    grows: worst[0]!.grows,
    orGrows: worst.flatMap(({ grows, orGrows = [] }) => [...(grows ? [grows] : []), ...orGrows]),
  });
}
