/**
 * What ends a command before it is done: Ctrl-C, being told to end, a terminal that is closed. Each ends in one sentence
 * and the shell's usual status, 128 and the signal's number; half-written files go with it (writeOut.ts).
 */

const STATUS = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;

/** Watches for the rest of the process. Work on the spot goes on until its next `breath`. */
export function watchStops(): void {
  for (const [signal, status] of Object.entries(STATUS)) {
    process.on(signal, () => {
      // A progress line may stand there.
      const clean = process.stderr.isTTY ? "\r\u001b[K" : "";
      process.stderr.write(`${clean}Stopped before it was done; nothing was decided.\n`);
      process.exit(status);
    });
  }
}

/** Lets through what has been signalled meanwhile: signals are looked for between one turn of the loop and the next. */
export async function breath(): Promise<void> {
  for (let turn = 0; turn < 2; turn++) await new Promise((resolve) => setImmediate(resolve));
}
