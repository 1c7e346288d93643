/**
 * Brakes carried to another browser or a colleague and back: as a shop file, which the command takes too.
 */

import { brakeInUnit } from "../../src/jobFile/inUnit.ts";
import { OpenFiles } from "../fields/openFiles.tsx";
import { plainText } from "../openFiles.ts";
import { usePage } from "../page.ts";
import { withBrakes } from "../store/brakeShelf.ts";
import { openedText, shopText } from "../store/opened.ts";
import { openJob } from "../store/shelf.ts";

export function BrakeFiles() {
  const page = usePage();
  const { store, snapshot, save } = page;
  const { shelf } = snapshot;
  const brakes = shelf.brakes ?? [];
  const { units } = openJob(shelf).file;
  const open = async (files: readonly File[]) => {
    for (const file of files) {
      const text = await plainText(page, file);
      if (text === null) continue;
      const opened = openedText(text);
      if (!opened.ok) {
        store.say(`${file.name}: ${opened.sentence} Your brakes are untouched.`);
        continue;
      }
      const found = [...opened.brakes, ...opened.jobs.map((job) => ({ units: job.units, brake: job.brake }))];
      store.reshelve((now) => withBrakes(now, found), "open brakes from a file");
    }
  };
  return (
    <div class="row">
      <button
        type="button"
        disabled={brakes.length === 0}
        onClick={() =>
          save(
            "noseroom-brakes.json",
            shopText(
              units,
              [],
              brakes.map((one) => brakeInUnit(one.brake, one.units, units)),
            ),
          )
        }
      >
        Save the brakes as a file
      </button>
      <OpenFiles words="Open brakes from a file" onFiles={(files) => void open(files)} />
    </div>
  );
}
