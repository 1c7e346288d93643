/**
 * Writes a file that a command was asked for, or says in a sentence why it can't.
 */
import { writeFile } from "node:fs/promises";
import { Refusal, systemSentence } from "./refusal.ts";

/** @throws Refusal where the file cannot be written */
export async function writeOut(path: string, content: string | Uint8Array): Promise<void> {
  try {
    await writeFile(path, content);
  } catch (reason) {
    throw new Refusal(systemSentence(path, "written", reason));
  }
}
