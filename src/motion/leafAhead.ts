/**
 * A leaf whose face lies f under the sheet at rest: it touches the sheet first where the flange ends or its own outer edge is, L from the
 * apex, and the sheet stands at ψ = φ − asin(f/L) while the leaf is at φ (src/model.md, section 5). Exact at the end of the swing; before
 * it L differs by what the sheet still slides.
 */
import type { Leaf } from "../brake/brake.ts";
import { FRAME_SLACK_MM } from "../brake/profile.ts";
import { boxOf } from "../plane/bounding.ts";
import type { Mm, Rad } from "../units/quantity.ts";

/** How far the leaf is ahead; `flangeEndX` is where the flange ends along the leaf, in the section frame with the leaf at rest. */
export function leafAhead({ outline, pivot }: Leaf, flangeEndX: Mm, phiRad: Rad): Rad {
  const underMm = -boxOf(outline).maxY;
  if (underMm <= FRAME_SLACK_MM) return 0;
  const onFace = outline.edges.flatMap(({ from }) => (from.y > -underMm - FRAME_SLACK_MM ? [from.x] : []));
  const apexX = pivot.x - pivot.y * Math.tan(phiRad / 2);
  const edgeMm = Math.hypot(Math.max(...onFace) - apexX, underMm);
  const reachMm = Math.min(edgeMm, flangeEndX - apexX);
  return reachMm > underMm ? Math.asin(underMm / reachMm) : Math.PI / 2;
}
