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
  it('says that a figure is known which this facility has not', async () => {
    expect(await run('explain', 'condition.time')).toMatchObject({
      code: 2,
      err: expect.stringContaining('this one lacks'),
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
