/**
 * Beside the drawing: the whole brake with a frame round what the drawing shows, and the finished part with its dimensions.
 */
import { useMemo } from "preact/hooks";
import { outlinePath, shortNumber } from "../../src/drawing/pathData.ts";
import { boxOf } from "../../src/plane/bounding.ts";
import { usePage } from "../page.ts";
import { inSection } from "../stage/camera.ts";
import type { Frame } from "../stage/frame.ts";
import type { MeasuredFlat } from "../stage/measured.ts";
import { leafAtDeg, type StepPose, sheetAtDeg } from "../stage/stepPose.ts";
import { FinishedPart } from "./finishedPart.tsx";

/** Of so many flats the small picture still has room for the figures. */
const MOST_FIGURES = 5;

export function BesideStage({
  pose,
  frame,
  measured,
  lit,
}: {
  readonly pose: StepPose | null;
  readonly frame: Frame;
  readonly measured: readonly MeasuredFlat[];
  readonly lit: string | null;
}) {
  const { file } = usePage().snapshot;
  if (pose === null) return null;
  return (
    <div class="beside">
      <WholeBrake pose={pose} frame={frame} />
      <figure>
        <FinishedPart
          job={pose.job}
          measured={measured}
          lit={lit}
          width={208}
          height={200}
          figures={measured.length <= MOST_FIGURES}
        />
        <figcaption>The finished part, {file.units}</figcaption>
      </figure>
    </div>
  );
}

function WholeBrake({ pose, frame }: { readonly pose: StepPose; readonly frame: Frame }) {
  const { clamp, bed, frame: pieces } = pose.atRest;
  const leaf = leafAtDeg(pose, frame.heldDeg);
  const sheet = sheetAtDeg(pose, frame.heldDeg);
  const around = useMemo(() => {
    const box = boxOf(
      ...clamp,
      bed,
      ...pieces,
      pose.atRest.leaf,
      leafAtDeg(pose, pose.endDeg),
      pose.atRest.sheet,
    );
    const air = 0.04 * Math.max(box.maxX - box.minX, box.maxY - box.minY);
    return {
      x: box.minX - air,
      y: -box.maxY - air,
      wide: box.maxX - box.minX + 2 * air,
      high: box.maxY - box.minY + 2 * air,
    };
  }, [pose]);
  const { camera, width, height } = frame;
  const [from, to] = [inSection(camera, { x: 0, y: 0 }), inSection(camera, { x: width, y: height })];
  const view = [around.x, around.y, around.wide, around.high].map(shortNumber).join(" ");
  return (
    <figure>
      <svg
        class="whole-brake"
        viewBox={view}
        role="img"
        aria-label="The whole brake; a frame marks what the drawing shows."
      >
        {[bed, ...pieces, ...clamp, leaf].map((body, i) => (
          <path key={i} class="body" d={outlinePath(body)} />
        ))}
        <path class="sheet" d={outlinePath(sheet)} />
        <rect
          class="frame"
          x={from.x}
          y={-from.y}
          width={Math.max(to.x - from.x, 0)}
          height={Math.max(from.y - to.y, 0)}
        />
      </svg>
      <figcaption>The whole brake</figcaption>
    </figure>
  );
}
