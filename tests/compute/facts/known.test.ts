import { describe, expect, it } from 'vitest'
import { contextFor, halfMile } from '../../compose/support/context.ts'

const engineOf = async (straight: string, width: string, speed: string) => {
  const oval = `oval: { lap: "2,640 ft", straight: ${straight}, width: { straights: ${width}, turns: 60 ft } }`
  const harrow = `{ id: harrow, name: harrow, can: [harrow], from: own, width: 10 ft, speed: ${speed} }`
  const text = `${halfMile.replace(/oval: .*/, oval)}equipment: [${harrow}]\n`
  return (await contextFor(text)).engine
}

describe('what is said as no more than an estimate', () => {
  it('is reckoned with as it is, and marks all that rests on it', async () => {
    const sure = await engineOf('600 ft', '60 ft', '4 mph')
    const rough = await engineOf('about 600 feet', 'sixty feet or so', 'roughly 4 mph')
    for (const figure of sure.worksheets().flatMap((w) => w.outputs)) {
      const same = rough.figure(figure.id as Parameters<typeof rough.figure>[0])
      expect(same?.value, figure.id).toEqual(figure.value)
      const restsOn = sure.restsOn(figure.id as Parameters<typeof sure.restsOn>[0])
      const said = ['oval.straight', 'oval.width.straights', 'gear.harrow.speed'] as const
      const isMarked = figure.estimate || said.some((path) => restsOn.has(path))
      expect(same?.estimate, figure.id).toBe(isMarked)
    }
    expect(rough.facts.get('oval.straight')?.provenance.kind).toBe('rough')
    expect(rough.facts.get('gear.harrow.speed')?.provenance.kind).toBe('rough')
    expect(rough.facts.get('oval.lap')?.provenance.kind).toBe('stated')
  })
})
