/**
 * The shelf of jobs: open, copy, take away, save as a file, open a file, and a link that carries the job.
 */

import wholes from "noseroom:example-wholes";
import examples from "noseroom:examples";
import { useState } from "preact/hooks";
import { brakeInUnit } from "../../src/jobFile/inUnit.ts";
import { Pick } from "../fields/choice.tsx";
import { OpenFiles } from "../fields/openFiles.tsx";
import { openFiles } from "../openFiles.ts";
import { usePage } from "../page.ts";
import { showNewJob } from "../showNewJob.ts";
import { fileName, fileText, type JobFile } from "../store/jobFile.ts";
import { linkOf } from "../store/link.ts";
import { newJob } from "../store/newJob.ts";
import { shopText } from "../store/opened.ts";
import { openJob } from "../store/shelf.ts";
import { newBox } from "../store/wholeEdits.ts";
import { Sign } from "./sign.tsx";
import { TextToCopy } from "./textToCopy.tsx";

const TEXTS: Readonly<Record<string, string>> = { ...examples, ...wholes.texts };
const EXAMPLES = Object.keys(TEXTS).map((name) => ({ value: name, words: name.replaceAll("-", " ") }));

export function JobsPanel() {
  const page = usePage();
  const { store, snapshot, asker, save: saveFile } = page;
  const { shelf, file } = snapshot;
  const [example, setExample] = useState(EXAMPLES[0]!.value);
  const [link, setLink] = useState<string | null>(null);
  const [saved, setSaved] = useState<{ readonly name: string; readonly text: string } | null>(null);

  const handOver = (name: string, text: string, files: readonly JobFile[]) => {
    if (!saveFile(name, text)) return;
    store.savedAs(files);
    setSaved({ name, text });
  };

  const start = (made: JobFile, did: string) => {
    const { brakeId, brakeFrom } = openJob(shelf);
    store.add(made, did, { ...(brakeId ? { brakeId } : {}), ...(brakeFrom ? { brakeFrom } : {}) });
    showNewJob();
  };
  const save = async () => {
    const reply = await asker.askOnce({ kind: "write", text: fileText(file) }, 3000);
    handOver(fileName(file.part.name), reply?.kind === "written" ? reply.text : fileText(file), [file]);
  };
  // A page that was opened from disk has no address that another device could open.
  const served = location.protocol.startsWith("http");
  const makeLink = async () => setLink(location.href.replace(/#.*$/, "") + (await linkOf(file)));
  const share = async () => {
    const shared = new File([fileText(file)], fileName(file.part.name), { type: "application/json" });
    const data: ShareData = navigator.canShare?.({ files: [shared] })
      ? { files: [shared], title: file.part.name }
      : served
        ? { title: file.part.name, url: location.href.replace(/#.*$/, "") + (await linkOf(file)) }
        : { title: file.part.name, text: fileText(file) };
    await navigator.share(data).catch((why: unknown) => {
      // Given up by the person is no fault.
      if (why instanceof DOMException && why.name === "AbortError") return;
      store.say("This device would not share the job: save it as a file instead.", { about: "sharing" });
    });
  };

  return (
    <section class="panel" aria-labelledby="jobs-heading">
      <h2 id="jobs-heading">Jobs</h2>
      <p class="hint">Kept in this browser as you type. Nothing leaves this page.</p>
      <ul class="jobs">
        {shelf.jobs.map((job) => (
          <li key={job.id} class={job.id === shelf.openId ? "on" : ""}>
            <button
              type="button"
              class="job"
              aria-pressed={job.id === shelf.openId}
              onClick={() => store.open(job.id)}
            >
              {job.file.part.name || "Part without a name"}
            </button>
            <button
              type="button"
              class="quiet"
              disabled={shelf.jobs.length < 2}
              aria-label={`Take the job ${job.file.part.name} away`}
              onClick={() => store.remove(job.id)}
            >
              <Sign name="cross" />
            </button>
          </li>
        ))}
      </ul>
      <div class="row">
        <button type="button" onClick={() => start(newJob(file), "start a new job")}>
          New job
        </button>
        <button type="button" onClick={() => start(newBox(file), "start a new box")}>
          New box
        </button>
        <button type="button" onClick={() => start(file, "copy the job")}>
          Copy this job
        </button>
        <button type="button" onClick={() => void save()}>
          Save as a file
        </button>
        <OpenFiles words="Open a file" onFiles={(files) => void openFiles(page, files)} />
        <button type="button" onClick={() => void makeLink()}>
          Make a link
        </button>
        {"share" in navigator ? (
          <button type="button" onClick={() => void share()}>
            Share this job
          </button>
        ) : null}
        <button
          type="button"
          onClick={() =>
            handOver(
              "noseroom-jobs.json",
              shopText(
                file.units,
                shelf.jobs.map((job) => job.file),
                (shelf.brakes ?? []).map((one) => brakeInUnit(one.brake, one.units, file.units)),
              ),
              shelf.jobs.map((job) => job.file),
            )
          }
        >
          Save all
        </button>
      </div>
      {saved ? (
        <details class="more handed" key={saved.text}>
          <summary>{saved.name} went to your browser. Not among your downloads?</summary>
          <TextToCopy text={saved.text} />
        </details>
      ) : null}
      <div class="row examples">
        <Pick label="Worked examples" options={EXAMPLES} value={example} onChoose={setExample} />
        <button type="button" onClick={() => store.takeText(TEXTS[example]!, "The example")}>
          Open the example
        </button>
      </div>
      {link && !served ? (
        <div class="link">
          <p>
            This page was opened from a file on disk, so a link to it works on no other device: a link works
            only where the page is served. Hand over the job’s file instead, or its text:
          </p>
          <TextToCopy text={fileText(file)} />
        </div>
      ) : null}
      {link && served ? (
        <p class="link">
          <label>
            The job is in the link itself:
            <input type="text" readOnly value={link} onFocus={(event) => event.currentTarget.select()} />
          </label>
        </p>
      ) : null}
    </section>
  );
}
