import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EXAMPLES, noseroom, STACK_TRACE } from "./noseroom.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-check-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const finger = join(EXAMPLES, "cable-trough-finger.json");
const bar = join(EXAMPLES, "cable-trough-bar.json");

describe("noseroom check", () => {
  it("says first that the trough folds on the bar brake, then how, and exits with 0", async () => {
    const { status, out, err } = await noseroom(["check", bar]);
    expect(status).toBe(0);
    expect(err).toBe("");
    const [first = ""] = out.split("\n");
    expect(first).toMatch(/^Folds\. Bend [12] first, flats? [\d and]+ in the throat\.$/u);
    expect(out).toMatch(/^ +bend {2}in the throat {2}face {2}leaf to {2}relaxes to {2}least clearance$/mu);
    expect(out).toMatch(/^1\. +[12] {2}flats? [\d and]+ +up +92° /mu);
    expect(out).toContain("sheet edges cut");
    // Through a pipe there is never an escape sign.
    expect(out).not.toContain("\u001b");
  });

  it("says where the trough stops on the finger brake, at the angle that the data has, and exits with 1", async () => {
    const { status, out, err } = await noseroom(["check", finger]);
    expect(status).toBe(1);
    expect(err).toBe("");
    const stop = /^Does not fold: at ([\d.]+)° the .+ meets the finger at bend [12]\.$/mu.exec(out);
    const { order } = JSON.parse((await noseroom(["check", finger, "--json"])).out);
    const met = order.find((step: { contact: unknown }) => step.contact !== null).contact;
    expect(Number(stop?.[1])).toBeCloseTo(met.angle, 1);
    expect(out).toContain("What blocks it");
    expect(out).toMatch(/92°, stops \d\d\.\d°/u);
  });

  it("offers ways out of a job that does not fold, and the first of them holds when it is taken", async () => {
    const { out } = await noseroom(["check", finger]);
    expect(out).toContain("\nWays out, each checked again\n");
    const [, over = "", under = ""] =
      /^ {2}Trim flat 1 or flat 3 by (\d+)\/(\d+) in\. It then folds/mu.exec(out) ?? [];
    const job = JSON.parse(readFileSync(finger, "utf8"));
    expect(job.part.flats[0]).toBe("1/2");
    job.part.flats[0] = 1 / 2 - Number(over) / Number(under);
    const trimmed = await noseroom(["check", "-"], { input: JSON.stringify(job) });
    expect(trimmed.status).toBe(0);
    expect(trimmed.out).toMatch(/^Folds/u);
    const { remedies } = JSON.parse((await noseroom(["check", finger, "--json"])).out);
    expect(remedies.length).toBeGreaterThan(0);
  });

  it("says of a whole part where it is met, and then what lets it fold", async () => {
    const job = join(EXAMPLES, "..", "test", "wholeCases", "switch-box-meets-holder.json");
    const { status, out, err } = await noseroom(["check", job]);
    expect({ status, err }).toEqual({ status: 1, err: "" });
    const at = [
      "Does not fold in this order: at bend 3",
      "What blocks it",
      "Ways out, each checked again",
      "Care:",
    ];
    const places = at.map((words) => out.indexOf(words));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places[0]).toBe(0);
    const { remedies } = JSON.parse((await noseroom(["check", job, "--json"])).out);
    expect(remedies.length).toBeGreaterThan(1);
    for (const { sentence } of remedies) expect(out.replace(/\n */gu, " ")).toContain(sentence);
  });

  it("reads a job from standard input", async () => {
    const { status, out } = await noseroom(["check", "-"], { input: readFileSync(bar, "utf8") });
    expect(status).toBe(0);
    expect(out).toBe((await noseroom(["check", bar])).out);
  });

  it("prints one JSON object of the contract with --json, with the same exit status", async () => {
    const { status, out } = await noseroom(["check", finger, "--json"]);
    expect(status).toBe(1);
    const answer = JSON.parse(out);
    expect(Object.keys(answer)).toEqual(
      expect.arrayContaining([
        "verdict",
        "order",
        "viableOrders",
        "statesChecked",
        "blank",
        "remedies",
        "warnings",
      ]),
    );
    expect(answer.verdict).toBe("hits");
    expect(answer.order.at(-1).contact).toMatchObject({ member: "clamp" });
    expect(answer.order.at(-1).reached).toBe(answer.order.at(-1).contact.angle);
  });

  it("writes one picture a step with --svg, and lists them", async () => {
    const pictures = join(folder, "not", "yet", "there");
    const { status, out } = await noseroom(["check", finger, "--svg", pictures]);
    expect(status).toBe(1);
    const files = readdirSync(pictures).sort();
    expect(files).toHaveLength(2);
    for (const file of files) {
      expect(file).toMatch(/^step-0[12]-bend-[12]\.svg$/u);
      expect(out).toContain(file);
      const svg = readFileSync(join(pictures, file), "utf8");
      expect(svg).toMatch(
        /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" width="[\d.]+mm" height="[\d.]+mm"/u,
      );
      for (const layer of ["bed", "clamp", "leaf", "part", "partBefore", "swept"]) {
        expect(svg).toContain(`<g class="${layer}">`);
      }
    }
    const last = readFileSync(join(pictures, files[1]!), "utf8");
    expect(last).toContain('<g class="contact">');
    expect(last).toMatch(/<desc[^>]*>Bend \d, .*Stops: at \d\d\.\d° the .* meets the finger\.<\/desc>/u);
  });

  it("prints nothing but its sentence where the pictures cannot be written", async () => {
    const file = join(folder, "a-file");
    writeFileSync(file, "");
    for (const place of [file, join(file, "below")]) {
      const { status, out, err } = await noseroom(["check", bar, "--svg", place]);
      expect(status).toBe(2);
      expect(out).toBe("");
      expect(err.trim().split("\n")).toHaveLength(1);
      expect(err).toContain("a-file");
      expect(err).not.toMatch(STACK_TRACE);
    }
  });
});
