import { describe, expect, it } from 'vitest'
import { figuresFile } from '../../src/compose/figures-file.ts'
import { run } from './support/run.ts'

describe('explain', () => {
  it('prints the working of a figure', async () => {
    const { code, out } = await run('explain', 'seal.start-before')
    expect(code).toBe(0)
    for (const part of [
      'W-50',
      'What goes in',
      'What comes out',
      'Sources',
      'rounded up to the next 5 min',
    ])
      expect(out).toContain(part)
    expect(out).not.toMatch(/\\[a-z]+/)
  })
  it('lists all calculations when it is asked for none', async () => {
    const { out } = await run('explain')
    expect(out.trimEnd().split('\n').length).toBeGreaterThan(30)
    expect(out).toMatch(/^W-1 +shape +.*lap 2,640 ft/m)
  })
  it('works a calculation with inputs in any units, the rest as the facility has them', async () => {
    const [a, b] = [
      await run('explain', 'harrow.time', 'speed=5 mph', '--json'),
      await run('explain', 'harrow.time', 'speed=8.04672 km/h', '--json'),
    ]
    expect(JSON.parse(a.out).si).toBeCloseTo(JSON.parse(b.out).si, 6)
    const fast = await run('explain', 'harrow.time', 'speed=10 mph', '--json')
    expect(JSON.parse(fast.out).si).toBeCloseTo(JSON.parse(a.out).si / 2, 6)
  })
  it('names the facility and the inputs by the names to give them by', async () => {
    const { out } = await run('explain', 'seal.start-before')
    expect(out.split('\n')[0]).toBe('Larkmoor County Fair')
    expect(out).toMatch(/^ {2}margin +t_m +=/m)
  })
  it('takes a facility folder before the figure, as the sister commands do', async () => {
    const { code, out } = await run('explain', 'content/facilities/ostmere', 'area')
    expect([code, out.split('\n')[0]]).toEqual([0, expect.stringContaining('Ostmere')])
  })
  it('says which worksheets share a calculation', async () => {
    const { code, out } = await run('explain', 'coverage')
    expect(code).toBe(0)
    expect(out).toMatch(/^\d worksheets work with "coverage"/)
    expect(out).toContain('harrow')
  })
  it('says which machine a facility lacks for a figure, with the key that would supply it', async () => {
    const { code, err } = await run('explain', 'condition.time')
    expect(code).toBe(2)
    expect(err).toContain(
      'a machine that can "condition" (equipment: can: [condition], with width)',
    )
  })
  it('prints every term of the heat index, and of what it is made', async () => {
    const { out } = await run('explain', 'heat')
    expect(out).toContain('- 0.00000199 × 83² × 74² = 89.5 °F')
    expect(out).not.toContain('…')
  })
  it('prints the steps of daylight and takes a day as a date', async () => {
    const winter = await run('explain', 'daylight', 'day=2027-01-15', 'zone=-6 h')
    expect(winter.out).toMatch(/^ {2}day +D += 2027-01-15/m)
    expect(winter.out).toMatch(/cos H = .*\n +\d+\.\d+ /)
    expect(await run('explain', 'daylight', 'day=215')).toMatchObject({
      code: 2,
      err: expect.stringContaining('expected a date such as "2027-08-03"'),
    })
  })
  it('gives a result in the unit of its formula too', async () => {
    const { out } = await run('explain', 'air.rate')
    expect(out).toContain('mm/day = 0.175 in/day')
    expect(out).toContain('(28.33 °C in the formula)')
  })
  it('prints the constants of a formula, and no other', async () => {
    expect((await run('explain', 'point')).out).toContain('  ρ_water = 62.428 lb/ft³')
    expect((await run('explain', 'press')).out).toContain('  g = 32.174 ft/s²')
    expect((await run('explain', 'sieve')).out).not.toContain('Constants')
  })
  it('prints the readings behind a sum with what each adds', async () => {
    const { out } = await run('explain', 'balance')
    const volumes = [...out.matchAll(/^ +[\d,]+ +[\d.]+ +[\d.]+ +[\d,.]+ +([\d.]+) +[\d.]+$/gm)]
    expect(volumes.length).toBeGreaterThan(20)
    const total = volumes.reduce((sum, [, over]) => sum + Number(over), 0)
    expect(out).toContain(`= ${total.toFixed(1)} yd³`)
  })
  it('lists the calculations of no facility and works one with all inputs typed', async () => {
    const list = await run('explain', '--all')
    expect(list.out).toMatch(/^coverage +.*straight, radius/m)
    expect(list.out).not.toMatch(/^depth-survey/m)
    const { code, out } = await run(
      ...['explain', '--all', 'wind-chill', 'air=0 °F', 'wind=15 mph', '--json'],
    )
    expect([code, JSON.parse(out)[0].printed]).toEqual([0, '−19 °F'])
  })
  it('says which inputs a calculation of no facility still needs', async () => {
    expect(await run('explain', '--all', 'wind-chill', 'air=0 °F')).toMatchObject({
      code: 2,
      err: expect.stringContaining('wind="5 mph"'),
    })
    expect(await run('explain', '--all', 'wind-chil')).toMatchObject({
      code: 2,
      err: expect.stringContaining('did you mean "wind-chill"?'),
    })
  })
  it('takes back a minus as it prints one', async () => {
    const { code, out } = await run('explain', 'chill', 'air=−5 °F')
    expect([code, out]).toEqual([0, expect.stringContaining('-5')])
  })
  it.each([
    ['speed=5 mph', 'speed=6 mph', 'given twice'],
    ['passes=1.5', 'speed=6 mph', 'whole number'],
  ])('refuses %s with %s', async (one, other, message) => {
    expect(await run('explain', 'harrow.time', one, other)).toMatchObject({
      code: 2,
      err: expect.stringContaining(message),
    })
  })
  it.each([
    ['sped=5 mph', 'did you mean "speed"?'],
    ['speed=5', 'has no unit'],
    ['speed=5 gal', 'not a speed'],
  ])('says what is wrong with the input %s', async (input, message) => {
    expect(await run('explain', 'harrow.time', input)).toMatchObject({
      code: 2,
      err: expect.stringContaining(message),
    })
  })
  it("gives a reason instead of a number outside a formula's range", async () => {
    const { code, out } = await run('explain', 'harrow.time', 'speed=900 mph', '--json')
    expect(code).toBe(4)
    expect(JSON.parse(out)).toMatchObject({
      si: null,
      reason: expect.stringContaining('the formula holds from'),
    })
  })
  it('gives the entry of figures.json', async () => {
    const { out } = await run('explain', 'washout.volume', '--json')
    const entry = figuresFile.shape.figures.element.parse(JSON.parse(out))
    expect(entry).toMatchObject({ id: 'washout.volume', printed: '6 ft³', worksheet: 'W-60' })
  })
  it('suggests a figure that was meant', async () => {
    expect(await run('explain', 'seal.start-befor')).toMatchObject({
      code: 2,
      err: expect.stringContaining('did you mean "seal.start-before"?'),
    })
  })
})
