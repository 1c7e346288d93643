/**
 * What every reader of outside text owes: it comes back, within a second of the processor's time, and runs nothing.
 * Thrown here is a finding; what the reader itself refuses it says in words.
 */
const MOST_SECONDS = 1;

/** Runs a reader once and looks at its time, and at the marks that a text which ran would leave. */
export function watched<Result>(read: () => Result): Result {
  const before = process.cpuUsage();
  const result = read();
  look(before);
  return result;
}

/** The same for a reader that answers later. */
export async function watchedLater<Result>(read: () => Promise<Result>): Promise<Result> {
  const before = process.cpuUsage();
  const result = await read();
  look(before);
  return result;
}

function look(before: NodeJS.CpuUsage): void {
  const { user, system } = process.cpuUsage(before);
  if ((user + system) / 1e6 > MOST_SECONDS) throw new Error(`took ${(user + system) / 1e6} s`);
  const plain = Object.getOwnPropertyNames(Object.prototype).length;
  if (plain !== PLAIN_KEYS) throw new Error("every object has been given a new key");
  if ("ran" in globalThis) throw new Error("the text was run");
}

const PLAIN_KEYS = Object.getOwnPropertyNames(Object.prototype).length;

/** Throws unless the condition holds. */
export function hold(condition: boolean, sentence: string): void {
  if (!condition) throw new Error(sentence);
}

/** One sentence of ordinary words, on one line, that ends. */
export function holdSentence(sentence: string): void {
  hold(/^[^\n]{5,2000}[.!:)”]$/u.test(sentence), `no sentence: ${JSON.stringify(sentence)}`);
}
