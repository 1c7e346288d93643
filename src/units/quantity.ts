/**
 * Names for the quantities that cross a door of the engine: millimetres, degrees, radians, megapascals.
 * A plain number still fits, but one quantity handed over as another is refused by the compiler.
 */
export type Mm = number & { readonly quantity?: "mm" };
export type Deg = number & { readonly quantity?: "deg" };
export type Rad = number & { readonly quantity?: "rad" };
export type Mpa = number & { readonly quantity?: "MPa" };

const RAD_PER_DEG = Math.PI / 180;

/** Degrees to radians. @example toRad(180) // 3.141592653589793 */
export function toRad(angleDeg: Deg): Rad {
  return (angleDeg as number) * RAD_PER_DEG;
}

/** Radians to degrees. @example toDeg(Math.PI) // 180 */
export function toDeg(angleRad: Rad): Deg {
  return (angleRad as number) / RAD_PER_DEG;
}
