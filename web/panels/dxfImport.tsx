/**
 * Reads the clamp's profile from a DXF drawing, in the worker, so that a spoilt file can't hold the page up.
 */
import { usePage } from "../page.ts";
import { measured } from "../trace/place.ts";

const LARGEST_FILE = 5_000_000;
const LIMIT_MS = 5000;

export function DxfImport() {
  const { store, snapshot, asker } = usePage();
  const { units } = snapshot.file;

  const read = async (file: File) => {
    if (file.size > LARGEST_FILE) {
      store.say(
        `${file.name}: the drawing is larger than 5 MB, so it was not read. The clamp stays as it was.`,
      );
      return;
    }
    const reply = await asker.askOnce({ kind: "dxf", text: await file.text(), units }, LIMIT_MS);
    if (reply?.kind !== "dxf" || !reply.read.ok) {
      const why = reply?.kind === "dxf" && !reply.read.ok ? reply.read.sentence : "It took too long to read.";
      store.say(`${file.name}: ${why} The clamp stays as it was.`);
      return;
    }
    const { profiles, noseRadiusMm, remarks } = reply.read;
    store.replace((now) => {
      const { clamp } = now.brake;
      const noseRadius = noseRadiusMm === null ? (clamp.noseRadius ?? 0) : measured(noseRadiusMm, now.units);
      return { ...now, brake: { ...now.brake, clamp: { type: "profile", noseRadius, profiles } } };
    }, "take the profile of a drawing");
    if (remarks.length > 0) store.say(`${file.name} is the clamp now. ${remarks.join(" ")}`);
  };

  return (
    <label class="button">
      Profile from a DXF drawing
      <input
        type="file"
        class="heard"
        accept=".dxf"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) void read(file);
          event.currentTarget.value = "";
        }}
      />
    </label>
  );
}
