/**
 * Lays pages of pictures on paper and opens the browser's print box. Each picture is a file of its own, so nothing of
 * it becomes part of the page; sizes are true millimetres, and the print box is asked for that paper without a margin.
 */
import type { PaperPage, PaperPicture } from "../worker/messages.ts";

/** What was laid out last; it stays until the next print, since some browsers draw their preview late. */
let laidOut: { readonly sheets: HTMLElement; readonly addresses: readonly string[] } | null = null;

function clear(): void {
  laidOut?.sheets.remove();
  for (const address of laidOut?.addresses ?? []) URL.revokeObjectURL(address);
  laidOut = null;
}

function pictureOn(sheet: HTMLElement, picture: PaperPicture): { image: HTMLImageElement; address: string } {
  const address = URL.createObjectURL(new Blob([picture.svg], { type: "image/svg+xml" }));
  const image = new Image();
  image.alt = picture.words;
  image.style.left = `${picture.leftMm}mm`;
  image.style.top = `${picture.topMm}mm`;
  image.style.width = `${picture.widthMm}mm`;
  image.style.height = `${picture.heightMm}mm`;
  image.src = address;
  sheet.append(image);
  return { image, address };
}

/** Prints these pages and nothing else. */
export async function printPages(pages: readonly PaperPage[]): Promise<void> {
  clear();
  const sheets = document.createElement("div");
  sheets.className = "shop-sheet";
  const pictures = pages.flatMap((page) => {
    const sheet = document.createElement("section");
    const lying = page.widthMm > page.heightMm ? "-lying" : "";
    sheet.className = `paper ${page.paper.toLowerCase()}${lying}`;
    sheet.style.width = `${page.widthMm}mm`;
    sheet.style.height = `${page.heightMm}mm`;
    sheets.append(sheet);
    return page.pictures.map((picture) => pictureOn(sheet, picture));
  });
  document.body.append(sheets);
  laidOut = { sheets, addresses: pictures.map(({ address }) => address) };
  // A picture that the browser could not unpack leaves its place empty; the others are printed all the same.
  await Promise.allSettled(pictures.map(({ image }) => image.decode()));
  const root = document.documentElement;
  root.dataset.print = "sheet";
  addEventListener("afterprint", () => delete root.dataset.print, { once: true });
  print();
}
