import { describe, expect, it } from 'vitest'
import { type Missing, missingOneByOne } from '../../../../src/browser/form/live/missing.ts'
import type { Shown } from '../../../../src/browser/form/live/worked.ts'
import { demoFiles } from '../../../answers/support/work.ts'
import { shownOf } from './support.ts'

function missingOf(shown: Shown): readonly Missing[] {
  const steps = missingOneByOne(shown)
  for (;;) {
    const { done, value } = steps.next()
    if (done) return value
  }
}

describe('what is missing', () => {
  it('stands in the order of what it would make surer, and is no setting of the work', () => {
    const missing = missingOf(shownOf(demoFiles('brambleford')))
    expect(missing.length).toBeGreaterThan(10)
    expect(missing.map((m) => m.movement)).toEqual(
      missing.map((m) => m.movement).toSorted((a, b) => b - a),
    )
    for (const { entry, figures, most } of missing) {
      expect(entry).not.toMatch(/^practice\./)
      expect(figures).toBeGreaterThan(0)
      expect(most).not.toMatch(/^, |, $/)
    }
  })

  it('of a track that nobody has described begins with the oval itself', () => {
    expect(missingOf(shownOf(new Map()))[0]?.entry).toMatch(/^oval\./)
  })

  it('is no longer missing once it has been said', () => {
    const files = demoFiles('brambleford')
    const text = files.get('facility.yaml') ?? ''
    const [first] = missingOf(shownOf(files)).filter((m) => m.entry.startsWith('oval.'))
    const said = new Map([
      ...files,
      [
        'facility.yaml',
        `${text}  - { of: ${first?.entry}, value: "${first?.value}", date: 2027-06-05, by: T. Marchbank }\n`,
      ],
    ])
    const left = missingOf(shownOf(said)).map((m) => m.entry)
    expect(first).toBeDefined()
    expect(left).not.toContain(first?.entry)
  })
})
