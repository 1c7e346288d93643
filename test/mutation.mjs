/**
 * `npm run mutation FILE`: small faults put into one file of src, one at a time; prints those that no test of its room, and
 * none of the recorded answers, notices. Keeps no book.
 */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const file = process.argv[2] ?? "";
const room = /^src\/(\w+)\/.*\.ts$/.exec(file)?.[1];
if (!room || !existsSync(file)) {
  console.error(
    `Name one file of a room, as in: npm run mutation src/motion/slide.ts (found ${file || "none"})`,
  );
  process.exit(2);
}
const { status } = spawnSync("npx", ["stryker", "run", "test/mutation.json", "--mutate", file], {
  stdio: "inherit",
  env: { ...process.env, ROOM: room },
});
process.exit(status ?? 1);
