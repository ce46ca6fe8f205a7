import type { PageFont } from '../../model/page-data.ts'
import { loadFonts, rule } from './load-fonts.ts'
import { type Cut, fontsFor } from './site-fonts.ts'
import { usedCharacters } from './used-characters.ts'

/** Letters of western Europe, which names and places may hold. */
const western = String.fromCodePoint(...Array.from({ length: 0x5f }, (_, i) => 0xa1 + i))

const pageFont = ({ name, data, faces }: Cut): PageFont => ({
  name,
  data: Buffer.from(data).toString('base64'),
  faces: faces.map((face) => ({
    family: face.family,
    weight: face.weight,
    range: face.range,
    rule: rule(face, '{url}', 'swap'),
  })),
})

/**
 * Fonts for pages that no program stands behind: cut for all that the library can show and for names
 * of western Europe. Letters of other languages are left to the reader's own fonts.
 * @param texts All texts of the library, and sites with every kind of formula.
 */
export async function loadPageFonts(texts: readonly string[]): Promise<readonly PageFont[]> {
  const { text, cut } = await fontsFor({ ...usedCharacters([...texts, western]), letters: '' })
  return [...text, ...cut].map(pageFont)
}

/** The licences that go wherever the fonts go. */
export async function loadLicences(): Promise<readonly { path: string; data: string }[]> {
  const { files } = await loadFonts()
  return files
    .filter(({ path }) => path.endsWith('LICENSE.txt'))
    .map(({ path, data }) => ({ path, data: new TextDecoder().decode(data) }))
}
