/**
 * Figures that can be read but are probably not what was meant are asked about. The gauges: ASTM B258 gives 20 gauge
 * aluminum 0.0320 in; 20 gauge of the Manufacturers' Standard Gauge is 0.0359 in (units/gauge.ts cites both).
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { soundJob } from "./jobs.ts";

function warningsOf(units: "in" | "mm", part: Record<string, unknown>): string {
  const inches = new URL("../../examples/cable-trough-finger.json", import.meta.url);
  const file = units === "mm" ? soundJob() : JSON.parse(readFileSync(inches, "utf8"));
  const read = readJob(JSON.stringify({ ...file, part: { ...file.part, ...part } }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return check(read.job).warnings.join(" ");
}

describe("check of a job with odd figures", () => {
  it("asks about a gauge of another family than the metal's, and says what the number means in its own", () => {
    const said = warningsOf("mm", { material: "5052-H32", thickness: "20 ga steel" });
    expect(said).toContain(
      'written as "20 ga steel", but the metal is 5052-H32: aluminum sheet is 0.81 mm by that number',
    );
    expect(warningsOf("mm", { material: "5052-H32", thickness: "20 ga aluminum" })).not.toContain(
      "written as",
    );
    expect(warningsOf("mm", { material: "mild steel", thickness: "20 ga galvanized" })).not.toContain(
      "written as",
    );
  });

  it("asks about millimetres in a job in inches, and not about a long flat on a sixteenth", () => {
    expect(warningsOf("in", { flats: [15.9, 2, 1] })).toContain(
      'Flat 1 is 15.9 in long, 497 times the sheet\'s thickness. If you meant millimetres, write "15.9 mm".',
    );
    expect(warningsOf("in", { flats: [15.875, 2, 1] })).not.toContain("If you meant");
    expect(warningsOf("mm", { flats: [15.9, 30, 15] })).not.toContain("If you meant");
  });
});
