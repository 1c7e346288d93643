/**
 * Whole parts as people type them by hand, with one slip each, and what the answer must say to type instead.
 * The slips are common practice (no source): words for keys, sizes at the wrong place, lines that stop short.
 */

const BRAKE = `"brake": {
    "name": "finger brake",
    "length": 24,
    "clamp": {
      "type": "finger", "noseAngle": 60, "noseRadius": "1/32", "height": 2, "footDepth": 1.75,
      "fingerGap": "1/8",
      "fingers": [{ "width": 4, "count": 2 }, { "width": "2 3/8", "count": 1 }, { "width": 1, "count": 3 }]
    },
    "bed": { "profile": [[-6, -3], [0, -3], [0, 0], [-6, 0]] },
    "leaf": { "profile": [[0, -0.5], [1, -0.5], [1, 0], [0, 0]], "swing": 135 },
    "lift": 2.5,
    "openEnds": true
  }`;

const SHEET = `"name": "tray", "material": "5052-H32", "thickness": ".040", "insideRadius": "3/64"`;

/** A box with lips and tabs. */
export const BOX = `{
  "noseroom": 1, "units": "in",
  "part": { ${SHEET}, "dimensions": "outside",
    "box": {
      "width": 6, "depth": 4,
      "walls": {
        "left": { "height": "1 1/2", "lips": [{ "size": "3/8", "turn": "in" }] },
        "right": "1 1/4", "front": 1, "back": 1
      },
      "corners": { "tab": "1/2", "on": "inside" },
      "gap": "1/32"
    }
  },
  ${BRAKE}
}`;

/** A trough with a closed end, a short flat, and its order given. */
export const TROUGH = `{
  "noseroom": 1, "units": "in",
  "part": { ${SHEET}, "dimensions": "outside", "length": 8,
    "flats": [1, 3, 1],
    "bends": [{ "angle": 90, "turn": "up" }, { "angle": 90, "turn": "up" }],
    "ends": [{ "flat": 2, "at": "start", "size": 1, "angle": 90, "turn": "up", "lips": [{ "size": "3/8", "angle": 90, "turn": "down" }] }],
    "spans": [{ "flat": 3, "from": 1, "to": 7 }]
  },
  ${BRAKE},
  "order": [
    { "bends": [4], "clampedAt": [2.5, 1] },
    { "bends": [1], "clampedAt": [2.5, 4] },
    { "bends": [2], "clampedAt": [2.5, 4], "fingers": [{ "width": 4, "from": 0 }, { "width": 1, "from": 4 }] },
    { "bends": [3], "clampedAt": [2.5, 4] }
  ]
}`;

/** A drawn bracket with a hole and two bends. */
export const PATTERN = `{
  "noseroom": 1, "units": "in",
  "part": { ${SHEET},
    "pattern": {
      "outline": [[0, 0], [4, 0], [4, 3], [0, 3]],
      "holes": [[[0.5, 0.5], [1, 0.5], [1, 1], [0.5, 1]]],
      "bends": [
        { "line": [[2, 0], [2, 3]], "angle": 90, "turn": "up" },
        { "line": [[3, 0], [3, 3]], "angle": 45, "turn": "down" }
      ]
    }
  },
  ${BRAKE}
}`;

type Slip = readonly [job: string, what: string, from: string, to: string, says: RegExp];

export const wholeSlips: readonly Slip[] = [
  // A box.
  [
    BOX,
    "no walls",
    '"left": { "height": "1 1/2", "lips": [{ "size": "3/8", "turn": "in" }] },\n        "right": "1 1/4", "front": 1, "back": 1',
    "",
    /^part\.box\.walls: .*it should be at least one of left, right, front and back/u,
  ],
  [BOX, "a wall by another name", '"back": 1', '"rear": 1', /^part\.box\.walls\.rear: .*it should be back/u],
  [BOX, "height for depth", '"depth": 4', '"height": 4', /^part\.box\.height: .*it should be depth/u],
  [BOX, "length for depth", '"depth": 4', '"length": 4', /^part\.box\.length: .*it should be depth/u],
  [
    BOX,
    "no depth",
    '"depth": 4,',
    "",
    /^part\.box\.depth: .*it should be a length such as 12, "3\/8" or "5 mm"/u,
  ],
  [
    BOX,
    "a wall of size 0",
    '"front": 1',
    '"front": 0',
    /^part\.box\.walls\.front: .*it should be a length greater than 0, such as 12, "3\/8" or/u,
  ],
  [
    BOX,
    "a wall below 0",
    '"front": 1',
    '"front": -1',
    /^part\.box\.walls\.front: .*it should be a length greater than 0, such as 12, "3\/8" or/u,
  ],
  [
    BOX,
    "a wall lower than its bend",
    '"front": 1',
    '"front": 0.05',
    /^part\.box\.walls\.front: .*it should be larger than 0\.0869 in, which its bends take up/u,
  ],
  [
    BOX,
    "a wall in words",
    '"front": 1',
    '"front": "tall"',
    /^part\.box\.walls\.front: .*it should be a length greater than 0, such as 12, "3\/8" or/u,
  ],
  [
    BOX,
    "a wall as a list",
    '"front": 1',
    '"front": [1]',
    /^part\.box\.walls\.front: .*it should be a height, or \{height, angle, turn,/u,
  ],
  [
    BOX,
    "size for height",
    '{ "height": "1 1/2",',
    '{ "size": "1 1/2",',
    /^part\.box\.walls\.left\.size: .*it should be height/u,
  ],
  [
    BOX,
    "lip for lips",
    '"lips": [{ "size": "3/8", "turn": "in" }]',
    '"lip": "3/8"',
    /^part\.box\.walls\.left\.lip: .*it should be lips/u,
  ],
  [
    BOX,
    "a lip as a number",
    '"lips": [{ "size": "3/8", "turn": "in" }]',
    '"lips": ["3/8"]',
    /^part\.box\.walls\.left\.lips\[0\]: .*it should be a lip in braces, with size, angle, turn,/u,
  ],
  [
    BOX,
    "a lip without a list",
    '"lips": [{ "size": "3/8", "turn": "in" }]',
    '"lips": { "size": "3/8" }',
    /^part\.box\.walls\.left\.lips: .*it should be a list of up to 3 lips, the one next to the/u,
  ],
  [
    BOX,
    "a lip turned up",
    '"turn": "in"',
    '"turn": "up"',
    /^part\.box\.walls\.left\.lips\[0\]\.turn: .*it should be "in" or "out"/u,
  ],
  [
    BOX,
    "a lip's height",
    '"size": "3/8", "turn": "in"',
    '"height": "3/8", "turn": "in"',
    /^part\.box\.walls\.left\.lips\[0\]\.height: .*it should be size/u,
  ],
  [
    BOX,
    "a lip smaller than its bend",
    '"size": "3/8"',
    '"size": "1/32"',
    /^part\.box\.walls\.left\.lips\[0\]\.size: .*it should be larger than 0\.0869 in, which its bends take up/u,
  ],
  [
    BOX,
    "a lip wider than the wall's bends leave",
    '"height": "1 1/2"',
    '"height": "1/8"',
    /^part\.box\.walls\.left\.height: .*it should be larger than 0\.1738 in, which its bends take up/u,
  ],
  [
    BOX,
    "a lip angle past flat on itself",
    '"size": "3/8", "turn": "in"',
    '"size": "3/8", "angle": 200',
    /^part\.box\.walls\.left\.lips\[0\]\.angle: .*it should be an angle between 0 and 180 degrees, measured/u,
  ],
  [
    BOX,
    "a width that the bends take up",
    '"width": 6',
    '"width": "1/16"',
    /^part\.box\.width: .*it should be longer than 0\.1738 in, which the bends of its/u,
  ],
  [
    BOX,
    "a wall that leans, with tabs",
    '{ "height": "1 1/2",',
    '{ "height": "1 1/2", "angle": 80,',
    /^part\.box\.corners: .*it should be "open", since the left wall does not stand/u,
  ],
  [
    BOX,
    "corners closed",
    '{ "tab": "1/2", "on": "inside" }',
    '"closed"',
    /^part\.box\.corners: .*it should be "open", "meet", or \{tab: width, on: "inside"/u,
  ],
  [
    BOX,
    "tabs without a width",
    '{ "tab": "1/2", "on": "inside" }',
    '"tab"',
    /^part\.box\.corners: .*it should be "open", "meet", or \{tab: width, on: "inside"/u,
  ],
  [
    BOX,
    "a tab on the left",
    '"on": "inside"',
    '"on": "left"',
    /^part\.box\.corners\.on: .*it should be "inside" or "outside"/u,
  ],
  [
    BOX,
    "a tab narrower than its bend",
    '"tab": "1/2"',
    '"tab": "1/64"',
    /^part\.box\.corners\.tab: .*it should be wider than 0\.0869 in, which its bend takes up/u,
  ],
  [
    BOX,
    "a gap below 0",
    '"gap": "1/32"',
    '"gap": -1',
    /^part\.box\.gap: .*it should be a length of 0 or more, such as 12, "3\/8" or/u,
  ],
  [
    BOX,
    "a box with flats too",
    '"box": {',
    '"flats": [1, 2], "box": {',
    /^part: .*it should be one of box, pattern, or flats and bends with/u,
  ],
  [
    BOX,
    "an inch mark outside",
    '"right": "1 1/4"',
    '"right": "1 1/4"in',
    /^The job file: .*it should be "1 1\/4 in", with the unit inside the quotes/u,
  ],
  [
    BOX,
    "an angle given to the box",
    '"gap": "1/32"',
    '"gap": "1/32", "angle": 90',
    /^part\.box\.angle: .*it should be one of width, depth, walls, corners, gap/u,
  ],
  // Fingers.
  [
    BOX,
    "fingers as widths alone",
    '[{ "width": 4, "count": 2 }, { "width": "2 3/8", "count": 1 }, { "width": 1, "count": 3 }]',
    "[4, 4, 2]",
    /^brake\.clamp\.fingers\[0\]: .*it should be a finger in braces, with width, count/u,
  ],
  [
    BOX,
    "a finger without its count",
    '{ "width": 4, "count": 2 }',
    '{ "width": 4 }',
    /^brake\.clamp\.fingers\[0\]\.count: .*it should be how many there are, a whole number/u,
  ],
  [
    BOX,
    "half a finger",
    '"count": 2',
    '"count": 1.5',
    /^brake\.clamp\.fingers\[0\]\.count: .*it should be how many there are, a whole number/u,
  ],
  [
    BOX,
    "a finger of no width",
    '"width": 4',
    '"width": 0',
    /^brake\.clamp\.fingers\[0\]\.width: .*it should be a length greater than 0, such as 12, "3\/8" or/u,
  ],
  [
    BOX,
    "a finger's length",
    '{ "width": 4, "count": 2 }',
    '{ "length": 4, "count": 2 }',
    /^brake\.clamp\.fingers\[0\]\.length: .*it should be width/u,
  ],
  [
    BOX,
    "no fingers at all",
    '[{ "width": 4, "count": 2 }, { "width": "2 3/8", "count": 1 }, { "width": 1, "count": 3 }]',
    "[]",
    /^brake\.clamp\.fingers: .*it should be a list of up to 60 widths, \[\{ "width": 50,/u,
  ],
  [
    BOX,
    "a clamp's length beside fingers",
    '"fingerGap": "1/8"',
    '"length": 20',
    /^brake\.clamp\.length: .*it should be left out: fingers stand where they are put/u,
  ],
  [
    BOX,
    "a finger gap below 0",
    '"fingerGap": "1/8"',
    '"fingerGap": -1',
    /^brake\.clamp\.fingerGap: .*it should be a length of 0 or more, such as 12, "3\/8" or/u,
  ],
  [
    BOX,
    "a brake of no length",
    '"length": 24',
    '"length": 0',
    /^brake\.length: .*it should be a length greater than 0, such as 12, "3\/8" or/u,
  ],
  // Ends, spans and an order.
  [
    TROUGH,
    "an end of a flat that is not there",
    '"ends": [{ "flat": 2',
    '"ends": [{ "flat": 4',
    /^part\.ends\[0\]\.flat: .*it should be the number of a flat, from 1 to 3/u,
  ],
  [
    TROUGH,
    "an end at the left",
    '"at": "start"',
    '"at": "left"',
    /^part\.ends\[0\]\.at: .*it should be "start" or "finish"/u,
  ],
  [
    TROUGH,
    "an end without a turn",
    '"angle": 90, "turn": "up", "lips"',
    '"angle": 90, "lips"',
    /^part\.ends\[0\]\.turn: .*it should be "up" or "down"/u,
  ],
  [
    TROUGH,
    "an end without an angle",
    '"angle": 90, "turn": "up", "lips"',
    '"turn": "up", "lips"',
    /^part\.ends\[0\]\.angle: .*it should be an angle in degrees/u,
  ],
  [
    TROUGH,
    "an end without a size",
    '"at": "start", "size": 1,',
    '"at": "start",',
    /^part\.ends\[0\]\.size: .*it should be a length such as 12, "3\/8" or "5 mm"/u,
  ],
  [
    TROUGH,
    "an end smaller than its bends",
    '"at": "start", "size": 1,',
    '"at": "start", "size": "1/16",',
    /^part\.ends\[0\]\.size: .*it should be larger than 0\.1738 in, which its bends take up/u,
  ],
  [
    TROUGH,
    "an end that ends before it begins",
    '"at": "start", "size": 1,',
    '"at": "start", "size": 1, "from": 2, "to": 1,',
    /^part\.ends\[0\]\.to: .*it should be more than from/u,
  ],
  [
    TROUGH,
    "a lip turned in on an end",
    '"angle": 90, "turn": "down" }]',
    '"angle": 90, "turn": "in" }]',
    /^part\.ends\[0\]\.lips\[0\]\.turn: .*it should be "up" or "down"/u,
  ],
  [
    TROUGH,
    "ends and no length",
    '"length": 8,',
    "",
    /^part\.length: .*it should be the part's length along its bend lines, since/u,
  ],
  [
    TROUGH,
    "a span past the length",
    '"to": 7',
    '"to": 9',
    /^part\.spans\[0\]\.to: .*it should be no more than the part's length/u,
  ],
  [
    TROUGH,
    "a span back to front",
    '"from": 1, "to": 7',
    '"from": 7, "to": 1',
    /^part\.spans\[0\]\.to: .*it should be more than from/u,
  ],
  [
    TROUGH,
    "a span of flat 0",
    '"spans": [{ "flat": 3',
    '"spans": [{ "flat": 0',
    /^part\.spans\[0\]\.flat: .*it should be the number of a flat, from 1 to 3/u,
  ],
  [
    TROUGH,
    "a span without its end",
    '"from": 1, "to": 7',
    '"from": 1',
    /^part\.spans\[0\]\.to: .*it should be a length such as 12, "3\/8" or "5 mm"/u,
  ],
  [
    TROUGH,
    "one bend too few in the order",
    ',\n    { "bends": [3], "clampedAt": [2.5, 4] }',
    "",
    /^order: .*it should be steps for all bends; 3 is missing/u,
  ],
  [
    TROUGH,
    "a bend twice",
    '{ "bends": [1],',
    '{ "bends": [4],',
    /^order\[1\]\.bends\[0\] \(step 2\): .*it should be a bend that is not made before/u,
  ],
  [
    TROUGH,
    "a bend that is not there",
    '{ "bends": [1],',
    '{ "bends": [7],',
    /^order\[1\]\.bends\[0\] \(step 2\): .*it should be the number of a bend, from 1 to 4/u,
  ],
  [
    TROUGH,
    "bend for bends",
    '{ "bends": [1],',
    '{ "bend": 1,',
    /^order\[1\]\.bend \(step 2\): .*it should be bends/u,
  ],
  [
    TROUGH,
    "bends without a list",
    '{ "bends": [1],',
    '{ "bends": 1,',
    /^order\[1\]\.bends \(step 2\): .*it should be a list of bends, by their numbers/u,
  ],
  [
    TROUGH,
    "clamped off the sheet",
    '{ "bends": [1], "clampedAt": [2.5, 4]',
    '{ "bends": [1], "clampedAt": [25, 4]',
    /^order\[1\]\.clampedAt \(step 2\): .*it should be a point of the flat blank/u,
  ],
  [
    TROUGH,
    "clamped at an end",
    '{ "bends": [1], "clampedAt": [2.5, 4]',
    '{ "bends": [1], "clampedAt": "start"',
    /^order\[1\]\.clampedAt \(step 2\): .*it should be a point, \[x, y\]/u,
  ],
  [
    TROUGH,
    "clamped for clampedAt",
    '{ "bends": [1], "clampedAt": [2.5, 4]',
    '{ "bends": [1], "clamped": "start"',
    /^order\[1\]\.clamped \(step 2\): .*it should be clampedAt/u,
  ],
  [
    TROUGH,
    "fingers on each other",
    '"width": 1, "from": 4',
    '"width": 1, "from": 3',
    /^order\[2\]\.fingers \(step 3\): .*it should be side by side/u,
  ],
  [
    TROUGH,
    "a finger without its place",
    '{ "width": 1, "from": 4 }',
    '{ "width": 1 }',
    /^order\[2\]\.fingers\[1\]\.from \(step 3\): .*it should be a length such as 12, "3\/8" or "5 mm"/u,
  ],
  [
    TROUGH,
    "bends of two kinds in one stroke",
    '{ "bends": [1], "clampedAt": [2.5, 4] },\n',
    '{ "bends": [1, 3], "clampedAt": [2.5, 4] },\n',
    /^order\[3\]\.bends\[0\] \(step 4\): .*it should be a bend that is not made before/u,
  ],
  // A drawn pattern.
  [
    PATTERN,
    "an outline of two corners",
    "[[0, 0], [4, 0], [4, 3], [0, 3]]",
    "[[0, 0], [4, 0]]",
    /^part\.pattern\.outline: .*it should be a closed profile of 3 to 5000 corners, \[\[x,/u,
  ],
  [
    PATTERN,
    "an outline that crosses itself",
    "[[0, 0], [4, 0], [4, 3], [0, 3]]",
    "[[0, 0], [4, 3], [4, 0], [0, 3]]",
    /^part\.pattern\.outline: .*it should be a closed profile that goes around some metal/u,
  ],
  [
    PATTERN,
    "a corner of one figure",
    "[4, 3], [0, 3]]",
    "[4], [0, 3]]",
    /^part\.pattern\.outline\[2\]: .*it should be a corner, \[x, y\] or \[x, y, radius\]/u,
  ],
  [
    PATTERN,
    "a line that stops short",
    "[[2, 0], [2, 3]]",
    "[[2, 0], [2, 2]]",
    /^part\.pattern\.bends\[0\]\.line: .*it should be a line that runs from edge to edge/u,
  ],
  [
    PATTERN,
    "a line beside the sheet",
    "[[2, 0], [2, 3]]",
    "[[5, 0], [5, 3]]",
    /^part\.pattern\.bends\[0\]\.line: .*it should be a line across the sheet/u,
  ],
  [
    PATTERN,
    "a line of one point",
    "[[2, 0], [2, 3]]",
    "[[2, 0]]",
    /^part\.pattern\.bends\[0\]\.line: .*it should be the ends of a line, \[\[x, y\], \[x, y\]\]/u,
  ],
  [
    PATTERN,
    "a line without length",
    "[[2, 0], [2, 3]]",
    "[[2, 0], [2, 0]]",
    /^part\.pattern\.bends\[0\]\.line: .*it should be a line longer than 0\.1 mm/u,
  ],
  [
    PATTERN,
    "a line at the very edge",
    "[[2, 0], [2, 3]]",
    "[[0.02, 0], [0.02, 3]]",
    /^part\.pattern\.bends\[0\]\.line: .*it should be a line with some flat sheet left on both/u,
  ],
  [
    PATTERN,
    "two lines that cross",
    "[[2, 0], [2, 3]]",
    "[[0, 1.5], [4, 1.5]]",
    /^part\.pattern\.bends\[1\]\.line: .*it should be clear of the other bend; cut the corner out/u,
  ],
  [
    PATTERN,
    "two lines in one place",
    "[[2, 0], [2, 3]]",
    "[[3.01, 0], [3.01, 3]]",
    /^part\.pattern\.bends\[1\]\.line: .*it should be clear of the other bend; cut the corner out/u,
  ],
  [
    PATTERN,
    "a hole outside",
    "[[0.5, 0.5], [1, 0.5], [1, 1], [0.5, 1]]",
    "[[5, 5], [6, 5], [6, 6], [5, 6]]",
    /^part\.pattern\.holes\[0\]: .*it should be wholly inside the outline/u,
  ],
  [
    PATTERN,
    "a hole over the edge",
    "[[0.5, 0.5], [1, 0.5], [1, 1], [0.5, 1]]",
    "[[-0.5, 0.5], [1, 0.5], [1, 1], [-0.5, 1]]",
    /^part\.pattern\.holes\[0\]: .*it should be wholly inside the outline/u,
  ],
  [
    PATTERN,
    "a hole as a circle",
    "[[[0.5, 0.5], [1, 0.5], [1, 1], [0.5, 1]]]",
    '[{ "x": 1, "y": 1, "diameter": 0.5 }]',
    /^part\.pattern\.holes\[0\]: .*it should be a closed profile of 3 to 5000 corners, \[\[x,/u,
  ],
  [
    PATTERN,
    "a hole without its own brackets",
    "[[[0.5, 0.5], [1, 0.5], [1, 1], [0.5, 1]]]",
    "[[0.5, 0.5], [1, 0.5], [1, 1], [0.5, 1]]",
    /^part\.pattern\.holes\[0\]: .*it should be a closed profile of 3 to 5000 corners, \[\[x,/u,
  ],
  [
    PATTERN,
    "a turn in words",
    '"turn": "down"',
    '"turn": "back"',
    /^part\.pattern\.bends\[1\]\.turn: .*it should be "up" or "down"/u,
  ],
  [
    PATTERN,
    "an angle of 0",
    '"angle": 45',
    '"angle": 0',
    /^part\.pattern\.bends\[1\]\.angle: .*it should be an angle between 0 and 180 degrees, measured/u,
  ],
  [
    PATTERN,
    "lines for bends",
    '"bends": [',
    '"bendLines": [',
    /^part\.pattern\.bendLines: .*it should be bends/u,
  ],
  [PATTERN, "a box at the top", '"part": {', '"box": {}, "part": {', /^box: .*it should be under "part"/u],
  [
    PATTERN,
    "corners beside the box",
    '"pattern": {',
    '"corners": "meet", "pattern": {',
    /^part\.corners: .*it should be under "part\.box"/u,
  ],
  [
    PATTERN,
    "fingers of the brake",
    '"lift": 2.5',
    '"fingers": [], "lift": 2.5',
    /^brake\.fingers: .*it should be under "brake\.clamp"/u,
  ],
];
