/**
 * Features alone, with known distances from the pivot, and a watch on the pairs of them that the kernel looks into.
 */
import { Features } from "../../src/contact/features.ts";
import { Meeting, type PairKind } from "../../src/contact/meeting.ts";

/** Counts the pairs tried: each is named in the meeting first. */
export function watched(): { readonly meeting: Meeting; readonly pairs: PairKind[] } {
  const meeting = new Meeting();
  const pairs: PairKind[] = [];
  let kind: PairKind = "roundOnEdge";
  Object.defineProperty(meeting, "kind", {
    get: () => kind,
    set: (next: PairKind) => {
      kind = next;
      pairs.push(next);
    },
  });
  return { meeting, pairs };
}

/** A round of radius `r` alone, `out` from the pivot; or an edge or a hollow alone, with its middle there. */
export function round(out: number, r: number): Features {
  const F = new Features(0, 1, 0);
  F.addRound(out, 0, r, 1, 0, -2, 0);
  return F;
}
export function edge(out: number): Features {
  // Across the ray, so that it is nearest in its middle and farthest at its ends, √(out² + 1).
  const F = new Features(1, 0, 0);
  F.addSegment(out, -1, out, 1, 0);
  return F;
}
export function hollow(out: number, r: number): Features {
  const F = new Features(0, 0, 1);
  F.addHollow(out, 0, r, 1, 0, -1, 0);
  return F;
}

/** Several bodies as one, so that the whole is in reach while some parts are not. */
export function together(...parts: readonly Features[]): Features {
  const F = new Features(8, 8, 8);
  for (const part of parts) {
    for (let i = 0; i < part.segments; i++)
      F.addEdge(part.segX[i]!, part.segY[i]!, part.segUx[i]!, part.segUy[i]!, part.segLength[i]!, 0);
    for (let i = 0; i < part.rounds; i++)
      F.addRound(part.roundX[i]!, part.roundY[i]!, part.roundR[i]!, 1, 0, part.roundCos[i]!, 0);
    for (let i = 0; i < part.hollows; i++)
      F.addHollow(part.hollowX[i]!, part.hollowY[i]!, part.hollowR[i]!, 1, 0, -1, 0);
  }
  return F;
}
