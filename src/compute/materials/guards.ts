/** Passes on a finite number above zero. @throws RangeError for any other. */
export function positive(name: string, x: number): number {
  if (!(x > 0 && x < Infinity)) throw new RangeError(`${name} must be above zero`)
  return x
}

/** Passes on a finite number of at least zero. @throws RangeError for any other. */
export function notNegative(name: string, x: number): number {
  if (!(x >= 0 && x < Infinity)) throw new RangeError(`${name} must not be below zero`)
  return x
}

/** Passes on a share from 0 to 1. @throws RangeError for any other. */
export function share(name: string, x: number): number {
  if (!(x >= 0 && x <= 1)) throw new RangeError(`${name} must be a share from 0 to 1`)
  return x
}
