// Puts what the built command prints and draws into README.md and examples/pictures/ (npm run readme).
// readme.test.ts holds both against the command; run this after words or figures have changed on purpose.
import { spawnSync } from "node:child_process";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));
const noseroom = (...args) =>
  spawnSync(process.execPath, ["dist/noseroom.mjs", ...args], { cwd: root, encoding: "utf8" }).stdout;

const tour = /EXAMPLE\n((?: {2}.*\n)+)/u.exec(noseroom("--help"))[1].replace(/^ {2}/gmu, "");
const readme = readFileSync(`${root}README.md`, "utf8")
  .replace(
    /(\$ noseroom (check examples\/[\w-]+\.json)\n)[\s\S]*?(?=```)/gu,
    (_, prompt, words) => prompt + noseroom(...words.split(" ")),
  )
  .replace(/(?<=```text\n)noseroom example {2}[\s\S]*?(?=```)/u, () => tour);
writeFileSync(`${root}README.md`, readme);
rmSync(`${root}examples/pictures`, { recursive: true, force: true });
noseroom("check", "examples/cable-trough-finger.json", "--svg", "examples/pictures");
noseroom("keys", "--svg", "examples/pictures/keys.svg");
