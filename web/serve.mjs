// Serves dist/site/ on this machine only, or with --lan to the shop's network, and prints the address. The Content-Security-Policy goes out as a header
// too, because a page can't forbid by itself that others frame it.
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { networkInterfaces } from "node:os";
import qrcode from "qrcode-generator";
import { servedPolicy } from "./build.mjs";

const kinds = {
  html: "text/html; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  css: "text/css; charset=utf-8",
  svg: "image/svg+xml",
  webmanifest: "application/manifest+json",
};
const rules = { ...servedPolicy, "frame-ancestors": "'none'" };
const headers = {
  "content-security-policy": Object.entries(rules)
    .map(([name, value]) => `${name} ${value}`)
    .join("; "),
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cache-control": "no-cache",
};

/** Addresses of this machine in its own networks (IPv4), for a phone at the bench. */
export function lanAddresses(interfaces = networkInterfaces()) {
  return Object.values(interfaces)
    .flat()
    .filter((one) => one && one.family === "IPv4" && !one.internal)
    .map((one) => one.address);
}

/**
 * Starts the server; resolves with it and its address once it listens. Port 0 takes any free one. Only this machine is
 * served unless `host` says otherwise.
 */
export function serve(port = 0, folder = new URL("../dist/site/", import.meta.url), host = "127.0.0.1") {
  const server = createServer(async (request, response) => {
    const asked = new URL(request.url ?? "/", "http://here").pathname;
    const name = /^\/([a-z]+\.[a-z]+)?$/.exec(asked);
    const file = name?.[1] ?? (name ? "index.html" : null);
    try {
      if (file === null) throw new Error("no such page");
      const body = await readFile(new URL(file, folder));
      response
        .writeHead(200, { ...headers, "content-type": kinds[file.split(".").at(-1)] ?? "text/plain" })
        .end(body);
    } catch {
      response
        .writeHead(404, { ...headers, "content-type": "text/plain" })
        .end("There is no such page here.");
    }
  });
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, host, () =>
      resolve({ server, address: `http://localhost:${server.address().port}/` }),
    );
  });
}

/** A QR code in half blocks, dark on light, with the quiet zone of four modules (ISO/IEC 18004). */
export function qrText(words) {
  const code = qrcode(0, "M");
  code.addData(words);
  code.make();
  const count = code.getModuleCount();
  const dark = (row, column) =>
    row >= 0 && column >= 0 && row < count && column < count && code.isDark(row, column);
  const lines = [];
  for (let row = -4; row < count + 4; row += 2) {
    let line = "";
    for (let column = -4; column < count + 4; column++) {
      const [upper, lower] = [dark(row, column), dark(row + 1, column)];
      line += upper ? (lower ? " " : "▄") : lower ? "▀" : "█";
    }
    lines.push(line);
  }
  return lines.join("\n");
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  const wanted = Number(process.env.PORT ?? 4173);
  const lan = process.argv.includes("--lan");
  const start = (port) => serve(port, undefined, lan ? "0.0.0.0" : "127.0.0.1");
  const { server, address } = await start(wanted).catch(() => start(0));
  process.stdout.write(`Noseroom is at ${address}\n`);
  if (lan) {
    const [first] = lanAddresses();
    if (first === undefined)
      process.stdout.write("This machine is in no network that a phone could reach.\n");
    else {
      const url = `http://${first}:${server.address().port}/`;
      process.stdout.write(
        `On the phone at the bench: ${url}\nEverybody in this network can open it; it shows the page only, no jobs.\n\n${qrText(url)}\n`,
      );
    }
  }
  process.stdout.write("Stop it with Ctrl-C.\n");
}
