/**
 * Good texts to begin from, for each reader: the example jobs and the shop, drawings in every shape that is read,
 * shelves as the page keeps them.
 */
import { readdirSync, readFileSync } from "node:fs";
import { arc, drawing, line, lwpolyline, onLayer, words } from "../page/dxfText.ts";
import { smallPictures } from "../page/photoFiles.ts";
import type { ReaderName } from "./readers.ts";

/** Example jobs of a folder, as text. */
function texts(folder: string): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .map((name) => readFileSync(`${folder}/${name}`, "utf8"));
}

const circle = "0\nCIRCLE\n8\n0\n10\n3\n20\n4\n40\n2\n";
const oldPolyline = `0\nPOLYLINE\n8\n0\n66\n1\n70\n1\n${[
  [0, 0],
  [9, 0],
  [9, 5],
]
  .map(([x, y]) => `0\nVERTEX\n8\n0\n10\n${x}\n20\n${y}\n42\n0.1\n`)
  .join("")}0\nSEQEND\n`;

const drawings = [
  drawing(4, [
    lwpolyline(
      [
        [100, 50, 0],
        [144.2, 50, Math.tan(Math.PI / 8)],
        [145, 50.8, 0],
        [145, 56, 0],
        [100, 56, 0],
      ],
      true,
    ),
  ]),
  drawing(1, [
    line(0, 0, 1.9, 0),
    arc(1.9, 0.1, 0.1, 270, 360),
    line(2, 1, 2, 0.1),
    line(2, 1, 0, 1),
    line(0, 1, 0, 0),
  ]),
  drawing(4, [circle]),
  drawing(6, [oldPolyline]),
];

const spline = `0\nSPLINE\n8\n0\n70\n8\n71\n2\n72\n6\n73\n3\n${[0, 0, 0, 1, 1, 1].map((knot) => `40\n${knot}\n`).join("")}${[
  [40, 10],
  [50, 30],
  [55, 10],
]
  .map(([x, y]) => `10\n${x}\n20\n${y}\n`)
  .join("")}`;
const ellipse = "0\nELLIPSE\n8\n0\n10\n12\n20\n9\n11\n4\n21\n1\n40\n0.5\n41\n0\n42\n6.283\n";
const plate = lwpolyline(
  [
    [0, 0, 0],
    [55, 0, 0.4142],
    [60, 5, 0],
    [60, 40, 0],
    [0, 40, 0],
  ],
  true,
);
const fold = onLayer("BEND", line(30, 0, 30, 40));

const patterns = [
  drawing(4, [plate, fold, words(31, 20, "90 up")]),
  drawing(4, [
    plate,
    fold,
    ellipse,
    words(31, 20, "UP 90%%d"),
    onLayer("BEND", line(20, 0, 20, 40)),
    words(19, 5, "45 down"),
  ]),
  drawing(1, [plate, fold, spline, line(40, 10, 55, 10), words(31, 20, "90 up")]),
  drawing(4, [
    plate,
    onLayer("BEND", line(30, 0, 30, 15)),
    onLayer("BEND", line(30, 25, 30, 40)),
    line(25, 15, 35, 15),
    line(35, 15, 35, 25),
    line(35, 25, 25, 25),
    line(25, 25, 25, 15),
    circle,
    oldPolyline,
    words(31, 5, "90 dn"),
  ]),
];

/** A job with the keys that examples seldom have. */
function rareJob(text: string): string {
  const { order: _order, ...job } = JSON.parse(text) as { readonly order?: unknown; readonly part: object };
  const cutOuts = [{ across: [1, "1/4 in"], along: [0, "end"] }];
  const part = { ...job.part, length: "100 mm", grain: "across", doubts: 0.2, cutOuts };
  return JSON.stringify({ ...job, part, margin: 0.4, order: [{ bend: 1, clamped: "start", to: 20 }] });
}

/** How a part was read off a sample, as it is kept beside the job. */
const sample = {
  flats: [{ side: "inside", reading: "1/2", doubt: 0.1 }, {}],
  overall: { reading: 30, doubt: "0.5 mm", flat: 1, square: true },
};
const metals = [{ name: "sign blank", yield: 150, modulus: 70000, ultimate: 200 }];

/** The seeds of a reader, with `examples` the folder of example jobs. */
export function seedsOf(reader: ReaderName, examples: string): string[] {
  const plain = texts(examples).map((text) => JSON.stringify(JSON.parse(text)));
  const jobs = [...plain, ...plain.slice(0, 2).map(rareJob)];
  switch (reader) {
    case "job":
    case "opened":
    case "link":
      return jobs;
    case "whole":
      return texts(`${examples}/whole`).map((text) => JSON.stringify(JSON.parse(text)));
    case "shop":
      return texts(`${examples}/shop`).map((text) => JSON.stringify(JSON.parse(text)));
    case "drawing":
      return drawings;
    case "pattern":
      return patterns;
    case "photo":
      return smallPictures().map((bytes) => bytes.toString("latin1"));
    case "stored":
      return [
        JSON.stringify(metals),
        ...jobs.map((text, place) =>
          JSON.stringify({ version: 1, place, file: JSON.parse(text), ...(place % 2 === 0 && { sample }) }),
        ),
      ];
  }
}
