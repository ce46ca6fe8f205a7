import { afterEach, describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { keepDrawings, renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { keepDrawingsIn } from '../../../src/render/drawings/kept-drawings.ts'
import type { Words } from '../../../src/validate/schemas/words.ts'
import { smallManual } from '../../support/small.ts'

/** Keeps as a cache folder does, and counts what is kept. */
function openStore() {
  const values = new Map<string, unknown>()
  const keyOf = (kind: string, parts: readonly string[]): string => JSON.stringify([kind, parts])
  const counted = { kept: 0 }
  keepDrawingsIn({
    find: (kind, parts) => {
      const key = keyOf(kind, parts)
      return values.has(key) ? { value: structuredClone(values.get(key)) } : undefined
    },
    keep: (kind, parts, value) => {
      counted.kept++
      values.set(keyOf(kind, parts), structuredClone(value))
    },
  })
  return counted
}

afterEach(() => keepDrawingsIn(undefined))

/** All drawings in all ways in which they are shown. */
const shown = (manual: Manual, words: Words) =>
  Object.entries(renderDrawings({ ...manual }, words)).map(([name, d]) => [
    name,
    d.number,
    d.title,
    d.alt,
    d.at('page'),
    d.at('side'),
    d.onScreen('page'),
  ])

/** Draws all that a command shows, and keeps it. */
function draw(manual: Manual, words: Words): void {
  const own = { ...manual }
  for (const drawing of Object.values(renderDrawings(own, words))) drawing.onScreen('side')
  keepDrawings(own)
}

describe('drawings that are kept', () => {
  it('are not drawn again of the same numbers', async () => {
    const { manual, words } = await smallManual()
    const counted = openStore()
    draw(manual, words)
    const { kept } = counted
    expect(kept).toBeGreaterThan(20)
    draw({ ...manual, date: '2031-01-01' }, words)
    expect(counted.kept).toBe(kept)
  })

  it('come out as without what is kept, whatever has changed since', async () => {
    const { manual, words } = await smallManual()
    const { geometry, charts, facility, quantities } = manual
    const [first] = geometry.marks
    const changed: readonly [Manual, Words][] = [
      [manual, words],
      [{ ...manual, geometry: { ...geometry, marks: [] } }, words],
      [{ ...manual, geometry: { ...geometry, marks: first ? [first, first] : [] } }, words],
      [{ ...manual, charts: { ...charts, washout: undefined, rolling: undefined } }, words],
      [{ ...manual, facility: { ...facility, system: 'metric' } }, words],
      [manual, { ...words, drawing: { ...words.drawing, number: words.today.race } }],
      ...Object.keys(quantities)
        .filter((_, i) => i % 397 === 0)
        .map((name): [Manual, Words] => {
          const { [name]: _, ...others } = quantities
          return [{ ...manual, quantities: others }, words]
        }),
    ]
    const fresh = changed.map(([m, w]) => shown(m, w))
    openStore()
    draw(manual, words)
    for (const [i, [m, w]] of changed.entries()) {
      expect(shown(m, w), String(i)).toEqual(fresh[i])
      draw(m, w)
    }
    for (const [i, [m, w]] of changed.entries()) expect(shown(m, w), String(i)).toEqual(fresh[i])
  })
})
