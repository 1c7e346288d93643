import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { answerJson } from "../../src/cli/answerJson.ts";
import { inkFor } from "../../src/cli/ink.ts";
import { progressLine } from "../../src/cli/progressLine.ts";
import { table } from "../../src/cli/table.ts";
import { allOrders } from "../../src/words/ordersWords.ts";
import { answerOf, stepOf } from "../jobFile/answers.ts";
import { EXAMPLES, noseroom } from "./noseroom.ts";

describe("noseroom --help", () => {
  it("reads like a manual page: what it answers, commands, an example, exit statuses", async () => {
    const { status, out, err } = await noseroom(["--help"]);
    expect({ status, err }).toEqual({ status: 0, err: "" });
    for (const part of [
      "USAGE",
      "COMMANDS",
      "EXAMPLE",
      "EXIT STATUS",
      "NO_COLOR",
      "Can this sheet-metal part be folded",
    ]) {
      expect(out).toContain(part);
    }
    for (const line of out.split("\n").filter((text) => !text.startsWith("Care:")))
      expect(line.length).toBeLessThan(116);
    expect((await noseroom([])).out).toBe(out);
  });

  it("prints the package's version", async () => {
    const { version } = JSON.parse(readFileSync(join(EXAMPLES, "..", "package.json"), "utf8"));
    expect((await noseroom(["--version"])).out).toBe(`${version}\n`);
  });
});

describe("inkFor", () => {
  it("colours on a terminal and nowhere else", () => {
    expect(inkFor({ isTTY: true }, {}).signal("hits")).toBe("\u001b[1;31mhits\u001b[0m");
    expect(inkFor({}, {}).signal("hits")).toBe("hits");
    // no-color.org: any value that is not empty turns colour off.
    expect(inkFor({ isTTY: true }, { NO_COLOR: "1" }).strong("x")).toBe("x");
    expect(inkFor({ isTTY: true }, { NO_COLOR: "" }).strong("x")).not.toBe("x");
    expect(inkFor({ isTTY: true }, { TERM: "dumb" }).strong("x")).toBe("x");
  });
});

describe("progressLine", () => {
  const written: string[] = [];
  const stream = (isTTY: boolean) =>
    ({ isTTY, write: (text: string) => written.push(text) > 0 }) as unknown as NodeJS.WriteStream;

  it("stays silent in the first second, and always where there is no terminal", async () => {
    const terminal = progressLine(stream(true));
    const pipe = progressLine(stream(false));
    terminal.show(0.5);
    await new Promise((resolve) => setTimeout(resolve, 1050));
    pipe.show(0.5);
    expect(written).toEqual([]);
    terminal.show(0.5);
    terminal.clear();
    pipe.clear();
    expect(written.join("")).toBe("\rTrying the orders: 50 %. Ctrl-C stops.\u001b[K\r\u001b[K");
  });
});

describe("answerJson", () => {
  it("prints a count past 2^53 as its digits, and leaves look-alikes in words alone", () => {
    const count = 12_345_678_901_234_567_890n;
    const warning = 'say "viableOrders": "7"';
    const text = answerJson({ ...answerOf("clear", stepOf()), viableOrders: count, warnings: [warning] });
    expect(text).toContain('\n  "viableOrders": 12345678901234567890,\n');
    expect(JSON.parse(text).warnings).toEqual([warning]);
  });
});

describe("allOrders", () => {
  it("is n!·2^n", () => {
    expect([1, 2, 3, 20].map(allOrders)).toEqual([2n, 8n, 48n, 2432902008176640000n * 1048576n]);
  });
});

describe("table", () => {
  it("lines up columns to either side and leaves no trailing space", () => {
    expect(
      table(
        [
          ["a", "10", "x"],
          ["bb°", "9", ""],
        ],
        ["left", "right", "left"],
      ),
    ).toEqual(["a    10  x", "bb°   9"]);
  });
});
