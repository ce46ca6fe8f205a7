import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { composeFiguresFile, figuresFile } from '../../src/compose/figures-file.ts'
import { computeFacility } from '../../src/compute/compute-facility.ts'
import type { FigureId } from '../../src/compute/uses/ids.ts'
import type { FactPath } from '../../src/model/fact-spec.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { demoFolder, demoManual, demos } from '../support/demo.ts'
import { libraryWords } from '../support/worksheet-words.ts'

const textOf = (id: string): Promise<string> =>
  readFile(path.join(demoFolder(id), 'facility.yaml'), 'utf8')

function compute(text: string) {
  const tree = readYaml({ path: 'facility.yaml', text }).value
  const facility = tree && checkFacility(tree)
  expect(facility?.problems).toEqual([])
  if (!facility?.value) throw new Error('faults')
  return computeFacility(facility.value, libraryWords).engine
}

const values = (engine: ReturnType<typeof compute>): Map<FigureId, string> =>
  new Map(
    engine.figureIds.map((id) => {
      const value = engine.figure(id)?.value
      return [id, value?.ok ? String(value.si) : (value?.reason ?? '')]
    }),
  )

/** Differences, which say in their words what a number below zero means. */
const signed = new Set(['packing.wetter', 'walked.off', 'fitted.straight', 'fitted.radius'])

describe('figures of a facility', () => {
  it.each(demos)(
    'of %s fit the public schema and hold no NaN, no infinity, no negative amount',
    async (id) => {
      const { manual } = await demoManual(id)
      const file = figuresFile.parse(JSON.parse(JSON.stringify(composeFiguresFile(manual))))
      for (const f of file.figures) {
        if (f.si === null) expect(f.reason, f.id).not.toBe('')
        else expect(Number.isFinite(f.si) && (f.si >= 0 || signed.has(f.id)), f.id).toBe(true)
        for (const i of f.inputs)
          expect(
            i.provenance.kind === 'stated' || i.provenance.kind === 'measured'
              ? i.provenance.where
              : 'x',
            `${f.id} ${i.name}`,
          ).toMatch(/facility\.yaml:\d+|x/)
      }
    },
  )

  it.each<[string, string, FactPath]>([
    ['width: 10 ft', 'width: 9 ft', 'gear.harrow.width'],
    ['straight: 600 ft', 'straight: 590 ft', 'oval.straight'],
    ['fill-flow: 250 gal/min', 'fill-flow: 200 gal/min', 'water.fill-flow'],
    ['load: 22 tons', 'load: 18 tons', 'delivery.load'],
  ])('changing "%s" to "%s" changes only figures that rest on it', async (before, after, fact) => {
    const text = await textOf('larkmoor')
    expect(text.includes(before)).toBe(true)
    const old = compute(text)
    const now = values(compute(text.replace(before, after)))
    const changed = [...values(old)]
      .filter(([id, value]) => now.get(id) !== value)
      .map(([id]) => id)
    expect(changed.length).toBeGreaterThan(0)
    for (const id of changed) expect(old.restsOn(id).has(fact), id).toBe(true)
  })

  it('gives the same figures whatever units the facility is written in', async () => {
    const text = await textOf('larkmoor')
    const metric = text
      .replace('lap: 2,640 ft', 'lap: 804.672 m')
      .replace('straight: 600 ft', 'straight: 182.88 m')
      .replace('tank: 2,000 gal', 'tank: 7570.823568 L')
      .replace('width: 12 ft', 'width: 3.6576 m')
    const [a, b] = [values(compute(text)), values(compute(metric))]
    for (const [id, value] of a)
      expect(
        Number(b.get(id)) === Number(value) ||
          Math.abs(Number(b.get(id)) / Number(value) - 1) < 1e-9 ||
          b.get(id) === value,
        id,
      ).toBe(true)
  })

  it('lets the latest measurement outrank an earlier one and what is stated', async () => {
    const text = `${await textOf('larkmoor')}`.replace(
      'measurements:\n',
      'measurements:\n  - { of: oval.straight, value: 601 ft, date: 2027-01-01, by: A }\n  - { of: oval.straight, value: 602 ft, date: 2027-02-01, by: B }\n',
    )
    expect(compute(text).facts.get('oval.straight')).toMatchObject({
      text: '602 ft',
      provenance: { kind: 'measured', by: 'B' },
    })
  })
})
