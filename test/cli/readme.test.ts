import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { EXAMPLES, noseroom } from "./noseroom.ts";

const root = join(EXAMPLES, "..");
const readme = readFileSync(join(root, "README.md"), "utf8");

describe("README.md", () => {
  it("shows what the command prints", async () => {
    const { out } = await noseroom(["check", "examples/cable-trough-finger.json"], { cwd: root });
    expect(readme).toContain(`$ noseroom check examples/cable-trough-finger.json\n${out}`);
  });

  it("shows the picture that the command draws", async () => {
    const folder = mkdtempSync(join(tmpdir(), "noseroom-readme-"));
    await noseroom(["check", join(EXAMPLES, "cable-trough-finger.json"), "--svg", folder]);
    await noseroom(["keys", "--svg", join(folder, "keys.svg")]);
    const kept = join(EXAMPLES, "pictures");
    expect(readdirSync(kept).sort()).toEqual(readdirSync(folder).sort());
    for (const file of readdirSync(kept)) {
      expect(readFileSync(join(kept, file), "utf8"), file).toBe(readFileSync(join(folder, file), "utf8"));
    }
    rmSync(folder, { recursive: true });
    expect(readme).toContain("](examples/pictures/step-02-bend-2.svg)");
  });

  it("carries the example of --help", async () => {
    const { out } = await noseroom(["--help"]);
    const example = /EXAMPLE\n((?: {2}.*\n)+)/u.exec(out)?.[1] ?? "";
    expect(example.split("\n").length).toBeGreaterThan(5);
    expect(readme).toContain(example.replace(/^ {2}/gmu, ""));
  });

  it("names commands and files that are there", () => {
    const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
    for (const [, script] of readme.matchAll(/npm run (\w+)/gu)) expect(scripts).toHaveProperty(script ?? "");
    expect(readFileSync(join(root, ".ci", "run"), "utf8")).toContain("npm ci\nnpm test\n");
    expect(readme).toContain("npm ci && npm test");
  });
});
