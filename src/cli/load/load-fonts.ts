import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import path from 'node:path'
import type { FontLicence } from '../../write/third-party-notices.ts'
import { type Face, faces, licences, typingFace } from './faces.ts'

const require = createRequire(import.meta.url)

export const locate = ({ from, file }: Pick<Face, 'from' | 'file'>): string =>
  path.join(path.dirname(require.resolve(`${from}/package.json`)), file)

export const nameOf = ({ file }: Pick<Face, 'file'>): string => path.posix.basename(file)

/**
 * What a browser is told of a face.
 * @param display Paper waits for its font; a screen shows the words at once, in another.
 */
export const rule = (f: Face, url: string, display: 'block' | 'swap'): string =>
  `@font-face{font-family:"${f.family}";font-weight:${f.weight};font-style:${f.style};font-display:${display};src:url(${url}) format("woff2")${f.range === undefined ? '' : `;unicode-range:${f.range}`}}`

/** A font inside a rule. */
export const dataUrl = (woff2: Uint8Array = new Uint8Array()): string =>
  `data:font/woff2;base64,${Buffer.from(woff2).toString('base64')}`

export type Fonts = {
  /** Rules with the fonts inside, for printing. */
  readonly inline: string
  /** Rules that name the whole files below `fonts/`, for the preview, whose pages change. */
  readonly linked: string
  readonly files: readonly { readonly path: string; readonly data: Uint8Array }[]
  readonly licences: readonly FontLicence[]
  /** The font in which forms are filled in, as WOFF. */
  readonly typing: Uint8Array
}

const licencePath = (family: string): string =>
  `fonts/${family.toLowerCase().replaceAll(' ', '-')}-LICENSE.txt`

async function readFonts(): Promise<Fonts> {
  const data = new Map(
    await Promise.all(
      faces.map(async (f) => [nameOf(f), new Uint8Array(await readFile(locate(f)))] as const),
    ),
  )
  const texts = await Promise.all(
    licences.map(async (l) => ({ family: l.family, text: await readFile(locate(l), 'utf8') })),
  )
  let inline: string | undefined
  return {
    // Only what is printed takes it.
    get inline() {
      inline ??= faces.map((f) => rule(f, dataUrl(data.get(nameOf(f))), 'block')).join('\n')
      return inline
    },
    linked: faces.map((f) => rule(f, `fonts/${nameOf(f)}`, 'swap')).join('\n'),
    files: [
      ...[...data].map(([name, bytes]) => ({ path: `fonts/${name}`, data: bytes })),
      ...texts.map(({ family, text }) => ({
        path: licencePath(family),
        data: new TextEncoder().encode(text),
      })),
    ],
    licences: texts,
    typing: new Uint8Array(await readFile(locate(typingFace))),
  }
}

let fonts: Promise<Fonts> | undefined

/** The fonts of the project and their licences; read once. */
export function loadFonts(): Promise<Fonts> {
  fonts ??= readFonts()
  return fonts
}
