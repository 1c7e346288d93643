/**
 * Finds the first place where a text is not JSON5 (json5.org), in plain words with line and column, and slips that
 * readers of JSON let pass: a key written twice in one group, Infinity and NaN, groups nested deeper than any job.
 * One pass over the text; what a slip is taken for is said in jsonSlips.ts.
 */
import parseJson5 from "json5/lib/parse.js";
import { afterValue, anywhere, openText, signsAt, wantsColon, wantsKey, wantsValue } from "./jsonSlips.ts";
import {
  atEnd,
  closedEarly,
  groupInGroup,
  keyInList,
  type OpenGroup,
  type PlacedKey,
  type Slip,
  wrongCloser,
} from "./openGroups.ts";
import { foundText, type Problem } from "./problem.ts";
import { TextPlaces } from "./textPlaces.ts";

/** A job nests seven deep. */
const DEEPEST = 20;

/**
 * The first fault of the text, or undefined where JSON5 will take it.
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

const NUMBER =
  /[-+]?(?:(?:0|[1-9]\d*)(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d+)?(?![\p{L}\p{Nd}_$.'"”″’°⁄+-]|\/(?![/*]))/uy;
// Comments may stand wherever a blank may; a block left open is no comment.
const BLANK = /(?:[\s\uFEFF]|\/\/[^\n\r\u2028\u2029]*|\/\*[\s\S]*?\*\/)*/uy;
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are forbidden inside a text, so they must be named.
const DOUBLE = /"(?:[^"\\\u0000-\u0008\u000a-\u001f\u2028\u2029]|\\(?:["'\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
// biome-ignore lint/suspicious/noControlCharactersInRegex: the same.
const SINGLE = /'(?:[^'\\\u0000-\u0008\u000a-\u001f\u2028\u2029]|\\(?:["'\\/bfnrt]|u[0-9a-fA-F]{4}))*'/uy;
const LITERAL = /(?:true|false|null)(?![\p{L}\p{Nd}_$])/uy;
const BARE_KEY = /[\p{L}_$][\p{L}\p{Nd}_$]*/uy;

class JsonWalk {
  private at = 0;
  /** Where the value read last begins, to say what it was meant for. */
  private valueFrom = 0;
  private readonly places: TextPlaces;
  private readonly open: OpenGroup[] = [];
  /** A key that stands no further in than the group around it: most likely that group should have ended. */
  private outdented: PlacedKey | undefined;
  /** A key that stands further in than those before it in its group: most likely some group ended too early. */
  private inset: PlacedKey | undefined;

  constructor(private readonly text: string) {
    this.places = new TextPlaces(text);
  }

  whole(): void {
    if (this.text.includes("\0")) this.tell({ found: "signs that are no text", allowed: "saved as UTF-8" });
    this.value();
    this.blank();
    if (this.at === this.text.length) return;
    const slip = anywhere(this.text, this.at) ?? (this.inset && closedEarly(this.inset));
    if (slip) this.tell(slip);
    this.stop("the end of the file, since the job is complete here");
  }

  private value(): void {
    this.blank();
    if (this.open.length > DEEPEST) this.stop(`nested at most ${DEEPEST} deep`);
    const from = this.at;
    const sign = this.text[from];
    if (sign === undefined) this.tell(atEnd(this.open, this.outdented));
    const closer = this.open.at(-1)?.closer;
    if (/[\]}]/u.test(sign) && sign !== closer) this.tell(wrongCloser(sign, this.open));
    if (sign === "{") this.group();
    else if (sign === "[") this.list();
    else if (sign === '"' || sign === "'") this.quoted();
    else if (!this.take(NUMBER) && !this.take(LITERAL)) this.tell(wantsValue(this.text, from));
    this.valueFrom = from;
  }

  private group(): void {
    const keys = new Set<string>();
    this.begin("}");
    while (!this.end("}")) {
      const start = this.at;
      const key = this.key();
      if (keys.has(key)) {
        this.at = start;
        this.stop(`a new key, since ${foundText(key)} stands in this group already`);
      }
      keys.add(key);
      this.noteIndent(start);
      this.blank();
      if (!this.skip(":")) this.tell(wantsColon(this.text, this.at, start));
      this.open.at(-1)!.key = key;
      this.value();
      this.comma("}");
    }
  }

  private list(): void {
    let first = true;
    this.begin("]");
    while (!this.end("]")) {
      this.value();
      this.blank();
      if (this.text[this.at] === ":") this.tell(keyInList(this.places.at(this.valueFrom), this.open, first));
      this.comma("]");
      first = false;
    }
  }

  private key(): string {
    const start = this.at;
    const sign = this.text[start];
    if (sign === '"' || sign === "'") return this.quoted();
    if (sign === "{") this.tell(groupInGroup(this.open));
    if (!this.take(BARE_KEY)) this.tell(this.bracket() ?? wantsKey(this.text, start));
    return this.text.slice(start, this.at);
  }

  private quoted(): string {
    const start = this.at;
    const single = this.text[start] === "'";
    if (!this.take(single ? SINGLE : DOUBLE)) {
      this.tell(openText(this.text, start));
    }
    return parseJson5(this.text.slice(start, this.at)) as string;
  }

  private begin(closer: OpenGroup["closer"]): void {
    const { line, indent } = this.places.at(this.at);
    this.open.push({ closer, line, indent, name: this.open.at(-1)?.key });
    this.at++;
  }

  private end(closer: OpenGroup["closer"]): boolean {
    this.blank();
    if (!this.skip(closer)) return false;
    this.open.pop();
    return true;
  }

  /** After a value: a comma, or the end of the group or list. */
  private comma(closer: OpenGroup["closer"]): void {
    this.blank();
    if (this.skip(",") || this.text[this.at] === closer) return;
    this.tell(this.bracket() ?? afterValue(this.text, this.at, this.valueFrom));
  }

  /** The end of the text or the wrong bracket, where something else should stand. */
  private bracket(): Slip | undefined {
    const sign = this.text[this.at];
    if (sign === undefined) return atEnd(this.open, this.outdented);
    return sign === "}" || sign === "]" ? wrongCloser(sign, this.open) : undefined;
  }

  private noteIndent(keyFrom: number): void {
    const place = this.places.at(keyFrom);
    const group = this.open.at(-1)!;
    if (!place.firstOnLine) return;
    if (place.line > group.line && place.indent <= group.indent) this.outdented ??= { place, group };
    group.keyIndent ??= place.indent;
    if (place.indent > group.keyIndent) this.inset ??= { place, group };
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
    this.tell({ found: signsAt(this.text, this.at), allowed });
  }

  private tell({ found, allowed, at = this.at }: Slip): never {
    const { line, column } = this.places.at(at);
    throw new Stop({ path: "", found: `${found} at line ${line}, column ${column}`, allowed });
  }
}
