/**
 * A link that carries the job behind its #: the file's text, deflated (RFC 1951) and in base64url (RFC 4648 §5).
 * What stands behind the # is never sent to a server. Version letter first, so that later pages still read it.
 */
import { type JobFile, written } from "./jobFile.ts";
import { type Opened, openedText } from "./opened.ts";

const START = "#job=1.";
const LONGEST_TEXT = 300_000;

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: GenericTransformStream,
): Promise<Uint8Array<ArrayBuffer>> {
  const source = new Blob([bytes])
    .stream()
    .pipeThrough(stream as ReadableWritablePair<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>);
  const reader = source.getReader();
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let total = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    total += value.length;
    // A link of a few kB may unfold to gigabytes: stop long before that.
    if (total > LONGEST_TEXT) throw new RangeError("too long");
    parts.push(value);
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

/** The part of the link from # on. */
export async function linkOf(file: JobFile): Promise<string> {
  const bytes = await through(
    new TextEncoder().encode(JSON.stringify(written(file))),
    new CompressionStream("deflate-raw"),
  );
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return START + btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** The job behind the #, or null when there is none. */
export async function jobOfLink(fragment: string): Promise<Opened | null> {
  if (!fragment.startsWith("#job=")) return null;
  if (!fragment.startsWith(START))
    return { ok: false, sentence: "The link was made by another version of this page." };
  try {
    const binary = atob(fragment.slice(START.length).replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = Uint8Array.from(binary, (c) => c.charCodeAt(0));
    return openedText(new TextDecoder().decode(await through(bytes, new DecompressionStream("deflate-raw"))));
  } catch {
    return { ok: false, sentence: "The link is cut off or changed, so the job in it could not be read." };
  }
}
