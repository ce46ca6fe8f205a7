import { understandQuantity } from '../../../edit/form/typed-quantity.ts'
import type { Understood } from '../../../edit/form/understood.ts'
import {
  factOfReading,
  isSameSpot,
  type ReadingName,
  type ReadingTable,
  type Spot,
  unitOfReading,
} from '../../../edit/readings/table.ts'
import { factSpec } from '../../../model/fact-spec.ts'
import { fill } from '../../../model/pattern.ts'
import { classed, element } from '../../element.ts'
import type { Sitting } from '../sitting.ts'
import { keepMisfit, misfitAt } from './grid-state.ts'
import { putReading, spotSaid } from './spot.ts'

/** A cell of the grid, for the reading at one place. */
export type Cell = {
  readonly spot: Spot
  readonly input: HTMLInputElement
  readonly node: HTMLElement
  /** What is wrong with what is typed there. */
  readonly fault: () => string | undefined
}

/** A grid that is typed in. */
export type Asked = {
  readonly sitting: Sitting
  /** The file of the table. */
  readonly file: string
  readonly name: ReadingName
  readonly date: string
}

function understood({ sitting, name }: Asked, typed: string): Understood {
  const spec = factSpec(factOfReading[name])
  if (!spec) throw new RangeError(`no fact of ${name}`)
  return understandQuantity(spec, typed, sitting.locale())
}

/** A reading without the unit that stands at the head of the grid. */
function bare({ sitting, name }: Asked, typed: string): string {
  const unit = ` ${unitOfReading(name, sitting.locale().system)}`
  return typed.endsWith(unit) ? typed.slice(0, -unit.length) : typed
}

const typedIn = ({ readings }: ReadingTable, spot: Spot): string | undefined =>
  readings.find((reading) => isSameSpot(reading, spot))?.typed

/**
 * @param table As it is now.
 * @param say Says what was understood, below the grid.
 */
export function cellAt(
  asked: Asked,
  spot: Spot,
  table: ReadingTable,
  say: (words: string) => void,
): Cell {
  const { sitting, file } = asked
  const input = element('input')
  input.type = 'text'
  input.autocomplete = 'off'
  // Inches are read in fractions, for which a pad of digits has no stroke.
  input.inputMode = sitting.locale().system === 'us' ? 'text' : 'decimal'
  input.setAttribute('aria-label', spotSaid(sitting, spot))
  input.value = misfitAt(file, spot) ?? bare(asked, typedIn(table, spot) ?? '')
  const step = `${file} ${spotSaid(sitting, spot)}`
  const faultOf = (): string | undefined => {
    const typed = input.value.trim()
    return typed === '' ? undefined : understood(asked, typed).fault
  }
  const tell = (): void => {
    const typed = input.value.trim()
    const found = typed === '' ? undefined : understood(asked, typed)
    const value = found?.shown ?? found?.typed
    const fits = found !== undefined && found.fault === undefined && value !== undefined
    const words = sitting.said.form.says.readings.said
    say(fits ? fill(words, { spot: spotSaid(sitting, spot), value }) : '')
  }
  const write = (): void => {
    const typed = input.value.trim()
    const found = typed === '' ? undefined : understood(asked, typed)
    const isMisfit = found?.fault !== undefined
    keepMisfit(file, spot, isMisfit ? typed : undefined)
    putReading(sitting, file, spot, isMisfit ? undefined : found?.typed, step)
    tell()
  }
  input.addEventListener('input', write)
  input.addEventListener('change', () => {
    if (faultOf() === undefined) input.value = bare(asked, understood(asked, input.value).typed)
    sitting.settle()
  })
  input.addEventListener('focus', () => {
    input.select()
    tell()
  })
  return { spot, input, node: classed('td', '', input), fault: faultOf }
}
