import { describe, expect, it } from 'vitest'
import { checkSpelling } from '../../src/cli/spelling.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import type { Library, Sourced } from '../../src/validate/check-library.ts'
import { checkWords, limits, readability } from '../../src/validate/check-words.ts'
import type { Procedure } from '../../src/validate/schemas/procedure.ts'
import { loadDemo } from '../support/demo.ts'

async function library(): Promise<Library> {
  const { library: found } = await loadDemo('larkmoor')
  if (!found) throw new Error('no library')
  return found
}

const said = (
  problems: readonly { place: { file: string; line: number }; message: string }[],
): string[] => problems.map((p) => `${p.place.file}:${p.place.line} ${p.message}`)

describe('the words of the library', () => {
  it('keep to the house style', async () => expect(said(checkWords(await library()))).toEqual([]))

  it('are spelt as the dictionary and the trade spell them', async () =>
    expect(said(checkSpelling(await library()))).toEqual([]))

  it('can be read by a careful reader of twelve: a table of all procedures', async () => {
    const rows = (await library()).procedures.map(readability)
    console.table(
      rows.map((r) => ({
        procedure: r.id,
        words: r.words,
        'words a sentence': Number((r.words / r.sentences).toFixed(1)),
        'school year': Number(r.grade.toFixed(1)),
      })),
    )
    for (const r of rows) expect(r.grade, r.id).toBeLessThanOrEqual(limits.grade)
  })
})

describe('words that break the house style', () => {
  /** The library with one procedure changed as an author would have written it. */
  async function faults(edit: (text: string) => string): Promise<string[]> {
    const found = await library()
    const first = found.procedures.find((p) => p.value.id === 'drains') as Sourced<Procedure>
    const text = edit(first.tree.file.text)
    const tree = readYaml({ path: 'own.yaml', text }).value
    if (!tree) throw new Error('no tree')
    const procedures = found.procedures.map((p) =>
      p === first ? { ...p, tree, value: tree.data as Procedure } : p,
    )
    const problems = checkWords({ ...found, procedures })
    expect(
      problems.every(
        (p) => p.code === 'text/style' && p.severity === 'warning' && p.place.line > 0,
      ),
    ).toBe(true)
    return problems.map((p) => p.message)
  }

  it.each<[string, string, RegExp]>([
    ['no verb first', 'The outlet in the ditch is cleared first.', /begins with "The"/],
    ['two actions', 'Clear the outlet in the ditch, then fill it.', /more than one action/],
    [
      'an amount that says nothing',
      'Clear enough of the outlet in the ditch.',
      /"enough" says no amount/,
    ],
    [
      'a step that nobody can remember',
      `Clear ${'the outlet and '.repeat(9)}the ditch.`,
      /a step of \d+ words/,
    ],
    ['a trade term that is not explained', 'Clear the outlet in the ditch with a hub rail.', /^$/],
  ])('are pointed at: %s', async (name, step, message) => {
    const found = await faults((t) => t.replace('Clear the outlet in the ditch first.', step))
    if (name.startsWith('a trade term')) expect(found).toEqual([])
    else expect(found.join('\n')).toMatch(message)
  })

  it('include terms that the glossary lacks, cautions that no step shows, and procedures that nothing leads to', async () => {
    const found = await library()
    const less = checkWords({
      ...found,
      terms: found.terms.filter((t) => t.value.term !== 'windrow'),
      symptoms: [],
      chapters: [],
      schedules: [],
    }).map((p) => p.message)
    expect(less).toContain('"windrow" is not in the glossary')
    expect(less.some((m) => m.startsWith('no symptom, chapter or plan leads to "winter"'))).toBe(
      true,
    )
    expect(
      checkWords({
        ...found,
        procedures: found.procedures.filter((p) => p.value.id !== 'dust'),
      }).map((p) => p.message),
    ).toContain('no step shows the caution "chemicals"')
  })
})
