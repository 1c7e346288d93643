/**
 * Finds the first place where a text is not JSON (RFC 8259), in plain words with line and column, and two slips that
 * JSON.parse lets pass: a key written twice in one group, and groups nested deeper than any job.
 * One pass over the text; the values themselves are left to JSON.parse.
 */
import { foundText, type Problem } from "./problem.ts";

/** A job nests seven deep. */
const DEEPEST = 20;

/**
 * The first fault of the text, or undefined where JSON.parse will take it.
 * @example jsonFault("[1, 2").found // "the end of the text at line 1, column 6"
 */
export function jsonFault(text: string): Problem | undefined {
  try {
    new JsonWalk(text).whole();
    return undefined;
  } catch (stop) {
    if (stop instanceof Stop) return stop.problem;
    throw stop;
  }
}

/** Ends the walk at the fault. */
class Stop extends Error {
  constructor(readonly problem: Problem) {
    super(problem.allowed);
  }
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/uy;
const BLANK = /[ \t\n\r]*/uy;
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids them inside a text, so they must be named.
const TEXT = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const WORD = /[\p{L}\d_$+-]{1,20}/uy;

class JsonWalk {
  private at = 0;

  constructor(private readonly text: string) {}

  whole(): void {
    // A byte order mark in front is common from some editors, but it is not JSON.
    if (this.text.startsWith("\uFEFF")) this.stop("a JSON text without a byte order mark in front");
    this.value(0);
    this.blank();
    if (this.at < this.text.length) this.stop("the end of the file, since the job is complete here");
  }

  private value(depth: number): void {
    this.blank();
    const sign = this.text[this.at];
    if (depth > DEEPEST) this.stop(`nested at most ${DEEPEST} deep`);
    if (sign === "{") this.group(depth);
    else if (sign === "[") this.list(depth);
    else if (sign === '"') this.quoted();
    else if (!this.take(NUMBER) && !this.literal()) {
      this.stop("a value: a number, a text in double quotes, true, false, or something in { } or [ ]");
    }
  }

  private literal(): boolean {
    for (const word of ["true", "false", "null"]) {
      if (!this.text.startsWith(word, this.at)) continue;
      this.at += word.length;
      return true;
    }
    return false;
  }

  private group(depth: number): void {
    const keys = new Set<string>();
    this.at++;
    this.blank();
    if (this.skip("}")) return;
    do {
      this.blank();
      const start = this.at;
      if (this.text[start] !== '"') this.stop("a key in double quotes");
      const key = this.quoted();
      if (keys.has(key)) {
        this.at = start;
        this.stop(`a new key, since ${foundText(key)} stands in this group already`);
      }
      keys.add(key);
      this.blank();
      if (!this.skip(":")) this.stop("a colon after the key");
      this.value(depth + 1);
      this.blank();
    } while (this.skip(","));
    if (!this.skip("}")) this.stop("a comma or the closing }");
  }

  private list(depth: number): void {
    this.at++;
    this.blank();
    if (this.skip("]")) return;
    do {
      this.value(depth + 1);
      this.blank();
    } while (this.skip(","));
    if (!this.skip("]")) this.stop("a comma or the closing ]");
  }

  private quoted(): string {
    const start = this.at;
    if (!this.take(TEXT))
      this.stop('a text that ends with a double quote on its own line, with \\" for a quote inside');
    return JSON.parse(this.text.slice(start, this.at)) as string;
  }

  private blank(): void {
    this.take(BLANK);
  }

  private skip(sign: string): boolean {
    if (this.text[this.at] !== sign) return false;
    this.at++;
    return true;
  }

  private take(pattern: RegExp): boolean {
    pattern.lastIndex = this.at;
    if (!pattern.test(this.text)) return false;
    this.at = pattern.lastIndex;
    return true;
  }

  private stop(allowed: string): never {
    const before = this.text.slice(0, this.at);
    const line = before.split("\n").length;
    const column = this.at - before.lastIndexOf("\n");
    WORD.lastIndex = this.at;
    const word = WORD.exec(this.text)?.[0] ?? this.text.slice(this.at, this.at + 1);
    const found = word === "" ? "the end of the text" : foundText(word);
    throw new Stop({ path: "", found: `${found} at line ${line}, column ${column}`, allowed });
  }
}
