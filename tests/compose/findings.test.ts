import { describe, expect, it } from 'vitest'
import { manualOf } from '../support/small.ts'

const head = 'id: tiny\nname: Tiny Fair\nplace: { town: Nowhere }\nunits: us\npaper: letter\n'

/** Findings about a half-mile of stone dust on which all else is unknown. */
async function found(parts: {
  readonly cushion?: string
  readonly oval?: string
  readonly more?: string
}): Promise<readonly string[]> {
  const { manual } = await manualOf(
    `${head}oval: { lap: 2640 ft, straight: 600 ft${parts.oval ?? ''} }\ncushion: { material: stone-dust${parts.cushion ?? ''} }\n${parts.more ?? ''}`,
  )
  return manual.findings.map((f) => f.id)
}

describe('findings about the surface', () => {
  const depth = (d: string): string => `, depth: { target: 2 in, tolerance: 1/4 in, found: ${d} }`

  it('tell a cushion that is too deep from one that is too thin, and leave alone what is within its tolerance', async () => {
    const [deep, thin, right, edge] = await Promise.all(
      ['2 1/2 in', '1 1/2 in', '2 1/8 in', '2 1/4 in'].map((d) => found({ cushion: depth(d) })),
    )
    expect(deep).toContain('cushion-deep')
    expect(deep).not.toContain('cushion-thin')
    expect(thin).toContain('cushion-thin')
    expect(thin).not.toContain('cushion-deep')
    for (const ids of [right, edge])
      for (const id of ['cushion-deep', 'cushion-thin']) expect(ids).not.toContain(id)
  })

  it('see worn grit only where it was measured and is short', async () => {
    const grit = (share: string): string => `, grit: { target: 30 %, found: ${share} }`
    expect(await found({ cushion: grit('20 %') })).toContain('grit-low')
    expect(await found({ cushion: grit('30 %') })).not.toContain('grit-low')
    expect(await found({})).not.toContain('grit-low')
  })

  it('see a cross-fall outside what harness tracks have', async () => {
    expect(await found({ oval: ', cross-fall: { straights: 2 %, turns: 6 % }' })).not.toContain(
      'cross-fall-odd',
    )
    expect(await found({ oval: ', cross-fall: { straights: 2 %, turns: 15 % }' })).toContain(
      'cross-fall-odd',
    )
    expect(await found({ oval: ', cross-fall: { straights: 0.5 %, turns: 6 % }' })).toContain(
      'cross-fall-odd',
    )
  })
})

describe('findings about machines and hours', () => {
  const harrow = (width: string): string =>
    `{ id: harrow, name: the harrow, can: [harrow], from: own, width: ${width}, overlap: 1 ft, speed: 6 mph }`
  const truck =
    '{ id: truck, name: the truck, can: [spray], from: own, tank: 2000 gal, usable: 90 %, flow: 180 gal/min, spray-width: 20 ft, overlap: 1 ft, speed: 4 mph, travel: 5 min }'
  const races = (interval: string): string =>
    `race-days:\n  - { date: 2027-08-03, first-post: "13:00", races: 10, interval: ${interval} }\n`

  it('name every machine that is not there', async () => {
    const none = await found({})
    for (const id of ['no-grader', 'no-harrow', 'no-spray', 'no-roller', 'no-tamper'])
      expect(none).toContain(id)
    const some = await found({ more: `equipment: [${harrow('10 ft')}, ${truck}]\n` })
    for (const id of ['no-harrow', 'no-spray']) expect(some).not.toContain(id)
  })

  it('hold the time of harrow and truck against the interval between races', async () => {
    const at = (width: string, interval: string) =>
      found({
        oval: ', width: { straights: 60 ft, turns: 60 ft }',
        more: `equipment: [${harrow(width)}, ${truck}]\nwater: { fill-flow: 250 gal/min }\n${races(interval)}`,
      })
    const slow = await at('10 ft', '20 min')
    for (const id of ['harrow-slow', 'round-slow']) expect(slow).toContain(id)
    // Four strips of 19 ft at 6 mph take some 24 minutes.
    const wide = await at('20 ft', '40 min')
    expect(wide).not.toContain('harrow-slow')
    expect(wide).toContain('round-slow')
  })

  it('say so where there are no race days to plan for', async () => {
    expect(await found({})).toContain('no-race-days')
    expect(await found({ more: races('20 min') })).not.toContain('no-race-days')
  })

  const place =
    'place: { town: Nowhere, latitude: 40.8, longitude: -89, time-zone: America/Chicago }\n'
  const days = (...list: readonly string[]): string =>
    `race-days:\n${list.map((d) => `  - { ${d}, interval: 20 min }\n`).join('')}`

  async function onDays(list: readonly string[], more = ''): Promise<readonly string[]> {
    const { manual } = await manualOf(
      `${head.replace('place: { town: Nowhere }\n', place)}oval: { lap: 2640 ft, straight: 600 ft }\ncushion: { material: stone-dust }\n${days(...list)}${more}`,
    )
    return manual.findings.map((f) => f.id)
  }

  it('see a day that ends in the dark though it is not the fullest, unless there are lights', async () => {
    const list = [
      'date: 2027-08-03, first-post: "13:00", races: 10',
      'date: 2027-08-05, first-post: "19:00", races: 8',
    ]
    expect(await onDays(list.slice(0, 1))).not.toContain('late-end')
    expect(await onDays(list)).toContain('late-end')
    expect(await onDays(list, 'lights: true\n')).not.toContain('late-end')
  })

  it('say that a night of racing is not worked out past midnight, lights or not', async () => {
    // Off the track nine intervals of 20 min after 20:40, at 23:40; with eleven at 0:20.
    const night = (races: number) => [`date: 2027-08-03, first-post: "20:40", races: ${races}`]
    expect(await onDays(night(9), 'lights: true\n')).not.toContain('past-midnight')
    expect(await onDays(night(11), 'lights: true\n')).toContain('past-midnight')
    expect(await onDays(night(11))).toContain('late-end')
  })

  it('see a high ridge where no machine rides on it', async () => {
    const ridge = 'rail-ridge: { height: 2 in }\n'
    expect(await found({ more: ridge })).toContain('ridge-high')
  })

  it('see a rota that takes more people than there are', async () => {
    const list = ['date: 2027-08-03, first-post: "13:00", races: 8']
    // One crew without machines: superintendent, gate, and two on foot.
    expect(await onDays(list, 'crew: { race-day: 3 }\n')).toContain('rota-short')
    expect(await onDays(list, 'crew: { race-day: 4 }\n')).not.toContain('rota-short')
  })

  it('see too little rest between a late evening and an early morning', async () => {
    const late = 'date: 2027-08-03, first-post: "19:00", races: 8'
    const early = (date: string) => `date: ${date}, first-post: "08:00", races: 8`
    expect(await onDays([late, early('2027-08-04')])).toContain('rest-short')
    expect(await onDays([late, early('2027-08-05')])).not.toContain('rest-short')
  })
})

describe('the findings about the grader', () => {
  const grader = (days: string): string =>
    `equipment:\n  - { id: g, name: the grader, can: [grade], from: borrowed, owner: highway garage, days: [${days}], width: 12 ft, speed: 3 mph }\n`
  const deep = ', depth: { target: 2 in, tolerance: 1/4 in, found: 2 1/2 in }'

  it('see that it is booked for fewer days than taking off and shaping take', async () => {
    const one = await found({ cushion: deep, more: grader('2027-07-20') })
    expect(one).toContain('grader-short')
    const four = await found({
      cushion: deep,
      more: grader('2027-07-17, 2027-07-18, 2027-07-19, 2027-07-20'),
    })
    expect(four).not.toContain('grader-short')
    // Without anything to take off one day is enough.
    expect(await found({ more: grader('2027-07-20') })).not.toContain('grader-short')
  })
})

describe('what a finding belongs to', () => {
  it('is an entry that says nothing yet, or one that does', async () => {
    const { manual } = await manualOf(
      `${head}oval: { lap: 2640 ft, straight: 600 ft }\ncushion: { material: stone-dust, grit: { target: 30 %, found: 20 % } }\ncontacts: [{ role: fire, name: Fire company, phone: 555-3010 }]\n`,
    )
    const asks = Object.fromEntries(manual.findings.map((f) => [f.id, f.ask]))
    expect(asks['no-way-in']).toEqual({ entry: 'emergency.way', role: undefined, isSaid: false })
    expect(asks['grit-low']).toMatchObject({ entry: 'cushion.grit.found', isSaid: true })
    // Others are named among the contacts, and nobody has this role.
    expect(asks['no-police']).toEqual({ entry: 'contacts', role: 'police', isSaid: false })
  })
})

describe('findings that rest on usual values', () => {
  const machine =
    '{ id: harrow, name: the harrow, can: [harrow], from: own, width: 6 ft, overlap: 1 ft, speed: 4 mph }'
  const guessesOf = async (more: string) => {
    const { manual } = await manualOf(
      `${head}oval: { lap: 2640 ft, straight: 600 ft }\ncushion: { material: stone-dust }\n${more}equipment: [${machine}]\n`,
    )
    const found = manual.findings.find((f) => f.id === 'no-lap-between')
    return found?.guesses.map((g) => g.path)
  }
  const day = (more: string): string =>
    `race-days:\n  - { date: 2027-08-03, first-post: "13:00", races: 10${more} }\n`

  it('name what stands in their own words first, and no more than three', async () => {
    const guesses = await guessesOf(day(''))
    expect(guesses?.[0]).toBe('race-days.interval')
    expect(guesses?.length).toBeLessThanOrEqual(3)
  })

  it('no longer name what has been said, nor how the work is done', async () => {
    const guesses = await guessesOf(day(', interval: 18 min'))
    expect(guesses).toBeDefined()
    expect(guesses).not.toContain('race-days.interval')
    expect(guesses?.filter((path) => path.startsWith('practice.'))).toEqual([])
  })
})
