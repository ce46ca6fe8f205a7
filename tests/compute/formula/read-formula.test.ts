import { describe, expect, it } from 'vitest'
import { formulaTex } from '../../../src/compute/formula/formula-tex.ts'
import { formulaText } from '../../../src/compute/formula/formula-text.ts'
import { readFormula } from '../../../src/compute/formula/read-formula.ts'
import { demoManual, demos } from '../../support/demo.ts'

describe('readFormula', () => {
  it('tells a fraction of single digits from one of groups', () => {
    expect(readFormula('\\tfrac12')).toEqual([
      {
        kind: 'fraction',
        command: 'tfrac',
        over: { kind: 'number', tex: '1' },
        under: { kind: 'number', tex: '2' },
      },
    ])
  })

  it.each(['a)', 'a\\right)', '\\left(a', '{a', '|a', 'a & b'])('refuses %s', (tex) => {
    expect(() => readFormula(tex)).toThrow(SyntaxError)
  })
})

describe.each(demos)('formulas of %s', (id) => {
  it('come out of the reader as they went in, and leave no TeX in their text', async () => {
    const { manual } = await demoManual(id)
    const all = manual.worksheets.flatMap((w) => [
      ...w.formulas.flatMap((f) => [f.tex, f.numbers]),
      ...w.inputs.map((i) => i.symbol),
    ])
    expect(all.length).toBeGreaterThan(300)
    for (const tex of all) {
      expect(formulaTex(readFormula(tex))).toBe(tex)
      expect(formulaText(tex)).not.toMatch(/[\\{}]/)
    }
  })
})
