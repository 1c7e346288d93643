/**
 * `npm start -- --lan`: the page on the bench's phone. The printed address is opened, and the printed code is read back dot by dot
 * against what ISO/IEC 18004 asks of every symbol: quiet zone of four modules, three finder patterns, timing patterns.
 */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { expect, it } from "vitest";
import { lanAddresses, qrText, serve } from "../../web/serve.mjs";
import { BUILT } from "./shop.ts";

/** The modules of a printed code, dark ones true, from half blocks of light on dark. */
function modulesOf(text: string): boolean[][] {
  return text.split("\n").flatMap((line) => {
    const upper = [...line].map((sign) => !"█▀".includes(sign));
    const lower = [...line].map((sign) => !"█▄".includes(sign));
    return [upper, lower];
  });
}

it("takes addresses of its own networks, not of itself, and only IPv4", () => {
  const one = { netmask: "", mac: "", cidr: null };
  const found = lanAddresses({
    lo: [{ ...one, address: "127.0.0.1", family: "IPv4", internal: true }],
    wlan0: [
      { ...one, address: "192.168.7.20", family: "IPv4", internal: false },
      { ...one, address: "fe80::1", family: "IPv6", internal: false, scopeid: 1 },
    ],
  });
  expect(found).toEqual(["192.168.7.20"]);
});

it("prints a code with its quiet zone, finder and timing patterns", () => {
  const modules = modulesOf(qrText("http://192.168.7.20:4173/"));
  const size = modules[0]!.length - 8;
  expect((size - 17) % 4).toBe(0);
  const at = (row: number, column: number) => modules[row + 4]?.[column + 4] === true;
  for (let i = -4; i < size + 4; i++)
    for (let edge = 1; edge <= 4; edge++) expect(at(-edge, i) || at(i, -edge)).toBe(false);
  const ring = (row: number, column: number) => Math.max(Math.abs(row - 3), Math.abs(column - 3));
  for (const [top, left] of [
    [0, 0],
    [0, size - 7],
    [size - 7, 0],
  ] as const)
    for (let row = 0; row < 7; row++)
      for (let column = 0; column < 7; column++)
        expect(at(top + row, left + column)).toBe(ring(row, column) !== 2);
  for (let i = 8; i < size - 8; i++) {
    expect(at(6, i)).toBe(i % 2 === 0);
    expect(at(i, 6)).toBe(i % 2 === 0);
  }
});

it("serves the page to the network and says where, or says that there is none", async () => {
  const { server, address } = await serve(0, new URL("site/", BUILT), "0.0.0.0");
  expect((await fetch(address)).status).toBe(200);
  server.close();
  const child = spawn("node", ["web/serve.mjs", "--lan"], { env: { ...process.env, PORT: "0" } });
  let told = "";
  child.stdout.on("data", (text) => {
    told += text;
  });
  await expect.poll(() => told).toMatch(/Stop it with Ctrl-C/);
  const [first] = lanAddresses();
  if (first === undefined) expect(told).toMatch(/in no network that a phone could reach/);
  else {
    const [, url = ""] = /On the phone at the bench: (\S+)/.exec(told) ?? [];
    expect(url.startsWith(`http://${first}:`)).toBe(true);
    expect((await fetch(url)).status).toBe(200);
    expect(told).toContain(qrText(url));
  }
  child.kill();
  await once(child, "exit");
});
