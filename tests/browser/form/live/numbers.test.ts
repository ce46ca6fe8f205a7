import { describe, expect, it } from 'vitest'
import { ovalLengths, tellingNumbers } from '../../../../src/browser/form/live/numbers.ts'
import { isFigureId } from '../../../../src/compute/uses/ids.ts'
import { demoFiles } from '../../../answers/support/work.ts'
import { demos, loadDemo } from '../../../support/demo.ts'
import { shownOf } from './support.ts'

const files = (text: string): ReadonlyMap<string, string> => new Map([['facility.yaml', text]])

describe('the most telling numbers', () => {
  it('are figures that there can be', async () => {
    const { library } = await loadDemo('larkmoor')
    const ids = library?.words.live.telling.map((t) => t.figure) ?? []
    expect(ids.length).toBeGreaterThan(9)
    expect(ids.filter((id) => !isFigureId(id))).toEqual([])
  })

  it.each(demos)('of %s are ten, as the manual prints them', (demo) => {
    const shown = shownOf(demoFiles(demo))
    const numbers = tellingNumbers(shown)
    expect(numbers.length).toBeLessThanOrEqual(10)
    expect(numbers.length).toBeGreaterThan(4)
    const printed = new Map(shown.manual.figures.map((f) => [f.id, f]))
    for (const { figure, number, unit, estimate } of numbers)
      expect(printed.get(figure)).toMatchObject({ estimate, value: { ok: true, number, unit } })
  })

  it('that rest on a stand-in are estimates, those that do not are not', () => {
    const head = 'id: a\nname: A\nplace: { town: A }\nunits: us\npaper: letter\n'
    const cushion = 'cushion: { material: clay }\n'
    const lone = shownOf(files(`${head}${cushion}oval: { straight: 600 ft }\n`))
    const whole = shownOf(files(`${head}${cushion}oval: { straight: 600 ft, lap: 2640 ft }\n`))
    const marks = (shown: typeof lone) =>
      ovalLengths(shown).map(({ figure, estimate }) => [figure, estimate])
    expect(marks(lone)).toEqual([
      ['shape.lap', true],
      ['shape.straight', false],
      ['shape.radius', true],
      ['outside.length', true],
    ])
    expect(marks(whole).slice(0, 3)).toEqual([
      ['shape.lap', false],
      ['shape.straight', false],
      ['shape.radius', false],
    ])
  })
})
