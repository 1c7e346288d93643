/**
 * Files that the person opens or drops anywhere on the page: jobs and shops go on the shelves, a drawing becomes the
 * clamp's profile. What is none of these is said in a sentence.
 */
import { textCoding } from "../src/jobFile/textCoding.ts";
import { importDxf } from "./dxf/importDxf.ts";
import type { Page } from "./page.ts";

const LARGEST_FILE = 5_000_000;
const LIMIT_MS = 3000;

/**
 * A file's text as strict JSON: the worker reads what people type by hand, with remarks, commas too many, single quotes.
 * Null where it could not, and that was said.
 */
export async function plainText(
  { store, asker }: Pick<Page, "store" | "asker">,
  file: File,
): Promise<string | null> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const typed = new TextDecoder(textCoding(bytes)).decode(bytes);
  const read = await asker.askOnce({ kind: "plain", text: typed }, LIMIT_MS);
  if (read?.kind !== "problems") return read?.kind === "written" ? read.text : typed;
  store.say(`${file.name}: ${read.problems.map(({ sentence }) => sentence).join(" ")}`);
  return null;
}

/** Opens files one after the other. */
export async function openFiles(page: Pick<Page, "store" | "asker">, files: readonly File[]): Promise<void> {
  for (const file of files) {
    if (/\.dxf$/i.test(file.name)) await importDxf(page, file);
    else if (file.size > LARGEST_FILE) {
      page.store.say(
        `${file.name}: the file is larger than 5 MB, so it was not read. Your jobs are untouched.`,
      );
    } else {
      const text = await plainText(page, file);
      if (text !== null) page.store.takeText(text, file.name);
    }
  }
}

/** Takes what is dropped anywhere on the page; places that take files themselves stop it from coming here. */
export function takeDrops(page: Pick<Page, "store" | "asker">): void {
  const root = document.documentElement;
  const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") === true;
  addEventListener("dragover", (event) => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    root.dataset.dropping = "yes";
  });
  addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) delete root.dataset.dropping;
  });
  addEventListener("drop", (event) => {
    delete root.dataset.dropping;
    if (!holdsFiles(event) || event.defaultPrevented) return;
    event.preventDefault();
    void openFiles(page, [...(event.dataTransfer?.files ?? [])]);
  });
}
