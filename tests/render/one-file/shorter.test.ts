import { describe, expect, it } from 'vitest'
import { shorterDrawings } from '../../../src/render/one-file/shorter.ts'

describe('drawings of the manual in one file', () => {
  const line = '<path d="m1 1" fill="none" stroke="var(--ink)" stroke-width="1.2"/>'

  it('say in a class what many of their lines say', () => {
    const { text, css } = shorterDrawings(`<svg>${line.repeat(9)}</svg>`)
    expect(text).toBe(`<svg>${'<path d="m1 1" class="s0"/>'.repeat(9)}</svg>`)
    expect(css).toBe('.s0{fill:none;stroke:var(--ink);stroke-width:1.2}')
  })

  it('keep what few say, and what has a class of its own', () => {
    const own = line.replace('<path', '<path class="lap"').repeat(20)
    expect(shorterDrawings(line + own)).toEqual({ text: line + own, css: '' })
  })
})
