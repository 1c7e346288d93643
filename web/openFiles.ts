/**
 * Files that the person opens or drops anywhere on the page: jobs and shops go on the shelves, a drawing becomes the
 * clamp's profile. What is none of these is said in a sentence.
 */
import { importDxf } from "./dxf/importDxf.ts";
import type { Page } from "./page.ts";

const LARGEST_FILE = 5_000_000;

/** Opens files one after the other. */
export async function openFiles(page: Pick<Page, "store" | "asker">, files: readonly File[]): Promise<void> {
  for (const file of files) {
    if (/\.dxf$/i.test(file.name)) await importDxf(page, file);
    else if (file.size > LARGEST_FILE) {
      page.store.say(
        `${file.name}: the file is larger than 5 MB, so it was not read. Your jobs are untouched.`,
      );
    } else page.store.takeText(await file.text(), file.name);
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
