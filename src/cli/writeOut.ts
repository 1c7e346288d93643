/**
 * Writes the files that a command was asked for, whole or not at all: each beside its place first, then moved there.
 * What a full disk, a limit or Ctrl-C breaks off leaves what stood there before, and nothing half written.
 */
import { rmSync } from "node:fs";
import { chmod, open, realpath, rename, stat, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { Refusal, systemSentence } from "./refusal.ts";

type Content = string | Uint8Array;

/** @throws Refusal where the file cannot be written */
export async function writeOut(path: string, content: Content): Promise<void> {
  await writeAllOut([[path, content]]);
}

/**
 * Several files, all of them or none.
 * @throws Refusal naming the first that cannot be written
 */
export async function writeAllOut(
  files: readonly (readonly [path: string, content: Content])[],
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
    throw new Refusal(systemSentence(path, "written", reason));
  } finally {
    tidy();
    process.removeListener("exit", tidy);
  }
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

/**
 * A file that is not there yet: never over one of the user's.
 * @throws the system's own word where it cannot be written
 */
export async function writeNew(path: string, text: string): Promise<void> {
  const file = await open(path, "wx");
  const tidy = () => remove(path);
  process.once("exit", tidy);
  try {
    await file.writeFile(text);
  } catch (reason) {
    remove(path);
    throw reason;
  } finally {
    process.removeListener("exit", tidy);
    await file.close();
  }
}
