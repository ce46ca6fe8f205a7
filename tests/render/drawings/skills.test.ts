import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { type DrawingName, renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { withFractions } from '../../../src/render/drawings/letters.ts'
import { demoManual } from '../../support/demo.ts'
import { textsOf } from '../support/sized-drawing.ts'

const { manual, words } = await demoManual('larkmoor')
const drawings = renderDrawings(manual, words)

const textOf = (name: string): string => manual.quantities[name]?.text ?? ''

/** Letters of a drawing show fractions as one letter. */
const drawnText = (name: string): string => withFractions(textOf(name))

/** The same track with another number. */
function withNumber(name: string, text: string, si: number): Manual {
  const known = manual.quantities[name]
  if (!known) throw new Error(`no ${name}`)
  return { ...manual, quantities: { ...manual.quantities, [name]: { ...known, text, si } } }
}

const readings: readonly (readonly [DrawingName, readonly string[]])[] = [
  ['tooth-depth', ['practice.harrow.depth', 'practice.print-depth', 'practice.harrow.step']],
  [
    'open-steps',
    [
      'practice.reopen.depth',
      'practice.harrow.step',
      'practice.harrow.depth',
      'practice.reopen.look',
    ],
  ],
  ['straightedge', ['cushion.depth.tolerance']],
  ['squared-edge', ['practice.thin-layer', 'practice.washout.lift']],
  ['no-ride', ['practice.stand-clear']],
  [
    'pylon-line',
    ['oval.pylons.straights', 'oval.pylons.turns', 'practice.off-line', 'practice.pylon-height'],
  ],
  ['cup-test', ['gear.spray.spray-width', 'practice.cups-apart']],
  ['ridge', ['ridge.taken', 'ridge.dam-width']],
]

describe('drawings of the eye and hand', () => {
  it.each(readings)('%s shows the numbers of this track, and says them', (name, quantities) => {
    const d = drawings[name]
    const shown = textsOf(d?.at('page') ?? '')
      .map((t) => t.said)
      .join(' ')
    for (const quantity of quantities) {
      expect(textOf(quantity), quantity).not.toBe('')
      expect(shown).toContain(drawnText(quantity))
      expect(d?.alt).toContain(textOf(quantity))
    }
  })

  it.each(readings)('%s follows when a number changes', (name, [quantity = '']) => {
    const other = renderDrawings(withNumber(quantity, '9 ells', 0.019), words)[name]
    expect(other?.at('page')).toContain('9 ells')
    expect(other?.alt).toContain('9 ells')
  })

  it('signals are said one by one, with what the driver answers', () => {
    const { alt = '' } = drawings['hitch-signals'] ?? {}
    const said = words.labels['signals'] ?? {}
    for (const part of Object.values(said)) expect(alt).toContain(part)
  })

  it('a ridge is drawn with the enlargement that it says', () => {
    const factor = Number(/drawn (\d+) times/.exec(drawings.ridge?.alt ?? '')?.[1])
    const twice = renderDrawings(withNumber('ridge.dam-width', '5 ft', 1.524), words).ridge
    expect(Number(/drawn (\d+) times/.exec(twice?.alt ?? '')?.[1])).toBeGreaterThanOrEqual(
      2 * factor - 1,
    )
  })

  it('are left out where the track has nothing of the kind', () => {
    const { 'gear.spray.spray-width': _, ...others } = manual.quantities
    expect(renderDrawings({ ...manual, quantities: others }, words)['cup-test']).toBeUndefined()
  })
})
