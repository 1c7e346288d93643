/**
 * One slip each: changes that turn the sound job into one that must be refused, and texts that are no job at all.
 */
import { changed, drop, put, type SoundJob } from "../jobFile/jobs.ts";

type Slip = readonly [what: string, path: string, change: (job: SoundJob) => void];

const polygon = (corners: number) =>
  Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    return [Math.round(-1e5 + 5e4 * Math.cos(angle)) / 1e3, Math.round(-6e4 + 5e4 * Math.sin(angle)) / 1e3];
  });

/** Corners written "x,y x,y,radius". */
const shape = (corners: string) => corners.split(" ").map((corner) => corner.split(",").map(Number));

/** Adds a key that JSON.stringify would otherwise take for the prototype. */
function addProto(group: object): void {
  Object.defineProperty(group, "__proto__", { value: { name: "x" }, enumerable: true });
}

/** What is wrong, the path that must be told, and the change that does it. */
export const slips: readonly Slip[] = [
  // Head of the file.
  ["no version", "noseroom", drop("noseroom")],
  ["a version to come", "noseroom", put("noseroom", 2)],
  ["a version as text", "noseroom", put("noseroom", "1")],
  ["unknown units", "units", put("units", "cm")],
  ["an unknown key on top", "colour", (job) => void Object.assign(job, { colour: "red" })],
  ["__proto__ as a key", "part.__proto__", (job) => addProto(job.part)],
  ["constructor as a key", "brake.constructor", (job) => void Object.assign(job.brake, { constructor: 1 })],
  // Part.
  ["no part", "part", drop("part")],
  ["a part as a list", "part", (job) => void Object.assign(job, { part: [1, 2] })],
  ["no thickness", "part.thickness", drop("part.thickness")],
  ["a misspelt key", "part.kfactor", put("part.kfactor", 0.4)],
  ["thickness null", "part.thickness", put("part.thickness", null)],
  ["thickness 0", "part.thickness", put("part.thickness", 0)],
  ["thickness in unknown words", "part.thickness", put("part.thickness", "thin")],
  ["a gauge without its family", "part.thickness", put("part.thickness", "20 ga")],
  ["a radius of 1e308", "part.insideRadius", put("part.insideRadius", 1e308)],
  ["a radius under the nose's", "part.insideRadius", put("part.insideRadius", 0.5)],
  ["a K-factor of 1.2", "part.kFactor", put("part.kFactor", 1.2)],
  ["a length of less than nothing", "part.length", put("part.length", -300)],
  ["unknown dimensions", "part.dimensions", put("part.dimensions", "middle")],
  ["a name that is a number", "part.name", put("part.name", 7)],
  ["a name with a line break", "part.name", put("part.name", "a\nb")],
  ["a name of 10,000 signs", "part.name", put("part.name", "n".repeat(10_000))],
  ["a metal nobody knows", "part.material", put("part.material", "unobtainium")],
  ["toString for a metal", "part.material", put("part.material", "toString")],
  ["a metal as a number", "part.material", put("part.material", 6061)],
  [
    "an own metal without its modulus",
    "part.material.modulus",
    put("part.material", { name: "tin", yield: 200 }),
  ],
  [
    "an own metal with a yield of nothing",
    "part.material.yield",
    put("part.material", { name: "tin", yield: 0, modulus: 50_000 }),
  ],
  [
    "an own metal that breaks before it yields",
    "part.material.ultimate",
    put("part.material", { name: "tin", yield: 200, modulus: 50_000, ultimate: 100 }),
  ],
  ["a flat of -3", "part.flats[2]", put("part.flats[2]", -3)],
  ["a flat as a list", "part.flats[0]", put("part.flats[0]", [20])],
  ["a flat that is true", "part.flats[1]", put("part.flats[1]", true)],
  ["a flat of 3/0", "part.flats[0]", put("part.flats[0]", "3/0")],
  ["a flat shorter than its bends take", "part.flats[1]", put("part.flats[1]", 3.6)],
  ["too few flats", "part.flats", (job) => void job.part.flats.pop()],
  ["flats that are text", "part.flats", (job) => void Object.assign(job.part, { flats: "20, 15, 20" })],
  ["no bends", "part.bends", (job) => void Object.assign(job.part, { bends: [], flats: [20] })],
  [
    "500 bends",
    "part.bends",
    (job) => {
      job.part.bends = Array.from({ length: 500 }, () => ({ angle: 90, turn: "up" }));
      job.part.flats = Array.from({ length: 501 }, () => 20);
    },
  ],
  ["a bend of 0", "part.bends[0].angle", put("part.bends[0].angle", 0)],
  ["a bend of 180", "part.bends[1].angle", (job) => Object.assign(job.part.bends[1]!, { angle: 180 })],
  ["a bend of many degrees", "part.bends[0].angle", put("part.bends[0].angle", "ninety")],
  ["a bend that turns left", "part.bends[1].turn", put("part.bends[1].turn", "left")],
  ["a bend without its turn", "part.bends[1].turn", drop("part.bends[1].turn")],
  ["an overbend below the angle", "part.bends[0].overbend", put("part.bends[0].overbend", 85)],
  ["an overbend of 180", "part.bends[0].overbend", put("part.bends[0].overbend", 180)],
  ["a bend sharper than the nose", "part.bends[1].insideRadius", put("part.bends[1].insideRadius", 0.2)],
  [
    "a radius at which the sheet only flexes",
    "part.bends[0].angle",
    (job) => {
      job.part.flats = [5000, 5000];
      job.part.bends = [{ angle: 90, turn: "up", insideRadius: 900 }];
      job.order = [{ bend: 1, clamped: "start" }];
    },
  ],
  // Brake.
  ["no brake", "brake", drop("brake")],
  ["no clamp", "brake.clamp", drop("brake.clamp")],
  ["a clamp of another kind", "brake.clamp.type", put("brake.clamp.type", "roller")],
  ["a bar with a finger's key", "brake.clamp.footDepth", put("brake.clamp.footDepth", 40)],
  ["a bar without its depth", "brake.clamp.depth", drop("brake.clamp.depth")],
  ["a clamp that is text", "brake.clamp", put("brake.clamp", "bar")],
  ["a bar of less than nothing", "brake.clamp.thickness", put("brake.clamp.thickness", -10)],
  ["a bar of no depth", "brake.clamp.depth", put("brake.clamp.depth", 0)],
  ["a nose of less than nothing", "brake.clamp.noseRadius", put("brake.clamp.noseRadius", -0.8)],
  ["a holder of no height", "brake.clamp.holderHeight", put("brake.clamp.holderHeight", 0)],
  [
    "a finger that leans forward",
    "brake.clamp.height",
    put("brake.clamp", { type: "finger", noseAngle: 45, noseRadius: 0.8, height: -25, footDepth: 40 }),
  ],
  [
    "a finger without a foot",
    "brake.clamp.footDepth",
    put("brake.clamp", { type: "finger", noseAngle: 45, noseRadius: 0.8, height: 25, footDepth: 0 }),
  ],
  ["a nose angle of 120", "brake.clamp.noseAngle", put("brake.clamp.noseAngle", 120)],
  ["a nose too round for its bar", "brake.clamp.topRadius", put("brake.clamp.topRadius", 30)],
  ["a holder without its height", "brake.clamp.holderHeight", drop("brake.clamp.holderHeight")],
  ["a holder behind its bar", "brake.clamp.holderBack", put("brake.clamp.holderBack", 60)],
  [
    "a free clamp off the underside",
    "brake.clamp.profiles",
    put("brake.clamp", { type: "profile", noseRadius: 1, profiles: [shape("0,1 0,9 -30,9 -30,1")] }),
  ],
  [
    "a free clamp of nothing",
    "brake.clamp.profiles",
    put("brake.clamp", { type: "profile", noseRadius: 1, profiles: [] }),
  ],
  [
    "a bed that crosses itself",
    "brake.bed.profile",
    put("brake.bed.profile", shape("-160,-80 0,0 0,-80 -160,0")),
  ],
  ["a bed of two corners", "brake.bed.profile", put("brake.bed.profile", shape("0,0 -10,0"))],
  ["a bed somewhere else", "brake.bed.profile", put("brake.bed.profile", shape("0,0 100,0 100,50 0,50"))],
  ["a bed of 6,000 corners", "brake.bed.profile", put("brake.bed.profile", polygon(6000))],
  [
    "a corner with four figures",
    "brake.leaf.profile[1]",
    put("brake.leaf.profile", shape("0,-10 25,-10,1,1 25,0 0,0")),
  ],
  ["a corner that is no number", "brake.leaf.profile[1][0]", put("brake.leaf.profile[1]", [{}, -10])],
  ["a corner twice", "brake.leaf.profile[3]", put("brake.leaf.profile", shape("0,-10 25,-10 25,0 25,0 0,0"))],
  [
    "a rounding that doesn't fit",
    "brake.leaf.profile[1][2]",
    put("brake.leaf.profile", shape("0,-10 25,-10,12 25,0 0,0")),
  ],
  [
    "a rounding of less than nothing",
    "brake.leaf.profile[1][2]",
    put("brake.leaf.profile", shape("0,-10 25,-10,-2 25,0 0,0")),
  ],
  ["a leaf of no area", "brake.leaf.profile", put("brake.leaf.profile", shape("0,0 25,0 10,0"))],
  [
    "a leaf that stands up at rest",
    "brake.leaf.profile",
    put("brake.leaf.profile", shape("0,-10 25,-10 25,5 0,5")),
  ],
  ["a leaf that doesn't swing", "brake.leaf.swing", put("brake.leaf.swing", 0)],
  ["a leaf that swings 200 degrees", "brake.leaf.swing", put("brake.leaf.swing", 200)],
  ["a pivot in space", "brake.leaf.pivot", put("brake.leaf.pivot", [0, 0, 0])],
  ["a pivot at no place", "brake.leaf.pivot[1]", put("brake.leaf.pivot", [0, "low"])],
  ["12,008 corners in all", "brake", put("brake.frame", Array(4).fill(polygon(3000)))],
  ["51 frame pieces", "brake.frame", put("brake.frame", Array(51).fill(shape("-9,-9 -8,-9 -8,-8")))],
  [
    "a frame piece that touches itself",
    "brake.frame[1]",
    put("brake.frame", [shape("-9,-90 -8,-90 -8,-88"), shape("-20,-90 -10,-90 -10,-85 -15,-90 -20,-85")]),
  ],
  ["a lift below nothing", "brake.lift", put("brake.lift", -1)],
  ["ends that may be open", "brake.openEnds", put("brake.openEnds", "maybe")],
  ["a setback in words", "brake.setback", put("brake.setback", "automatic")],
  ["a rating without its yield", "brake.rated.yield", drop("brake.rated.yield")],
  ["a rated length of nothing", "brake.rated.length", put("brake.rated.length", 0)],
  // Order and margin.
  ["a step with an unknown end", "order[1].clamped", put("order[1].clamped", "left")],
  ["a bend that isn't there", "order[1].bend", put("order[1].bend", 3)],
  ["a bend counted from 0", "order[0].bend", put("order[0].bend", 0)],
  ["a bend and a half", "order[0].bend", put("order[0].bend", 1.5)],
  ["a bend twice", "order[1].bend", put("order[1].bend", 1)],
  ["a bend left out", "order", (job) => void job.order.pop()],
  ["a margin below nothing", "margin", put("margin", -0.1)],
];

/** Text that is no job at all, or not even JSON. */
export const texts: readonly (readonly [what: string, text: string, place: RegExp])[] = [
  ["nothing", "", /line 1, column 1/u],
  ["NaN", changed(() => undefined).replace('"margin":0.5', '"margin":NaN'), /found NaN at line 1/u],
  [
    "Infinity",
    changed(() => undefined).replace('"lift":35', '"lift":-Infinity'),
    /found -Infinity at line 1/u,
  ],
  ["half a file", changed(() => undefined).slice(0, 200), /the end of the text|found/u],
  [
    "a key twice",
    '{"noseroom": 1,\n "noseroom": 1}',
    /line 2, column 2; .* "noseroom" stands in this group already/u,
  ],
  ["a tower of brackets", "[".repeat(500_000), /nested at most 20 deep/u],
  ["10 MB", JSON.stringify({ noseroom: 1, part: "x".repeat(10_000_000) }), /at most 1000000/u],
  ["900 kB of one text", `"${"\\n".repeat(440_000)}"`, /found "/u],
  ["a number alone", "42", /found 42/u],
  ["null", "null", /found null/u],
  ["two jobs in one file", "{} {}", /line 1, column 4; .* the end of the file/u],
];
