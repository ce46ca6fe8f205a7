import { fill } from '../../model/pattern.ts'
import { formatQuantity } from '../../model/quantity/format-quantity.ts'
import { depthName, type GridLine } from '../../model/records.ts'
import { element } from '../element.ts'
import type { Desk, Part } from './desk.ts'
import { withUnit } from './numbers.ts'

/** Steps between the depths to choose from, m: what a ruler is read to. */
const steps = { us: 0.0254 / 8, metric: 0.005 } as const
/** So many steps lie on each side of the wanted depth. */
const aside = 8

type Place = { readonly station: GridLine; readonly offset: GridLine; readonly name: string }

/** Depths around the wanted one, as they are called out. */
function depthTexts({ data, locale }: Desk): readonly string[] {
  const { depth } = data.wanted
  if (depth === undefined) return []
  const step = steps[data.system]
  const middle = Math.round(depth / step)
  return Array.from({ length: 2 * aside + 1 }, (_, i) => (middle - aside + i) * step)
    .filter((si) => si >= 0)
    .map((si) => formatQuantity(si, 'fineDepth', locale).number)
}

/** A mixed number, its fraction set as one. */
function withFraction(text: string): readonly (string | Node)[] {
  const [, whole = '', part = text] = /^(?:(\d+) )?(\d+\/\d+)$/.exec(text) ?? []
  if (!part.includes('/')) return [text]
  const fraction = element('span', part)
  fraction.className = 'frac'
  return whole === '' ? [fraction] : [whole, fraction]
}

/** One place after another, as somebody walks and calls out: a touch writes and goes on. */
export function depthPad(box: HTMLElement, desk: Desk): Part {
  const { stations, offsets } = desk.data
  const places: readonly Place[] = stations.flatMap((station) =>
    offsets.map((offset) => ({ station, offset, name: depthName(station.si, offset.si) })),
  )
  const said = box.querySelector('.place')
  const keys = box.querySelector('.keys')
  const done = box.querySelector('.done')
  const [before, next] = box.querySelectorAll('button')
  const isRead = ({ name }: Place): boolean => desk.kept()[name] !== undefined
  let at = 0
  let day = ''
  const go = (to: number): void => {
    at = Math.min(Math.max(0, to), places.length - 1)
    desk.show()
  }
  before?.addEventListener('click', () => go(at - 1))
  next?.addEventListener('click', () => go(at + 1))
  const buttons = depthTexts(desk).map((text) => {
    const key = element('button', ...withFraction(text))
    key.type = 'button'
    key.addEventListener('click', () => {
      const place = places[at]
      if (!place) return
      const to = at
      desk.write(place.name, withUnit('depth', text, desk.data.system))
      go(to + 1)
    })
    return { key, text }
  })
  keys?.append(...buttons.map(({ key }) => key))
  return {
    show: () => {
      // Another day begins where it was left.
      if (day !== desk.day()) {
        day = desk.day()
        const first = places.findIndex((place) => !isRead(place))
        at = Math.max(0, first)
      }
      const place = places[at]
      if (!place || !said || !done) return
      const { words } = desk.data
      const name = fill(words.records.place, {
        station: place.station.text,
        offset: place.offset.text,
      })
      if (said.textContent !== name) said.textContent = name
      done.textContent = fill(words.records.done, {
        read: places.filter(isRead).length,
        all: places.length,
      })
      const here = desk.kept()[place.name]
      for (const { key, text } of buttons)
        key.setAttribute('aria-pressed', String(here === withUnit('depth', text, desk.data.system)))
    },
  }
}
