/**
 * What the machine does to a command: full disks, limits, shut folders, readers that leave. Each ends in a sentence and
 * a status, and leaves neither a half-written file nor a changed one. Sources: POSIX ulimit and /dev/full as Linux has it.
 */
import { existsSync } from "node:fs";
import { chmod, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { COMMAND, EXAMPLES, noseroomProcess, run, STACK_TRACE } from "../../cli/noseroom.ts";

const JOB = join(EXAMPLES, "hat-stiffener.json");
const FULL = "/dev/full";
const NOBODY = 65534;
const BEFORE = "what stood there before\n";

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "noseroom-"));
});
afterEach(async () => {
  await chmod(folder, 0o700);
  await rm(folder, { recursive: true });
});

/** Every command that writes a file, with that file's name last. */
const WRITERS: readonly (readonly string[])[] = [
  ["blank", JOB, "--svg"],
  ["blank", JOB, "--pdf"],
  ["blank", JOB, "--dxf"],
  ["sheet", JOB, "--pdf"],
  ["chart", JOB, "--pdf"],
  ["bar", join(EXAMPLES, "cable-trough-square-bar.json"), "--pdf"],
  ["example", "hat-stiffener", "-o"],
];

const named = WRITERS.map((words) => [words[0], words.at(-1), words] as const);

/** In a shell that lets no file grow past its first block. */
const limited = (words: readonly string[]) =>
  run("sh", ["-c", 'ulimit -f 1; exec "$0" "$@"', process.execPath, COMMAND, ...words], { cwd: folder });

function expectSentence(
  { status, out, err }: Awaited<ReturnType<typeof noseroomProcess>>,
  end: string,
): void {
  expect({ status, out }).toEqual({ status: 2, out: "" });
  expect(err).toMatch(/^[^\n]+\.\n$/u);
  expect(err.endsWith(`${end}\n`) ? end : err).toBe(end);
  expect(err).not.toMatch(STACK_TRACE);
}

describe("noseroom, when a file may not grow as large as it must,", () => {
  it.each(named)("says so and leaves nothing half written (%s %s)", async (_command, _option, words) => {
    expectSentence(await limited([...words, "out.file"]), "it would be larger than files may be here.");
    expect(await readdir(folder)).toEqual([]);
  });

  it("leaves what stood there before", async () => {
    await writeFile(join(folder, "out.pdf"), BEFORE);
    expectSentence(
      await limited(["sheet", JOB, "--force", "--pdf", "out.pdf"]),
      "it would be larger than files may be here.",
    );
    expect(await readFile(join(folder, "out.pdf"), "utf8")).toBe(BEFORE);
    expect(await readdir(folder)).toEqual(["out.pdf"]);
  });

  it("writes no picture at all where one of them finds no place", async () => {
    await mkdir(join(folder, "pictures/step-02-bend-3.svg"), { recursive: true });
    const { status, out, err } = await noseroomProcess(["check", JOB, "--svg", "pictures"], { cwd: folder });
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toMatch(/step-02-bend-3\.svg is a folder; name a file\.\n$/u);
    expect(await readdir(join(folder, "pictures"))).toEqual(["step-02-bend-3.svg"]);
  });
});

describe.runIf(existsSync(FULL))("noseroom on a full disk", () => {
  it.each(named.filter(([command]) => command !== "example"))(
    "says so (%s %s)",
    async (_command, _option, words) => {
      expectSentence(await noseroomProcess([...words, FULL]), "the disk is full.");
    },
  );

  it("says so of standard output too", async () => {
    const { status, err } = await run("sh", [
      "-c",
      `"$0" "$1" check "$2" > ${FULL}`,
      process.execPath,
      COMMAND,
      JOB,
    ]);
    expect({ status, err }).toEqual({
      status: 2,
      err: "Standard output cannot be written: the disk is full.\n",
    });
  });
});

describe("noseroom in a folder that may not be written", () => {
  /** Root may write anywhere, so the command is run as nobody then. */
  const asNobody = (words: readonly string[]) => {
    const who = process.getuid?.() === 0 ? { uid: NOBODY, gid: NOBODY } : {};
    return noseroomProcess(words, { cwd: folder, ...who });
  };

  it.each(named)("says so and writes nothing (%s %s)", async (_command, _option, words) => {
    await chmod(folder, 0o555);
    expectSentence(await asNobody([...words, "out.file"]), "you have no permission there.");
    expect(await readdir(folder)).toEqual([]);
  });

  it("writes a file in it that may be written", async () => {
    await writeFile(join(folder, "out.pdf"), BEFORE, { mode: 0o666 });
    await chmod(join(folder, "out.pdf"), 0o666);
    await chmod(folder, 0o555);
    const { status, err } = await asNobody(["sheet", JOB, "--force", "--pdf", "out.pdf"]);
    expect({ status, err }).toEqual({ status: 0, err: "" });
    expect((await readFile(join(folder, "out.pdf"))).subarray(0, 5).toString()).toBe("%PDF-");
  });

  it("says where part of the path is a file, or the folder is not there", async () => {
    await writeFile(join(folder, "note"), BEFORE);
    expectSentence(
      await noseroomProcess(["blank", JOB, "--svg", "note/out.svg"], { cwd: folder }),
      "part of that path is a file, not a folder.",
    );
    expectSentence(
      await noseroomProcess(["blank", JOB, "--svg", "none/out.svg"], { cwd: folder }),
      "its folder is not there.",
    );
    expect(await readdir(folder)).toEqual(["note"]);
  });
});

describe("noseroom, whose file is there already,", () => {
  it("keeps its rights, and writes through a link to what it points at", async () => {
    const [real, link] = [join(folder, "real.dxf"), join(folder, "link.dxf")];
    await writeFile(real, BEFORE);
    await chmod(real, 0o640);
    await run("ln", ["-s", "real.dxf", link]);
    const { status } = await noseroomProcess(["blank", JOB, "--force", "--dxf", link]);
    expect(status).toBe(0);
    expect(await readFile(real, "utf8")).toMatch(/SECTION/u);
    const { out } = await run("ls", ["-l", folder]);
    expect(out).toMatch(/-rw-r----- .* real\.dxf/u);
    expect(out).toMatch(/link\.dxf -> real\.dxf/u);
  });
});

describe("noseroom, whose reader has seen enough,", () => {
  it("ends quietly, with the answer's own status", async () => {
    const script = '"$0" "$1" check "$2" --json | head -n 1; echo "$?"';
    const { out, err } = await run("sh", ["-c", script, process.execPath, COMMAND, JOB]);
    expect({ out, err }).toEqual({ out: "{\n0\n", err: "" });
  });
});
