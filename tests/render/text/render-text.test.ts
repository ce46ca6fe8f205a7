import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { NamedQuantity } from '../../../src/model/manual/named-quantity.ts'
import { blockHtml, lineHtml, type TextContext } from '../../../src/render/text/render-text.ts'

const quantity = (
  name: string,
  text: string,
  more: Partial<NamedQuantity> = {},
): NamedQuantity => ({
  name,
  label: name,
  number: text,
  unit: '',
  text,
  si: undefined,
  ok: true,
  reason: '',
  estimate: false,
  toMeasure: [],
  worksheet: undefined,
  ...more,
})

const context = (): TextContext => ({
  quantities: {
    'a.depth': quantity('a.depth', '2 1/4 in'),
    'a.time': quantity('a.time', '1 h 5 min', {
      estimate: true,
      worksheet: { number: 'W-1', id: 'a' },
    }),
    'a.none': quantity('a.none', 'not known', { ok: false, reason: 'nobody "knows"' }),
  },
  worksheetHref: (id) => `worksheets/${id}.html`,
  procedureHref: (id) => (id === 'seal' ? 'procedures/seal.html' : undefined),
  cache: new Map(),
})

const line = (text: string): string => lineHtml(text, context()).toString()

describe('text', () => {
  it('puts quantities in, never broken from their unit', () => {
    expect(line('Cut {a.depth} deep.')).toBe(
      'Cut <span class="q">2<span class="thin">\u00a0</span><span class="frac">1/4</span>\u00a0in</span> deep.',
    )
  })

  it('links a figure to its worksheet and marks an estimate', () => {
    expect(line('{a.time}')).toBe(
      '<a class="q estimate" href="worksheets/a.html">1\u00a0h\u00a05\u00a0min</a>',
    )
  })

  it('says what is not known and why', () => {
    expect(line('{a.none}')).toBe(
      '<span class="q unknown" title="nobody &quot;knows&quot;">not\u00a0known</span>',
    )
  })

  it('links procedures of this manual and leaves the words of others', () => {
    expect(line('[seal it](procedure:seal) or [drain it](procedure:drain)')).toBe(
      '<a href="procedures/seal.html">seal it</a> or drain it',
    )
  })

  it('keeps times and slopes as they are', () => {
    expect(line('At 7:30, slope 3:1.')).toBe('At 7:30, slope 3:1.')
  })

  it.each([
    '<script>alert(1)</script>',
    '<img src=x onerror=alert(1)>',
    '[x](javascript:alert(1))',
    '[x](data:text/html;base64,AAAA)',
    '![x](http://evil.example/x.png)',
    '[x](http://evil.example)',
    '<a href="http://evil.example" onclick="x">y</a>',
    '<svg><script>1</script></svg>',
    '\u0000<iframe src=x>',
    '`<b>`',
  ])('makes %s harmless', (text) => {
    const out = blockHtml(text, context()).toString()
    expect(out).not.toMatch(
      /<(script|img|iframe|svg|b)\b|javascript:|onerror|onclick|evil\.example|data:/,
    )
  })

  it('fails on a name that the manual does not hold, instead of printing nothing', () => {
    expect(() => line('{a.missing}')).toThrow(/a\.missing/)
  })

  it('does not let an author forge the mark that stands for a quantity', () => {
    expect(line('\ue000a.missing\ue001')).toBe('a.missing')
  })
})

describe('a plain line', () => {
  const signs = [
    ...'abcXY 019.,;:!?#+-=~|/%°"\'()&<>*_`[]{}\\\u00a0–“”é½',
    '{a.depth}',
    '  ',
    '1. ',
    '- ',
  ]
  /** A line end behind it changes nothing for Markdown, and sends it through the parser. */
  const parsed = (text: string): string => line(`${text}\n`)

  it('is written as the parser writes it, whatever signs are in it', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...signs), { minLength: 1, maxLength: 12 }), (parts) => {
        const text = parts.join('')
        expect(line(text)).toBe(parsed(text))
      }),
      { numRuns: 2000 },
    )
  })
})
