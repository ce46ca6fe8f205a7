import { formulaText } from '../../compute/formula/formula-text.ts'
import type { Worksheet } from '../../model/figure.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'

/** What formulas take for granted, with how its symbol is found in them. */
const constants: readonly {
  readonly tex: string
  readonly found: RegExp
  readonly us: string
  readonly metric: string
}[] = [
  {
    tex: '\\rho_{water}',
    found: /\\rho_\{water\}/,
    us: '62.428 lb/ft³',
    metric: '1,000 kg/m³',
  },
  {
    tex: 'g',
    found: /(?<!\\text\{)(?<![a-zA-Z\\_])g(?![a-zA-Z])/,
    us: '32.174 ft/s²',
    metric: '9.8066 m/s²',
  },
]

/** The constants in a worksheet's formulas, for the terminal. */
export function constantsText({ formulas }: Worksheet, system: UnitSystem): string[] {
  const right = formulas.map(({ tex }) => tex.slice(tex.indexOf('=') + 1))
  const used = constants.filter(({ found }) => right.some((tex) => found.test(tex)))
  return used.length === 0
    ? []
    : ['Constants', ...used.map((c) => `  ${formulaText(c.tex)} = ${c[system]}`), '']
}
