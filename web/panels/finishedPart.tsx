/**
 * The finished part with its dimensions, as a picture of some size in points; a press on a figure goes to its field.
 */
import { useMemo } from "preact/hooks";
import type { Job } from "../../src/jobFile/job.ts";
import { textMeasure } from "../drafting/textWidth.ts";
import { usePage } from "../page.ts";
import { drawFinishedPart } from "../stage/finishedPart.ts";
import type { MeasuredFlat } from "../stage/measured.ts";
import { bendPath, flatPath } from "../store/chain.ts";
import { pathId } from "../store/flats.ts";
import { DimensionsSvg, goToField } from "./dimensionsSvg.tsx";

const widthOf = textMeasure();

export function FinishedPart({
  job,
  measured,
  lit,
  width,
  height,
  figures,
}: {
  readonly job: Job;
  readonly measured: readonly MeasuredFlat[];
  readonly lit: string | null;
  readonly width: number;
  readonly height: number;
  /** Without figures flats and bends have their numbers only. */
  readonly figures: boolean;
}) {
  const { snapshot } = usePage();
  const { file } = snapshot;
  const { path, thick, placed, words } = useMemo(
    () => drawFinishedPart(job, measured, { width, height, widthOf, figures }),
    [job, measured, width, height, figures],
  );
  const told = measured.map((flat, i) => `flat ${i + 1} ${flat.words} ${file.units}`).join(", ");
  return (
    <svg
      class="finished-part"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={`The finished part: ${told}.`}
    >
      <path class="part" d={path} stroke-width={thick} />
      <DimensionsSvg
        placed={placed}
        lit={lit}
        label={(key) => {
          const [kind, index] = key.split(" ");
          return { number: `${Number(index) + 1}`, words: words[key] ?? "", round: kind === "bend" };
        }}
        onPress={(key) => {
          const [kind, index] = key.split(" ");
          const at = Number(index);
          goToField(pathId(kind === "flat" ? flatPath(file, at) : bendPath(file, at)));
        }}
      />
    </svg>
  );
}
