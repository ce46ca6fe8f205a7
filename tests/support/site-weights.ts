import { gzipSync } from 'node:zlib'
import type { OutputFile } from '../../src/model/output-file.ts'
import { isKept } from '../../src/render/site/site-files.ts'

/** What a server sends for a file, bytes: fonts and pictures are packed already. */
const sent = ({ path, data }: OutputFile): number =>
  /\.(woff2|png)$/.test(path) ? data.length : gzipSync(data, { level: 9 }).length

const kB = (bytes: number): number => Math.round(bytes / 100) / 10

/** What a phone is sent for a site, kB. */
export function siteWeights(files: readonly OutputFile[]) {
  const of = (...paths: readonly RegExp[]): number =>
    kB(
      files
        .filter(({ path }) => paths.some((wanted) => wanted.test(path)))
        .reduce((sum, file) => sum + sent(file), 0),
    )
  return {
    everyPage: of(/^assets\/page\.js$/),
    today: of(/^assets\/(today|day-numbers)\.js$/),
    search: of(/^assets\/search(-index)?\.js$/),
    chooser: of(/^assets\/choose\.js$/),
    home: of(
      /^index\.html$/,
      /^assets\/(site\.css|page\.js|icon\.svg)$/,
      /^assets\/fonts\/(titles|signs|source-sans-3-latin-\d+-normal)\.woff2$/,
    ),
    formulas: of(/^assets\/fonts\/formulas\.woff2$/),
    kept: kB(files.filter(isKept).reduce((sum, file) => sum + sent(file), 0)),
  }
}

/** What the same may weigh at most, kB. */
export const heaviest: ReturnType<typeof siteWeights> = {
  everyPage: 3,
  // The aim is 60.
  today: 66,
  search: 70,
  chooser: 3,
  home: 80,
  formulas: 40,
  // A megabyte; rounds of unlike water trucks and the store over the days took the last of it.
  kept: 1024,
}
