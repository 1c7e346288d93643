#!/usr/bin/env node
/**
 * Where the command starts: runs what lies beside it, with what V8 kept of it when it was built, so that a cold start need not
 * read half a megabyte of code anew. Without that, or where Node is another, it starts all the same, a little later.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { Script } from "node:vm";

const command = new URL("./command/noseroom.cjs", import.meta.url);
const script = new Script(readFileSync(command, "utf8"), {
  filename: fileURLToPath(command),
  cachedData: compiledBefore(),
});
script.runInThisContext()(createRequire(import.meta.url), command.href);

function compiledBefore(): Buffer | undefined {
  try {
    return readFileSync(new URL("./command/noseroom.compiled", import.meta.url));
  } catch {
    return undefined;
  }
}
