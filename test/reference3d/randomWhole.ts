/**
 * Whole parts at random, as job files: boxes with lips, channels with ends and short flats, tapered channels, tabs with
 * slots, holes across bends. Each with a brake and, for most, fingers. Seeded: one seed, one part.
 */
export type Dice = () => number;

/** A small generator of even numbers in [0, 1) (mulberry32, public domain, from memory). */
export function dice(seed: number): Dice {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const between = (roll: Dice, from: number, to: number) =>
  Math.round((from + roll() * (to - from)) * 100) / 100;
const pick = <T>(roll: Dice, all: readonly T[]): T => all[Math.floor(roll() * all.length)]!;
const often = (roll: Dice, share: number) => roll() < share;

/** The job file of a seed. */
export function randomWholeFile(seed: number): Record<string, unknown> {
  const roll = dice(seed);
  const thickness = pick(roll, [0.5, 0.8, 1, 1.5]);
  const insideRadius = thickness * pick(roll, [1, 1.25, 2, 3]);
  const angle = () => (often(roll, 0.7) ? 90 : between(roll, 35, 120));
  const bent = () => {
    const degrees = angle();
    return { angle: degrees, overbend: often(roll, 0.5) ? degrees : degrees + between(roll, 0, 3) };
  };
  const part = { name: `random ${seed}`, material: "mild steel", thickness, insideRadius, kFactor: 0.44 };
  const shape = pick(roll, [box, box, ends, ends, tapered, tab, holed])(roll, bent, insideRadius);
  return {
    noseroom: 1,
    units: "mm",
    part: { ...part, ...shape },
    brake: brake(roll, thickness, insideRadius),
    margin: 0.5,
  };
}

type Bent = () => { readonly angle: number; readonly overbend: number };

function box(roll: Dice, bent: Bent): Record<string, unknown> {
  const walls = Object.fromEntries(
    ["left", "right", "front", "back"]
      .filter(() => often(roll, 0.75))
      .map((side) => {
        const lips = often(roll, 0.4)
          ? [{ size: between(roll, 8, 14), turn: pick(roll, ["in", "out"]), ...bent() }]
          : [];
        return [side, { height: between(roll, 14, 45), ...bent(), lips }];
      }),
  );
  const any = Object.keys(walls).length > 0 ? walls : { left: { height: 20, ...bent() } };
  return {
    dimensions: "flat",
    box: { width: between(roll, 40, 140), depth: between(roll, 40, 120), walls: any, corners: "open" },
  };
}

function ends(roll: Dice, bent: Bent): Record<string, unknown> {
  const count = 1 + Math.floor(roll() * 3);
  const length = between(roll, 60, 160);
  const flat = 1 + Math.floor(roll() * (count + 1));
  const spans = often(roll, 0.5)
    ? [
        {
          flat: 1 + Math.floor(roll() * (count + 1)),
          from: between(roll, 0, length * 0.4),
          to: between(roll, length * 0.6, length),
        },
      ]
    : [];
  return {
    dimensions: "flat",
    flats: Array.from({ length: count + 1 }, () => between(roll, 10, 50)),
    bends: Array.from({ length: count }, () => ({ ...bent(), turn: pick(roll, ["up", "up", "down"]) })),
    length,
    ends: ["start", "finish"]
      .filter(() => often(roll, 0.6))
      .map((at) => ({
        flat,
        at,
        size: between(roll, 8, 30),
        turn: pick(roll, ["up", "up", "down"]),
        ...bent(),
      })),
    spans,
  };
}

function tapered(roll: Dice, bent: Bent): Record<string, unknown> {
  const [lean, high] = [between(roll, -8, 8), between(roll, 60, 120)];
  const [left, web, right] = [between(roll, 14, 40), between(roll, 20, 60), between(roll, 14, 40)];
  return {
    pattern: {
      outline: [
        [-left, 0],
        [web + right, 0],
        [web + right - 2 * lean, high],
        [-left + between(roll, -4, 4), high],
      ],
      bends: [
        {
          line: [
            [0, 0],
            [lean, high],
          ],
          turn: "up",
          ...bent(),
        },
        {
          line: [
            [web, 0],
            [web - lean, high],
          ],
          turn: pick(roll, ["up", "down"]),
          ...bent(),
        },
      ],
    },
  };
}

function tab(roll: Dice, bent: Bent): Record<string, unknown> {
  const [wide, deep] = [between(roll, 60, 120), between(roll, 40, 80)];
  const [from, size] = [between(roll, 20, 30), between(roll, 12, 26)];
  const out = between(roll, 10, 30);
  const y = between(roll, -8, 0);
  const slot = 12;
  return {
    pattern: {
      outline: [
        [0, 0],
        [from - 2, 0],
        [from - 2, y - slot],
        [from, y - slot],
        [from, out],
        [from + size, out],
        [from + size, y - slot],
        [from + size + 2, y - slot],
        [from + size + 2, 0],
        [wide, 0],
        [wide, -deep],
        [0, -deep],
      ],
      bends: [
        {
          line: [
            [from, y],
            [from + size, y],
          ],
          turn: "up",
          ...bent(),
        },
        {
          line: [
            [0, -deep / 2 - 8],
            [wide, -deep / 2 - 8],
          ],
          turn: pick(roll, ["up", "down"]),
          ...bent(),
        },
      ],
    },
  };
}

function holed(roll: Dice, bent: Bent, insideRadius: number): Record<string, unknown> {
  const [wide, high] = [between(roll, 60, 120), between(roll, 60, 100)];
  const line = between(roll, 25, 35);
  const reach = 3 * insideRadius + between(roll, 2, 6);
  const [from, to] = [between(roll, 15, 25), between(roll, 35, 45)];
  return {
    pattern: {
      outline: [
        [0, 0],
        [wide, 0],
        [wide, high],
        [0, high],
      ],
      holes: [
        [
          [line - reach, from],
          [line + reach, from],
          [line + reach, to],
          [line - reach, to],
        ],
      ],
      bends: [
        {
          line: [
            [line, 0],
            [line, high],
          ],
          turn: pick(roll, ["up", "down"]),
          ...bent(),
        },
      ],
    },
  };
}

function brake(roll: Dice, thickness: number, insideRadius: number): Record<string, unknown> {
  const noseAngle = pick(roll, [45, 60, 75, 90]);
  const height = between(roll, 15, 45);
  const foot = height / Math.tan((noseAngle * Math.PI) / 180) + between(roll, 15, 40);
  const holder = often(roll, 0.6)
    ? { holderBack: between(roll, 5, foot - 8), holderHeight: 40, holderDepth: 50 }
    : {};
  return {
    name: "random brake",
    clamp: {
      type: "finger",
      noseAngle,
      noseRadius: Math.min(insideRadius, pick(roll, [0.5, 0.8, 1])),
      height,
      footDepth: Math.round(foot * 100) / 100,
      ...holder,
      ...(often(roll, 0.75) && { fingers: [{ width: 10, count: 1 }] }),
    },
    bed: {
      profile: [
        [-250, -100],
        [0, -100],
        [0, 0],
        [-250, 0],
      ],
    },
    leaf: {
      profile: [
        [0, -12],
        [between(roll, 12, 40), -12],
        [between(roll, 12, 40), 0],
        [0, 0],
      ],
      swing: 140,
    },
    frame: [],
    lift: 10 * thickness + 40,
    openEnds: true,
    setback: "auto",
    leastGrip: 0,
    leastFlange: 0,
  };
}
