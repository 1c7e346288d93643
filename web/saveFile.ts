/**
 * Hands a text to the person as a file. The text goes through a blob, never through markup or an address. Whether the
 * browser then writes it to the disk is not told to the page; that it took it is.
 */

/** Saves `text` as a file called `name`; false when the browser would not take it. */
export function saveFile(name: string, text: string, type = "application/json"): boolean {
  try {
    const address = URL.createObjectURL(new Blob([text], { type }));
    const link = document.createElement("a");
    link.href = address;
    link.download = name;
    document.body.append(link);
    link.click();
    link.remove();
    // The browser has taken the blob by the next turn; a minute is more than enough for a slow disk.
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
    return true;
  } catch {
    return false;
  }
}
