/**
 * The service worker: keeps the page's own files, so that an installed worksheet opens in a shed without internet.
 * A new build fills a shelf of its own and takes over when the last old page is closed, so that page and worker always
 * belong together; then the old shelf is cleared. Nothing else is ever kept.
 */

interface WaitingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface AskingEvent extends Event {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

interface Service {
  addEventListener(kind: "install" | "activate", listener: (event: WaitingEvent) => void): void;
  addEventListener(kind: "fetch", listener: (event: AskingEvent) => void): void;
  readonly clients: { claim(): Promise<void> };
}

const service = self as unknown as Service;
const SHELF = "noseroom-VERSION_OF_THIS_BUILD";
const FILES = ["./", "index.html", "style.css", "page.js", "icon.svg", "manifest.webmanifest"];

async function fill(): Promise<void> {
  const shelf = await caches.open(SHELF);
  await shelf.addAll(FILES.map((file) => new Request(file, { cache: "reload" })));
}

async function clearOld(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(
    names.filter((n) => n.startsWith("noseroom-") && n !== SHELF).map((n) => caches.delete(n)),
  );
  await service.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const kept = await (await caches.open(SHELF)).match(request, { ignoreSearch: true });
  return kept ?? fetch(request);
}

service.addEventListener("install", (event) => event.waitUntil(fill()));
service.addEventListener("activate", (event) => event.waitUntil(clearOld()));
service.addEventListener("fetch", (event) => {
  if (event.request.method === "GET") event.respondWith(answer(event.request));
});
