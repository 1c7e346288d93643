/**
 * The shop-made narrow brake for some parts, as the page shows it: words, lists, drawing, and the jobs on the made brake.
 */
import { toDxf } from "../../src/drawing/dxfPen.ts";
import { paperFor } from "../../src/drawing/pageSize.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import { madeBrakeFile } from "../../src/narrowBrake/madeBrakeFile.ts";
import { drawNarrowBrake } from "../../src/narrowBrake/plans/narrowBrakeDrawing.ts";
import { narrowBrakePlans as plansOnPaper } from "../../src/narrowBrake/plans/narrowBrakePlans.ts";
import type { NarrowBrakeWishes } from "../../src/narrowBrake/requirements.ts";
import { formatLength } from "../../src/units/length.ts";
import { withBrake } from "../../src/ways/brakeWays.ts";
import { barForParts } from "../../src/ways/shopBar.ts";
import { type ShopMadeBar, shopMadeBar } from "../../src/ways/shopMadeBar.ts";
import { weightWords } from "../../src/words/weightWords.ts";
import type { NarrowBrakePlans, ShownBrake } from "./messages.ts";
import { paperPages } from "./paperPages.ts";

/** As on a printed page: a third of true size, so that figures and lines are large enough for the drawing's span. */
const PREVIEW = 1 / 3;
const TITLE = "Shop-made narrow brake";

/**
 * One brake for the parts of these jobs: for all of them where it can be, else for as many as one can make. For a single
 * part the plans are shown also where something stands against them.
 */
export function narrowBrakePlans(files: readonly JobFile[], wishes: NarrowBrakeWishes): NarrowBrakePlans {
  const { found, left } = barForParts(files, wishes);
  const alone = files.length === 1 ? shopMadeBar(files, { wishes }) : undefined;
  const made = found?.bar ?? alone;
  const makes = found?.makes ?? [];
  return {
    makes,
    left: found === null && alone ? [] : left,
    shown: made === undefined ? null : shownBrake(made),
    files: files.map((file, i) =>
      found && makes.includes(i) ? withBrake(file, madeBrakeFile(found.bar.design, file.units)) : null,
    ),
  };
}

function shownBrake({ design, brake, guessedLengths }: ShopMadeBar): ShownBrake {
  const { units } = design.requirements;
  const drawing = design.plan === null ? null : drawNarrowBrake(design);
  const weight = design.plan === null ? [] : [`Weight ${weightWords(design.weightKg, units)}.`];
  const guess =
    guessedLengths.length === 0
      ? []
      : [
          `The length along the bends is guessed for ${guessedLengths.join(", ")}: give it under Part, the whole brake follows from it.`,
        ];
  const unproved =
    design.feasible && brake === null ? ["Checked again on the planned brake, the part does not fold."] : [];
  return {
    window: design.windowSentence,
    notes: [...weight, ...guess],
    problems: [...design.problems, ...unproved],
    cuts: design.cutList.map(({ piece, count, stock, lengthMm, work }) => [
      `${count}`,
      piece,
      stock,
      `${formatLength(lengthMm, units)} ${units}`,
      work,
    ]),
    hardware: design.hardware.map(({ count, item, size, remark }) => [`${count}`, item, size, remark]),
    lists: [
      { heading: "Order of making", lines: design.makingOrder },
      { heading: "Proving it", lines: design.proving },
      { heading: "Tools", lines: design.tools },
      { heading: "Taken for granted", lines: design.assumptions },
      { heading: "Where this stops", lines: design.limits },
    ],
    cautions: design.cautions.join(" "),
    drawing: drawing && {
      sentence: drawing.sentence,
      svg: writeSvg(drawing, { title: TITLE }),
      preview: writeSvg(drawing, { title: TITLE, enlargement: PREVIEW }),
      dxf: toDxf(drawing),
      pages: paperPages(plansOnPaper(design, paperFor(units))),
    },
  };
}
