/**
 * The shop-made narrow brake for some parts, as the page shows it: words, lists, pictures, and the jobs on the made brake.
 */
import { paperFor } from "../../src/drawing/pageSize.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import { refusalSentence } from "../../src/narrowBrake/designNarrowBrake.ts";
import { madeBrakeFile } from "../../src/narrowBrake/madeBrakeFile.ts";
import {
  drawnBrake,
  pieceDrawings,
  narrowBrakePlans as plansOnPaper,
  stepDrawings,
} from "../../src/narrowBrake/plans/narrowBrakePlans.ts";
import { assemblyStl, pieceFiles } from "../../src/narrowBrake/plans/pieceFiles.ts";
import type { NarrowBrakeWishes } from "../../src/narrowBrake/requirements.ts";
import { formatLength } from "../../src/units/length.ts";
import { withBrake } from "../../src/ways/brakeWays.ts";
import { barForParts } from "../../src/ways/shopBar.ts";
import { type ShopMadeBar, shopMadeBar } from "../../src/ways/shopMadeBar.ts";
import { weightWords } from "../../src/words/weightWords.ts";
import type { NarrowBrakePlans, ShownBrake } from "./messages.ts";
import { paperPages } from "./paperPages.ts";

const TITLE = "Shop-made narrow brake";
/** Widths of pictures in millimetres of their own: a phone is as wide as a hand. */
const WIDE_MM = 190;
const SMALL_MM = 105;
const STEP_MM = 80;

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
    left: found === null && alone ? [] : left.map(({ part, because }) => ({ part, because })),
    shown: made === undefined ? null : shownBrake(made),
    files: files.map((file, i) =>
      found && makes.includes(i) ? withBrake(file, madeBrakeFile(found.bar.design, file.units)) : null,
    ),
  };
}

function shownBrake({ design, brake, guessedLengths }: ShopMadeBar): ShownBrake {
  const { units } = design.requirements;
  const { plan, refused } = design;
  const guess =
    guessedLengths.length === 0
      ? []
      : [
          `The length along the bends is guessed for ${guessedLengths.join(", ")}: give it under Part, the whole brake follows from it.`,
        ];
  const problems = [
    ...(refused ? [refusalSentence(refused, units)] : []),
    ...(plan && brake === null ? ["Checked again on the planned brake, the part does not fold."] : []),
  ];
  if (plan === null) {
    return {
      window: design.windowSentence,
      notes: guess,
      problems,
      cuts: [],
      lists: [],
      cautions: "",
      drawing: null,
    };
  }
  const svg = (drawing: Parameters<typeof writeSvg>[0]) => writeSvg(drawing, { title: TITLE });
  const picture = drawnBrake(design, WIDE_MM);
  return {
    window: design.windowSentence,
    notes: [`Weight ${weightWords(plan.weightKg, units)}.`, ...guess],
    problems,
    cuts: plan.cutList.map(({ item, piece, count, stock, lengthMm, bought, work }) => [
      `${item}`,
      `${count}`,
      piece,
      stock,
      bought && !piece.includes("screw") ? "" : `${formatLength(lengthMm, units)} ${units}`,
      work,
    ]),
    lists: [
      { heading: "What it carries", lines: plan.carries },
      { heading: "Proving it", lines: plan.proving },
      { heading: "Crown", lines: plan.crown },
      { heading: "Tools", lines: plan.tools },
      { heading: "Taken for granted", lines: plan.assumptions },
      { heading: "Not checked", lines: plan.notChecked },
      { heading: "Where this stops", lines: plan.limits },
    ],
    cautions: plan.cautions.join(" "),
    drawing: {
      sentence: picture.sentence,
      svg: svg(picture),
      small: svg(drawnBrake(design, SMALL_MM)),
      pieces: pieceDrawings(design, SMALL_MM).map(({ name, drawing }) => ({
        words: name,
        svg: svg(drawing),
      })),
      steps: stepDrawings(design, STEP_MM).map(({ words, drawing }) => ({ words, svg: svg(drawing) })),
      dxf: pieceFiles(plan),
      stl: assemblyStl(plan.assembly),
      pages: paperPages(plansOnPaper(design, paperFor(units))),
    },
  };
}
