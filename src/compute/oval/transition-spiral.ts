import { positive } from '../materials/guards.ts'

/**
 * Fresnel integrals in the π/2 form: C(x) = ∫cos(πt²/2) dt and S(x) = ∫sin(πt²/2) dt from 0 to x.
 */
export type Fresnel = { readonly c: number; readonly s: number }

/**
 * Fresnel integrals by their power series.
 * @param x From 0 to 3; beyond that the series loses digits, and no transition gets there.
 * @throws RangeError outside that range.
 * @see nbs-ams-55
 * @example fresnel(1) // { c: 0.779893…, s: 0.438259… }
 */
export function fresnel(x: number): Fresnel {
  if (!(x >= 0 && x <= 3)) throw new RangeError('Fresnel integrals are worked out from 0 to 3')
  const u = (Math.PI / 2) * x ** 2
  let [c, s, term] = [0, 0, x]
  // term = x uᵏ / k! with the sign of cos and sin; each is divided by 2k + 1 as it is summed.
  for (let k = 0; k < 120; k++) {
    const part = term / (2 * k + 1)
    if (k % 2 === 0) c += part
    else s += part
    term *= (k % 2 === 0 ? 1 : -1) * (u / (k + 1))
  }
  return { c, s }
}

/**
 * Where a transition from a straight to a turn ends: angle in rad, the rest in the unit of length
 * that was put in.
 */
export type Spiral = {
  readonly angle: number
  /** Along the straight, and square to it. */
  readonly x: number
  readonly y: number
  /** How far the circle is moved in, and how far before its end the transition begins. */
  readonly shift: number
  readonly tangent: number
  readonly chord: number
}

/**
 * A clothoid: its bend grows in step with its length, from none on the straight to that of the
 * turn.
 *
 *     θ = Ls ÷ 2R,  a = √(π R Ls),  X = a C(Ls ÷ a),  Y = a S(Ls ÷ a)
 *     p = Y − R (1 − cos θ),  k = X − R sin θ
 *
 * @param length Of the transition, m, above 0.
 * @param radius Of the turn, m, above 0.
 * @throws RangeError when an argument is out of range.
 */
export function transitionSpiral(length: number, radius: number): Spiral {
  const angle = positive('length', length) / (2 * positive('radius', radius))
  const a = Math.sqrt(Math.PI * radius * length)
  const { c, s } = fresnel(length / a)
  const [x, y] = [a * c, a * s]
  return {
    angle,
    x,
    y,
    shift: y - radius * (1 - Math.cos(angle)),
    tangent: x - radius * Math.sin(angle),
    chord: Math.hypot(x, y),
  }
}

/**
 * Length of a half turn with an equal transition at either end: π R + Ls. @throws RangeError when
 * an argument is out of range. @see geometry
 */
export const spiraledTurn = (radius: number, length: number): number =>
  Math.PI * positive('radius', radius) + positive('length', length)

/**
 * Distance from where the straights would meet to the start of the transition: tan(Δ ÷ 2)(R + p) +
 * k. @see geometry
 */
export const spiralTangent = (
  deflection: number,
  radius: number,
  { shift, tangent }: Spiral,
): number => Math.tan(deflection / 2) * (radius + shift) + tangent
