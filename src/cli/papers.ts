/**
 * The commands that put something on paper or into a drawing file, in one, with the large libraries that only they need.
 */
export { runBar } from "./bar.ts";
export { runBlank } from "./blank.ts";
export { runChart } from "./chart.ts";
export { runNest } from "./nest.ts";
export { runPan } from "./pan.ts";
export { runSheet } from "./sheet.ts";
export { runStrip } from "./strip.ts";
