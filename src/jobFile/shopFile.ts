/**
 * The shape of a shop file: the brakes that the shop has and the parts that it wants, one unit for all of them.
 * Each brake and each part is written as in a job file.
 */
import * as z from "zod";
import { group, jobFileSchema, list, units } from "./schema.ts";

/** Bounds that keep a shop quick to answer. */
const MOST = { brakes: 20, parts: 200 } as const;

const { brake, part, margin } = jobFileSchema.shape;

export const shopFileSchema = group("a shop", {
  noseroomShop: z.literal(1, { error: () => "1, the version of the shop file" }),
  units,
  margin,
  brakes: list(brake, 1, MOST.brakes, `a list of 1 to ${MOST.brakes} brakes`),
  parts: list(part, 1, MOST.parts, `a list of 1 to ${MOST.parts} parts`),
});

/** A shop file as written. */
export type ShopFile = z.output<typeof shopFileSchema>;
