/**
 * The page's own words for a key of the job file, so that a slip is told by the name of its field.
 */
import { wholePathWords } from "../whole/wholePathWords.ts";

const NAMES: Readonly<Record<string, string>> = {
  "part.name": "The part’s name",
  "part.material": "Metal",
  "part.material.yield": "Yield strength",
  "part.material.modulus": "Elastic modulus",
  "part.material.ultimate": "Ultimate strength",
  "part.thickness": "Thickness",
  "part.insideRadius": "Inside radius",
  "part.kFactor": "K-factor",
  "part.length": "Length along the bends",
  "part.flats": "The flats",
  "part.grain": "Grain",
  "part.doubts": "How far readings may be off",
  "brake.clamp.noseAngle": "Nose angle",
  "brake.clamp.noseRadius": "Nose radius",
  "brake.clamp.height": "Finger height",
  "brake.clamp.footDepth": "Foot depth",
  "brake.clamp.thickness": "Bar thickness",
  "brake.clamp.depth": "Bar depth",
  "brake.clamp.topRadius": "Top edge radius",
  "brake.clamp.shim": "Shim round the nose",
  "brake.clamp.holderBack": "Holder set back",
  "brake.clamp.holderHeight": "Holder height",
  "brake.clamp.holderDepth": "Holder depth",
  "brake.bed": "Bed",
  "brake.bed.profile": "Bed",
  "brake.leaf": "Leaf",
  "brake.leaf.profile": "Leaf",
  "brake.leaf.swing": "Leaf swing",
  "brake.leaf.pivot": "Pivot",
  "brake.lift": "Lift",
  "brake.setback": "Nose setback",
  "brake.rated.thickness": "Rated thickness",
  "brake.rated.length": "Rated length",
  "brake.rated.yield": "Rated yield",
  "brake.measured": "Measured on",
  margin: "Margin",
  order: "The order of the steps",
};
const OF_BEND: Readonly<Record<string, string>> = {
  angle: "",
  overbend: "Overbend of ",
  insideRadius: "Inside radius of ",
};

/** @example pathWords("part.flats[0]") // "Flat 1" */
export function pathWords(path: string): string {
  const whole = wholePathWords(path);
  if (whole !== undefined) return whole;
  const flat = /^part\.flats\[(\d+)\]/.exec(path);
  if (flat) return `Flat ${Number(flat[1]) + 1}`;
  const bend = /^part\.bends\[(\d+)\](?:\.(\w+))?/.exec(path);
  if (bend) {
    const before = OF_BEND[bend[2] ?? "angle"] ?? "";
    const number = Number(bend[1]) + 1;
    return before === "" ? `Bend ${number}` : `${before}bend ${number}`;
  }
  const step = /^order\[(\d+)\]/.exec(path);
  if (step) return `Step ${Number(step[1]) + 1}`;
  const hand = /^finishByHand\[(\d+)\]/.exec(path);
  if (hand) return "What is closed by hand";
  const cut = /^part\.cutOuts\[(\d+)\]/.exec(path);
  if (cut) return `Cut-out ${Number(cut[1]) + 1}`;
  // A corner is told by the profile that it belongs to, a piece of a group by the group.
  for (let at = path; at !== ""; at = at.replace(/(?:\.\w+|\[\d+\]|^\w+)$/, "")) {
    const name = NAMES[at];
    if (name !== undefined) return name;
  }
  if (path.startsWith("brake.frame")) return "Frame piece";
  if (path.startsWith("order")) return "The order of the steps";
  if (path.startsWith("brake.clamp")) return "The clamp’s profile";
  return path.startsWith("brake") ? "The brake" : "The part";
}
