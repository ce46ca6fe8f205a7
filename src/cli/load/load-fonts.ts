import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import path from 'node:path'
import type { FontLicence } from '../../write/third-party-notices.ts'
import { type Face, faces, licences, typingFace } from './faces.ts'

const require = createRequire(import.meta.url)

const locate = ({ from, file }: Pick<Face, 'from' | 'file'>): string =>
  path.join(path.dirname(require.resolve(`${from}/package.json`)), file)

const nameOf = ({ file }: Pick<Face, 'file'>): string => path.posix.basename(file)

const rule = (f: Face, url: string): string =>
  `@font-face{font-family:"${f.family}";font-weight:${f.weight};font-style:${f.style};font-display:block;src:url(${url}) format("woff2")${f.range === undefined ? '' : `;unicode-range:${f.range}`}}`

export type Fonts = {
  /** Rules with the fonts inside, for printing. */
  readonly inline: string
  /** Rules that name files below `fonts/`, for the site. */
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
  const inline = (f: Face): string =>
    `data:font/woff2;base64,${Buffer.from(data.get(nameOf(f)) ?? []).toString('base64')}`
  return {
    inline: faces.map((f) => rule(f, inline(f))).join('\n'),
    linked: faces.map((f) => rule(f, `fonts/${nameOf(f)}`)).join('\n'),
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
