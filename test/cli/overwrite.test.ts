/**
 * What stands on the disk already: a file of the user's is never lost, a drawing of the command's own may be drawn anew.
 */
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EXAMPLES, noseroom } from "./noseroom.ts";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-overwrite-"));
  copyFileSync(join(EXAMPLES, "cable-trough-finger.json"), join(folder, "trough.json"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const at = (name: string) => readFileSync(join(folder, name), "utf8");

describe("noseroom with an output that is there already", () => {
  it("does not write the taken way over the job that it was found for, but does with --force", async () => {
    const before = at("trough.json");
    const words = ["ways", "trough.json", "--take", "1", "-o", "trough.json"];
    const { status, out, err } = await noseroom(words, { cwd: folder });
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toBe(
      "trough.json is already there and was left as it is. Name another file, or add --force to write over it.\n",
    );
    expect(at("trough.json")).toBe(before);
    expect((await noseroom([...words, "--force"], { cwd: folder })).status).toBe(0);
    expect(JSON.parse(at("trough.json")).part.flats).not.toEqual(JSON.parse(before).part.flats);
  });

  it.each(["svg", "pdf", "dxf"])("leaves a %s that it did not draw, and draws its own anew", async (form) => {
    const job = join(EXAMPLES, "cable-trough-bar.json");
    const words = (name: string) => ["blank", job, `--${form}`, name];
    writeFileSync(join(folder, `mine.${form}`), "my own drawing");
    expect((await noseroom(words(`mine.${form}`), { cwd: folder })).status).toBe(2);
    expect(at(`mine.${form}`)).toBe("my own drawing");
    for (let time = 0; time < 2; time++) {
      expect((await noseroom(words(`blank.${form}`), { cwd: folder })).status).toBe(0);
    }
  });

  it("leaves every picture of a folder as it was where one of them is somebody else's", async () => {
    const words = ["check", join(EXAMPLES, "cable-trough-bar.json"), "--svg", "pictures"];
    await noseroom(words, { cwd: folder });
    const first = at("pictures/step-01-bend-2.svg");
    writeFileSync(join(folder, "pictures/step-02-bend-1.svg"), "traced by hand");
    expect((await noseroom(words, { cwd: folder })).status).toBe(2);
    expect(at("pictures/step-01-bend-2.svg")).toBe(first);
    expect(at("pictures/step-02-bend-1.svg")).toBe("traced by hand");
  });
});
