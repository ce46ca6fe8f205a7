import { describe, expect, it } from 'vitest'
import { dayEngine } from '../../../src/browser/today/day-engine.ts'
import { fillPlaces } from '../../../src/browser/today/fill-places.ts'
import { formulaHtml, formulaTemplates } from '../../../src/render/text/formula.ts'
import { demoManual, demos } from '../../support/demo.ts'

/** Without rows that hold nothing together, ends of lines, and spaces that the library sets by eye. */
const bare = (mathml: string): string =>
  mathml
    .replace(/^<span[^>]*>|<\/span>$/g, '')
    .replace(/<\/mstyle><\/math> <math><mstyle[^>]*><mrow><\/mrow>/g, '')
    .replace(/<\/?mrow[^>]*>/g, '')
    .replace(/<(mo|mspace|mtext|mn)( [^>]*)>/g, '<$1>')

describe.each(demos)('the working of a worksheet of %s', (id) => {
  it('is set by the page as the program sets it', async () => {
    const { manual } = await demoManual(id)
    const page = dayEngine(manual.today.sums)
    const follow = new Set(manual.today.follows)
    const lines = manual.worksheets
      .flatMap((w) => w.formulas.map((f) => ({ use: w.id, ...f })))
      .filter((f) => follow.has(f.figure) && f.numbers !== '')
    expect(lines.length).toBeGreaterThan(100)
    for (const { use, figure, places, symbols, numbers } of lines) {
      const here = page.worksheet(use)?.formulas.find((f) => f.figure === figure)
      const [math = '', ...named] = formulaTemplates(places, symbols)
        .toString()
        .split('</template>')
      const templates = named.map((t) =>
        /^<template data-symbol="(.*?)"><math>(.*)<\/math>$/.exec(t)?.slice(1),
      )
      const set = fillPlaces(
        math.replace('<template>', ''),
        here?.put ?? {},
        Object.fromEntries(templates.filter((t) => t !== undefined)),
      )
      expect(bare(set), figure).toBe(bare(formulaHtml(numbers, '').toString()))
      expect(set).not.toContain('class="n-')
    }
  })
})
