/**
 * Hands a text to the person as a file. The text goes through a blob, never through markup or an address.
 */

/** Saves `text` as a file called `name`. */
export function saveFile(name: string, text: string, type = "application/json"): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser has taken the blob by the next turn; a minute is more than enough for a slow disk.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
