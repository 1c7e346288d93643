/**
 * The public engine: what a job takes from its text to paper, in that order. Plain data in and out; nothing here touches a page,
 * a file or a screen. Everything else in src/ is inner and may change without notice. The shortest way:
 *
 *     const read = readJob(text);
 *     if (read.ok) console.log(verdictSentence(read.job, check(read.job)));
 *     else console.log(read.problems.map(problemSentence).join("\n"));
 */

// read: the text of a job file or of a shop file, or what is wrong with it, each slip in a sentence

export { problemSentence } from "./jobFile/problem.ts";
export { readJob } from "./jobFile/readJob.ts";
export { readShop } from "./jobFile/readShop.ts";

// check: the best order of bends, or where the part hits

export { check } from "./answer/check.ts";
export { CAUTIONS } from "./words/cautions.ts";
export { verdictSentence } from "./words/verdictWords.ts";

// ways: the smallest changes that let the part fold; apply: the file with such a change; write: a file as text

export { writeJob } from "./jobFile/writeJob.ts";
export { applied, waysOut } from "./ways/waysOut.ts";

// fit: all parts of a shop on all its brakes; bar: the one narrow brake to make for the parts left

export { madeBrakeFile } from "./narrowBrake/madeBrakeFile.ts";
export { barForParts } from "./ways/shopBar.ts";
export { fitShop } from "./ways/shopFit.ts";
export { shopMadeBar } from "./ways/shopMadeBar.ts";

// blank and chart: lines to scribe, and how long a return flange may be

export { layOut } from "./blank/blank.ts";
export { flangeChart } from "./ways/flangeChart.ts";

// drawings: marks in millimetres, for any pen

export { templatePages } from "./drawing/template.ts";
export { drawnBrake, narrowBrakePlans } from "./narrowBrake/plans/narrowBrakePlans.ts";
export { pieceFiles } from "./narrowBrake/plans/pieceFiles.ts";
export { drawBlank } from "./pictures/blankDrawing.ts";
export { drawFlangeChart } from "./pictures/flangeChart.ts";
export { shopSheet } from "./pictures/shopSheet.ts";
export { drawStep } from "./pictures/step.ts";

// pens: a drawing as text, pages as bytes

export { toDxf } from "./drawing/dxfPen.ts";
export { writePdf } from "./drawing/pdfPen.ts";
export { writeSvg } from "./drawing/svgPen.ts";

// the types that these take and give

export type { Blank, BlankBend, Strip } from "./blank/blank.ts";
export type { CutOut, Span } from "./blank/cutOut.ts";
export type { AsDrawn, Brake, BrakeDoubts, Clamp, Leaf, Rating, Stretch } from "./brake/brake.ts";
export type { Handling } from "./contact/loading.ts";
export type { Refusal, Verdict } from "./contact/step.ts";
export type { Drawing, Layer, Mark } from "./drawing/model.ts";
export type { Page, Placed } from "./drawing/page.ts";
export type { PageSize } from "./drawing/pageSize.ts";
export type { PrintedWords, SvgOptions } from "./drawing/svgPen.ts";
export type {
  Answer,
  BlankBendAnswer,
  ContactAnswer,
  DoubtsAnswer,
  FailsAt,
  FlangeAnswer,
  HandFinishAnswer,
  Member,
  Met,
  PointPair,
  ReliefHoleAnswer,
  StepAnswer,
} from "./jobFile/answer.ts";
export type { Change, OrderedBend } from "./jobFile/change.ts";
export type { ChartCurve, ChartPoint, FlangeChart } from "./jobFile/flangeChart.ts";
export type { HandFinish, Job } from "./jobFile/job.ts";
export type { OddFigure } from "./jobFile/oddFigures.ts";
export type { Problem } from "./jobFile/problem.ts";
export type { JobRead } from "./jobFile/readJob.ts";
export type { ShopRead } from "./jobFile/readShop.ts";
export type { JobFile } from "./jobFile/schema.ts";
export type { Shop } from "./jobFile/shopFile.ts";
export type { FitCell, ShopBar, ShopFit } from "./jobFile/shopFit.ts";
export type { FamilyKind, Limit, WayKind } from "./jobFile/way.ts";
export type { BrakeChange, FileChange, NoWayOut, Remedy, WayOut } from "./jobFile/wayOut.ts";
export type {
  Metal,
  MetalSources,
  RadiusColumn,
  RadiusTable,
  SpringbackCurve,
  SpringbackRow,
} from "./metal/metal.ts";
export type { OrderStep } from "./motion/stages.ts";
export type { BarWindow } from "./narrowBrake/barWindow.ts";
export type { Governing, GoverningLoads } from "./narrowBrake/governingLoads.ts";
export type {
  CutPiece,
  MakingStep,
  NarrowBrake,
  NarrowBrakePlan,
  Refused,
} from "./narrowBrake/narrowBrake.ts";
export type {
  BendToFold,
  GiveLimits,
  NarrowBrakeWishes,
  ResolvedRequirements,
  SafetyFactors,
  SheetToFold,
  Vise,
} from "./narrowBrake/requirements.ts";
export type { BrakeSizes, Growth } from "./narrowBrake/sizes.ts";
export type { Assembly, Hole, Mounting, Piece, Prism, Round, Xy, Xyw } from "./narrowBrake/solid.ts";
export type { FlatHead, TappedThread } from "./narrowBrake/stockSize.ts";
export type { CheckUnit, StrengthCheck } from "./narrowBrake/strengthCheck.ts";
export type { Watch } from "./order/judge.ts";
export type { Bend, End, Hem, Part, Turn } from "./part/part.ts";
export type { ArcEdge, Edge, LineEdge, Outline } from "./plane/outline.ts";
export type { Point } from "./plane/point.ts";
export type { GaugeFamily } from "./units/gauge.ts";
export type { LengthUnit } from "./units/length.ts";
export type { Deg, Mm, Mpa, Rad } from "./units/quantity.ts";
export type { BarLimits } from "./ways/barLimits.ts";
export type { Outcome } from "./ways/folds.ts";
export type { OverbendRange } from "./ways/overbendRange.ts";
export type { BarChoice, BarForParts, LeftPart } from "./ways/shopBar.ts";
export type { ShopMadeBar, ShopMadeBarOptions } from "./ways/shopMadeBar.ts";
export type { WaysOutOptions } from "./ways/waysOut.ts";
export type { Work } from "./ways/work.ts";
