/**
 * The mark that every pen leaves in its file, so that the command knows a drawing of its own when it meets one again.
 */
export const MADE_BY = "drawn by noseroom";

/** The same as a PDF holds it in its producer: UTF-16 in hexadecimal (ISO 32000-1, 7.9.2.2). */
export const MADE_BY_IN_PDF = [...MADE_BY]
  .map((letter) => letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0"))
  .join("");
