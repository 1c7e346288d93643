/**
 * The API pages are made without a warning: every type that an export names is exported too, every link leads somewhere.
 * Source: typedoc's own warnings, taken as failures (typedoc.json).
 */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));

it("documents the public engine without a warning", () => {
  const { status, stdout, stderr } = spawnSync("node_modules/.bin/typedoc", ["--emit", "none"], {
    cwd: root,
    encoding: "utf8",
  });
  expect(`${stdout}${stderr}`).not.toMatch(/warning|error/i);
  expect(status).toBe(0);
});
