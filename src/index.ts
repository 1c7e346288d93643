/**
 * The public engine: named exports, a line or two a room, in the order in which a job runs through them.
 * Nothing here touches a page, a file or a screen.
 */
export type { LengthUnit } from "./units/length.ts";
export { formatLength, nearestSixtyFourth, parseLength } from "./units/length.ts";
export { gaugeThickness, parseThickness } from "./units/gauge.ts";
export type { Deg, Mm, Mpa, Rad } from "./units/quantity.ts";
export { toDeg, toRad } from "./units/quantity.ts";
export type { Outline } from "./plane/outline.ts";
export type { Metal } from "./metal/metal.ts";
export { metalNamed, metalNames } from "./metal/metals.ts";
export { springbackRatio, testStripRatio } from "./metal/springback.ts";
export type { Bend, End, Part, Turn } from "./part/part.ts";
export type { Brake, Clamp, Leaf } from "./brake/brake.ts";
export type { Scene } from "./motion/scene.ts";
export { sceneAt } from "./motion/scene.ts";
export type { Contact, Step } from "./contact/step.ts";
export { judgeStep } from "./contact/step.ts";
export type { Found } from "./sequence/search.ts";
export { searchOrders } from "./sequence/search.ts";
export type { Watch } from "./sequence/reach.ts";
export { SearchStopped } from "./sequence/reach.ts";
export { layOut } from "./blank/blank.ts";
export type { Answer, StepAnswer } from "./job/answer.ts";
export { check } from "./job/check.ts";
export type { Job } from "./job/job.ts";
export { readJob } from "./job/readJob.ts";
export { writeJob } from "./job/writeJob.ts";
export type { FileChange, Remedy, WayOut } from "./job/wayOut.ts";
export { applied, waysOut } from "./job/waysOut.ts";
export type { FlangeChart } from "./job/flangeChart.ts";
export { flangeChart } from "./job/flangeChart.ts";
export type { ShopFit } from "./job/shopFit.ts";
export { fitShop } from "./job/shopFit.ts";
export { readShop } from "./job/readShop.ts";
export { shopSentence } from "./job/shopWords.ts";
export type { ShopMadeBar } from "./job/shopMadeBar.ts";
export { shopMadeBar } from "./job/shopMadeBar.ts";
export type { Drawing, Mark } from "./drawing/model.ts";
export { drawStep } from "./drawing/step.ts";
export { drawFlangeChart } from "./drawing/flangeChart.ts";
