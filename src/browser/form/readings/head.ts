import { understandQuantity } from '../../../edit/form/typed-quantity.ts'
import { withPlace } from '../../../edit/readings/change.ts'
import { type Places, placeSaid } from '../../../edit/readings/places.ts'
import { factSpec } from '../../../model/fact-spec.ts'
import { fill } from '../../../model/pattern.ts'
import { parseQuantity } from '../../../model/quantity/parse-quantity.ts'
import { element } from '../../element.ts'
import type { Asked } from './cell.ts'
import { keepPlaces } from './grid-state.ts'
import { tableOf } from './spot.ts'

const lists = { station: 'stations', offset: 'offsets' } as const

/** A place as it was typed, meters; or what is wrong with it. */
function placeTyped({ sitting }: Asked, column: keyof typeof lists, typed: string) {
  const spec = factSpec(`survey.${column}`)
  const found = spec && understandQuantity(spec, typed, sitting.locale())
  const read = found ? parseQuantity(found.typed, { plain: true }) : undefined
  if (!read?.ok || found?.fault !== undefined) return { fault: found?.fault ?? '' }
  return { m: read.quantity.si }
}

/** The head of a row or a column, where its place stands and can be put right. */
export function headInput(
  asked: Asked,
  places: Places,
  { column, index }: { readonly column: keyof typeof lists; readonly index: number },
  complain: (words: string) => void,
): HTMLInputElement {
  const { sitting, file, date } = asked
  const { readings } = sitting.said.form.says
  const { system } = sitting.locale()
  const list = places[lists[column]]
  const from = list[index] ?? 0
  const pattern = column === 'station' ? readings.stationNumber : readings.offsetNumber
  const input = element('input')
  input.type = 'text'
  input.autocomplete = 'off'
  input.setAttribute('aria-label', fill(pattern, { number: index + 1 }))
  input.value = placeSaid(from, system)
  input.addEventListener('focus', () => input.select())
  // The field is left first, since the page is made anew.
  const show = (changed: readonly number[]): void => {
    keepPlaces(file, date, { ...places, [lists[column]]: changed })
    setTimeout(sitting.reshape)
  }
  input.addEventListener('change', () => {
    // A place that is taken out stays as long as something was read there.
    if (input.value.trim() === '') return show(list.toSpliced(index, 1))
    const { m, fault = '' } = placeTyped(asked, column, input.value.trim())
    const isTaken = list.some((n, i) => i !== index && m !== undefined && Math.abs(m - n) < 5e-4)
    const isWrong = m === undefined || isTaken
    complain(isTaken ? readings.taken : fault)
    if (isWrong) input.setAttribute('aria-invalid', 'true')
    const table = tableOf(sitting, file)
    if (isWrong || !table) return
    const text = withPlace(table, date, { column, from, to: m })
    sitting.putTable({ name: file, text }, [], '')
    show(list.with(index, m))
  })
  return input
}
