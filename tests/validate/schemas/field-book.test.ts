import { describe, expect, it } from 'vitest'
import { loadLibrary, loadSources } from '../../../src/cli/load/load-library.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkLibrary, type LibraryTrees } from '../../../src/validate/check-library.ts'
import { folders } from '../../support/demo.ts'

const start = `read-first:
  - chapter: the-job
pages:
  - id: harrow
    title: Harrow
    parts:
      - procedure: harrow
        show: [look, steps]
        methods: [whole]
      - plan: race-days
        tables: [rota]
      - cautions: [rollover]
handout:
  - id: helping
    title: Helping
    parts:
      - cautions: [no-riders]
`

/** What is said of the file, as `line:column message (hint)`. */
async function said(text: string): Promise<string[]> {
  const [{ value }, sources] = await Promise.all([
    loadLibrary(folders.content, folders.shared),
    loadSources(folders.shared),
  ])
  const tree = readYaml({ path: 'content/field-book.yaml', text }).value
  if (!tree) throw new Error('no tree')
  const trees = { ...(value as LibraryTrees), 'field-book': tree }
  return checkLibrary(trees, new Set(sources.map((s) => s.id)))
    .problems.filter((p) => p.place.file === 'content/field-book.yaml')
    .map((p) => `${p.place.line}:${p.place.column} ${p.message} (${p.hint ?? ''})`)
}

const edited = async (from: string, to: string): Promise<string[]> => {
  expect(start).toContain(from)
  return said(start.replace(from, to))
}

describe('the file of the field book', () => {
  it('is taken when all that it names is there', async () => {
    expect(await said(start)).toEqual([])
  })

  it.each([
    [
      'cautions: [no-riders]',
      'cautions: [no-rider]',
      '17:20 there is no caution "no-rider" (did you mean "no-riders"?)',
    ],
    [
      'procedure: harrow',
      'procedure: harow',
      '7:20 there is no procedure "harow" (did you mean "harrow"?)',
    ],
    [
      'methods: [whole]',
      'methods: [hole]',
      '9:19 there is no method in this procedure "hole" (did you mean "whole"?)',
    ],
    [
      'plan: race-days',
      'plan: race-day',
      '10:15 there is no plan "race-day" (did you mean "race-days"?)',
    ],
    [
      'tables: [rota]',
      'tables: [roto]',
      '11:18 there is no table in this plan "roto" (did you mean "rota"?)',
    ],
    ['[rollover]', '[rolover]', '12:20 there is no caution "rolover" (did you mean "rollover"?)'],
    ['chapter: the-job', 'chapter: job', '2:14 there is no chapter "job" (known:'],
  ])('is refused where %s becomes %s', async (from, to, problem) => {
    const [first, ...others] = await edited(from, to)
    expect(first).toContain(problem)
    expect(others).toEqual([])
  })

  it('is refused where a part shows what its procedure does not have', async () => {
    expect(await edited('- cautions: [rollover]', '- { procedure: hitch, show: [look] }')).toEqual([
      '12:36 the procedure "hitch" has no "look" (leave it out, or write it there)',
    ])
  })

  it('is refused where a part is taken from nothing, from two things, or shows nothing', async () => {
    expect((await edited('- cautions: [rollover]', '- when: { has: harrow }'))[0]).toContain(
      '12:9 it is not said what this part is taken from (name exactly one of: emergency,',
    )
    expect(
      (await edited('- cautions: [rollover]', '- { card: harrow, chapter: duties }'))[0],
    ).toContain('this part is taken from card and from chapter')
    expect((await edited('        show: [look, steps]\n', ''))[0]).toContain(
      'it is not said what of the procedure is shown',
    )
  })

  it('is refused where an entry belongs to another kind of part', async () => {
    expect(await edited('        tables: [rota]', '        show: [steps]')).toEqual([
      '11:15 only a procedure has "show" (leave "show" out)',
    ])
    expect((await edited('tables: [rota]', 'table: [rota]'))[0]).toContain(
      '11:9 unknown entry "table" (did you mean "tables"?)',
    )
    expect((await edited('[look, steps]', '[look, step]'))[0]).toContain('did you mean "steps"?')
  })

  it('is refused where two pages have one id', async () => {
    const page = '  - { id: harrow, title: Again, parts: [{ chapter: duties }] }\n'
    expect(await said(start.replace('handout:', `${page}handout:`))).toEqual([
      '13:11 page "harrow" exists already (give it another id)',
    ])
  })
})
