/**
 * Writes the files that a command was asked for, whole or not at all: each beside its place first, then moved there.
 * What a full disk, a limit or Ctrl-C breaks off leaves what stood there before, and nothing half written.
 */
import { rmSync } from "node:fs";
import { chmod, mkdir, readFile, realpath, rename, stat, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { MADE_BY, MADE_BY_IN_PDF } from "../drawing/madeBy.ts";
import { Refusal, systemSentence } from "./refusal.ts";

type Content = string | Uint8Array;

export interface WriteOptions {
  /** Writes over a file that is there already. */
  readonly force?: boolean;
}

/** Makes a folder for pictures where it is not there yet. @throws Refusal where it cannot be made, or is a file */
export async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder, { recursive: true });
  } catch (reason) {
    const isFile = reason instanceof Error && "code" in reason && reason.code === "EEXIST";
    throw new Refusal(
      isFile ? `${folder} is a file; name a folder.` : systemSentence(folder, "written", reason),
    );
  }
}

/** @throws Refusal where the file cannot be written, or is there already and is none of ours */
export async function writeOut(path: string, content: Content, options: WriteOptions): Promise<void> {
  await writeAllOut([[path, content]], options);
}

/**
 * Several files, all of them or none.
 * @throws Refusal naming the first that cannot be written
 */
export async function writeAllOut(
  files: readonly (readonly [path: string, content: Content])[],
  { force = false }: WriteOptions,
): Promise<void> {
  const moves: { readonly from: string; readonly to: string; readonly path: string }[] = [];
  const tidy = () => {
    for (const { from } of moves) remove(from);
  };
  process.once("exit", tidy);
  let path = "";
  try {
    for (const [name, content] of files) {
      path = name;
      const place = await placeOf(path);
      if (place === undefined) {
        await writeFile(path, content);
        continue;
      }
      if (!force && place.mode !== undefined && !(await isOurs(place.at, content))) {
        throw new Refusal(
          `${path} is already there and was left as it is. Name another file, or add --force to write over it.`,
        );
      }
      const from = join(dirname(place.at), `.${basename(place.at).slice(0, 200)}.${process.pid}.part`);
      moves.push({ from, to: place.at, path });
      try {
        await writeFile(from, content, { flag: "wx" });
        if (place.mode !== undefined) await chmod(from, place.mode);
      } catch (reason) {
        if (place.mode === undefined || !shutFolder(reason)) throw reason;
        // A file that may be written in a folder that may not.
        moves.pop();
        await writeFile(place.at, content);
      }
    }
    while (moves[0] !== undefined) {
      path = moves[0].path;
      await rename(moves[0].from, moves[0].to);
      moves.shift();
    }
  } catch (reason) {
    if (reason instanceof Refusal) throw reason;
    throw new Refusal(systemSentence(path, "written", reason));
  } finally {
    tidy();
    process.removeListener("exit", tidy);
  }
}

/** A drawing that this command made before, by the mark in it, or the very same content. Jobs belong to the user. */
async function isOurs(path: string, content: Content): Promise<boolean> {
  const there = await readFile(path).catch(() => undefined);
  if (there === undefined) return false;
  if (there.equals(Buffer.from(content))) return true;
  return [MADE_BY, MADE_BY_IN_PDF].some((mark) => there.includes(mark));
}

function remove(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    // It was never there: part of its path is a file.
  }
}

function shutFolder(reason: unknown): boolean {
  return reason instanceof Error && "code" in reason && ["EACCES", "EPERM"].includes(String(reason.code));
}

/** Where a plain file is to stand, links followed, with its rights if it is there; undefined for devices and pipes. */
async function placeOf(path: string): Promise<{ readonly at: string; readonly mode?: number } | undefined> {
  const there = await stat(path).catch(() => undefined);
  if (there === undefined) return { at: path };
  // A folder is refused by name, a device has no place to move to.
  return there.isFile() ? { at: await realpath(path), mode: there.mode & 0o7777 } : undefined;
}
