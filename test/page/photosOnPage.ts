/**
 * Pictures handed to the page as a person drops them, damaged at random, thousands from one visit: each is shown or refused
 * in a sentence within a second, runs nothing, and leaves the page and its memory as they were.
 */
import type { Page } from "playwright-core";
import { chance } from "../fuzz/mutate.ts";
import { PATIENCE_MS } from "./browser.ts";
import { bmp, gif, png, smallPictures } from "./photoFiles.ts";

export interface PictureFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Buffer;
}

const TYPES = [
  "image/png",
  "image/jpeg",
  "image/webp",
  "image/gif",
  "image/bmp",
  "image/svg+xml",
  "image/avif",
];
const LONGEST_MS = 1000;
const MOST_MEMORY_MB = 1000;

/** Brings the page to where a picture can be dropped. */
export async function readyToTrace(page: Page): Promise<void> {
  await page.getByRole("radio", { name: "Own profile" }).check();
  await page.locator(".trace").waitFor();
}

/** Drops a picture on the page; what it then says, or the size that it shows. */
export async function show(page: Page, { name, type, bytes }: PictureFile): Promise<string> {
  const [{ words }] = (await showAll(page, [{ name, type, base64: bytes.toString("base64") }])) as [Shown];
  return words;
}

interface DroppedFile {
  readonly name: string;
  readonly type: string;
  readonly base64: string;
}

/** The machine may have been busy with others: slow is what is slow three times. */
async function slowAgain(page: Page, file: DroppedFile): Promise<boolean> {
  for (let again = 0; again < 2; again++) {
    const [{ tookMs }] = (await showAll(page, [file])) as [Shown];
    if (tookMs <= LONGEST_MS) return false;
  }
  return true;
}

interface Shown {
  readonly words: string;
  readonly tookMs: number;
}

/** Drops pictures one after another, each when the one before has been answered. */
function showAll(page: Page, files: readonly DroppedFile[]): Promise<Shown[]> {
  return page.evaluate(
    async ([given, patienceMs]) => {
      const sizeShown = () => document.querySelector(".photo svg")?.getAttribute("viewBox") ?? "";
      const picture = () => document.querySelector(".photo image")?.getAttribute("href") ?? "";
      const notices = () => [...document.querySelectorAll(".notice")];
      const all: Shown[] = [];
      for (const { name, type, base64 } of given) {
        for (const notice of notices()) [...notice.querySelectorAll("button")].at(-1)?.click();
        while (notices().length > 0) await new Promise((turn) => requestAnimationFrame(turn));
        const before = picture();
        const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
        const carried = new DataTransfer();
        carried.items.add(new File([bytes], name, { type }));
        const start = performance.now();
        document.querySelector(".trace")?.dispatchEvent(new DragEvent("drop", { dataTransfer: carried }));
        while (notices().length === 0 && picture() === before && performance.now() - start < patienceMs)
          await new Promise((turn) => requestAnimationFrame(turn));
        const words = notices()[0]?.querySelector("p")?.textContent;
        const size = sizeShown().split(" ").slice(2).join(" × ");
        all.push({ words: words ?? (picture() === before ? "" : size), tookMs: performance.now() - start });
      }
      return all;
    },
    [files, PATIENCE_MS] as const,
  );
}

/** Pictures as the page's own browser makes them. */
export function picturesOf(
  page: Page,
  width: number,
  height: number,
): Promise<readonly { readonly bytes: Buffer; readonly type: string }[]> {
  return page
    .evaluate(
      async ([w, h]) => {
        const canvas = document.createElement("canvas");
        [canvas.width, canvas.height] = [w, h];
        canvas.getContext("2d")?.fillRect(3, 4, w / 2, h / 3);
        const made: { base64: string; type: string }[] = [];
        for (const type of ["image/png", "image/jpeg", "image/webp"]) {
          const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, type, 0.4));
          const bytes = new Uint8Array(await blob!.arrayBuffer());
          made.push({ base64: btoa(String.fromCharCode(...bytes)), type: blob!.type });
        }
        return made;
      },
      [width, height] as const,
    )
    .then((made) => made.map(({ base64, type }) => ({ bytes: Buffer.from(base64, "base64"), type })));
}

/** A picture with bytes struck out, changed, doubled or put in. */
function damaged(bytes: Buffer, random: () => number): Buffer {
  let out = bytes;
  for (let times = Math.floor(random() * 4); times >= 0; times--) {
    const at = Math.floor(random() ** 2 * out.length);
    const end = at + Math.floor(random() * 12);
    const odd = Buffer.from([[0, 255, 128, 127, 1][Math.floor(random() * 5)]!, Math.floor(random() * 256)]);
    const [head, tail] = [out.subarray(0, at), out.subarray(end)];
    const ways = [
      [head, odd, out.subarray(at + 2)],
      [head, tail],
      [head, odd, out.subarray(at)],
      [out.subarray(0, end), out.subarray(at)],
      [head],
    ];
    out = Buffer.concat(ways[Math.floor(random() * ways.length)]!);
  }
  return out;
}

/** Hands `count` damaged pictures to the page; what went wrong, in a sentence each, with the picture. */
export async function attackWithPictures(page: Page, count: number, seed: number) {
  const random = chance(seed);
  const seeds = [...smallPictures(), png(64, 48), bmp(64, 48), gif(640, 480)];
  seeds.push(...(await picturesOf(page, 64, 48)).map(({ bytes }) => bytes));
  const findings: string[] = [];
  let [shown, refused] = [0, 0];
  while (shown + refused + findings.length < count && findings.length < 10) {
    const files = Array.from({ length: Math.min(100, count) }, (_, i) => ({
      name: `picture-${i}`,
      type: TYPES[Math.floor(random() * TYPES.length)]!,
      base64: damaged(seeds[Math.floor(random() * seeds.length)]!, random).toString("base64"),
    }));
    const answers = await showAll(page, files);
    for (const [i, { words, tookMs }] of answers.entries()) {
      const file = files[i]!;
      if (words === "") findings.push(`no answer: ${JSON.stringify(file)}`);
      else if (tookMs > LONGEST_MS && (await slowAgain(page, file)))
        findings.push(`took ${tookMs} ms: ${JSON.stringify(file)}`);
      else if (/^\d+ × \d+$/.test(words)) shown++;
      else if (/^picture-\d+: .+\.$/.test(words)) refused++;
      else findings.push(`${words}: ${JSON.stringify(file)}`);
    }
    // Whether the page still lives, has run nothing, and has let go of what it was given.
    const { ran, held } = await page.evaluate(() => ({
      ran: Reflect.get(globalThis, "ran") !== undefined,
      held: (performance as { memory?: { usedJSHeapSize: number } }).memory?.usedJSHeapSize ?? 0,
    }));
    if (ran) findings.push("a picture was run");
    if (held > MOST_MEMORY_MB * 1e6) findings.push(`${held} bytes held`);
  }
  return { findings, shown, refused };
}
