/**
 * What a good foreman would say before a whole part is cut: sharp bends, short grips and flanges, bare lengths, the swing.
 * One sentence each, lengths in the job's unit.
 */
import { brakeRemarks } from "../brake/brakeRemarks.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { sharpBends } from "../part/sharpBends.ts";
import { gripAndFlange } from "../pattern/gripAndFlange.ts";
import type { JudgedStroke } from "../pattern/stroke.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { brakeRemarkWords } from "../words/brakeRemarkWords.ts";
import { leafRangeSentences } from "../words/rangeWords.ts";
import { unreadWords } from "../words/unreadWords.ts";
import { bendNames, bendRemarks, sharpBendWords } from "../words/warningWords.ts";

import type { Shown } from "./wholeStep.ts";

/** Grip or flange under so many times the least asks for care. */
const SCANT = 2;

/** Warnings on a whole part's strokes, sheet and brake. */
export function wholeWarnings(job: WholeJob, shown: readonly Shown[]): string[] {
  const { part, brake, along, units } = job;
  const say = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const { bends } = part.sheet.pattern;
  const sheet = { ...part, flatsMm: [], bends };
  return [
    ...bendRemarks(
      sharpBends(sheet).map((one) => ({
        bend: one.bend,
        words: sharpBendWords(one, part.metal.name, units),
      })),
    ),
    ...shown.flatMap(({ judged }) => strokeWarnings(job, judged, say)),
    ...leafRangeSentences(
      shown.flatMap(({ judged, ranged }) =>
        judged.state.plan.stroke.bends.map((bend) => ({
          bend: bend + 1,
          foldsFor: ranged?.foldsForDeg ?? null,
        })),
      ),
    ),
    ...(job.unread ?? []).map(unreadWords),
    ...brakeRemarks(brake, part.thicknessMm).map((remark) => brakeRemarkWords(remark, units)),
    ...(along.fingers && brake.clamp.kind === "bar"
      ? ["The clamp is a bar but has fingers: the fingers are taken as pieces of the bar."]
      : []),
  ];
}

function strokeWarnings({ along, brake }: WholeJob, stroke: JudgedStroke, say: (mm: Mm) => string): string[] {
  const { state, bareMm, swingShort } = stroke;
  const { plan } = state;
  const name = bendNames(plan.stroke.bends.map((bend) => bend + 1));
  const warnings: string[] = [];
  if (swingShort)
    warnings.push(
      `${name}: the leaf swings to ${brake.leaf.swingDeg}° only, and the bend needs ${plan.bend.overbendDeg.toFixed(1)}°.`,
    );
  const depths = gripAndFlange(state, {
    leaf: brake.leaf,
    ...(along.leastGripMm !== undefined && { leastGripMm: along.leastGripMm }),
    ...(along.leastFlangeMm !== undefined && { leastFlangeMm: along.leastFlangeMm }),
  });
  const scant = (mm: Mm, leastMm: Mm) => leastMm > 0 && mm < SCANT * leastMm;
  if (scant(depths.gripMm, depths.leastGripMm)) {
    warnings.push(
      `${name}: only ${say(depths.gripMm)} of sheet lies under the clamp behind the bend; it needs ${say(depths.leastGripMm)}, better twice that.`,
    );
  }
  if (scant(depths.flangeMm, depths.leastFlangeMm)) {
    warnings.push(
      `${name}: only ${say(depths.flangeMm)} of sheet lies on the leaf beyond the bend; it needs ${say(depths.leastFlangeMm)}, better twice that.`,
    );
  }
  if (bareMm > along.fingerGapMm + 1e-6) {
    warnings.push(
      `${name}: ${say(bareMm)} of the bend line lies under no finger; past ${say(along.fingerGapMm)} the bend bows there (common practice, no source).`,
    );
  }
  return warnings;
}
