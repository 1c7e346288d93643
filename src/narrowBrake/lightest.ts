/**
 * What to make larger where a check fails: of all that helps, what adds the least weight for what it does, one step of the rack at a time.
 */
import { weightOf } from "./checks/mountChecks.ts";
import type { UnderLoad } from "./checks/under.ts";
import { boltsClear, placesOf } from "./places.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import { type BrakeSizes, type Growth, grown } from "./sizes.ts";
import type { Stock } from "./stockSize.ts";
import type { StrengthCheck } from "./strengthCheck.ts";
import { checksOf, underLoad } from "./tried.ts";

/** What a bolt more or so weighs. */
const LEAST_KG = 0.05;

/** Of all that helps against a failed check what does so with the least weight. */
export function lightest(
  failed: StrengthCheck,
  { requirements, places, stock, assembly, ...under }: UnderLoad,
): BrakeSizes | undefined {
  // Grown from what stands there, which may be more than was asked for.
  const { capDepthMm, leafHighMm, bedEarHighMm } = places;
  const sizes = { ...under.sizes, capDepthMm, leafHighMm, bedEarHighMm };
  const larger = [failed.grows, ...(failed.orGrows ?? [])].flatMap((growth) => {
    const one = growth === null ? undefined : grown(sizes, growth, stock, requirements);
    return (growth && one && withRoomInRow(requirements, one, growth, stock)) ?? [];
  });
  if (larger.length < 2) return larger[0];
  const kg = weightOf({ assembly });
  const gain = (one: BrakeSizes) => {
    const under = underLoad(requirements, one, stock);
    const same = ({ member, check }: StrengthCheck) => member === failed.member && check === failed.check;
    const value = under && checksOf(under).find(same)?.value;
    if (value === undefined) return Number.NEGATIVE_INFINITY;
    return (failed.value - value) / Math.max(weightOf(under!) - kg, LEAST_KG);
  };
  const gains = larger.map(gain);
  return larger[gains.indexOf(Math.max(...gains))];
}

/** The same with so few bolts that each washer clears the next; undefined where one bolt more is what was asked and has no room. */
function withRoomInRow(
  requirements: ResolvedRequirements,
  larger: BrakeSizes,
  growth: Growth,
  stock: Stock,
): BrakeSizes | undefined {
  const fewest = growth === "boltGaps" ? larger.boltGaps : 1;
  for (let boltGaps = larger.boltGaps; boltGaps >= fewest; boltGaps--) {
    const fewer = { ...larger, boltGaps };
    const places = placesOf(requirements, fewer, stock, 0);
    if (places === undefined || boltsClear(places)) return fewer;
  }
  return undefined;
}
