/**
 * From a shop file's path to the shop, or to the sentences that say what is wrong with it.
 */
import { readShop } from "../jobFile/readShop.ts";
import type { Shop } from "../jobFile/shopFile.ts";
import { jobName, jobText } from "./jobText.ts";
import { Refusal } from "./refusal.ts";
import { slipsRefused } from "./slips.ts";

/**
 * Reads a shop.
 * @throws Refusal naming each problem with its key's path
 */
export async function openShop(path: string): Promise<Shop> {
  return shopFrom(path, await jobText(path));
}

/**
 * The same from text that was read already.
 * @throws Refusal naming each problem with its key's path
 */
export function shopFrom(path: string, text: string): Shop {
  const read = readShop(text);
  if (read.ok) return read.shop;
  if (read.problems.some((problem) => problem.path === "noseroom")) {
    throw new Refusal(`${jobName(path)} is a job file; this takes a shop file. Try noseroom check with it.`);
  }
  throw slipsRefused(path, read.problems);
}
