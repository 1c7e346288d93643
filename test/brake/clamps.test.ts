/**
 * Fingers, bars and free clamps against corner coordinates worked out by hand from the geometry of the nose:
 * at 45°, V = Rn·(1 + √2) − Rn = √2·Rn, and the rounding of the nose has its centre at (−Rn, Rn).
 */
import { describe, expect, it } from "vitest";
import { barClamp } from "../../src/brake/bar.ts";
import { bedFault, leafFault } from "../../src/brake/bedAndLeaf.ts";
import type { Clamp } from "../../src/brake/brake.ts";
import { fingerClamp } from "../../src/brake/finger.ts";
import { type ClampResult, virtualNoseX } from "../../src/brake/frontedClamp.ts";
import { profileClamp } from "../../src/brake/profile.ts";
import { boxOf } from "../../src/plane/bounding.ts";
import { filletedOutline } from "../../src/plane/fillet.ts";
import type { ArcEdge, Outline } from "../../src/plane/outline.ts";

const say = (lengthMm: number) => `${Number(lengthMm.toFixed(4))} mm`;

function clampOf(result: ClampResult): Clamp {
  if (!result.ok) throw new Error(`${result.fault.key}: ${result.fault.allowed(say)}`);
  return result.clamp;
}

function faultOf(result: ClampResult): string | undefined {
  return result.ok ? undefined : `${result.fault.key}: ${result.fault.allowed(say)}`;
}

/** Starts of all edges, rounded to a nanometre, in turn. */
function starts(outline: Outline | undefined): string[] {
  return (outline?.edges ?? []).map(({ from }) =>
    `${(from.x + 0).toFixed(6)} ${(from.y + 0).toFixed(6)}`.replaceAll("-0.000000", "0.000000"),
  );
}

function arcs(outline: Outline | undefined): ArcEdge[] {
  return (outline?.edges ?? []).filter((edge): edge is ArcEdge => edge.kind === "arc");
}

describe("fingerClamp", () => {
  const finger = { noseAngleDeg: 45, noseRadiusMm: 2, heightMm: 20, footDepthMm: 30 };

  it("leans back at 45° from a nose whose foremost point is x = 0", () => {
    const { outlines } = clampOf(fingerClamp(finger));
    // V = 2√2 = 2.828427; top = V − 20; the nose leaves the underside at −2 and meets the face (1 + √2)·2·cos 45° behind V.
    expect(starts(outlines[0])).toEqual([
      "-2.000000 0.000000",
      "-0.585786 3.414214",
      "-17.171573 20.000000",
      "-30.000000 20.000000",
      "-30.000000 0.000000",
    ]);
    const [nose] = arcs(outlines[0]);
    expect(nose?.center.x).toBeCloseTo(-2, 12);
    expect(nose?.center.y).toBeCloseTo(2, 12);
    expect(boxOf(outlines[0]!).maxX).toBeCloseTo(0, 12);
  });

  it("carries its holder as a second outline on top", () => {
    const { outlines } = clampOf(
      fingerClamp({ ...finger, holder: { backMm: 25, heightMm: 40, depthMm: 35 } }),
    );
    expect(outlines).toHaveLength(2);
    expect(boxOf(outlines[1]!)).toEqual({ minX: -60, minY: 20, maxX: -25, maxY: 60 });
  });

  it.each([
    [{ heightMm: 33 }, "height: less than 32.8284 mm, where the front face meets the back"],
    [{ noseRadiusMm: 20 }, undefined],
    [{ topRadiusMm: 40 }, /^topRadius: at most .* mm, so that the rounding fits its edges$/u],
    [
      { holder: { backMm: 30, heightMm: 10, depthMm: 10 } },
      "holderBack: less than 30 mm, the footDepth on which the holder stands",
    ],
  ])("%o is refused by the measure at fault, or not", (change, expected) => {
    const fault = faultOf(fingerClamp({ ...finger, ...change }));
    if (expected instanceof RegExp) expect(fault).toMatch(expected);
    else if (expected !== undefined) expect(fault).toBe(expected);
    // A nose of 20 wants 20·(1 + √2) = 48.28 of the face; at a height of 20 the face has 20·√2 = 28.28.
    else expect(fault).toMatch(/^noseRadius: at most 11\.7157 mm/u);
  });
});

describe("barClamp", () => {
  const bar = { thicknessMm: 6, depthMm: 40, noseRadiusMm: 1, topRadiusMm: 0.5 };

  it("is square unless bevelled: tangent points of both roundings on x = 0", () => {
    const { outlines, noseAngleDeg } = clampOf(barClamp(bar));
    expect(noseAngleDeg).toBe(90);
    expect(starts(outlines[0])).toEqual([
      "-1.000000 0.000000",
      "0.000000 1.000000",
      "0.000000 5.500000",
      "-0.500000 6.000000",
      "-40.000000 6.000000",
      "-40.000000 0.000000",
    ]);
  });

  it("bevelled to 86° keeps the foremost point of its nose on x = 0 and leans its top back", () => {
    const { outlines } = clampOf(barClamp({ ...bar, noseAngleDeg: 86, topRadiusMm: 0 }));
    // V = 1/tan 43° − 1 = 0.07236871; top = V − 6·tan 4° = −0.34719216.
    expect(virtualNoseX(1, 86)).toBeCloseTo(0.07236871, 8);
    expect(outlines[0]!.edges[2]!.from.x).toBeCloseTo(-0.34719216, 8);
    expect(boxOf(outlines[0]!).maxX).toBeCloseTo(0, 12);
  });

  it("takes a sharp nose", () => {
    expect(starts(clampOf(barClamp({ ...bar, noseRadiusMm: 0, topRadiusMm: 0 })).outlines[0])).toEqual([
      "0.000000 0.000000",
      "0.000000 6.000000",
      "-40.000000 6.000000",
      "-40.000000 0.000000",
    ]);
  });

  it("refuses roundings that together are thicker than the bar", () => {
    expect(faultOf(barClamp({ ...bar, noseRadiusMm: 5.6 }))).toMatch(/^noseRadius: at most 5\.5 mm/u);
    expect(faultOf(barClamp({ ...bar, topRadiusMm: 5.6 }))).toMatch(/^topRadius: at most 5 mm/u);
  });
});

describe("profileClamp, bed and leaf", () => {
  const outline = (...list: readonly (readonly [number, number])[]): Outline => {
    const result = filletedOutline(list.map(([x, y]) => ({ x, y })));
    if (!result.ok) throw new Error(result.fault.kind);
    return result.outline;
  };

  it("wants the underside on y = 0 and the nose on x = 0", () => {
    const shape = (dx: number, dy: number) =>
      profileClamp({
        noseRadiusMm: 1,
        outlines: [outline([dx, dy], [dx, 6 + dy], [dx - 30, 6 + dy], [dx - 30, dy])],
      });
    expect(faultOf(shape(0, 0))).toBeUndefined();
    expect(faultOf(shape(0, 0.2))).toMatch(/^profiles: drawn with its underside/u);
    expect(faultOf(shape(-0.2, 0))).toMatch(/^profiles: drawn with the foremost point/u);
    expect(faultOf(shape(0.2, 0))).toMatch(/^profiles: drawn with the foremost point/u);
  });

  it("wants the bed's front top edge on the origin, rounded or not", () => {
    const bed = (frontX: number, topY: number) =>
      bedFault([
        { x: -100, y: -50 },
        { x: frontX, y: -50 },
        { x: frontX, y: topY, radius: 1 },
        { x: -100, y: topY },
      ]);
    expect(bed(0, 0)).toBeUndefined();
    expect(bed(1, 0)).toBeDefined();
    expect(bed(0, -1)).toBeDefined();
    // A bed that leans forward below its edge is still a bed.
    expect(
      bedFault([
        { x: -100, y: -50 },
        { x: 5, y: -50 },
        { x: 0, y: 0 },
        { x: -100, y: 0 },
      ]),
    ).toBeUndefined();
  });

  it("wants the leaf at rest below the bed's face and in front of it", () => {
    expect(leafFault({ minX: 0, minY: -10, maxX: 25, maxY: 0 })).toBeUndefined();
    expect(leafFault({ minX: 0, minY: -10, maxX: 25, maxY: 3 })).toBeDefined();
    expect(leafFault({ minX: -25, minY: -10, maxX: 0, maxY: 0 })).toBeDefined();
  });
});
