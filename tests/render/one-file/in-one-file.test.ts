import { describe, expect, it } from 'vitest'
import { inOneFile } from '../../../src/render/one-file/in-one-file.ts'

const pages = new Set(['index.html', 'plans/days.html'])
const inFile = (text: string): string => inOneFile(text, 'plans/days.html', pages)

describe('a page in the manual in one file', () => {
  it('has ids of its own, and what names them names them still', () => {
    expect(inFile('<label for="q">a</label><input id="q" aria-describedby="x y">')).toBe(
      '<label for="plans.days~q">a</label><input id="plans.days~q" aria-describedby="plans.days~x plans.days~y">',
    )
    expect(inFile('<path fill="url(#dots)"/><g id="dots"></g>')).toBe(
      '<path fill="url(#plans.days~dots)"/><g id="plans.days~dots"></g>',
    )
  })

  it('leads inside the file and loads no script', () => {
    expect(
      inFile('<a href="../index.html">x</a><script defer src="../assets/a.js"></script>'),
    ).toBe('<a href="#index">x</a>')
  })

  it('keeps its words, whatever they look like', () => {
    const text = '<p data-id="a">id="a" href="b.html"</p>'
    expect(inFile(text)).toBe(text)
  })
})
