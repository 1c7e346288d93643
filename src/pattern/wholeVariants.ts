/**
 * A whole part in its brake as both may be within what the job doubts: leaf angles from least to most springback, the nose off
 * by what the job says (motion/variants). Where a bend takes up more sheet, its strip is cut as much wider.
 */
import type { Brake } from "../brake/brake.ts";
import { isReckoned, type Off, type Variant, variantAt, variantsOf } from "../motion/variants.ts";
import type { Part } from "../part/part.ts";
import { innerPoint } from "./innerPoint.ts";
import { namedPartOf } from "./namedPart.ts";
import type { Pattern } from "./pattern.ts";
import { type WholePart, wholePartOf } from "./wholePart.ts";

export interface WholeVariant {
  readonly off: Off;
  readonly part: WholePart;
  readonly brake: Brake;
}

/** The ends of all doubts in every mix, as likely first; that alone where nothing is doubted. */
export function wholeVariantsOf(part: WholePart, brake: Brake): readonly WholeVariant[] {
  return variantsOf(bendsAlone(part), brake).map((variant) => cutAnew(part, variant));
}

/** The part and the brake off by this much. */
export function wholeVariantAt(part: WholePart, brake: Brake, off: Off): WholeVariant {
  return cutAnew(part, variantAt(bendsAlone(part), brake, off));
}

/** Whether some bend's leaf angle is known as a range only. */
export function isWholeReckoned(part: WholePart): boolean {
  return isReckoned(bendsAlone(part));
}

function bendsAlone({ sheet, ...about }: WholePart): Part {
  return { ...about, flatsMm: [], bends: sheet.pattern.bends };
}

function cutAnew(part: WholePart, { off, part: doubted, brake }: Variant): WholeVariant {
  const { pattern } = part.sheet;
  const bends = pattern.bends.map(({ from, to }, i) => ({ ...doubted.bends[i]!, from, to }));
  const formed: Pattern = { ...pattern, bends };
  const sheet = { ...part.sheet, pattern: formed };
  if (bends.every(({ allowanceMm }, i) => allowanceMm === pattern.bends[i]!.allowanceMm))
    return { off, part: { ...part, sheet }, brake };
  const names = part.sheet.names.map((name, face) => ({ at: innerPoint(part, face), name }));
  const cut = namedPartOf(formed, names);
  // Strips that run into each other by some hundredths at one end of a doubt: the sheet as likely stands for it.
  return { off, part: cut.ok ? wholePartOf(part, cut.part) : { ...part, sheet }, brake };
}
