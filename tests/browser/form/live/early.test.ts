import { describe, expect, it } from 'vitest'
import { earlyStart } from '../../../../src/browser/form/live/early.ts'
import { shownOf } from './support.ts'

const head =
  'id: a\nname: A\nplace: { town: A }\nunits: us\npaper: letter\noval: { lap: 2640 ft, straight: 600 ft }\ncushion: { material: clay }\n'

/** A fair with one truck whose way to the water takes so long, and first post at one. */
const withTruck = (travel: string) =>
  shownOf(
    new Map([
      [
        'facility.yaml',
        `${head}equipment:\n  - { id: truck, name: the truck, can: [spray], from: own, tank: 2000 gal, flow: 180 gal/min, spray-width: 20 ft, overlap: 1 ft, speed: 4 mph, travel: ${travel} }\nrace-days:\n  - { date: 2027-08-03, first-post: "13:00", races: 10, interval: 20 min }\n`,
      ],
    ]),
  )

describe('why work begins early', () => {
  it('is said where it begins before five, with the answer that the longest part hangs on', () => {
    const early = earlyStart(withTruck('40 min'))
    expect(early).toMatchObject({ part: 'water' })
    expect(early?.entry).toMatch(/^equipment\.0\./)
    expect(early?.entry).not.toMatch(/count/)
    expect(early?.time).toMatch(/\d/)
  })

  it('is not said where it begins by daylight', () => {
    expect(earlyStart(withTruck('1 min'))).toBeUndefined()
  })
})
