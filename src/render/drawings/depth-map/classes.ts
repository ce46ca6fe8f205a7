import type { CushionMap } from '../../../model/manual/survey.ts'
import { dotted, type Field, hatched } from '../fills.ts'
import { type Point, poly } from '../ink.ts'

/** What a depth is against the one that is wanted. */
export const classNames = ['farTooDeep', 'tooDeep', 'asWanted', 'tooThin', 'farTooThin'] as const

export type DepthClass = (typeof classNames)[number]

/** A reading at the limit still counts as wanted. */
export function classOf(depth: number, { target, tolerance }: CushionMap): DepthClass {
  const off = (depth - target) / tolerance
  const far = Math.abs(off) > 2 + 1e-6
  if (Math.abs(off) <= 1 + 1e-6) return 'asWanted'
  if (off > 0) return far ? 'farTooDeep' : 'tooDeep'
  return far ? 'farTooThin' : 'tooThin'
}

/** Strokes for too deep, dots for too thin, more of them the farther off: a copier keeps both. */
const patterns: Readonly<Record<DepthClass, (field: Field) => string>> = {
  farTooDeep: (field) => hatched(field, 45, 4) + hatched(field, -45, 4),
  tooDeep: (field) => hatched(field, 45, 5.5),
  asWanted: () => '',
  tooThin: (field) => dotted(field, 6.5, 1.4),
  farTooThin: (field) => dotted(field, 3.6, 1.6),
}

const outline = (field: Field): string =>
  field.map((o) => poly([...o, o[0] as Point], { pen: 'hair' })).join('')

export const patterned = (field: Field, of: DepthClass): string =>
  patterns[of](field) + outline(field)
