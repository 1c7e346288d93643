/**
 * Copy a sample: what callipers read of each flat, outside or inside, and how sure each reading is; the sum checked
 * against an overall size; and which doubtful reading could change the answer.
 */

import type { Job } from "../../src/jobFile/job.ts";
import { checkSum } from "../../src/part/sample.ts";
import { parseLength } from "../../src/units/length.ts";
import { doubtSentences } from "../../src/words/doubtWords.ts";
import { lengthWords } from "../../src/words/lengthWords.ts";
import { Choice, Pick } from "../fields/choice.tsx";
import { ReadingField } from "../fields/reading.tsx";
import { usePage } from "../page.ts";
import { chainFlats, inChain } from "../store/chain.ts";
import { doubtMm, doubtOf, usualDoubt, withDoubt, withDoubts } from "../store/doubts.ts";
import type { JobFile, Typed } from "../store/jobFile.ts";
import {
  doubtShown,
  NOTHING_READ,
  readingOf,
  type Sample,
  type Side,
  sideOf,
  withFlat,
  withReading,
} from "../store/sample.ts";

import { PrintSheet } from "./printSheet.tsx";

const SIDES = [
  { value: "outside", words: "Outside" },
  { value: "inside", words: "Inside" },
] as const;

const NOT_A_LENGTH = "It should be a length: 1/64, 0.4 mm.";

export function SamplePanel() {
  const { store, snapshot, standing } = usePage();
  const { file, sample } = snapshot;
  const found = standing.problems.length === 0 ? standing.answer?.doubts : undefined;
  return (
    <section class="panel" aria-labelledby="sample-heading">
      <h2 id="sample-heading">Copy a sample</h2>
      {sample === null ? (
        <>
          <p class="hint">
            With a finished part in your hand: read its flats with callipers, say how sure you are, and see
            whether the answer holds.
          </p>
          <div class="row">
            <button
              type="button"
              onClick={() => store.copy(withDoubts(file, true), NOTHING_READ, "copy a sample")}
            >
              Read a sample
            </button>
          </div>
        </>
      ) : (
        <Readings sample={sample} />
      )}
      {sample && found ? (
        <div role="status" class="doubted" data-verdict={found.verdict}>
          <p>{doubtSentences(found, file.units).join(" ")}</p>
        </div>
      ) : null}
      {sample ? (
        <div class="row">
          <PrintSheet />
          <button
            type="button"
            onClick={() => store.copy(withDoubts(file, false), undefined, "put the sample away")}
          >
            Done with the sample
          </button>
        </div>
      ) : null}
    </section>
  );
}

function Readings({ sample }: { readonly sample: Sample }) {
  const { store, snapshot, standing } = usePage();
  const { file } = snapshot;
  const { units } = file;
  const part = standing.job && standing.file === file ? standing.job.part : null;
  const known =
    part ?? (standing.job?.part.flatsMm.length === chainFlats(file.part) ? standing.job.part : null);
  const usual = `${usualDoubt(units)} ${units}`;
  const read = (flat: number, reading: Typed, side: Side, typing: boolean) => {
    const next = withReading(sample, file, flat, { reading, side }, known);
    const did = `read flat ${flat + 1} of the sample`;
    store.copy(next.file, next.sample, did, typing ? `reading-${flat}` : null);
  };
  const doubt = (flat: number, typed: Typed) =>
    store.copy(
      withDoubt(file, flat, typed),
      withFlat(sample, flat, { ...sample.flats[flat], doubt: typed }),
      `say how sure flat ${flat + 1} is`,
      `doubt-${flat}`,
    );
  /** What the reader says against a doubt that is a length, as of one longer than its flat. */
  const tooLong = (flat: number) => {
    const problem = standing.problems.find(({ path }) => path === `part.doubts[${flat}]`);
    return problem ? `It should be ${problem.allowed}.` : null;
  };
  return (
    <>
      <p class="hint">
        Put metal, thickness, inside radius and bends right under Part first. A free end reads the same
        outside and inside.
      </p>
      <ol class="readings">
        {file.part.flats.map((_, index) => {
          const flat = inChain(file.part, index);
          const side = sideOf(sample, file, flat);
          const reading = readingOf(sample, file, flat, known);
          const shownDoubt = doubtShown(sample, file, flat);
          return (
            <li key={flat}>
              <ReadingField
                label={`Reading of flat ${flat + 1}`}
                value={reading}
                units={units}
                problem={parseLength(reading, units) === undefined ? NOT_A_LENGTH : null}
                onType={(typed) => read(flat, typed, side, true)}
              />
              <Choice
                label={`Flat ${flat + 1} read`}
                quiet
                options={SIDES}
                value={side}
                onChoose={(next) => read(flat, reading, next, false)}
              />
              <ReadingField
                label={`How sure, flat ${flat + 1}`}
                value={shownDoubt}
                units={units}
                usual={usual}
                problem={doubtMm(shownDoubt, units) === null ? NOT_A_LENGTH : tooLong(flat)}
                onType={(typed) => doubt(flat, typed)}
              />
            </li>
          );
        })}
      </ol>
      <Overall sample={sample} part={part} usual={usual} />
    </>
  );
}

function Overall({
  sample,
  part,
  usual,
}: {
  readonly sample: Sample;
  readonly part: Job["part"] | null;
  readonly usual: string;
}) {
  const { store, snapshot } = usePage();
  const { file } = snapshot;
  const { units } = file;
  const { overall } = sample;
  const change = (next: Partial<Sample["overall"]>, field: string | null) =>
    store.copy(file, { ...sample, overall: { ...overall, ...next } }, "read the overall size", field);
  const places = file.part.flats.map((_, index) => inChain(file.part, index));
  const ways = places.flatMap((flat) => [
    { value: `a${flat}`, words: `along flat ${flat + 1}` },
    { value: `s${flat}`, words: `square to flat ${flat + 1}` },
  ]);
  const empty = String(overall.reading).trim() === "";
  const unread = !empty && parseLength(overall.reading, units) === undefined;
  return (
    <>
      <div class="fields">
        <ReadingField
          label="Overall size"
          value={overall.reading}
          units={units}
          usual="not read"
          problem={unread ? NOT_A_LENGTH : null}
          onType={(reading) => change({ reading }, "overall")}
        />
        <Pick
          label="Overall size measured"
          options={ways}
          value={`${overall.square ? "s" : "a"}${overall.flat}`}
          onChoose={(way) => change({ flat: Number(way.slice(1)), square: way.startsWith("s") }, null)}
        />
        <ReadingField
          label="How sure, overall size"
          value={overall.doubt ?? ""}
          units={units}
          usual={usual}
          problem={doubtMm(overall.doubt, units) === null ? NOT_A_LENGTH : null}
          onType={(doubt) => change({ doubt }, "overall-doubt")}
        />
      </div>
      {part && !empty ? <p class="sum">{sumSentence(sample, file, part)}</p> : null}
    </>
  );
}

/** Whether the flats add up to the overall size, within what the doubts explain. */
function sumSentence({ overall }: Sample, file: JobFile, part: Job["part"]): string | null {
  const { units } = file;
  const lengthMm = parseLength(overall.reading, units);
  const overallDoubtMm = doubtMm(overall.doubt, units);
  if (lengthMm === undefined || overallDoubtMm === null || overall.flat >= part.flatsMm.length) return null;
  const readings = part.flatsMm.map((flatMm, flat) => {
    const ends = [part.bends[flat - 1], part.bends[flat]];
    const beyondMm = ends.reduce((sum, bend) => sum + (bend?.bendSetbackMm ?? 0), 0);
    const doubt = doubtMm(doubtOf(file, flat), units) ?? 0;
    return { lengthMm: flatMm + beyondMm, doubtMm: doubt, side: "outside" as const };
  });
  const direction = { flat: overall.flat, square: overall.square };
  const sum = checkSum(readings, part.bends, part.thicknessMm, {
    lengthMm,
    doubtMm: overallDoubtMm,
    direction,
  });
  const said = (mm: number) => lengthWords(mm, units);
  const adds = `The flats make ${said(sum.expectedMm)} overall; you read ${said(lengthMm)}, ${said(Math.abs(sum.offMm))} ${sum.offMm < 0 ? "less" : "more"}.`;
  return sum.agrees
    ? `${adds} The doubts explain up to ${said(sum.explainedMm)}: it adds up.`
    : `${adds} The doubts explain only ${said(sum.explainedMm)}: measure again, or look at a bend's angle.`;
}
