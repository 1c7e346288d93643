/**
 * Section properties of plain stock shapes: area, centroid, second moments about the centroid's own axes.
 * Parallel axis theorem over rectangles and circles (Mott, Machine Elements in Mechanical Design, app. 1; Machinery's Handbook).
 * Bound: exact for sharp corners; rolled fillets and rounded tube corners are left out, up to 5 % on small tube.
 */
import type { Mm } from "../../units/quantity.ts";

/** A stock shape. Width lies level (x), height stands (y); open sides are named where they matter. */
export type Shape =
  | { readonly kind: "flat"; readonly widthMm: Mm; readonly heightMm: Mm }
  /** One leg on the ground (its length is the width), the other standing at the left. */
  | { readonly kind: "angle"; readonly widthMm: Mm; readonly heightMm: Mm; readonly thicknessMm: Mm }
  | { readonly kind: "tube"; readonly widthMm: Mm; readonly heightMm: Mm; readonly wallMm: Mm }
  /** Web on the ground, both flanges standing. */
  | {
      readonly kind: "channel";
      readonly widthMm: Mm;
      readonly heightMm: Mm;
      readonly webMm: Mm;
      readonly flangeMm: Mm;
    }
  | { readonly kind: "round"; readonly diameterMm: Mm }
  | { readonly kind: "roundTube"; readonly diameterMm: Mm; readonly wallMm: Mm };

export interface SectionProperties {
  readonly areaMm2: number;
  /** Centroid from the left edge and from the underside. */
  readonly centroidXMm: Mm;
  readonly centroidYMm: Mm;
  /** Second moment about the level axis through the centroid: stiffness against a load up or down. */
  readonly secondMomentXMm4: number;
  /** Second moment about the upright axis through the centroid. */
  readonly secondMomentYMm4: number;
  /** Least section modulus I/c for a load up or down. */
  readonly modulusXMm3: number;
  readonly modulusYMm3: number;
}

/** A rectangle counted in (sign 1) or taken out (sign −1), by its lower left corner. */
interface Block {
  readonly x: Mm;
  readonly y: Mm;
  readonly width: Mm;
  readonly height: Mm;
  readonly sign: 1 | -1;
}

/**
 * Properties of a shape.
 * @throws RangeError where a wall or leg leaves no room, or a size is not above zero
 * @example sectionOf({ kind: "flat", widthMm: 20, heightMm: 10 }).secondMomentXMm4 // 1666.67
 */
export function sectionOf(shape: Shape): SectionProperties {
  if (shape.kind === "round") return ring(shape.diameterMm, 0);
  if (shape.kind === "roundTube") return ring(shape.diameterMm, shape.diameterMm - 2 * shape.wallMm);
  const { widthMm: w, heightMm: h } = shape;
  const solid: Block = { x: 0, y: 0, width: w, height: h, sign: 1 };
  switch (shape.kind) {
    case "flat":
      return fromBlocks([solid], w, h);
    case "angle": {
      const t = shape.thicknessMm;
      return fromBlocks([solid, { x: t, y: t, width: w - t, height: h - t, sign: -1 }], w, h);
    }
    case "tube": {
      const t = shape.wallMm;
      return fromBlocks([solid, { x: t, y: t, width: w - 2 * t, height: h - 2 * t, sign: -1 }], w, h);
    }
    case "channel": {
      const { webMm, flangeMm } = shape;
      const hollow: Block = { x: flangeMm, y: webMm, width: w - 2 * flangeMm, height: h - webMm, sign: -1 };
      return fromBlocks([solid, hollow], w, h);
    }
  }
}

function fromBlocks(blocks: readonly Block[], widthMm: Mm, heightMm: Mm): SectionProperties {
  for (const { width, height } of blocks) {
    if (!(width > 0) || !(height > 0)) {
      throw new RangeError(
        `a section needs walls thinner than its half sizes, found ${width} × ${height} left`,
      );
    }
  }
  const sum = (of: (block: Block) => number) => blocks.reduce((total, b) => total + b.sign * of(b), 0);
  const areaMm2 = sum((b) => b.width * b.height);
  const centroidXMm = sum((b) => b.width * b.height * (b.x + b.width / 2)) / areaMm2;
  const centroidYMm = sum((b) => b.width * b.height * (b.y + b.height / 2)) / areaMm2;
  const secondMomentXMm4 = sum(
    (b) => (b.width * b.height ** 3) / 12 + b.width * b.height * (b.y + b.height / 2 - centroidYMm) ** 2,
  );
  const secondMomentYMm4 = sum(
    (b) => (b.height * b.width ** 3) / 12 + b.width * b.height * (b.x + b.width / 2 - centroidXMm) ** 2,
  );
  return {
    areaMm2,
    centroidXMm,
    centroidYMm,
    secondMomentXMm4,
    secondMomentYMm4,
    modulusXMm3: secondMomentXMm4 / Math.max(centroidYMm, heightMm - centroidYMm),
    modulusYMm3: secondMomentYMm4 / Math.max(centroidXMm, widthMm - centroidXMm),
  };
}

function ring(outsideMm: Mm, insideMm: Mm): SectionProperties {
  if (!(outsideMm > 0) || insideMm < 0) {
    throw new RangeError(
      `a round section needs a wall under half its diameter, found ${outsideMm} − ${insideMm}`,
    );
  }
  const secondMoment = (Math.PI / 64) * (outsideMm ** 4 - insideMm ** 4);
  const modulus = secondMoment / (outsideMm / 2);
  return {
    areaMm2: (Math.PI / 4) * (outsideMm ** 2 - insideMm ** 2),
    centroidXMm: outsideMm / 2,
    centroidYMm: outsideMm / 2,
    secondMomentXMm4: secondMoment,
    secondMomentYMm4: secondMoment,
    modulusXMm3: modulus,
    modulusYMm3: modulus,
  };
}
