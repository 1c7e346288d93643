/**
 * Whether bed and leaf are drawn in the section frame: the bed's front top edge on (0, 0), the leaf at rest below
 * y = 0 and in front. A leaf that stands lower or farther out is possible and left to the warnings.
 */
import type { Box } from "../plane/bounding.ts";
import type { Corner } from "../plane/fillet.ts";
import type { BrakeFault } from "./fault.ts";
import { FRAME_SLACK_MM } from "./profile.ts";

/** Fault of a bed given by its corners (a rounded front edge counts where its sides would meet). */
export function bedFault(corners: readonly Corner[]): BrakeFault | undefined {
  const topY = Math.max(...corners.map((corner) => corner.y));
  const onTop = corners.filter((corner) => corner.y > topY - FRAME_SLACK_MM);
  const frontX = Math.max(...onTop.map((corner) => corner.x));
  const backX = Math.min(...onTop.map((corner) => corner.x));
  if (Math.abs(topY) <= FRAME_SLACK_MM && Math.abs(frontX) <= FRAME_SLACK_MM && backX < -FRAME_SLACK_MM) {
    return undefined;
  }
  return {
    key: "profile",
    found: (say) => `a top at y = ${say(topY)} whose front edge is at x = ${say(frontX)}`,
    allowed: () =>
      "drawn with its top on y = 0 and its front top edge on (0, 0), the rest of the top at x less than 0",
  };
}

/** Fault of a leaf at rest, given the box around it. */
export function leafFault(box: Box): BrakeFault | undefined {
  if (box.maxY > FRAME_SLACK_MM) {
    return {
      key: "profile",
      found: (say) => `a leaf that reaches up to y = ${say(box.maxY)}`,
      allowed: () => "drawn at rest, with nothing above y = 0",
    };
  }
  if (box.maxX <= FRAME_SLACK_MM) {
    return {
      key: "profile",
      found: (say) => `a leaf that ends at x = ${say(box.maxX)}`,
      allowed: () => "drawn at rest, its face in front of the bed at x greater than 0",
    };
  }
  return undefined;
}
