import type { OutputFile } from '../../src/model/output-file.ts'

/** Words in s that stand behind a one without being many. */
const notMany = new Set([
  'is',
  'as',
  'has',
  'was',
  'across',
  'less',
  'pass',
  'press',
  'plus',
  'this',
])

/**
 * Places in pages, tables and calendars that count one as many: `1 loads`. Tags between number and
 * word are nothing to a reader; cells, rows and paragraphs stand apart.
 */
export function onesAsMany(files: readonly OutputFile[]): readonly string[] {
  return files.flatMap(({ path, data }) => {
    if (!/\.(html|csv|ics)$/.test(path)) return []
    const text = (typeof data === 'string' ? data : new TextDecoder().decode(data))
      .replace(/<(style|script|math|svg)\b[\s\S]*?<\/\1>/g, '')
      .replace(/<\/(?:tr|t[dh]|p|li|h\d|caption|div|figcaption|d[td]|option)>/g, '\n')
      .replace(/<[^>]*>/g, '')
      .replaceAll('&nbsp;', ' ')
    return [...text.matchAll(/(?<![\d.,/–−-] ?)\b1[  ]([a-z]+s)\b.{0,20}/g)].flatMap(
      ([found, word = '']) => (notMany.has(word) ? [] : [`${path}: ${found}`]),
    )
  })
}
