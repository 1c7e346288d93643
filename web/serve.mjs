// Serves dist/site/ on this machine only and prints the address. The Content-Security-Policy goes out as a header
// too, because a page can't forbid by itself that others frame it.
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
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

/** Starts the server; resolves with it and its address once it listens. Port 0 takes any free one. */
export function serve(port = 0, folder = new URL("../dist/site/", import.meta.url)) {
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
    server.listen(port, "127.0.0.1", () =>
      resolve({ server, address: `http://localhost:${server.address().port}/` }),
    );
  });
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  const wanted = Number(process.env.PORT ?? 4173);
  const { address } = await serve(wanted).catch(() => serve(0));
  process.stdout.write(`Noseroom is at ${address}\nStop it with Ctrl-C.\n`);
}
