/**
 * The command as a process: watches for what ends it early, runs it once, and leaves its exit status.
 */
import { main } from "./main.ts";
import { systemSentence } from "./refusal.ts";
import { watchStops } from "./stops.ts";

const CANNOT_PRINT = 2;

/** A reader that has seen enough (`| head`) is no fault: end quietly. Anything else is said in a sentence. */
function watchOutput(): void {
  process.stdout.on("error", (reason: NodeJS.ErrnoException) => {
    if (reason.code === "EPIPE") process.exit(process.exitCode ?? 0);
    process.stderr.write(`${systemSentence("Standard output", "written", reason)}\n`);
    process.exit(CANNOT_PRINT);
  });
  process.stderr.on("error", () => process.exit(CANNOT_PRINT));
}

watchOutput();
watchStops();
void main(process.argv.slice(2)).then((status) => {
  process.exitCode = status;
});
