/**
 * Input that cannot be worked with: one or more sentences for standard error, exit status 2, nothing on standard output.
 */
export class Refusal extends Error {
  readonly sentences: readonly string[];

  constructor(...sentences: readonly string[]) {
    super(sentences.join("\n"));
    this.name = "Refusal";
    this.sentences = sentences;
  }
}

/** What the system said, in words: `what` is "trough.json", `doing` "read" or "written". */
export function systemSentence(what: string, doing: "read" | "written", reason: unknown): string {
  const code = reason instanceof Error && "code" in reason ? String(reason.code) : "";
  const words: Readonly<Record<string, string>> = {
    ENOENT:
      doing === "read" ? `There is no file ${what}.` : `${what} cannot be written: its folder is not there.`,
    EISDIR: `${what} is a folder; name a file.`,
    ENOTDIR: `${what} cannot be ${doing}: part of that path is a file, not a folder.`,
    EACCES: `${what} cannot be ${doing}: you have no permission there.`,
    EPERM: `${what} cannot be ${doing}: you have no permission there.`,
    EROFS: `${what} cannot be written: that disk is read-only.`,
    ENOSPC: `${what} cannot be written: the disk is full.`,
    EDQUOT: `${what} cannot be written: your share of that disk is used up.`,
    EFBIG: `${what} cannot be written: it would be larger than files may be here.`,
    EEXIST: `${what} is already there and was left as it is.`,
    ENAMETOOLONG: "That file name is too long.",
  };
  return words[code] ?? `${what} cannot be ${doing}${code === "" ? "" : ` (${code})`}.`;
}
