/**
 * The live sketch: the finished section as one line, drawn straight from the figures as typed, so that it follows
 * even while the rest of the job is half entered. Mold lines stand for the flats; the drawing above is to scale.
 */
import { withOffsets } from "../../src/jobFile/offsets.ts";
import { lengthLabel, readMm } from "../fields/typed.ts";
import { angleFromFlat } from "../store/bendKinds.ts";
import { sizeOf } from "../store/flats.ts";
import type { JobFile } from "../store/jobFile.ts";

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Corners of the section, y up, from the typed figures; an unreadable flat counts as a short one. */
function sketchCorners({ part, units }: JobFile): readonly Spot[] {
  const lengths = part.flats.map((flat) => readMm(sizeOf(flat), "length", units) ?? 0);
  const longest = Math.max(...lengths, 1);
  const corners: Spot[] = [{ x: 0, y: 0 }];
  let heading = 0;
  lengths.forEach((length, i) => {
    const from = corners[i]!;
    const run = Math.min(Math.max(length, longest * 0.04), 1e6);
    corners.push({ x: from.x + run * Math.cos(heading), y: from.y + run * Math.sin(heading) });
    const bend = part.bends[i];
    const angle = bend === undefined ? 0 : Number(bend.hem ? 180 : angleFromFlat(bend));
    const turn = Number.isFinite(angle) ? Math.min(Math.max(angle, 0), 180) : 90;
    heading += ((bend?.turn === "down" ? -turn : turn) * Math.PI) / 180;
  });
  return corners;
}

const WIDTH = 320;
const HEIGHT = 150;
const ROOM = 34;

export function Sketch({ file: typed, marked }: { readonly file: JobFile; readonly marked: number | null }) {
  const file = withOffsets(typed).value as JobFile;
  const corners = sketchCorners(file);
  const xs = corners.map((c) => c.x);
  const ys = corners.map((c) => c.y);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min(
    (WIDTH - 2 * ROOM) / Math.max(right - left, 1e-6),
    (HEIGHT - 2 * ROOM) / Math.max(high - low, 1e-6),
    1e6,
  );
  const offsetX = (WIDTH - (right - left) * scale) / 2;
  const offsetY = (HEIGHT - (high - low) * scale) / 2;
  const at = (spot: Spot) => ({
    x: offsetX + (spot.x - left) * scale,
    y: HEIGHT - offsetY - (spot.y - low) * scale,
  });
  const points = corners.map(at);
  const path = points.map((p, i) => `${i === 0 ? "M" : "L"}${p.x.toFixed(1)} ${p.y.toFixed(1)}`).join("");
  const names = file.part.flats.map((flat, i) => {
    const mm = readMm(sizeOf(flat), "length", file.units);
    return `flat ${i + 1} ${mm === undefined ? "not readable yet" : lengthLabel(mm, file.units)}`;
  });
  const centre = { x: WIDTH / 2, y: HEIGHT / 2 };
  return (
    <svg
      class="sketch"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`The finished section: ${names.join(", ")}.`}
    >
      <path d={path} class="sketch-line" />
      {points.slice(0, -1).map((p, i) => {
        const q = points[i + 1]!;
        const mid = { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 };
        const run = Math.hypot(q.x - p.x, q.y - p.y) || 1;
        const normal = { x: (q.y - p.y) / run, y: -(q.x - p.x) / run };
        const outward = normal.x * (mid.x - centre.x) + normal.y * (mid.y - centre.y) >= 0 ? 1 : -1;
        const label = { x: mid.x + outward * normal.x * 14, y: mid.y + outward * normal.y * 14 + 4 };
        return (
          <g key={i} class={marked === i ? "marked" : ""}>
            {marked === i ? <line x1={p.x} y1={p.y} x2={q.x} y2={q.y} class="sketch-marked" /> : null}
            <text x={label.x} y={label.y} text-anchor="middle">
              {i + 1}
            </text>
          </g>
        );
      })}
      <text class="face" x={6} y={HEIGHT - 5} text-anchor="start">
        marked face on top of flat 1
      </text>
    </svg>
  );
}
