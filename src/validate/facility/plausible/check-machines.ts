import type { Capability } from '../../../model/capability.ts'
import type { Problem } from '../../../model/problem.ts'
import { foot, mile } from '../../../model/quantity/units.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { statedAt, written } from './valued.ts'

const mph = mile / 3600

/** What machines of a kind are like: the greatest working speed, m/s, and widths, m. */
const kinds: Readonly<
  Partial<
    Record<Capability, { readonly fastest: number; readonly widths?: readonly [number, number] }>
  >
> = {
  grade: { fastest: 8 * mph, widths: [4 * foot, 18 * foot] },
  harrow: { fastest: 14 * mph, widths: [3 * foot, 40 * foot] },
  condition: { fastest: 10 * mph, widths: [3 * foot, 20 * foot] },
  screen: { fastest: 14 * mph, widths: [3 * foot, 40 * foot] },
  'roll-drum': { fastest: 10 * mph, widths: [2 * foot, 10 * foot] },
  'roll-tires': { fastest: 25 * mph },
  spray: { fastest: 15 * mph },
}

/** More of one kind than any county fair has. */
const most = 12

/** A machine is such as there are. Common practice, no source. */
export const checkMachines = (parsed: ParsedFacility): Problem[] =>
  (parsed.file.equipment ?? []).flatMap(({ can }, i) => {
    const at = (key: string) => statedAt(parsed, ['equipment', i, key])
    const warn = (key: string, hint: string): Problem =>
      parsed.tree.problem(
        parsed.tree.placeOf(['equipment', i, key]),
        'facility/odd',
        `${key} ${written(parsed, ['equipment', i, key])}: no machine that does this is like that`,
        { hint, severity: 'warning' },
      )
    const of = can.flatMap((c) => kinds[c] ?? [])
    const fastest = Math.max(...of.map((k) => k.fastest))
    const widths = of.flatMap((k) => k.widths ?? [])
    const [speed, width, count] = [at('speed'), at('width'), at('count')]
    return [
      ...(speed && of.length > 0 && speed.si > fastest * (1 + 1e-9)
        ? [warn('speed', `working speed; up to ${(fastest / mph).toFixed(0)} mph are usual`)]
        : []),
      ...(width &&
      widths.length > 0 &&
      (width.si < Math.min(...widths) || width.si > Math.max(...widths))
        ? [
            warn(
              'width',
              `from ${(Math.min(...widths) / foot).toFixed(0)} to ${(Math.max(...widths) / foot).toFixed(0)} ft are usual`,
            ),
          ]
        : []),
      ...(count && count.si > most ? [warn('count', 'count the machines that work at once')] : []),
    ]
  })
