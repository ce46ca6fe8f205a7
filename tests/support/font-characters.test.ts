import { describe, expect, it } from 'vitest'
import { loadFonts } from '../../src/cli/load/load-fonts.ts'
import { fontCharacters } from './font-characters.ts'

describe('the characters of a font', () => {
  it('are read from its file', async () => {
    const { files } = await loadFonts()
    const latin = files.find((f) => f.path.endsWith('source-sans-3-latin-400-normal.woff2'))
    const codes = fontCharacters(latin?.data ?? new Uint8Array())
    // As the file's own documentation gives them: Latin-1 and some punctuation, no arrows.
    for (const c of 'AZaz09é€…−') expect(codes.has(c.codePointAt(0) ?? 0), c).toBe(true)
    for (const c of '→■Łα') expect(codes.has(c.codePointAt(0) ?? 0), c).toBe(false)
  })
})
