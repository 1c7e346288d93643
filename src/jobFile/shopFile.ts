/**
 * The shape of a shop file: the brakes that the shop has and the parts that it wants, one unit for all of them.
 * Each brake and each part is written as in a job file. Whole jobs may lie in it too, each with its own unit, brake and order.
 */
import * as z from "zod";
import { type JobFile, jobFileSchema } from "./schema.ts";
import { group, list, units } from "./shapes.ts";

/** Bounds that keep a shop quick to answer. */
const MOST = { brakes: 100, parts: 200, jobs: 200 } as const;

const { brake, part, margin } = jobFileSchema.shape;

export const shopFileSchema = group("a shop", {
  noseroomShop: z.literal(1, { error: () => "1, the version of the shop file" }),
  units,
  margin,
  brakes: list(brake, 0, MOST.brakes, `a list of up to ${MOST.brakes} brakes`).optional(),
  parts: list(part, 0, MOST.parts, `a list of up to ${MOST.parts} parts`).optional(),
  jobs: list(jobFileSchema, 0, MOST.jobs, `a list of up to ${MOST.jobs} jobs`).optional(),
});

/** A shop file as written. */
export type ShopFile = z.output<typeof shopFileSchema>;

/** What a shop has and wants: the brakes and parts of its file, those of its jobs among them, all in one unit. */
export interface Shop {
  readonly units: ShopFile["units"];
  readonly margin?: JobFile["margin"];
  readonly brakes: readonly JobFile["brake"][];
  readonly parts: readonly JobFile["part"][];
}
