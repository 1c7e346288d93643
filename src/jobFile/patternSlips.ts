/**
 * What keeps a pattern from being a part, as problems of the file: the key, what is wrong at which place of the blank, and
 * what may stand there.
 */
import type { PatternFault } from "../pattern/pattern.ts";
import type { Point } from "../plane/point.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { Reading } from "./reading.ts";
import type { WholePartFile } from "./wholeSchema.ts";

/** Notes a fault of a pattern at the key that would have to change. */
export function notePatternFault(reading: Reading, part: WholePartFile, fault: PatternFault): void {
  const say = (mm: Mm) => formatLength(mm, reading.units);
  const place = ({ x, y }: Point) => `at x ${say(x)}, y ${say(y)} ${reading.units}`;
  const bendPath = (bend: number) =>
    part.pattern ? `part.pattern.bends[${bend}].line` : part.box ? "part.box" : "part";
  const note = (path: string, found: string, allowed: string) =>
    reading.problems.push({ path, found, allowed });
  const holePath = (hole: number) => `part.pattern.holes[${hole}]`;
  switch (fault.kind) {
    case "shape":
      note(
        fault.hole === undefined ? "part.pattern.outline" : holePath(fault.hole),
        "a shape that encloses no sheet",
        "one closed line",
      );
      return;
    case "holeOutside":
      note(
        holePath(fault.hole),
        `a hole that leaves the outline ${place(fault.at)}`,
        "wholly inside the outline",
      );
      return;
    case "holesMeet":
      note(
        holePath(fault.other),
        `a hole that meets hole ${fault.hole + 1} ${place(fault.at)}`,
        "clear of the other holes; draw two that meet as one",
      );
      return;
    case "noSheet":
      note(
        bendPath(fault.bend),
        `a line with no sheet under it ${place(fault.at)}`,
        "a line across the sheet",
      );
      return;
    case "short":
      note(
        bendPath(fault.bend),
        `a line that stops ${say(fault.byMm)} ${reading.units} short of the sheet's edge ${place(fault.at)}`,
        "a line that runs from edge to edge",
      );
      return;
    case "openCut":
      note(
        bendPath(fault.bend),
        `a cut beside the bend that ends inside its strip ${place(fault.at)}`,
        "a line whose cuts at its ends reach past both bend tangent lines",
      );
      return;
    case "crossing":
      note(
        bendPath(fault.other),
        `strips of bends ${fault.bend + 1} and ${fault.other + 1} that cross ${place(fault.at)}`,
        "clear of the other bend; cut the corner out between them",
      );
      return;
    case "nothingLeft":
      note(
        bendPath(fault.bend),
        `a bend that takes up all the sheet beside it ${place(fault.at)}`,
        "a line with some flat sheet left on both sides of the bend's strip",
      );
      return;
    case "ring": {
      const bends = fault.bends.map((bend) => bend + 1).join(", ");
      note(
        part.pattern ? "part.pattern.bends" : "part",
        `bends ${bends} round a ring of faces`,
        "such that taking any one bend away leaves two pieces; cut one of the corners open",
      );
    }
  }
}
