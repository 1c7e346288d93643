/**
 * How the bytes of a text file are coded: UTF-8, or UTF-16 as some editors save it. Told by the byte order mark, or by the
 * zero that stands beside each plain letter (Unicode Standard, section 2.13, byte order mark).
 */
export type TextCoding = "utf-8" | "utf-16le" | "utf-16be";

/**
 * The coding of a text that begins with a plain letter, a bracket or a blank.
 * @example textCoding([0xff, 0xfe, 0x7b, 0]) // "utf-16le"
 * @example textCoding([0x7b, 0x7d]) // "utf-8"
 */
export function textCoding(bytes: ArrayLike<number>): TextCoding {
  const [first, second] = [bytes[0], bytes[1]];
  if ((first === 0xff && second === 0xfe) || (first !== 0 && second === 0)) return "utf-16le";
  if ((first === 0xfe && second === 0xff) || (first === 0 && second !== 0)) return "utf-16be";
  return "utf-8";
}
