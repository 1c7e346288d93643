/**
 * The nose of the clamp as the reference has it: how far the underside ends behind the foremost point, and the least inside
 * radius that its points leave room for. On fingers and bars both are the nose radius. Closed formulas; a rounding of a free
 * profile is taken to leave room for its own radius and larger ones, a corner may stick out of the bend by 0.01 mm.
 */
import type { PlainClamp } from "./plainJob.ts";
import type { Corner } from "./shape.ts";

const SLACK = 0.01;

/** Turn of the outline at a corner, radians. */
function turnAt(profile: readonly Corner[], i: number): number {
  const [a, b, c] = [profile.at(i - 1)!, profile[i]!, profile[(i + 1) % profile.length]!];
  const [inRad, outRad] = [Math.atan2(b[1] - a[1], b[0] - a[0]), Math.atan2(c[1] - b[1], c[0] - b[0])];
  return Math.abs(Math.atan2(Math.sin(outRad - inRad), Math.cos(outRad - inRad)));
}

/** The corner of the first profile where the underside ends in front. */
function noseIndex(profile: readonly Corner[]): number {
  let found = 0;
  profile.forEach(([x, y], i) => {
    const [fx, fy] = profile[found]!;
    if (Math.abs(y) <= SLACK && (Math.abs(fy) > SLACK || x > fx)) found = i;
  });
  return found;
}

/** Free profiles with the nose drawn sharp rounded, and its foremost point brought back to x = 0. */
export function roundedProfiles({
  noseRadius,
  profiles,
}: Extract<PlainClamp, { type: "profile" }>): Corner[][] {
  const [first, ...rest] = profiles as [Corner[], ...Corner[][]];
  const i = noseIndex(first);
  const [x, y, own] = first[i]!;
  const turn = turnAt(first, i);
  if (own !== undefined || noseRadius === 0 || turn < Math.PI / 4) return profiles;
  const neighbours = [first.at(i - 1)!, first[(i + 1) % first.length]!];
  const room = Math.min(...neighbours.map(([nx, ny]) => Math.hypot(nx - x, ny - y)));
  const cut = noseRadius * Math.tan(turn / 2);
  if (cut >= room / 2) return profiles;
  // Foremost is the rounding, or a corner of what is left.
  const corners = profiles.flat().filter((corner) => corner !== first[i]);
  const front = Math.max(x - cut + noseRadius, ...corners.map(([cx]) => cx));
  const moved = (list: readonly Corner[]) =>
    list.map(([cx, cy, r]): Corner => (r === undefined ? [cx - front, cy] : [cx - front, cy, r]));
  return [moved(first.with(i, [x, y, noseRadius])), ...rest.map(moved)];
}

/** How far the underside ends behind the foremost point, shim and all. */
export function noseRunOf(clamp: PlainClamp): number {
  const shim = clamp.shim ?? 0;
  if (clamp.type !== "profile") return clamp.noseRadius + shim;
  const [profile] = roundedProfiles(clamp);
  const i = noseIndex(profile!);
  const [x, , radius = 0] = profile![i]!;
  return Math.max(0, radius * Math.tan(turnAt(profile!, i) / 2) - x) + shim;
}

/** The least inside radius with the leaf at `over` radians, shim and all. */
export function leastRadiusOf(clamp: PlainClamp, over: number): number {
  const shim = clamp.shim ?? 0;
  if (clamp.type !== "profile") return clamp.noseRadius + shim;
  const run = noseRunOf(clamp) - shim;
  const slope = Math.tan(Math.min(over, Math.PI / 2) / 2);
  let least = 0;
  const look = (u: number, v: number): void => {
    if (u > 0 && v > -SLACK && v <= u * slope + 1e-12)
      least = Math.max(least, (u * u + v * v - SLACK * SLACK) / (2 * (v + SLACK)));
  };
  for (const profile of roundedProfiles(clamp)) {
    const nose = noseIndex(profile);
    profile.forEach(([x, y, radius = 0], i) => {
      if (radius > 0) {
        if (i === nose && Math.abs(y) <= SLACK) least = Math.max(least, radius);
        return;
      }
      const [nx, ny, nr = 0] = profile[(i + 1) % profile.length]!;
      const [u, v, du, dv] = [x + run, y, nx - x, ny - y];
      look(u, v);
      // Where the straight piece to the next corner goes through the ray at half the leaf's angle.
      const part = (v - slope * u) / (slope * du - dv);
      if (nr === 0 && part > 0 && part < 1) look(u + part * du, v + part * dv);
    });
  }
  return least + shim;
}
