/**
 * Weight and colour for a terminal, and none anywhere else. NO_COLOR (no-color.org) set to anything turns it off.
 * One colour, for metal that meets metal, as on the drawings; the words carry it without.
 */
export interface Ink {
  strong(text: string): string;
  signal(text: string): string;
  faint(text: string): string;
}

const ESCAPE = "\u001b[";

/** Ink for a stream. `env.NO_COLOR` and TERM=dumb are respected. */
export function inkFor(stream: { readonly isTTY?: boolean }, env: NodeJS.ProcessEnv): Ink {
  const on = stream.isTTY === true && !env.NO_COLOR && env.TERM !== "dumb";
  const wrap = (code: string) => (text: string) => (on ? `${ESCAPE}${code}m${text}${ESCAPE}0m` : text);
  return { strong: wrap("1"), signal: wrap("1;31"), faint: wrap("2") };
}
