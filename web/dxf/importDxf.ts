/**
 * A clamp's profile from a DXF drawing, read in the worker so that a spoilt file can't hold the page up.
 */
import type { Page } from "../page.ts";
import { withArrival } from "../store/brakeShelf.ts";
import { openJob } from "../store/shelf.ts";
import { measured } from "../trace/place.ts";

const LARGEST_FILE = 5_000_000;
const LIMIT_MS = 5000;

/**
 * Makes the drawing's outline the clamp of the open job, on a brake of its own; says what could not be read. A drawing that does
 * not say its unit is asked about first.
 */
export async function importDxf(
  { store, asker }: Pick<Page, "store" | "asker">,
  file: File,
  drawnIn?: "mm" | "in",
): Promise<void> {
  const { units } = store.snapshot().file;
  if (file.size > LARGEST_FILE) {
    store.say(
      `${file.name}: the drawing is larger than 5 MB, so it was not read. The clamp stays as it was.`,
    );
    return;
  }
  const reply = await asker.askOnce(
    { kind: "dxf", text: await file.text(), units, ...(drawnIn && { drawnIn }) },
    LIMIT_MS,
  );
  if (reply?.kind === "dxf" && !reply.read.ok && reply.read.unitless) {
    const { wide, high } = reply.read.unitless;
    const size = [wide, high].map((figure) => Number(figure.toPrecision(4))).join(" by ");
    const take = (unit: "mm" | "in") => () => void importDxf({ store, asker }, file, unit);
    store.say(`${file.name} does not say its unit. It is ${size} units: which ones?`, {
      about: "unit of a drawing",
      choices: [
        { words: `${size} inches`, act: take("in") },
        { words: `${size} millimetres`, act: take("mm") },
      ],
    });
    return;
  }
  if (reply?.kind !== "dxf" || !reply.read.ok) {
    const why = reply?.kind === "dxf" && !reply.read.ok ? reply.read.sentence : "It took too long to read.";
    store.say(`${file.name}: ${why} The clamp stays as it was.`);
    return;
  }
  const { profiles, noseRadiusMm, remarks } = reply.read;
  store.reshelve((shelf) => {
    const now = openJob(shelf).file;
    const noseRadius =
      noseRadiusMm === null ? (now.brake.clamp.noseRadius ?? 0) : measured(noseRadiusMm, now.units);
    const clamp = { type: "profile" as const, noseRadius, profiles };
    const arrival = { name: `${now.brake.name}, drawn`, came: `from the drawing ${file.name}` };
    return withArrival(shelf, { ...now, brake: { ...now.brake, clamp } }, arrival);
  }, "take the profile of a drawing");
  if (remarks.length > 0) store.say(`${file.name} is the clamp now. ${remarks.join(" ")}`);
}
