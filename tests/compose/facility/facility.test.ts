import { describe, expect, it } from 'vitest'
import { composeFacility } from '../../../src/compose/facility/facility.ts'
import { composeGeometry } from '../../../src/compose/facility/geometry.ts'
import { contextFor, halfMile } from '../support/context.ts'

/** The head of the manual of a facility with this file. */
async function headOf(text: string) {
  const context = await contextFor(text)
  return composeFacility({
    ...context,
    parts: { ...context.parts, geometry: composeGeometry(context) },
  })
}

const oval = (text: string, units = 'us'): string =>
  halfMile.replace(/oval: .*/, `oval: { ${text} }`).replace('units: us', `units: ${units}`)

describe('the head of a manual', () => {
  it.each([
    ['lap: "2,640 ft", straight: 600 ft', 'us', 'half-mile'],
    ['lap: "2,620 ft", straight: 600 ft', 'us', 'half-mile'],
    ['lap: "5,280 ft", straight: "1,320 ft"', 'us', 'one-mile'],
    ['lap: "3,300 ft", radius: 262 ft', 'us', 'five-eighths-mile'],
    ['lap: "2,500 ft", straight: 600 ft', 'us', '2,500 ft'],
    ['lap: 804.7 m, straight: 180 m', 'metric', '805 m'],
  ])('calls an oval of %s (%s) "%s"', async (text, units, name) => {
    expect((await headOf(oval(text, units))).ovalName).toBe(name)
  })

  it('prints sheets on the papers of the binder, unless the facility asks for others', async () => {
    expect((await headOf(halfMile)).sheetPapers).toEqual(['letter', 'tabloid'])
    expect((await headOf(halfMile.replace('letter', 'a4'))).sheetPapers).toEqual(['a4', 'a3'])
    expect((await headOf(`${halfMile}sheets: { papers: [tabloid] }\n`)).sheetPapers).toEqual([
      'tabloid',
    ])
  })

  it('prints on both sides, without dividers, in color, unless the facility asks for something else', async () => {
    expect((await headOf(halfMile)).binder).toEqual({
      sides: 2,
      sections: 'next',
      dividers: 'none',
      ink: 'color',
    })
    const own = await headOf(
      `${halfMile}binder: { sides: 1, sections: right-hand, dividers: leaves, ink: black }\n`,
    )
    expect(own.binder).toEqual({
      sides: 1,
      sections: 'right-hand',
      dividers: 'leaves',
      ink: 'black',
    })
  })

  it('has the address of its site without a slash at the end, and none where none is given', async () => {
    expect((await headOf(halfMile)).siteAddress).toBeUndefined()
    const own = await headOf(`${halfMile}site-address: https://fair.example/track/\n`)
    expect(own.siteAddress).toBe('https://fair.example/track')
  })
})
