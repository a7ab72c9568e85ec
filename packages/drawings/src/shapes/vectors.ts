/** Points and directions in space, as plain numbers: for pictures only, never for sizes. */

export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export function vector(x: number, y: number, z: number): Vector {
  return { x, y, z };
}

export function dot(a: Vector, b: Vector): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function cross(a: Vector, b: Vector): Vector {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

export function minus(a: Vector, b: Vector): Vector {
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z };
}

export function plus(a: Vector, b: Vector): Vector {
  return { x: a.x + b.x, y: a.y + b.y, z: a.z + b.z };
}

export function scaled(a: Vector, by: number): Vector {
  return { x: a.x * by, y: a.y * by, z: a.z * by };
}

/** The same direction, one long; a vector of no length stays as it is. */
export function unit(a: Vector): Vector {
  const length = Math.sqrt(dot(a, a));
  return length === 0 ? a : scaled(a, 1 / length);
}

/** The point at `share` of the way. */
export function between(from: Vector, to: Vector, share: number): Vector {
  return plus(from, scaled(minus(to, from), share));
}
