import { describe, expect, it } from "vitest";
import type { Drawing, Mark } from "../../src/drawing/model.ts";
import { polygon as ring } from "../../src/drawing/polygon.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import { polygon } from "../pictures/shapes.ts";

const window = { min: { x: -10, y: -5 }, max: { x: 30, y: 20 } };
const drawing = (...marks: Drawing["marks"]): Drawing => ({ sentence: "A test.", window, marks });

/**
 * Centre of an SVG arc with equal radii from its end points and flags:
 * SVG 2 (W3C), appendix B.2.4, conversion from endpoint to center parameterization. y downward, as in the file.
 */
function arcCenter(from: number[], to: number[], radius: number, large: boolean, sweep: boolean): number[] {
  const [x1, y1, x2, y2] = [from[0]!, from[1]!, to[0]!, to[1]!];
  const [px, py] = [(x1 - x2) / 2, (y1 - y2) / 2];
  const under = Math.max(0, (radius * radius) / (px * px + py * py) - 1);
  const factor = (large === sweep ? -1 : 1) * Math.sqrt(under);
  return [factor * py + (x1 + x2) / 2, -factor * px + (y1 + y2) / 2];
}

const MOVE = /M([-\d.]+) ([-\d.]+)A/u;
const ARC = /A([\d.]+) [\d.]+ 0 ([01]) ([01]) ([-\d.]+) ([-\d.]+)/gu;

describe("writeSvg", () => {
  it("is as large in mm as the window, times the enlargement, with user units of one drawing mm", () => {
    expect(writeSvg(drawing())).toContain('width="40mm" height="25mm" viewBox="-10 -20 40 25"');
    expect(writeSvg(drawing(), { enlargement: 4 })).toContain(
      'width="160mm" height="100mm" viewBox="-10 -20 40 25"',
    );
  });

  it.each([
    [0, Math.PI / 2],
    [2, -1.2],
    [-0.4, 3],
    [1, 0.01],
  ])("writes an arc from %f through %f rad as an arc about the same centre", (startRad, sweepRad) => {
    const svg = writeSvg(
      drawing({ kind: "arc", layer: "dimension", center: { x: 3, y: 4 }, radius: 7, startRad, sweepRad }),
    );
    const [, x, y] = MOVE.exec(svg) ?? [];
    let at = [Number(x), Number(y)];
    let turned = 0;
    for (const [, radius, large, sweep, toX, toY] of svg.matchAll(ARC)) {
      const to = [Number(toX), Number(toY)];
      const [cx, cy] = arcCenter(at, to, Number(radius), large === "1", sweep === "1");
      const half = Math.asin(Math.min(1, Math.hypot(to[0]! - at[0]!, to[1]! - at[1]!) / 14));
      // End points are rounded to 1e-4 mm; over a short arc that moves the centre by radius/chord times as much.
      expect(Math.hypot(cx! - 3, cy! + 4)).toBeLessThan(1e-4 * (2 + 2 / Math.sin(half)));
      turned += (sweep === "1" ? -1 : 1) * 2 * half;
      at = to;
    }
    expect(turned).toBeCloseTo(sweepRad, 3);
    expect(at[0]).toBeCloseTo(3 + 7 * Math.cos(startRad + sweepRad), 3);
    expect(at[1]).toBeCloseTo(-4 - 7 * Math.sin(startRad + sweepRad), 3);
  });

  it("writes a whole circle in pieces that come back to where they began", () => {
    const svg = writeSvg(
      drawing({
        kind: "arc",
        layer: "note",
        center: { x: 0, y: 0 },
        radius: 2,
        startRad: 0,
        sweepRad: 2 * Math.PI,
      }),
    );
    expect(svg).toContain("M2 0A2 2 0 0 0 -1 -1.7321A2 2 0 0 0 -1 1.7321A2 2 0 0 0 2 0");
  });

  it("turns y over, so that up in the drawing is up on the page", () => {
    const svg = writeSvg(drawing({ kind: "line", layer: "note", from: { x: 1, y: 2 }, to: { x: 3, y: -4 } }));
    expect(svg).toContain("M1 -2L3 4");
  });

  it("keeps words words: markup in names, sentences and captions never becomes markup", () => {
    const evil = `</text><script>alert("1")</script>'&\u0000\u000b\ud800`;
    const svg = writeSvg({
      sentence: evil,
      window,
      marks: [
        { kind: "text", layer: "note", at: { x: 0, y: 0 }, words: evil, heightMm: 3, anchor: "start" },
        {
          kind: "dimension",
          layer: "dimension",
          from: { x: 0, y: 0 },
          to: { x: 5, y: 0 },
          words: evil,
          offsetMm: 0,
        },
        { kind: "outline", layer: "part", outline: polygon([0, 0], [1, 0], [0, 1]), caption: evil },
      ],
    });
    expect(svg).not.toContain("<script");
    expect(svg.match(/&lt;script&gt;/gu)).toHaveLength(5);
    // XML 1.0 (W3C), 2.2: no control signs but tab and line ends, no lone surrogates.
    expect(svg).not.toMatch(/[^\n\P{Cc}]|\p{Cs}/u);
    expect(tagsBalance(svg)).toBe(true);
  });

  it("says the sentence as title and description", () => {
    const svg = writeSvg(drawing(), { title: "Step 1" });
    expect(svg).toContain('<title id="picture-title">Step 1</title>');
    expect(svg).toContain('<desc id="picture-sentence">A test.</desc>');
  });

  it("draws crosses and arrowheads at one size on the page whatever the enlargement", () => {
    const cross = drawing({ kind: "cross", layer: "contact", at: { x: 0, y: 0 } });
    const arm = (svg: string) => Math.abs(Number(/class="contact">\s*<path d="M([-\d.]+)/u.exec(svg)?.[1]));
    expect(arm(writeSvg(cross)) / arm(writeSvg(cross, { enlargement: 5 }))).toBeCloseTo(5, 2);
  });

  it("hatches contact and bodies, those of the brake told apart by direction or pitch", () => {
    const box = ring([
      { x: 0, y: 0 },
      { x: 8, y: 0 },
      { x: 8, y: 3 },
      { x: 0, y: 3 },
    ]);
    const layers = ["bed", "clamp", "leaf", "frame", "contact"] as const;
    const svg = writeSvg(drawing(...layers.map((layer): Mark => ({ kind: "outline", layer, outline: box }))));
    const hatches = [
      ...svg.matchAll(/id="hatch-(\w+)-[\d.]+"[^>]*width="([\d.]+)"[^>]*rotate\(([-\d.]+)\)/gu),
    ];
    expect(hatches.map(([, layer]) => layer)).toEqual([...layers]);
    expect(new Set(hatches.map(([, , pitch, angle]) => `${pitch} ${angle}`)).size).toBe(layers.length);
    for (const [, layer] of hatches) expect(svg).toContain(`style="fill:url(#hatch-${layer}-`);
  });
});

/** Every opened tag is closed in turn. */
function tagsBalance(xml: string): boolean {
  const open: string[] = [];
  for (const [, closing, name, selfClosing] of xml.matchAll(/<(\/?)([a-z]+)\b[^<>]*?(\/?)>/giu)) {
    if (selfClosing === "/") continue;
    if (closing === "") open.push(name!);
    else if (open.pop() !== name) return false;
  }
  return open.length === 0;
}
