/**
 * The commands that answer on the screen, in one: each of many small files costs a cold start its time.
 */
export { runCheck } from "./check.ts";
export { runDoubt } from "./doubt.ts";
export { runExample } from "./example.ts";
export { runFit } from "./fit.ts";
export { runMetals } from "./metals.ts";
export { runWays } from "./ways.ts";
