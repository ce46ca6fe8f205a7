import { describe, expect, it } from 'vitest'
import { demoManual, demos } from '../../support/demo.ts'

describe.each(demos)('formulas of %s', (id) => {
  it('leave no name unreplaced, and put a sign between any two numbers', async () => {
    const { manual } = await demoManual(id)
    for (const f of manual.worksheets.flatMap((w) => w.formulas)) {
      expect(`${f.tex}${f.numbers}`, f.figure).not.toMatch(/@[a-z]/)
      expect(
        f.numbers.replace(/\\text\{[^}]*\}|\\[td]?frac\{[^{}]*\}\{[^{}]*\}/g, ''),
        f.figure,
      ).not.toMatch(/\d\}\s*(?:\\,)?\s*\{\d/)
    }
  })
})
