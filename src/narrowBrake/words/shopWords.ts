/**
 * The words that go with a planned brake: what it carries, how to make and prove it, where it stops, cautions.
 * Every figure is read off the plan. Order of making and proving: common practice, no source.
 */
import { formatLength, MM_PER_INCH } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import { weightWords } from "../../words/weightWords.ts";
import { clampForces, nutTorqueNm } from "../checks/clampForces.ts";
import { hingeForce } from "../checks/hingeChecks.ts";
import { weightOf } from "../checks/mountChecks.ts";
import type { UnderLoad } from "../checks/under.ts";
import { forceWords, torqueWords } from "../forceWords.ts";
import type { ShopWords } from "../narrowBrake.ts";
import { footBoltOver } from "../places.ts";
import { fineLength, stressWords } from "../shopFigures.ts";
import { upToMark } from "../shopMark.ts";
import { lengthOf, pieceOf, volumeOf } from "../solid.ts";
import { reusablePreload, tighteningTorque } from "../strength/bolt.ts";
import { GUESSED_ULTIMATE_OVER_YIELD } from "../strength/sheetMoment.ts";
import { springFor } from "../strength/spring.ts";
import { STEEL_DENSITY_KG_PER_MM3 } from "../strength/weight.ts";
import { makingSteps } from "./makingSteps.ts";

/** More than this one person does not lift: common practice, no source. */
const LIFT_ALONE_KG = 20;
const HOIST_KG = 50;
const GRAVITY = 9.81;

export function shopWords(under: UnderLoad): ShopWords {
  return {
    carries: carries(under),
    crown: crown(under),
    assumptions: assumptions(under),
    tools: tools(under),
    making: makingSteps(under),
    proving: proving(under),
    limits: [
      "A shop aid and no engineer's approval.",
      "Made for the listed parts and sheet: thicker, harder or longer sheet needs new plans.",
      "Local codes and approved data decide for anything that carries load or flies.",
      "Stock sizes are common ones from memory: ask your supplier, and measure what you get.",
    ],
    notChecked: notChecked(under),
    cautions: cautions(under),
  };
}

function carries(under: UnderLoad): string[] {
  const { requirements, loads, sizes, places, stock } = under;
  const { units } = requirements;
  const length = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const force = (newtons: number) => forceWords(newtons, units);
  const forces = clampForces(under);
  const bolts = sizes.boltGaps + 1;
  const turns = places.openingTurns;
  const wrenchMm = units === "in" ? 304.8 : 300;
  const torque = nutTorqueNm(under);
  const most = tighteningTorque(sizes.bolt, reusablePreload(sizes.bolt, stock.boltGrade));
  return [
    `Clamp: ${force(loads.clampN.value)} along the bend, asked for by ${loads.clampN.part}; leaf: ${force(loads.leafN.value)}, by ${loads.leafN.part}. The load factor is in both.`,
    `Nuts: tighten each of ${bolts} to ${torqueWords(torque, units)}, never past ${torqueWords(most, units)}. A wrench ${length(wrenchMm)} long wants ${force((torque * 1000) / wrenchMm)} at its end. The folding pulls ${force(forces.pullN)} on each bolt.`,
    `Opening: turn each nut back by ${turnWords(turns)}, ${turnWords(turns * bolts)} in all, and pull the slotted washers out to the front: the springs lift the bar by ${length(places.liftMm)}. The nuts stay on. Closing: push the bar down, slide the washers in until they stop, tighten.`,
    "The same sheet again: scribe a line over nut and washer once the torque is right, and tighten to the line. Check the torque when the sheet changes, and every morning.",
    springSentence(under),
    `Handles: ${length(places.reachMm)} from pivot to hand, for ${force(requirements.handForceN * sizes.people)} ${sizes.people === 1 ? "of one person's two hands" : "of two people, one on each handle"}.`,
    ...(sizes.held === "vise"
      ? [
          `Vise: jaws along the bend, leaf toward you, moving jaw in front. They hold the lowest ${length(requirements.vise.jawHeightMm)} of the spine, in its middle: jaw tops ${length(-places.jawTopY)} below the cap's top. Face them with smooth flat bar or copper, as high as that, so that they neither bite nor rock.`,
        ]
      : [
          `Feet: the bench's front edge stands ${length(places.footFrontMm)} behind the cap's. Drill the bench through the feet's holes. Bolts from below, a washer under each head: as long as the bench is thick and ${length(footBoltOver(sizes, units))} more.`,
        ]),
    `Hinges: ${force(hingeForce(under))} on each pin.`,
    `Setback screws: ${places.screws} of ${sizes.screw.name}; ${length(sizes.screw.pitchMm)} a turn, ${length(places.travelMm)} of travel.`,
  ];
}

function clampKg({ assembly }: UnderLoad): number {
  const lifted = ["clamp bar", "holder", "rib of the holder"];
  return (
    assembly.pieces
      .filter(({ name }) => lifted.includes(name))
      .reduce((sum, { shape }) => sum + volumeOf(shape), 0) * STEEL_DENSITY_KG_PER_MM3
  );
}

/** The springs to ask for: wire, coils, free length, and what they do. */
function springSentence(under: UnderLoad): string {
  const { requirements, places, stock, assembly } = under;
  const { units } = requirements;
  const length = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const shutMm = lengthOf(pieceOf(assembly, "spring-1").shape);
  const openMm = shutMm + places.liftMm;
  // A fifth more than the weight: they lift it against its friction on the bolts too.
  const openN = (1.2 * clampKg(under) * GRAVITY) / 2;
  const does = `each must push at least ${forceWords(openN, units)} at a length of ${length(openMm)}, clamp open, and go down to ${length(shutMm)}, clamp shut`;
  const room = { outsideMm: places.springMm, wiresMm: stock.springWiresMm };
  const spring = springFor(room, { openN, openMm, shutMm });
  const outside = `Springs: two, ${length(places.springMm)} outside`;
  if (spring === undefined)
    return `${outside}; ${does}. No coil spring of music wire does both here: leave them out, lift the clamp by hand and prop it with a block at each end.`;
  const { wireMm, activeCoils, freeMm, rateNPerMm } = spring;
  const rate =
    units === "in"
      ? `${forceWords(rateNPerMm * MM_PER_INCH, units)} an inch`
      : `${rateNPerMm.toFixed(1)} N a millimetre`;
  return `${outside}, of music wire ${length(wireMm)} thick, ${activeCoils} coils that give and one closed at each end, ${length(upToMark(freeMm, units))} long when free, ${rate}; ${does}.`;
}

function turnWords(turns: number): string {
  const whole = Math.floor(turns);
  const half = turns > whole ? "1/2" : "";
  return `${[whole > 0 ? String(whole) : "", half].join(" ").trim()} ${turns > 1 ? "turns" : "turn"}`;
}

function crown(under: UnderLoad): string[] {
  const { requirements, sizes } = under;
  return [
    `Leaf and bed bow under the full load, so a long bend comes out open in the middle: the checks say by how many degrees.`,
    under.places.inside
      ? `Fold a strip as long as the part. Is the middle open by more than 1°? Loosen the nuts and turn the middle setback screws a quarter turn in (${formatLength(sizes.screw.pitchMm / 4, requirements.units)} ${requirements.units}), so that the bar stands forward there. Fold another strip.`
      : "Fold a strip as long as the part. Is the middle open by more than 1°? Lay one thickness of paper between bar and holder over the middle third. Fold another strip.",
    "The crown is right for that sheet and that length only.",
  ];
}

function assumptions(under: UnderLoad): string[] {
  const { parts, safety, give, steel, coldFinished, handForceN, vise, units } = under.requirements;
  const length = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const unknown = parts.filter((part) => part.metal.ultimateMpa === undefined).map((part) => part.name);
  return [
    "the sheet is wide and yields through its whole thickness at the mean of yield and ultimate",
    ...(unknown.length > 0
      ? [
          `ultimate strength not given for ${unknown.join(", ")}: ${GUESSED_ULTIMATE_OVER_YIELD} times the yield is guessed`,
        ]
      : []),
    "leaf and bed press evenly over the shortest flange and the shortest clamped flat, so that their levers are half of these",
    `safety factors: load ${safety.load}, yield ${safety.yield}, bolts ${safety.bolt}, pins ${safety.pin}`,
    `hot rolled and welded steel yields at ${stressWords(steel.yieldMpa, units)}, cold-finished bar and pins at ${stressWords(coldFinished.yieldMpa, units)}; modulus ${stressWords(steel.modulusMpa, units)}`,
    `hand force ${forceWords(handForceN, units)} of one person on both handles together`,
    ...(under.sizes.held === "vise"
      ? [
          `vise ${forceWords(vise.forceN, units)} on jaws ${length(vise.jawWidthMm)} wide and ${length(vise.jawHeightMm)} high`,
        ]
      : []),
    `the nose may give by ${fineLength(give.noseMm, units)}; leaf, bed and holder may each lose ${give.angleDeg}° of the bend at mid-length, before any crown`,
    "shear deflection of holder, bed and leaf left out",
  ];
}

function tools({ sizes, places, requirements: { units } }: UnderLoad): string[] {
  const drill = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  return [
    "band saw or hacksaw",
    "drill press, centring drill, countersink",
    `drills: ${sizes.bolt.tapDrill} for ${sizes.bolt.name}, ${sizes.screw.tapDrill} for ${sizes.screw.name}, ${places.flatHead.tapDrill} for ${places.flatHead.name}, ${drill(places.boltHoleMm)} for the holder, ${drill(sizes.pinMm)} for the pins, ${drill(sizes.handleMm)} for the handles`,
    `taps: ${[sizes.bolt.name, sizes.screw.name, places.flatHead.name].join(", ")}`,
    "reamer for the pins, or a drill run slowly with oil",
    "draw file, fine file, emery on a flat block, radius gauge",
    "straightedge, square, feeler leaves, protractor",
    "clamps, scribe, layout dye",
    "welding set, or someone who welds",
    "torque wrench, to learn what the right pull on the wrench feels like",
  ];
}

function proving(under: UnderLoad): string[] {
  const { units } = under.requirements;
  return [
    "Swing the leaf by hand from rest to upright with no sheet in it: nothing may scrape, and it must come to lie on its rests by itself.",
    `Tighten the nuts to ${torqueWords(nutTorqueNm(under), units)}. Pull a strip of thin paper at both ends and in the middle under the nose: it must hold everywhere.`,
    "Fold a strip of the job's sheet, as wide as a hand, at the left end, in the middle and at the right end. Measure all three angles.",
    "Fold a strip of the full length. Measure the angle at both ends and in the middle. More than 1° apart asks for the crown.",
    "Read leaf angle and relaxed angle off the strip and give both to the check: that replaces the reckoned springback.",
    "Look at the welds, pins and bolts after ten bends, and after that before each day's work. A crack, a bent pin or a bar that has crept ends the work.",
    "Measure the brake as built (bar thickness, nose, bevel, setback, overhang, leaf face), put the figures into its file, and check the parts with them.",
    "Only then fold the first part, in the order that was found.",
  ];
}

function notChecked({ sizes }: UnderLoad): string[] {
  return [
    "how well the welds are made: have someone look at them who welds for a living",
    "wear and many thousands of bends",
    sizes.held === "vise"
      ? "the vise, its screws in the bench, and the bench"
      : "the bench top, what it stands on, and whether it tips",
    "a leaf that is let fall, or handles that are pulled sideways",
  ];
}

function cautions(under: UnderLoad): string[] {
  const { units } = under.requirements;
  const kg = weightOf(under);
  const weight = weightWords(kg, units);
  const lift =
    kg > HOIST_KG
      ? `It weighs ${weight}: lift it with a hoist, never by hand. With nuts and washers off, the clamp lifts out as a load of its own, ${weightWords(clampKg(under), units)}.`
      : kg > LIFT_ALONE_KG
        ? `It weighs ${weight}: lift it with two people.`
        : `It weighs ${weight}: hold it until the vise is tight.`;
  const tipping =
    under.sizes.held === "vise"
      ? "Pulling the handles turns the brake in the vise: tighten it, and see that the bench can't tip."
      : "Pulling the handles tips the brake: bolt its feet through the bench, and the bench to the floor or wall, before the first bend.";
  return [
    "Sheet metal cuts: gloves for carrying, no loose sleeves, break every edge.",
    "Leaf and bar crush: hands off the sheet before the leaf moves, and nobody else in its swing. The hinges pinch: keep fingers off the ears.",
    lift,
    tipping,
    "Never fold with a slotted washer half in or missing: the nut would slip off it.",
    "The leaf falls back to its rests when you let go: let it down by hand.",
    "Welding and grinding: eyes, hands, lungs and fire watched. Grind zinc and paint off first: their fumes poison.",
  ];
}
