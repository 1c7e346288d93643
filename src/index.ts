/**
 * The public engine: named exports, a line or two a room, in the order in which a job runs through them.
 * Nothing here touches a page, a file or a screen.
 */
// biome-ignore-all assist/source/organizeImports: the order is that of a job on its way.
export type { GaugeFamily } from "./units/gauge.ts";
export { gaugeThickness, parseThickness } from "./units/gauge.ts";
export type { LengthUnit } from "./units/length.ts";
export { formatLength, nearestSixtyFourth, parseLength } from "./units/length.ts";
export type { Deg, Mm, Mpa, Rad } from "./units/quantity.ts";
export { toDeg, toRad } from "./units/quantity.ts";
export type { ArcEdge, Edge, LineEdge, Outline } from "./plane/outline.ts";
export type { Point } from "./plane/point.ts";
export type { Metal, MetalSources, RadiusColumn, RadiusTable } from "./metal/metal.ts";
export { metalNamed, metalNames } from "./metal/metals.ts";
export type { SpringbackInput } from "./metal/springback.ts";
export { springbackRatio, testStripRatio } from "./metal/springback.ts";
export type { Chain } from "./part/chain.ts";
export type { Bend, End, Part, Turn } from "./part/part.ts";
export type { Brake, Clamp, Leaf, Rating } from "./brake/brake.ts";
export type { Scene } from "./motion/scene.ts";
export { sceneAt } from "./motion/scene.ts";
export type { Seat } from "./motion/seat.ts";
export type { Handling } from "./contact/loading.ts";
export type { Member } from "./contact/sideChecks.ts";
export type { Contact, Step, Verdict } from "./contact/step.ts";
export { judgeStep } from "./contact/step.ts";
export type { Move } from "./sequence/rank.ts";
export type { Watch } from "./sequence/reach.ts";
export { SearchStopped } from "./sequence/reach.ts";
export type { Found } from "./sequence/search.ts";
export { searchOrders } from "./sequence/search.ts";
export type { Blank, BlankBend } from "./blank/blank.ts";
export { layOut } from "./blank/blank.ts";
export type { BarLimits } from "./remedy/barLimits.ts";
export type { Change, OrderedBend } from "./remedy/change.ts";
export type { FamilyKind } from "./remedy/family.ts";
export type { Outcome } from "./remedy/folds.ts";
export type { BarWindow } from "./remedy/shopMade/barWindow.ts";
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
export type { Governing, GoverningLoads } from "./remedy/shopMade/governingLoads.ts";
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
export type { Answer, BlankBendAnswer, ContactAnswer, PointPair, StepAnswer } from "./job/answer.ts";
export { check } from "./job/check.ts";
export type { ChartCurve, ChartPoint, FlangeChart } from "./job/flangeChart.ts";
export { flangeChart } from "./job/flangeChart.ts";
export type { Job, OrderStep } from "./job/job.ts";
export type { Problem } from "./job/problem.ts";
export type { JobRead } from "./job/readJob.ts";
export { readJob } from "./job/readJob.ts";
export type { ShopRead } from "./job/readShop.ts";
export { readShop } from "./job/readShop.ts";
export type { JobFile } from "./job/schema.ts";
export type { ShopFile } from "./job/shopFile.ts";
export type { FitCell, ShopBar, ShopFit } from "./job/shopFit.ts";
export { fitShop } from "./job/shopFit.ts";
export type { ShopMadeBar } from "./job/shopMadeBar.ts";
export { shopMadeBar } from "./job/shopMadeBar.ts";
export { shopSentence } from "./job/shopWords.ts";
export type { BrakeChange, FileChange, NoWayOut, Remedy, WayOut } from "./job/wayOut.ts";
export type { WaysOutOptions } from "./job/waysOut.ts";
export { applied, waysOut } from "./job/waysOut.ts";
export { writeJob } from "./job/writeJob.ts";
export { drawFlangeChart } from "./drawing/flangeChart.ts";
export type { Drawing, Layer, Mark } from "./drawing/model.ts";
export { drawStep } from "./drawing/step.ts";
