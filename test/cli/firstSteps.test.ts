/**
 * The first steps of examples/ as a beginner takes them: each line typed in order, and what comes out is what stands below it.
 * After words or figures have changed on purpose: npx vitest run test/cli/firstSteps.test.ts --update
 */
import { cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { EXAMPLES, noseroom } from "./noseroom.ts";

const STEPS = join(EXAMPLES, "first-steps");

test("the first steps come out as they are written", async () => {
  const written = readFileSync(join(STEPS, "README.md"), "utf8");
  const folder = mkdtempSync(join(tmpdir(), "noseroom-steps-"));
  try {
    cpSync(STEPS, folder, { recursive: true });
    const parts = written.split("```\n");
    const statuses: (number | null)[] = [];
    for (let i = 1; i < parts.length; i += 2) {
      const [typed = ""] = parts[i]!.split("\n");
      const { status, out, err } = await noseroom(typed.split(" ").slice(2), { cwd: folder });
      expect(err).toBe("");
      statuses.push(status);
      parts[i] = `${typed}\n${out}`;
    }
    // The channel does not fold, and nor, for sure, does the wall before its strip.
    expect(statuses).toEqual([0, 1, 0, 0, 0, 1, 0, 0, 0]);
    await expect(parts.join("```\n")).toMatchFileSnapshot(join(STEPS, "README.md"));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
