/**
 * What the person is told beside the lines of a blank, and how the nose is set for bends of unlike angle: each on a job
 * whose answer is written by hand. The ways of the bench are common practice, no source.
 */
import { describe, expect, it } from "vitest";
import { placeFigures, placeWords, sixtyFourth } from "../../src/words/lengthWords.ts";
import { markingSentences } from "../../src/words/markingWords.ts";
import { setUpSentences } from "../../src/words/setUpWords.ts";
import { toldSteps } from "../../src/words/toldStep.ts";
import { answerOf, jobOf, stepOf } from "../jobFile/answers.ts";

describe("markingSentences", () => {
  it("measures from one edge, names the flat that takes up the error, and says what to draw with", () => {
    const said = markingSentences(jobOf(), answerOf("clear", stepOf())).join(" ");
    expect(said).toContain("Measure every line from the free end of flat 1.");
    expect(said).toContain("ends up in flat 3: where that matters, cut it 1.5 mm long and trim it last");
    expect(said).toContain("Draw lines with a soft pencil or in layout dye. Don't scribe across a bend");
    expect(said).toContain("Deburr the ends of each bend line");
    expect(said).not.toContain("back");
  });

  it("sends the sight line of a bend made with the marked face down to the back of the sheet", () => {
    const down = answerOf("clear", stepOf({ bend: 1 }), stepOf({ markedFaceUp: false }));
    expect(markingSentences(jobOf({ units: "in" }), down)[1]).toBe(
      "Marked face down for bend 2: draw that sight line on the back, the same distance from the same edge.",
    );
    const [, told] = toldSteps(jobOf(), down);
    expect(told!.sentences).toContain(
      "Sight line under the nose, drawn on the back: 31.00 mm from the edge of flat 1.",
    );
    expect(told!.cells[2]).toContain("on the back");
  });
});

describe("setUpSentences", () => {
  const said = (...setbacks: readonly number[]) =>
    setUpSentences(
      jobOf(),
      answerOf("clear", ...setbacks.map((setback, i) => stepOf({ bend: i + 1, setback }))),
    );

  it("says the nose's setback of each bend and how often it is set anew", () => {
    // The sheet is 0.8 mm thick: the shop's rule of one thickness is named where it holds.
    expect(said(0.8, 1.5)[0]).toBe(
      "Nose, in the order of the bends: bend 1 0.80 mm back from the bed's front edge, one thickness of the sheet; bend 2 1.50 mm back from the bed's front edge. You set it anew once.",
    );
    expect(said(-0.172, 1.5, 1.52, 0)[0]).toContain(
      "bend 1 0.17 mm out over the leaf; bends 2, 3 1.50 mm back",
    );
    expect(said(-0.172, 1.5, 1.52, 0)[0]).toContain(
      "bend 4 flush with the bed's front edge. You set it anew 2 times.",
    );
    expect(said(1.5, 1.55)[0]).toBe("Nose 1.50 mm back from the bed's front edge.");
  });

  it("proves the brake on a strip, and says which way to set it where its ends or its middle are bent less", () => {
    const prove = said(0.8).at(-1)!;
    expect(prove).toMatch(
      /^Prove the brake first: fold a strip as long as the part .* both ends and in the middle/u,
    );
    expect(prove).toContain("more than 1°");
    expect(prove).toMatch(/nose forward at the end that is bent less.*middle is bent less.*more crown/u);
  });
});

describe("placeWords", () => {
  it("keeps decimals decimal: a 64th stands beside one only where it is that 64th to 0.0005 in", () => {
    // .0336 in is not 1/32 (.03125); .3746 is within .0005 of 3/8; .3744 is not.
    expect(placeWords(0.0336 * 25.4, "in")).toBe("0.034 in");
    expect(placeFigures(0.3746 * 25.4, "in")).toEqual(["0.375", "(3/8)"]);
    expect(placeFigures(0.3744 * 25.4, "in")).toEqual(["0.374"]);
    expect(placeWords(25.4, "in")).toBe("1.000 in");
  });

  it("has no 64ths in a metric job, and the nearest one in inches where it was asked for", () => {
    expect(placeWords(9.525, "mm")).toBe("9.53 mm");
    // 10 mm is 0.3937 in; 25/64 is 0.390625, 0.0031 less.
    expect(sixtyFourth(10)).toEqual(["25/64", "−0.003"]);
    expect(sixtyFourth(9.525)).toEqual(["3/8", " 0.000"]);
  });
});
