/**
 * One pair of features at one leaf angle: whether it meets right to its very ends, where, by which tag, and what the bend zone
 * cuts off. Source: plane geometry; feet and directions worked out beside each pair, ends counted as met.
 */
import { describe, expect, it } from "vitest";
import { Features } from "../../src/contact/features.ts";
import { fixedTag, Meeting, meetsAtNode, movingTag, type PairKind } from "../../src/contact/meeting.ts";
import { tableSwing } from "../../src/motion/swing.ts";

const [EDGE, ROUND, HOLLOW] = [11, 12, 13];

/** One edge along y = 0 from x = 0 to 4, one round and one hollow of radius 1 that look down, by 60° to either side. */
function fixedBody(): Features {
  const F = new Features(1, 1, 1);
  F.addEdge(0, 0, 1, 0, 4, EDGE);
  F.addRound(0, 0, 1, 0, -1, 0.5, ROUND);
  F.addHollow(0, 0, 3, 0, -1, 0.5, HOLLOW);
  return F;
}

function movingRound(x: number, y: number, r: number, half = -2): Features {
  const F = new Features(0, 1, 0);
  F.addRound(x, y, r, 0, 1, half, ROUND);
  return F;
}

function meetingOf(kind: PairKind, moving: Features, fixed: Features): Meeting {
  const meeting = new Meeting();
  [meeting.kind, meeting.moving, meeting.fixed] = [kind, moving, fixed];
  return meeting;
}

const atRest = (meeting: Meeting, slide = 0) => meeting.meets(0, 1, 0, slide);
const points = ({ movingX, movingY, fixedX, fixedY }: Meeting) => [movingX, movingY, fixedX, fixedY];
/** A hair: more than the billionth of a millimetre to spare, less than anything seen. */
const HAIR = 1e-7;
const LESS = 5e-10;

describe("a round on an edge", () => {
  it.each([
    [0, true],
    [4, true],
    [-LESS, true],
    [4 + LESS, true],
    [-HAIR, false],
    [4 + HAIR, false],
    [2, true],
  ])("with its foot at %d: %s", (x, met) => {
    expect(atRest(meetingOf("roundOnEdge", movingRound(x, -1, 1), fixedBody()))).toBe(met);
    // The same by a slide.
    expect(atRest(meetingOf("roundOnEdge", movingRound(x - 3, -1, 1), fixedBody()), 3)).toBe(met);
  });

  it("touches above its middle, straight under the edge", () => {
    const meeting = meetingOf("roundOnEdge", movingRound(2, -1.5, 1), fixedBody());
    expect(atRest(meeting)).toBe(true);
    expect(points(meeting)).toEqual([2, -0.5, 2, 0]);
    expect([movingTag(meeting), fixedTag(meeting)]).toEqual([ROUND, EDGE]);
  });

  it.each([
    [Math.PI / 3, true],
    [Math.PI / 3 + HAIR, false],
    [-Math.PI / 3, true],
    [-Math.PI / 3 - HAIR, false],
    [0.4, true],
    [2, false],
  ])("turned by %d rad looks up by 60° either way: %s", (phi, met) => {
    // Its middle stays at (2, −1), whatever it is turned.
    const [c, s] = [Math.cos(phi), Math.sin(phi)];
    const [x, y] = [2 * c - s, -2 * s - c];
    const meeting = meetingOf("roundOnEdge", movingRound(x, y, 1, 0.5), fixedBody());
    expect(meeting.meets(phi, c, s, 0)).toBe(met);
  });
});

describe("an edge on a round", () => {
  /** An edge over the round's middle from `from` to 4 more, facing up, turned with the body. */
  function movingEdge(from: number, y: number): Features {
    const F = new Features(1, 0, 0);
    // Material below: it runs to the left.
    F.addEdge(from + 4, y, -1, 0, 4, EDGE);
    return F;
  }

  it.each([
    [0, true],
    [-4, true],
    [LESS, true],
    [-4 - LESS, true],
    [HAIR, false],
    [-4 - HAIR, false],
    [-1, true],
  ])("that begins at %d: %s", (from, met) => {
    expect(atRest(meetingOf("edgeOnRound", movingEdge(from, -1), fixedBody()))).toBe(met);
    expect(atRest(meetingOf("edgeOnRound", movingEdge(from - 3, -1), fixedBody()), 3)).toBe(met);
  });

  it("touches straight under the round's middle", () => {
    const meeting = meetingOf("edgeOnRound", movingEdge(-1, -1.5), fixedBody());
    expect(atRest(meeting)).toBe(true);
    points(meeting).forEach((value, i) => void expect(value).toBeCloseTo([0, -1.5, 0, -1][i]!, 12));
    expect([movingTag(meeting), fixedTag(meeting)]).toEqual([EDGE, ROUND]);
  });

  it.each([
    [Math.PI / 3 - HAIR, true],
    [Math.PI / 3 + HAIR, false],
    [-Math.PI / 3 + HAIR, true],
    [-Math.PI / 3 - HAIR, false],
    [2, false],
  ])("turned by %d rad finds the round looking down by 60° either way: %s", (phi, met) => {
    const meeting = meetingOf("edgeOnRound", movingEdge(-2, -1), fixedBody());
    expect(meeting.meets(phi, Math.cos(phi), Math.sin(phi), 0)).toBe(met);
  });

  it("counts only past the bend zone, judged at its foot", () => {
    const F = movingEdge(2, -1);
    [F.cutRule, F.cutTan] = ["pastZone", 4];
    const fixed = new Features(0, 1, 0);
    fixed.addCorner(3, 0, ROUND);
    // The zone ends at 4·tan(φ/2): at 3 where tan(φ/2) is 3/4. Slid so that the foot stays under the corner.
    const half = Math.atan(0.75);
    for (const [off, met] of [
      [-1e-6, true],
      [0, true],
      [1e-6, false],
    ] as const) {
      const meeting = meetingOf("edgeOnRound", F, fixed);
      expect(meeting.meets(2 * half + off, 1, 0, 0)).toBe(met);
    }
  });
});

describe("arc on arc", () => {
  it.each([
    ["roundOnRound", movingRound(0, -3, 2), [0, -1, 0, -1], ROUND],
    ["roundInHollow", movingRound(0, -2, 1), [0, -3, 0, -3], HOLLOW],
  ] as const)("%s: touches on the line through the middles", (kind, moving, wanted, tag) => {
    const meeting = meetingOf(kind, moving, fixedBody());
    expect(atRest(meeting)).toBe(true);
    points(meeting).forEach((value, i) => void expect(value).toBeCloseTo(wanted[i]!, 12));
    expect([movingTag(meeting), fixedTag(meeting)]).toEqual([ROUND, tag]);
  });

  it("hollowOnRound: the hollow moves and touches the round within it", () => {
    const moving = new Features(0, 0, 1);
    moving.addHollow(0, 2, 3, 0, -1, 0.5, HOLLOW);
    const meeting = meetingOf("hollowOnRound", moving, fixedBody());
    expect(atRest(meeting)).toBe(true);
    points(meeting).forEach((value, i) => void expect(value).toBeCloseTo([0, -1, 0, -1][i]!, 12));
    expect([movingTag(meeting), fixedTag(meeting)]).toEqual([HOLLOW, ROUND]);
  });

  it.each([0, 1, 2, 3, 4, 5])("finds either arc only within 60° of its middle (sixth %i)", (sixth) => {
    for (const off of [-HAIR, HAIR]) {
      const way = (sixth * Math.PI) / 3 + off;
      const inDown = Math.cos(way + Math.PI / 2) > 0.5;
      const [x, y] = [Math.cos(way), Math.sin(way)];
      for (const [kind, far] of [
        ["roundOnRound", 3],
        ["roundInHollow", 2],
      ] as const) {
        const meeting = meetingOf(
          kind,
          movingRound(far * x, far * y, kind === "roundOnRound" ? 2 : 1),
          fixedBody(),
        );
        expect(atRest(meeting), `${kind} ${way}`).toBe(inDown);
      }
      const moving = new Features(0, 0, 1);
      moving.addHollow(-2 * x, -2 * y, 3, 0, -1, 0.5, HOLLOW);
      const fixed = new Features(0, 1, 0);
      fixed.addRound(0, 0, 1, 1, 0, -2, ROUND);
      expect(atRest(meetingOf("hollowOnRound", moving, fixed))).toBe(inDown);
      // Moving, looking up by 60° either way, against a corner that takes any direction.
      const corner = new Features(0, 1, 0);
      corner.addCorner(x, y, ROUND);
      const inUp = Math.cos(way - Math.PI / 2) > 0.5;
      expect(atRest(meetingOf("roundOnRound", movingRound(0, 0, 1, 0.5), corner))).toBe(inUp);
    }
  });

  it("turns the moving arc's middle with the leaf", () => {
    for (const phi of [0.3, 1.2, 2.5]) {
      const [c, s] = [Math.cos(phi), Math.sin(phi)];
      for (const [off, met] of [
        [0, true],
        [1.04, true],
        [-1.04, true],
        [1.06, false],
        [-1.06, false],
      ] as const) {
        const way = Math.PI / 2 + phi + off;
        const corner = new Features(0, 1, 0);
        corner.addCorner(Math.cos(way), Math.sin(way), ROUND);
        expect(meetingOf("roundOnRound", movingRound(0, 0, 1, 0.5), corner).meets(phi, c, s, 0)).toBe(met);
        const hollow = new Features(0, 0, 1);
        hollow.addHollow(0, 0, 3, 0, 1, 0.5, HOLLOW);
        const disc = new Features(0, 1, 0);
        disc.addCorner(3 * Math.cos(way), 3 * Math.sin(way), ROUND);
        expect(meetingOf("hollowOnRound", hollow, disc).meets(phi, c, s, 0)).toBe(met);
      }
    }
  });

  it("finds no direction between two middles in one place", () => {
    expect(atRest(meetingOf("roundOnRound", movingRound(0, 0, 0), fixedBody()))).toBe(false);
    expect(atRest(meetingOf("roundInHollow", movingRound(0, 0, 3), fixedBody()))).toBe(false);
  });
});

describe("what the bend zone leaves of the moving flat", () => {
  const fixed = fixedBody();
  const phi = 2 * Math.atan(0.5);

  function cut(rule: Features["cutRule"], x: number): Features {
    const F = movingRound(x, -1, 1);
    [F.cutRule, F.cutTan] = [rule, 4];
    return F;
  }

  it.each([
    // The zone's end is at 4·tan(φ/2) = 2; a slide of a half moves the corner on.
    [1.5, true],
    [1.5 - LESS, true],
    [1.5 - HAIR, false],
    [1.4, false],
    [2, true],
  ])("a corner at %d, slid by a half, is past it: %s", (x, met) => {
    expect(meetingOf("roundOnEdge", cut("pastZone", x), fixed).meets(phi, 1, 0, 0.5)).toBe(met);
    const wide = new Features(0, 1, 0);
    wide.addRound(x + 0.5, 4, 3, 0, -1, -2, ROUND);
    expect(meetingOf("roundOnRound", cut("pastZone", x), wide).meets(phi, 1, 0, 0.5)).toBe(met);
  });

  it("a hollow that moves is not cut", () => {
    const moving = new Features(0, 0, 1);
    moving.addHollow(0, 2, 3, 0, -1, 0.5, HOLLOW);
    [moving.cutRule, moving.cutTan] = ["pastZone", 4];
    expect(meetingOf("hollowOnRound", moving, fixed).meets(phi, 1, 0, 0)).toBe(true);
  });
});

describe("tags", () => {
  const moving = new Features(1, 1, 1);
  moving.addEdge(0, 0, 1, 0, 1, 21);
  moving.addRound(0, 0, 1, 1, 0, 0, 22);
  moving.addHollow(0, 0, 1, 1, 0, 0, 23);

  it.each([
    ["roundOnEdge", 22, EDGE],
    ["edgeOnRound", 21, ROUND],
    ["roundOnRound", 22, ROUND],
    ["roundInHollow", 22, HOLLOW],
    ["hollowOnRound", 23, ROUND],
  ] as const)("of %s are the moving one's %i and the fixed one's %i", (kind, mine, other) => {
    const meeting = meetingOf(kind, moving, fixedBody());
    expect([movingTag(meeting), fixedTag(meeting)]).toEqual([mine, other]);
  });
});

describe("meetsAtNode", () => {
  it("asks at the swing's own angles, from its start to its end", () => {
    const swing = tableSwing(1, 2, 0.5, 1.3, 0.4);
    const asked: number[][] = [];
    const meeting = new Meeting();
    meeting.meets = (...figures: number[]) => {
      asked.push(figures);
      return true;
    };
    for (let j = 0; j <= swing.steps; j++) expect(meetsAtNode(meeting, swing, j)).toBe(true);
    asked.forEach(([phi, c, s, u], j) => {
      expect(phi).toBeCloseTo(0.4 + (0.9 * j) / swing.steps, 12);
      expect([c, s]).toEqual([
        expect.closeTo(Math.cos(phi!), 12),
        expect.closeTo(Math.sin(phi!), 12),
      ] as unknown[]);
      expect(u).toBeCloseTo(2 * Math.tan(phi! / 2) - 0.5 * phi!, 12);
    });
    expect([asked[0]![0], asked.at(-1)![0]]).toEqual([0.4, 1.3]);
  });
});
