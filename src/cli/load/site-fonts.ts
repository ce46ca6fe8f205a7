import { readFile } from 'node:fs/promises'
import type { PrintCache } from '../../print/press/print-cache.ts'
import type { SiteFonts } from '../../render/site/site-files.ts'
import { type Face, siteFaces } from './faces.ts'
import { dataUrl, loadFonts, locate, nameOf, rule } from './load-fonts.ts'
import { type UsedCharacters, usedCharacters } from './used-characters.ts'

/** A file with the faces that it is taken for. */
export type Cut = {
  readonly name: string
  readonly data: Uint8Array
  readonly faces: readonly Face[]
}

const whole = async (face: Face): Promise<Cut> => ({
  name: nameOf(face),
  data: await readFile(locate(face)),
  faces: [face],
})

type KeptFonts = {
  readonly cache: PrintCache
  /** Stands for the packages that cut: others may cut otherwise. */
  readonly program: string
}

let kept: KeptFonts | undefined

/**
 * Lets this process take fonts that were cut before for the same characters. A command calls it, so
 * that nothing else depends on what is kept.
 */
export const useCutFonts = (fonts: KeptFonts | undefined): void => {
  kept = fonts
}

async function cut(
  name: string,
  faces: readonly Face[],
  characters: string,
  dropTables: readonly string[] = [],
): Promise<readonly Cut[]> {
  const [face] = faces
  if (!face || characters === '') return []
  const options = { targetFormat: 'woff2', noHinting: true, dropTables } as const
  const font = await readFile(locate(face))
  const make = async (): Promise<Uint8Array> => {
    const { default: subsetFont } = await import('subset-font')
    return new Uint8Array(await subsetFont(font, characters, options))
  }
  const parts = ['cut', kept?.program ?? '', JSON.stringify(options), characters, font]
  return [{ name, data: await (kept?.cache.get(parts, make) ?? make()), faces }]
}

/** The fonts of pages that show these characters. */
export async function fontsFor(used: UsedCharacters) {
  const { text, titles, formulas, signs, letters } = siteFaces
  return {
    text: await Promise.all(text.map(whole)),
    cut: [
      ...(await cut('titles.woff2', [titles], used.latin)),
      ...(await cut('formulas.woff2', [formulas], used.formulas)),
      // Between words nobody needs what sets formulas.
      ...(await cut('signs.woff2', signs, used.signs, ['MATH', 'GPOS', 'GSUB'])),
    ],
    letters: used.letters === '' ? [] : await Promise.all(letters.map(whole)),
  }
}

const rules = (all: readonly Cut[], url: (file: Cut) => string): string =>
  all.flatMap((file) => file.faces.map((face) => rule(face, url(file), 'swap'))).join('\n')

/**
 * Fonts with the characters that a site shows, so that a phone carries no others. The same
 * characters give the same bytes.
 * @param texts The files of the site.
 */
export async function siteFonts(texts: readonly string[]): Promise<SiteFonts> {
  const { text, cut: small, letters } = await fontsFor(usedCharacters(texts))
  const all = [...text, ...small, ...letters]
  let inline: string | undefined
  const licences = (await loadFonts()).files.filter(({ path }) => path.endsWith('LICENSE.txt'))
  return {
    linked: rules(all, ({ name }) => `fonts/${name}`),
    // Only the manual in one file takes it.
    get inline() {
      inline ??= rules([...text, ...small], ({ data }) => dataUrl(data))
      return inline
    },
    files: [...all.map(({ name, data }) => ({ path: `fonts/${name}`, data })), ...licences],
  }
}
