/**
 * Job files as people type them by hand, with one slip each, and what the answer must say to type instead.
 * The slips are common practice (no source): inch marks, fractions, curly quotes, commas, brackets, words for keys.
 */

/** A trough typed by hand, sound as it stands: remarks, bare keys, commas too many, single quotes, .625. */
export const TYPED = `// cable trough, roof rail
{
  noseroom: 1,
  "units": "inches",
  "part": {
    "name": 'trough "A"',
    "material": "Mild Steel",
    "thickness": .032,
    "insideRadius": "1/16 in",
    "length": 12,
    "dimensions": "Outside",
    "flats": [.75, "5/8", 3/*4*/, ],
    "bends": [
      { "angle": 90, "turn": "Up" },
      { "angle": 90, "turn": "down" },
    ],
  },
  "brake": {
    "name": "square bar",
    "clamp": { "type": "Bar", "thickness": "3/8", "depth": 2, "noseRadius": "1/32" },
    "bed": { "profile": [[-6, -3], [0, -3], [0, 0], [-6, 0]] },
    "leaf": {
      "profile": [[0, -.5], [1, -.5], [1, 0], [0, 0]],
      "swing": 135
    },
    "lift": "1 1/2",
    "openEnds": "yes"
  },
  "margin": 0.02
}
`;

/** What the person did, the text that stands in the sound job, what they typed, and what the sentence must say. */
type TypedSlip = readonly [what: string, from: string, to: string, says: RegExp];

export const typedSlips: readonly TypedSlip[] = [
  // Measures without quotes, or with the unit outside them.
  ["a bare fraction", '"5/8"', "5/8", /found 5\/8 at line 12.*should be "5\/8" in quotes/u],
  ["a bare mixed number", '"1 1/2"', "1 1/2", /should be "1 1\/2" in quotes/u],
  ["an inch mark in place of quotes", '"5/8"', '5/8"', /should be "5\/8 in" in quotes/u],
  ["an inch mark inside", '"5/8"', '"5/8""', /found "5\/8"".*should be "5\/8 in", with the unit inside/u],
  ["an inch mark outside", '"5/8"', '"5/8" "', /should be "5\/8 in"/u],
  ["the unit outside", '"5/8"', '"5/8" in', /should be "5\/8 in", with the unit inside/u],
  ["the unit stuck on", '"5/8"', '"5/8"in', /should be "5\/8 in"/u],
  ["a bare number with its unit", '"length": 12', '"length": 12 in', /should be "12 in" in quotes/u],
  ["a bare number stuck to its unit", '"length": 12', '"length": 305mm', /should be "305mm" in quotes/u],
  ["a curly inch mark, bare", '"length": 12', '"length": 12”', /should be "12 in" in quotes/u],
  ["two primes for inches", '"length": 12', "\"length\": 12''", /should be "12 in" in quotes/u],
  ["a bare gauge", ".032", "20 ga steel", /should be "20 ga steel" in quotes/u],
  ["a degree sign", '"swing": 135', '"swing": 135°', /should be "135°" in quotes/u],
  ["degrees in words", '"swing": 135', '"swing": 135 degrees', /should be "135 degrees" in quotes/u],
  ["a one-half sign", '"depth": 2', '"depth": 2½', /should be "2½" in quotes/u],
  ["a minus at the end", '"depth": 2', '"depth": 2-', /should be a number such as 2\.5/u],
  ["a range of a length", '"depth": 2', '"depth": 2-3', /should be one length, not a range/u],
  ["a number with a 0 in front", '"depth": 2', '"depth": 02', /should be 2 without a 0 in front/u],
  ["dots for a number", '"depth": 2', '"depth": 2.0.1', /should be a number such as 2\.5/u],
  // Decimal commas.
  [
    "a decimal comma",
    '"margin": 0.02',
    '"margin": 0,02',
    /found 0,02.*should be 0\.02, with a decimal point/u,
  ],
  ["a decimal comma in a list", "[.75,", "[0,75,", /part\.flats.*12\.5 for 12,5/u],
  [
    "a comma that may part thousands",
    '"length": 12',
    '"length": "1,250 mm"',
    /1\.250 mm with a decimal point/u,
  ],
  // Words without quotes.
  ["a bare word", '"turn": "Up"', '"turn": up', /found up at line 14.*should be "up" in quotes/u],
  ["two bare words", '"Mild Steel"', "mild steel", /should be "mild steel" in quotes/u],
  ["a closing quote only", '"turn": "Up"', '"turn": up"', /should be "up" in quotes/u],
  [
    "True as in another language",
    '"openEnds": "yes"',
    '"openEnds": True',
    /should be true, in small letters/u,
  ],
  ["yes without quotes", '"openEnds": "yes"', '"openEnds": yes', /should be true/u],
  ["no without quotes", '"openEnds": "yes"', '"openEnds": No', /should be false/u],
  ["NaN", "0.02", "NaN", /should be a plain number/u],
  ["a number as a machine writes it", "0.02", "0x2", /should be a plain number/u],
  // Quotes.
  ["curly quotes", '"part"', "“part”", /found the curly quote “ at line 5.*straight quote/u],
  ["a curly quote for a value", '"5/8"', "”5/8”", /straight quote/u],
  ["curly single quotes", '"Outside"', "‘Outside’", /straight quote/u],
  [
    "a quote forgotten at the end",
    '"turn": "Up" }',
    '"turn": "Up }',
    /found "Up \}.*a double quote at its end, on the same line/u,
  ],
  [
    "a quote forgotten before a comma",
    '"square bar",',
    '"square bar,',
    /found "square bar,.*a double quote at its end/u,
  ],
  [
    "a quote forgotten on one line",
    '"type": "Bar", ',
    '"type": "Bar, ',
    /"Bar" with its closing quote before the comma/u,
  ],
  ["a key's quote forgotten", '"swing": 135', '"swing: 135', /found "swing: 135.*a double quote at its end/u],
  [
    "a key's quote after its colon",
    '"units": "inches"',
    '"units: "inches"',
    /"units": with the quote closed/u,
  ],
  ["a key's first quote forgotten", '"lift":', 'lift":', /should be "lift"/u],
  // Commas and colons.
  [
    "a comma forgotten at a line's end",
    '"length": 12,',
    '"length": 12',
    /found "dimensions".*should be after a comma/u,
  ],
  [
    "a comma forgotten after a group",
    '  },\n  "brake"',
    '  }\n  "brake"',
    /found "brake".*should be after a comma/u,
  ],
  ["a comma forgotten in a list", '.75, "5/8"', '.75 "5/8"', /should be after a comma/u],
  ["a comma forgotten between bends", '"Up" },', '"Up" }', /found "\{".*should be after a comma/u],
  [
    "a comma forgotten between corners",
    "[0, -3], [0, 0]",
    "[0, -3] [0, 0]",
    /found "\[".*should be after a comma/u,
  ],
  [
    "a comma forgotten after a word",
    '"angle": 90, "turn": "Up"',
    '"angle": 90 "turn": "Up"',
    /found "turn".*should be after a comma/u,
  ],
  ["two commas", "[.75,", "[.75,,", /should be after a value, or left out/u],
  [
    "two commas between keys",
    '"length": 12,',
    '"length": 12,,',
    /should be after a key and its value, or left out/u,
  ],
  ["a semicolon", '"length": 12,', '"length": 12;', /found ";".*should be a comma/u],
  [
    "a colon forgotten",
    '"lift": "1 1/2"',
    '"lift" "1 1/2"',
    /should be after a colon, behind the key "lift"/u,
  ],
  ["an equals sign", '"lift": "1 1/2"', '"lift" = "1 1/2"', /found "=".*should be a colon/u],
  ["a colon and no value", '"margin": 0.02', '"margin":', /should be after a value/u],
  [
    "a comma for a colon",
    '"lift": "1 1/2"',
    '"lift", "1 1/2"',
    /should be after a colon, behind the key "lift"/u,
  ],
  [
    "a full stop at the end of a line",
    '"length": 12,',
    '"length": 12.0.,',
    /should be a number such as 2\.5/u,
  ],
  // Brackets.
  [
    "the last brace forgotten",
    '"margin": 0.02\n}',
    '"margin": 0.02\n',
    /should be a \} at the end, to close the group/u,
  ],
  [
    "a list's end forgotten",
    "3/*4*/, ],",
    "3,",
    /found "bends" at line 13.*after a \], to close the list "flats".*line 12/u,
  ],
  [
    "the end of the part forgotten",
    '  },\n  "brake"',
    '  "brake"',
    /found "brake" at line 17.*after a \}, to close the group "part".*line 5/u,
  ],
  [
    "the end of the clamp forgotten",
    '"noseRadius": "1/32" },',
    '"noseRadius": "1/32",',
    /found "bed" at line 21.*after a \}, to close the group "clamp".*line 20/u,
  ],
  [
    "a bend's end forgotten",
    '"turn": "Up" },',
    '"turn": "Up",',
    /found "\{".*after a \}, to close the group/u,
  ],
  [
    "the list of bends left open",
    '    ],\n  },\n  "brake"',
    '  },\n  "brake"',
    /found "\}".*after a \], to close the list "bends"/u,
  ],
  [
    "a bracket of the wrong kind",
    "-6, 0]] }",
    "-6, 0]} }",
    /found "\}".*after a \], to close the list "profile"/u,
  ],
  ["a bracket too many", "3/*4*/, ],", "3, ]],", /found "\]".*left out, since no list is open here/u],
  ["a brace too many at the end", '"margin": 0.02\n}', '"margin": 0.02\n}}', /the job is complete here/u],
  [
    "bends without braces",
    '{ "angle": 90, "turn": "Up" },',
    '"angle": 90, "turn": "Up",',
    /found "angle".*after a \{/u,
  ],
  ["flats without brackets", '[.75, "5/8", 3/*4*/, ]', "1, 2, 3", /several values stand in \[ \]/u],
  ["a job without braces", "// cable trough, roof rail\n{", "", /after a \{, since a job stands in braces/u],
  [
    "a part closed too early",
    '"thickness": .032,',
    '"thickness": .032 },',
    /found "insideRadius" at line 9.*in the group before it/u,
  ],
  ["parentheses", "[.75,", "(.75,", /should be \[ in front of a list/u],
  // Remarks.
  ["a remark after #", "// cable", "# cable", /\/\/ in front of a remark/u],
  ["a remark after --", '"length": 12,', '"length": 12, -- along the rail', /\/\/ in front of a remark/u],
  ["a remark left open", "\n}\n", "\n}\n/* rail", /a remark that ends with \*\//u],
  // Keys.
  ["a key of two words", '"insideRadius"', "inside radius", /should be "insideRadius"/u],
  ["a key with a hyphen", '"insideRadius"', "inside-radius", /should be "insideRadius"/u],
  [
    "a key of two words in quotes",
    '"insideRadius"',
    '"inside radius"',
    /part\["inside radius"\].*should be insideRadius\./u,
  ],
  [
    "a key with a capital",
    '"insideRadius"',
    '"InsideRadius"',
    /part\.InsideRadius.*should be insideRadius\./u,
  ],
  ["a key misspelt", '"thickness": .032', '"thicknes": .032', /part\.thicknes:.*should be thickness\./u],
  ["a key with two letters swapped", '"dimensions"', '"dimensoins"', /should be dimensions\./u],
  ["another word for a key", '"material"', '"metal"', /part\.metal:.*should be material\./u],
  ["radius for insideRadius", '"insideRadius"', '"radius"', /part\.radius:.*should be insideRadius\./u],
  ["a gauge as a key", '"thickness": .032', '"gauge": "20 ga steel"', /part\.gauge:.*should be thickness\./u],
  ["bend for bends", '"bends"', '"bend"', /part\.bend:.*should be bends\./u],
  [
    "a key of the brake under the part",
    '"length": 12,',
    '"length": 12, "lift": 2,',
    /part\.lift: .*should be under "brake"/u,
  ],
  ["a key twice", '"length": 12,', '"length": 12, "length": 14,', /"length" stands in this group already/u],
  ["the version forgotten", "  noseroom: 1,\n", "", /noseroom: found nothing; it should be 1/u],
  ["the version in quotes", "noseroom: 1", 'noseroom: "1"', /noseroom: found "1"; it should be 1/u],
  // Values.
  ["a unit of its own", '"inches"', '"feet"', /units: found "feet"; it should be "mm" or "in"/u],
  ["centimetres", '"length": 12', '"length": "30 cm"', /part\.length: found "30 cm"; it should be "300 mm"/u],
  ["feet", '"length": 12', '"length": "2 ft"', /should be "24 in"/u],
  ["a foot mark", '"length": 12', '"length": "2\'"', /should be "24 in"/u],
  ["thousandths", '"margin": 0.02', '"margin": "20 thou"', /should be "0\.02 in"/u],
  ["about", '"length": 12', '"length": "about 12"', /should be 12 alone/u],
  [
    "a length and its doubt",
    '"5/8"',
    '"5/8 +- 1/64"',
    /part\.flats\[1\] \(flat 2\).*5\/8 alone.*part\.doubts/u,
  ],
  ["a sum", '"5/8"', '"1/2 + 1/8"', /should be 0\.625, as one number/u],
  ["a range", '"5/8"', '"5/8 to 3/4"', /one length, not a range/u],
  ["an improper mixed number", '"5/8"', '"1 9/8"', /such as 12, "3\/8" or "5 mm"/u],
  ["a gauge of no family", ".032", '"20"', /part\.thickness/u],
  [
    "left for up",
    '"turn": "Up"',
    '"turn": "left"',
    /part\.bends\[0\]\.turn \(bend 1\): found "left"; it should be "up" or "down"/u,
  ],
  [
    "a bend of 180",
    '"angle": 90, "turn": "Up"',
    '"angle": 180, "turn": "Up"',
    /between 0 and 180 degrees, measured from flat/u,
  ],
  [
    "a flat too few",
    '[.75, "5/8", 3/*4*/, ]',
    '[.75, "5/8"]',
    /part\.flats: found a list of 2; it should be a list of 3/u,
  ],
  [
    "a metal nobody knows",
    '"Mild Steel"',
    '"steel"',
    /part\.material: found "steel"; it should be "mild steel"/u,
  ],
  [
    "openEnds in words",
    '"openEnds": "yes"',
    '"openEnds": "both"',
    /brake\.openEnds: found "both"; it should be true or false/u,
  ],
  ["a corner with one number", "[0, -3]", "[0]", /brake\.bed\.profile\[1\] \(corner 2\).*\[x, y\]/u],
  // Hems, offsets and doubts.
  [
    "a hem in the wrong word",
    '{ "angle": 90, "turn": "Up" }',
    '{ "hem": "flat", "turn": "Up" }',
    /bends\[0\]\.hem.*"closed" or "open" or "teardrop"/u,
  ],
  [
    "a hem with an angle",
    '{ "angle": 90, "turn": "Up" }',
    '{ "hem": "closed", "angle": 180, "turn": "Up" }',
    /bends\[0\]\.angle.*left out, since a hem/u,
  ],
  [
    "a closed hem with a gap",
    '{ "angle": 90, "turn": "Up" }',
    '{ "hem": "closed", "gap": "1/16", "turn": "Up" }',
    /bends\[0\]\.gap.*a closed hem has no gap/u,
  ],
  [
    "a gap without a hem",
    '{ "angle": 90, "turn": "Up" }',
    '{ "angle": 90, "gap": "1/16", "turn": "Up" }',
    /bends\[0\]\.gap.*only a hem has a gap/u,
  ],
  [
    "a doubt of the wrong name",
    '"openEnds": "yes"',
    '"openEnds": "yes", "doubts": { "springback": 1 }',
    /doubts\.springback.*one of overbend, setback, noseRadius/u,
  ],
  [
    "a doubt larger than the nose",
    '"openEnds": "yes"',
    '"openEnds": "yes", "doubts": { "noseRadius": "1/16" }',
    /doubts\.noseRadius.*less than the nose radius/u,
  ],
];
