/**
 * The text of a job, from a file or, for "-", from standard input. Bounded, so that a wrong file name
 * (a device, a disk image) ends in a sentence and not in a full memory.
 */
import { createReadStream } from "node:fs";
import { textCoding } from "../jobFile/textCoding.ts";
import { Refusal, systemSentence } from "./refusal.ts";

/** A job is a few kB; traced profiles may make it some hundred. */
const LARGEST_BYTES = 16 * 1024 * 1024;

/** How a job is called in sentences. */
export function jobName(path: string): string {
  return path === "-" ? "standard input" : path;
}

/**
 * Reads the job's text.
 * @throws Refusal where the file is missing, unreadable or far too large
 */
export async function jobText(path: string): Promise<string> {
  const source = path === "-" ? process.stdin : createReadStream(path);
  const pieces: Buffer[] = [];
  let bytes = 0;
  try {
    for await (const piece of source) {
      const buffer = Buffer.isBuffer(piece) ? piece : Buffer.from(String(piece));
      bytes += buffer.length;
      if (bytes > LARGEST_BYTES) break;
      pieces.push(buffer);
    }
  } catch (reason) {
    throw new Refusal(systemSentence(jobName(path), "read", reason));
  }
  if (bytes > LARGEST_BYTES)
    throw new Refusal(`${jobName(path)} is larger than 16 MB, far too large for a job.`);
  const all = Buffer.concat(pieces);
  return new TextDecoder(textCoding(all)).decode(all);
}
