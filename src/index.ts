/**
 * The public engine: named exports, room by room, in the order in which a job runs through them.
 * Nothing here touches a page, a file or a screen. The shortest way: readJob(text), check(job), then a drawing and a pen.
 */

// units: lengths with fractions, gauges, brands for mm, degrees and MPa

export type { GaugeFamily } from "./units/gauge.ts";
export { gaugeSource, gaugeThickness, parseThickness } from "./units/gauge.ts";
export type { LengthUnit } from "./units/length.ts";
export { formatLength, nearestSixtyFourth, parseLength } from "./units/length.ts";
export type { Deg, Mm, Mpa, Rad } from "./units/quantity.ts";
export { toDeg, toRad } from "./units/quantity.ts";

// plane: outlines of lines and arcs

export type { ArcEdge, Edge, LineEdge, Outline } from "./plane/outline.ts";
export type { Point } from "./plane/point.ts";

// metal: figures with their sources, springback, radii that a sheet takes

export type { Metal, MetalSources, RadiusColumn, RadiusTable } from "./metal/metal.ts";
export { metalNamed, metalNames } from "./metal/metals.ts";
export type { RadiusLimits } from "./metal/radiusLimits.ts";
export { radiusLimits } from "./metal/radiusLimits.ts";
export type { SpringbackInput } from "./metal/springback.ts";
export { relaxedRadius, springbackRatio, testStripRatio } from "./metal/springback.ts";

// part: flats and bends; bend allowance by each method; test strips and samples read with callipers

export { bendAllowance, bendDeduction, kFactorOf } from "./part/allowance.ts";
export type { BendShape } from "./part/bendSetback.ts";
export type { Chain } from "./part/chain.ts";
export type { AllowanceComparison } from "./part/compareAllowances.ts";
export { compareAllowances } from "./part/compareAllowances.ts";
export { din6935Allowance } from "./part/din6935Allowance.ts";
export { empiricalAllowance } from "./part/empiricalAllowance.ts";
export type { Direction } from "./part/overallSize.ts";
export type { Bend, End, Part, Turn } from "./part/part.ts";
export type { FlatReading, OverallReading, SampleBend, SumCheck } from "./part/sample.ts";
export { checkSum, outsideLengthMm, usualDoubtMm } from "./part/sample.ts";
export type { StripResult, TestStrip } from "./part/testStrip.ts";
export { readTestStrip } from "./part/testStrip.ts";

// brake: clamp, bed, leaf

export type { Brake, Clamp, Leaf, Rating } from "./brake/brake.ts";

// motion: the sheet in the brake at any leaf angle

export type { Scene } from "./motion/scene.ts";
export { sceneAt } from "./motion/scene.ts";
export type { Seat } from "./motion/seat.ts";

// contact: the verdict on one bend

export type { Handling } from "./contact/loading.ts";
export type { Contact, Step, Verdict } from "./contact/step.ts";
export { judgeStep } from "./contact/step.ts";

// order and section: the best of all orders, or the proof that there is none

export type { Watch } from "./order/judge.ts";
export { SearchStopped } from "./order/judge.ts";
export type { Found } from "./order/search.ts";
export { searchSection } from "./section/searchSection.ts";
export type { Move } from "./section/sectionJudge.ts";

// blank: lines from one edge, other methods, relief holes, weight, nests, pans and the fingers for them

export type { Blank, BlankBend } from "./blank/blank.ts";
export { layOut } from "./blank/blank.ts";
export type { BlankByMethod } from "./blank/blankByMethod.ts";
export { blankByMethod } from "./blank/blankByMethod.ts";
export type { CutOut, Span } from "./blank/cutOut.ts";
export type { FingerChoice, FingerGap, FingerStock } from "./blank/fingers.ts";
export { chooseFingers, gapBesideWalls } from "./blank/fingers.ts";
export type { Cut, Nest, NestQuestion, NestRow } from "./blank/nest.ts";
export { nestOnSheet } from "./blank/nest.ts";
export type { Pan, PanBlank, PanSide } from "./blank/pan.ts";
export { layOutPan } from "./blank/pan.ts";
export type { BendStrip, CutOutEdge, ReliefHole } from "./blank/relief.ts";
export { reliefHoles } from "./blank/relief.ts";
export { blankWeightKg } from "./blank/weight.ts";

// remedy: the narrow brake to be made, from loads and stock to the brake as built

export type { Change, OrderedBend } from "./jobFile/change.ts";
export type { FamilyKind, Limit, WayKind } from "./jobFile/way.ts";
export type { BarWindow } from "./narrowBrake/barWindow.ts";
export { windowSentence } from "./narrowBrake/barWindow.ts";
export { designNarrowBrake } from "./narrowBrake/designNarrowBrake.ts";
export type { Governing, GoverningLoads } from "./narrowBrake/governingLoads.ts";
export { madeBrakeFile } from "./narrowBrake/madeBrakeFile.ts";
export type {
  CutPiece,
  MakingStep,
  NarrowBrake,
  NarrowBrakePlan,
  Refused,
  ShopWords,
} from "./narrowBrake/narrowBrake.ts";
export type {
  GiveLimits,
  NarrowBrakeRequirements,
  NarrowBrakeWishes,
  ResolvedRequirements,
  SafetyFactors,
  SheetToFold,
  Vise,
} from "./narrowBrake/requirements.ts";
export type { Thread } from "./narrowBrake/strength/bolt.ts";
export type { ForcePerLength } from "./narrowBrake/strength/foldingForces.ts";
export type { CheckUnit, StrengthCheck } from "./narrowBrake/strengthCheck.ts";
export type { BarLimits } from "./ways/barLimits.ts";
export type { Outcome } from "./ways/folds.ts";
export { Work } from "./ways/work.ts";

// job: the file contract, the whole check, ways out, doubts, charts, shops and their bar

export { check } from "./answer/check.ts";
export { judgeDoubts } from "./answer/doubt.ts";
export type {
  Answer,
  BlankBendAnswer,
  ContactAnswer,
  DoubtsAnswer,
  FlangeAnswer,
  JudgedStep,
  Member,
  Met,
  PointPair,
  ReliefHoleAnswer,
  StepAnswer,
} from "./jobFile/answer.ts";
export type { ChartCurve, ChartPoint, FlangeChart } from "./jobFile/flangeChart.ts";
export type { Job, OrderStep } from "./jobFile/job.ts";
export type { Problem } from "./jobFile/problem.ts";
export { problemSentence } from "./jobFile/problem.ts";
export type { JobRead } from "./jobFile/readJob.ts";
export { readJob } from "./jobFile/readJob.ts";
export type { ShopRead } from "./jobFile/readShop.ts";
export { readShop } from "./jobFile/readShop.ts";
export type { JobFile } from "./jobFile/schema.ts";
export type { Shop, ShopFile } from "./jobFile/shopFile.ts";
export type { FitCell, ShopBar, ShopFit } from "./jobFile/shopFit.ts";
export type { BrakeChange, FileChange, NoWayOut, Remedy, WayOut } from "./jobFile/wayOut.ts";
export { isWayOut } from "./jobFile/wayOut.ts";
export { writeJob } from "./jobFile/writeJob.ts";
export { flangeChart } from "./ways/flangeChart.ts";
export type { BarChoice, BarForParts, LeftPart } from "./ways/shopBar.ts";
export { barForParts } from "./ways/shopBar.ts";
export { fitShop } from "./ways/shopFit.ts";
export type { ShopMadeBar, ShopMadeBarOptions } from "./ways/shopMadeBar.ts";
export { shopMadeBar } from "./ways/shopMadeBar.ts";
export type { WaysOutOptions } from "./ways/waysOut.ts";
export { applied, waysOut } from "./ways/waysOut.ts";
export { doubtSentences } from "./words/doubtWords.ts";
export { shopSentence } from "./words/shopWords.ts";

// drawing: pictures and pages from one model, the words that go with them, and the pens SVG, DXF and PDF

export { toDxf } from "./drawing/dxfPen.ts";
export type { Drawing, Layer, Mark } from "./drawing/model.ts";
export type { Page, Placed } from "./drawing/page.ts";
export type { PageSize } from "./drawing/pageSize.ts";
export { A4, LETTER, paperFor } from "./drawing/pageSize.ts";
export { writePdf } from "./drawing/pdfPen.ts";
export type { PrintedWords, SvgOptions } from "./drawing/svgPen.ts";
export { writeSvg } from "./drawing/svgPen.ts";
export { templatePages } from "./drawing/template.ts";
export type { Places } from "./narrowBrake/places.ts";
export { drawnBrake, narrowBrakePlans } from "./narrowBrake/plans/narrowBrakePlans.ts";
export { assemblyStl, pieceFiles } from "./narrowBrake/plans/pieceFiles.ts";
export type { BrakeSizes, Growth } from "./narrowBrake/sizes.ts";
export type { Assembly, Hole, Mounting, Piece, Prism, Round, Xy, Xyw } from "./narrowBrake/solid.ts";
export type { FlatHead, TappedThread } from "./narrowBrake/stockSize.ts";
export { drawBlank } from "./pictures/blankDrawing.ts";
export { chartPages } from "./pictures/chartPage.ts";
export { drawFlangeChart } from "./pictures/flangeChart.ts";
export { drawNest } from "./pictures/nestDrawing.ts";
export { drawPan } from "./pictures/panDrawing.ts";
export { shopSheet } from "./pictures/shopSheet.ts";
export { drawStep } from "./pictures/step.ts";
export type { OverbendRange } from "./ways/overbendRange.ts";
export { allowanceSentences } from "./words/allowanceWords.ts";
export { CAUTIONS } from "./words/cautions.ts";
export { verdictSentence } from "./words/verdictWords.ts";
