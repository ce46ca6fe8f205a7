import { describe, expect, it } from 'vitest'
import { putAside } from '../../../../src/browser/form/live/left-out.ts'
import { shownOf } from './support.ts'

const head = 'id: a\nname: A\nplace: { town: A }\nunits: us\npaper: letter\n'
const asideOf = (text: string) => putAside(shownOf(new Map([['facility.yaml', `${head}${text}`]])))

describe('what is left out of the answers', () => {
  it('is not said once more to be something that nobody has said', () => {
    const { out, unsaid } = asideOf('oval: { lap: long }\ncushion: { material: clay }\n')
    expect(out.map((p) => p.entry)).toEqual(['oval.lap'])
    expect(out[0]?.why).not.toBe('')
    expect(unsaid.map((p) => p.entry)).not.toContain('oval.lap')
  })

  it('says which of a list it is', () => {
    const { out } = asideOf(
      'cushion: { material: clay }\nrace-days:\n  - { date: 2027-08-03 }\n  - { date: 2027-08-03 }\n',
    )
    expect(out.map((p) => p.label).join()).toMatch(/number 2/)
    expect(out.map((p) => p.why).join()).not.toMatch(/first-post/)
  })

  it('is nothing where all fits', () => {
    const { out, unsaid } = asideOf(
      'oval: { lap: 2640 ft, straight: 600 ft }\ncushion: { material: clay }\n',
    )
    expect([...out, ...unsaid]).toEqual([])
  })
})
