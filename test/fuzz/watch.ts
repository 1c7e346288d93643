/**
 * What every reader of outside text owes: it comes back, within a second of the processor's time, and runs nothing.
 * Thrown here is a finding; what the reader itself refuses it says in words.
 */
const MOST_SECONDS = 1;

/** Runs a reader once and looks at its time, and at the marks that a text which ran would leave. */
export function watched<Result>(read: () => Result): Result {
  const start = performance.now();
  const result = read();
  if (performance.now() - start > 1000 * MOST_SECONDS) {
    // The machine may have been busy with others: once more, by the processor's own clock.
    const before = process.cpuUsage();
    read();
    holdTime(before);
  }
  holdStill();
  return result;
}

/** The same for a reader that answers later. */
export async function watchedLater<Result>(read: () => Promise<Result>): Promise<Result> {
  const start = performance.now();
  const result = await read();
  if (performance.now() - start > 1000 * MOST_SECONDS) {
    const before = process.cpuUsage();
    await read();
    holdTime(before);
  }
  holdStill();
  return result;
}

function holdTime(before: NodeJS.CpuUsage): void {
  const { user, system } = process.cpuUsage(before);
  if ((user + system) / 1e6 > MOST_SECONDS) throw new Error(`took ${(user + system) / 1e6} s`);
}

function holdStill(): void {
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
