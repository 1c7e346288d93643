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
export type { Member } from "./contact/sideChecks.ts";
export type { Contact, Step, Verdict } from "./contact/step.ts";
export { judgeStep } from "./contact/step.ts";

// sequence: the best of all orders, or the proof that there is none

export type { Move } from "./sequence/moves.ts";
export type { Partner, Share } from "./sequence/partner.ts";
export { takeShare } from "./sequence/partner.ts";
export type { Watch } from "./sequence/reach.ts";
export { SearchStopped } from "./sequence/reach.ts";
export type { Found } from "./sequence/search.ts";
export { searchOrders } from "./sequence/search.ts";

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

export type { BarLimits } from "./remedy/barLimits.ts";
export type { Change, OrderedBend } from "./remedy/change.ts";
export type { FamilyKind } from "./remedy/family.ts";
export type { Outcome } from "./remedy/folds.ts";
export type { BarWindow } from "./remedy/shopMade/barWindow.ts";
export { windowSentence } from "./remedy/shopMade/barWindow.ts";
export type { BedPlan } from "./remedy/shopMade/chooseBed.ts";
export type {
  HandlePlan,
  PinPlan,
  RailPlan,
  ScrewPlan,
  TonguePlan,
} from "./remedy/shopMade/chooseFittings.ts";
export type { BoltPlan, HolderPlan } from "./remedy/shopMade/chooseHolder.ts";
export type { LeafPlan } from "./remedy/shopMade/chooseLeaf.ts";
export { designNarrowBrake } from "./remedy/shopMade/designNarrowBrake.ts";
export type { Governing, GoverningLoads } from "./remedy/shopMade/governingLoads.ts";
export type { AsBuilt, MadeBrake, ProfilePoint } from "./remedy/shopMade/madeBrake.ts";
export { madeBrake } from "./remedy/shopMade/madeBrake.ts";
export type { MemberRole } from "./remedy/shopMade/memberPlan.ts";
export type {
  BarPlan,
  BowReport,
  CutPiece,
  HardwareItem,
  NarrowBrake,
  NarrowBrakePlan,
} from "./remedy/shopMade/narrowBrake.ts";
export type {
  GiveLimits,
  NarrowBrakeRequirements,
  NarrowBrakeWishes,
  ResolvedRequirements,
  SafetyFactors,
  SheetToFold,
  Vise,
} from "./remedy/shopMade/requirements.ts";
export type { StockSize } from "./remedy/shopMade/stockSize.ts";
export type { CheckUnit, StrengthCheck } from "./remedy/shopMade/strengthCheck.ts";
export type { Thread } from "./remedy/strength/bolt.ts";
export type { CrownStation } from "./remedy/strength/crown.ts";
export type { ForcePerLength } from "./remedy/strength/foldingForces.ts";
export type { SectionProperties, Shape } from "./remedy/strength/section.ts";
export type { UniformBeam } from "./remedy/strength/uniformBeam.ts";
export type { Limit, WayKind } from "./remedy/way.ts";
export { Work } from "./remedy/work.ts";

// job: the file contract, the whole check, ways out, doubts, charts, shops and their bar

export type {
  Answer,
  BlankBendAnswer,
  ContactAnswer,
  DoubtsAnswer,
  PointPair,
  ReliefHoleAnswer,
  StepAnswer,
} from "./job/answer.ts";
export { check } from "./job/check.ts";
export type { DoubtAnswer } from "./job/doubt.ts";
export { judgeDoubts } from "./job/doubt.ts";
export { doubtSentences } from "./job/doubtWords.ts";
export type { ChartCurve, ChartPoint, FlangeChart } from "./job/flangeChart.ts";
export { flangeChart } from "./job/flangeChart.ts";
export type { Job, OrderStep } from "./job/job.ts";
export type { Problem } from "./job/problem.ts";
export { problemSentence } from "./job/problem.ts";
export type { JobRead } from "./job/readJob.ts";
export { readJob } from "./job/readJob.ts";
export type { ShopRead } from "./job/readShop.ts";
export { readShop } from "./job/readShop.ts";
export type { JobFile } from "./job/schema.ts";
export type { BarChoice, BarForParts, LeftPart } from "./job/shopBar.ts";
export { barForParts } from "./job/shopBar.ts";
export type { ShopFile } from "./job/shopFile.ts";
export type { FitCell, ShopBar, ShopFit } from "./job/shopFit.ts";
export { fitShop } from "./job/shopFit.ts";
export type { ShopMadeBar, ShopMadeBarOptions } from "./job/shopMadeBar.ts";
export { shopMadeBar } from "./job/shopMadeBar.ts";
export { shopSentence } from "./job/shopWords.ts";
export type { BrakeChange, FileChange, NoWayOut, Remedy, WayOut } from "./job/wayOut.ts";
export { isWayOut } from "./job/wayOut.ts";
export type { WaysOutOptions } from "./job/waysOut.ts";
export { applied, waysOut } from "./job/waysOut.ts";
export { writeJob } from "./job/writeJob.ts";

// drawing: pictures and pages from one model, the words that go with them, and the pens SVG, DXF and PDF

export { allowanceSentences } from "./drawing/allowanceWords.ts";
export { drawBlank } from "./drawing/blankDrawing.ts";
export { CAUTIONS } from "./drawing/cautions.ts";
export { chartPages } from "./drawing/chartPage.ts";
export { toDxf } from "./drawing/dxfPen.ts";
export { drawFlangeChart } from "./drawing/flangeChart.ts";
export type { Drawing, Layer, Mark } from "./drawing/model.ts";
export { drawNarrowBrake } from "./drawing/narrowBrake.ts";
export { narrowBrakePlans } from "./drawing/narrowBrakePlans.ts";
export { drawNest } from "./drawing/nestDrawing.ts";
export type { Page, Placed } from "./drawing/page.ts";
export type { PageSize } from "./drawing/pageSize.ts";
export { A4, LETTER, paperFor } from "./drawing/pageSize.ts";
export { drawPan } from "./drawing/panDrawing.ts";
export { writePdf } from "./drawing/pdfPen.ts";
export { shopSheet } from "./drawing/shopSheet.ts";
export { drawStep } from "./drawing/step.ts";
export type { PrintedWords, SvgOptions } from "./drawing/svgPen.ts";
export { writeSvg } from "./drawing/svgPen.ts";
export { templatePages } from "./drawing/template.ts";
export { verdictSentence } from "./drawing/verdictWords.ts";
