/**
 * Limits that can be written down, found by bisecting through `check`: how thick a bar goes under a channel, how long a
 * return flange a 45° finger lets by. Source: plane geometry, worked out beside each test; and facts of the trade.
 */

import { describe, expect, it } from "vitest";
import { FACE_INSET_MM } from "../../src/contact/gaps.ts";
import type { StepAnswer } from "../../src/jobFile/answer.ts";
import { answerOf } from "../cases/answers.ts";
import { rectangle } from "../rectangle.ts";

const T = 0.8128;
const R = 0.8;
const WEB = 10;
const K = 0.44;
const IN = 25.4;

interface Channel {
  readonly web: number;
  readonly flanges: readonly [returned: number, clamped: number];
  readonly clamp: object;
  readonly radius?: number;
  readonly kFactor?: number;
  readonly overbend?: number;
}

/** The second bend of a channel, made with the far flange clamped, so that web and return flange swing. */
function secondBend({ web, flanges, clamp, radius = R, kFactor = K, overbend = 90 }: Channel): StepAnswer {
  const bend = { angle: 90, turn: "up", overbend };
  const answer = answerOf({
    noseroom: 1,
    units: "mm",
    part: {
      name: "channel",
      material: "mild steel",
      thickness: T,
      insideRadius: radius,
      kFactor,
      dimensions: "outside",
      flats: [flanges[0], web, flanges[1]],
      bends: [bend, bend],
    },
    brake: {
      name: "limits",
      clamp,
      bed: { profile: rectangle(-160, -80, 0, 0) },
      leaf: { profile: rectangle(0, -9.5, 9, 0), swing: 135 },
      lift: 60,
      openEnds: true,
    },
    order: [
      { bend: 1, clamped: "start" },
      { bend: 2, clamped: "end" },
    ],
  });
  return answer.order[1]!;
}

/** The last value that passes between one that does and one that doesn't. */
function lastPassing(passes: (value: number) => boolean, good: number, bad: number): number {
  expect([passes(good), passes(bad)]).toEqual([true, false]);
  let [low, high] = [good, bad];
  while (high - low > 1e-7) {
    const middle = (low + high) / 2;
    if (passes(middle)) low = middle;
    else high = middle;
  }
  return low;
}

describe("a square bar under a channel of web 10", () => {
  const thickest = (topRadius: number, kFactor: number) =>
    lastPassing(
      (thickness) => {
        const clamp = { type: "bar", noseRadius: R, topRadius, thickness, depth: 60 };
        return secondBend({ web: WEB, flanges: [8, 12.7], clamp, kFactor }).verdict !== "hits";
      },
      6,
      9.5,
    );

  /**
   * The return flange's inside face is a line at the distance l(φ) = W − T + i + d(φ) − d(90°) from the apex along the
   * leaf, i the inset; the bar's top edge is a round of radius Rt about (−T − Rt, T + h − Rt), since the nose stands
   * r + T − Rn = T back. Face and round meet at φ where h = (l(φ) − Rt + (T + Rt)·cos φ)/sin φ + Rt − T, so the bar
   * may be as thick as the least of these. d(φ) = BA − SB + 2(r + T)·tan(φ/2) − φ·(r + kT) (src/model.md, section 5).
   */
  const leastOverSwing = (kFactor: number) => {
    const slid = (phi: number) => 2 * (R + T) * Math.tan(phi / 2) - phi * (R + kFactor * T);
    let least = Infinity;
    for (let step = 0; step <= 200_000; step++) {
      const phi = Math.PI / 2 - step * 5e-6;
      const along = WEB - T + FACE_INSET_MM + slid(phi) - slid(Math.PI / 2);
      least = Math.min(least, (along - R + (T + R) * Math.cos(phi)) / Math.sin(phi) + R - T);
    }
    return least;
  };

  it("passes while T + h < W − T + inset, both front edges rounded, where the sheet does not lag", () => {
    // k = 1: the flange slides out along the leaf just as fast as the turning face comes down, so 90° decides.
    expect(thickest(R, 1)).toBeCloseTo(WEB - 2 * T + FACE_INSET_MM, 5);
  });

  it("passes 0.009 mm less where the neutral line lies at 0.44 T, the flange dipping deeper shortly before 90°", () => {
    expect(thickest(R, K)).toBeCloseTo(leastOverSwing(K), 5);
    // So the closed form T + h < W − T is met within 0.01 mm once the inset is taken off.
    const closed = WEB - 2 * T;
    expect(Math.abs(thickest(R, K) - FACE_INSET_MM - closed)).toBeLessThan(0.01);
  });

  it.each([
    ["sharp", 0],
    ["rounded by half", R / 2],
  ])("is met by the return bend's inside arc when the top edge is %s", (_, topRadius) => {
    // The edge's round stands r − Rt beside the arc's centre; it may rise over it until √((r − Rt)² + y²) = r + i − Rt.
    const beside = R - topRadius;
    const rise = Math.sqrt((beside + FACE_INSET_MM) ** 2 - beside ** 2);
    expect(thickest(topRadius, K)).toBeCloseTo(WEB - 2 * T - beside + rise, 5);
  });
});

it("a 45° finger lets by a return flange of W − T + r − (1 + √2)·Rn + inset", () => {
  const clamp = { type: "finger", noseAngle: 45, noseRadius: R, height: 60, footDepth: 80 };
  const longest = lastPassing(
    (flange) => secondBend({ web: WEB, flanges: [flange, 12.7], clamp }).verdict !== "hits",
    5,
    12,
  );
  // The finger's face is x + y = T − s + √2·Rn, s = r + T − Rn; the flange's tip is (−F, W − T + i), its end not drawn in.
  expect(longest).toBeCloseTo(WEB - T + R - (1 + Math.SQRT2) * R + FACE_INSET_MM, 5);
});

describe("a trough of .032 in sheet, web 3/8 in, flanges 1/2 in, overbend 92°", () => {
  // Common practice, no source: figures of an independent computation, handed to the project.
  const trough = (clamp: object) =>
    secondBend({ web: (3 / 8) * IN, flanges: [IN / 2, IN / 2], clamp, radius: T, overbend: 92 });
  const bar = (noseAngle: number) => ({
    type: "bar",
    noseAngle,
    noseRadius: T,
    topRadius: T,
    thickness: IN / 4,
    depth: 1.75 * IN,
    holderBack: 0.75 * IN,
    holderHeight: IN,
    holderDepth: IN,
  });

  it("is stopped at 75.0° by a 45° finger", () => {
    const clamp = { type: "finger", noseAngle: 45, noseRadius: T, height: 1.25 * IN, footDepth: 2 * IN };
    const step = trough(clamp);
    expect(step.verdict).toBe("hits");
    expect(step.contact?.member).toBe("clamp");
    expect(Math.abs(step.reached - 74.97)).toBeLessThan(0.06);
  });

  it("closes with 0.98 mm to spare round a 1/4 in bar bevelled to 86°", () => {
    const step = trough(bar(86));
    expect(step.verdict).toBe("clear");
    expect(Math.abs(step.clearance! - 0.978)).toBeLessThan(0.006);
  });

  it("is met in the overbend, near 90.6°, by the bar left square", () => {
    const step = trough(bar(90));
    expect(step.verdict).toBe("hits");
    expect(Math.abs(step.reached - 90.6)).toBeLessThan(0.06);
  });
});
