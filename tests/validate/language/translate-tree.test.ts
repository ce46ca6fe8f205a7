import { describe, expect, it } from 'vitest'
import type { Problem } from '../../../src/model/problem.ts'
import { readYaml, type SourceTree } from '../../../src/read/read-yaml.ts'
import { translateTree } from '../../../src/validate/language/translate-tree.ts'
import { librarySchemas } from '../../../src/validate/schemas/library-schemas.ts'

const tree = (path: string, text: string): SourceTree => {
  const { value, problems } = readYaml({ path, text })
  if (!value) throw new Error(problems.map((p) => p.message).join())
  return value
}

const base = `cautions:
  - id: gate
    signal: warning
    hazard: A gate can swing.
    avoid: Wait {practice.gate-wait}, then [close it](procedure:close).
    sources: [common-practice]
  - id: dark
    signal: warning
    hazard: Nobody sees you.
    avoid: Carry a light.
    sources: [common-practice]
`

const french = `cautions:
  dark:
    hazard: Personne ne vous voit.
    avoid: Portez une lampe.
  gate:
    hazard: Un portail peut battre.
    avoid: "[Fermez-le](procedure:close) après {practice.gate-wait}."
`

const translated = (language: string) =>
  translateTree(
    tree('content/cautions.yaml', base),
    librarySchemas.cautions,
    tree('content/languages/fr/cautions.yaml', language),
  )

const said = (problems: readonly Problem[]): string[] =>
  problems.map((p) => `${p.place.line}:${p.place.column} ${p.code} ${p.message}`)

describe('a file in another language', () => {
  it('keeps structure and ids and takes every text from the other file, entries by their ids', () => {
    const { value, problems } = translated(french)
    expect(problems).toEqual([])
    expect(value?.data).toEqual({
      cautions: [
        {
          id: 'gate',
          signal: 'warning',
          hazard: 'Un portail peut battre.',
          avoid: '[Fermez-le](procedure:close) après {practice.gate-wait}.',
          sources: ['common-practice'],
        },
        {
          id: 'dark',
          signal: 'warning',
          hazard: 'Personne ne vous voit.',
          avoid: 'Portez une lampe.',
          sources: ['common-practice'],
        },
      ],
    })
  })

  it('places a text where the other file has it, everything else where the library has it', () => {
    const { value } = translated(french)
    expect(value?.placeOf(['cautions', 1, 'avoid'])).toMatchObject({
      file: 'content/languages/fr/cautions.yaml',
      line: 4,
    })
    expect(value?.textPlaceOf(['cautions', 0, 'avoid'], '{practice.gate-wait}')).toMatchObject({
      line: 7,
      column: 48,
    })
    expect(value?.placeOf(['cautions', 1, 'signal'])).toMatchObject({
      file: 'content/cautions.yaml',
      line: 8,
    })
    const at = value?.placeOf(['cautions', 1, 'avoid'])
    expect(at && value?.problem(at, 'text/style', 'long').source).toBe(
      '    avoid: Portez une lampe.',
    )
  })

  it.each<[string, (text: string) => string, string]>([
    [
      'a text that is missing',
      (t) => t.replace('    avoid: Portez une lampe.\n', ''),
      '2:3 schema/missing "cautions.dark.avoid" is missing',
    ],
    [
      'an entry that is missing as a whole',
      (t) => t.slice(0, t.indexOf('  gate:')),
      '1:1 schema/missing "cautions.gate" is missing',
    ],
    [
      'a misspelt name',
      (t) => t.replace('hazard: Personne', 'hazzard: Personne'),
      '3:5 schema/unknown-key "cautions.dark.hazzard" stands for no text',
    ],
    [
      'an entry that the library does not have',
      (t) => `${t}  shade:\n    hazard: Il fait noir.\n`,
      '8:3 schema/unknown-key "cautions.shade" stands for no text',
    ],
    [
      'something that is no text but structure',
      (t) => t.replace('  gate:\n', '  gate:\n    signal: danger\n'),
      '6:5 schema/unknown-key "cautions.gate.signal" stands for no text',
    ],
    [
      'a number in place of a text',
      (t) => t.replace('Portez une lampe.', '12'),
      '4:12 schema/type text was expected here',
    ],
    [
      'a list where entries have ids',
      () => 'cautions:\n  - hazard: Personne ne vous voit.\n',
      '2:3 schema/type named entries were expected here',
    ],
    [
      'a figure that is left out',
      (t) => t.replace(' après {practice.gate-wait}', ''),
      '7:12 language/names {practice.gate-wait} is missing',
    ],
    [
      'a figure that the text does not have',
      (t) => t.replace('une lampe', '{crew.lamps} lampes'),
      '4:19 language/names {crew.lamps} is not in the text that this one stands for',
    ],
    [
      'a link to somewhere else',
      (t) => t.replace('procedure:close', 'procedure:open'),
      '7:24 language/names (procedure:open) is not in the text that this one stands for',
    ],
  ])('with %s is refused at its line', (_, edit, problem) => {
    const text = edit(french)
    expect(text).not.toBe(french)
    expect(said(translated(text).problems)).toContain(problem)
  })

  it('says of a missing text what the library says and where', () => {
    const { problems } = translated(french.replace('    avoid: Portez une lampe.\n', ''))
    expect(problems[0]?.hint).toBe('content/cautions.yaml:10 says: Carry a light.')
  })

  it('leaves a text that it lacks in the first language, and counts what is missing', () => {
    const { value, problems } = translated('cautions: {}\n')
    expect(value?.data).toEqual(tree('x', base).data)
    expect(problems.map((p) => p.hint)).toEqual(['texts in it: 2', 'texts in it: 2'])
  })
})

describe('a list whose entries have no ids', () => {
  const form = `forms:
  - id: log
    title: Log
    about: One page a day.
    who: Driver
    moment: evening
    kept: office
    boxes:
      - { label: Date, wide: 1 }
    table:
      columns: [Hour, { head: Dry, wide: 1, check: true }]
    checks:
      - { look: Tires, except: [tamp] }
      - { look: Drum }
    sign: [Driver]
`
  const german = `forms:
  log:
    title: Buch
    about: Eine Seite am Tag.
    who: Fahrer
    moment: abends
    kept: Büro
    boxes: [{ label: Tag }]
    table: { columns: [Stunde, { head: Trocken }] }
    checks: [{ look: Reifen }, { look: Walze }]
    sign: [Fahrer]
`
  const inGerman = (text: string) =>
    translateTree(tree('content/forms.yaml', form), librarySchemas.forms, tree('de.yaml', text))

  it('is given in the same order', () => {
    const { value, problems } = inGerman(german)
    expect(problems).toEqual([])
    expect(value?.data).toMatchObject({
      forms: [
        {
          table: { columns: ['Stunde', { head: 'Trocken', wide: 1, check: true }] },
          checks: [{ look: 'Reifen', except: ['tamp'] }, { look: 'Walze' }],
        },
      ],
    })
  })

  it.each<[string, string, string, string]>([
    [
      'one entry too many',
      '{ look: Walze }]',
      '{ look: Walze }, { look: Licht }]',
      '"forms.log.checks.2" stands for no text',
    ],
    ['one entry too few', ', { look: Walze }]', ']', '"forms.log.checks.1" is missing'],
    ['names instead of a list', '[Fahrer]', '{ first: Fahrer }', 'a list was expected here'],
  ])('is refused with %s', (_, was, is, problem) => {
    expect(inGerman(german.replace(was, is)).problems.map((p) => p.message)).toEqual([problem])
  })

  it('keeps its places where an entry has no text', () => {
    const plan = `plans:
  - id: days
    title: Days
    about: What is when.
    tables:
      - { id: a, title: A, heads: [By, Task], rows: [{ cells: [x, y] }] }
`
    const wanted = `plans:
  days:
    title: Tage
    about: Was wann ist.
    tables: { a: { title: A, heads: [Bis, Arbeit], rows: [{ cells: [u, v] }, {}] } }
`
    const { problems } = translateTree(
      tree('content/plans.yaml', plan),
      librarySchemas.plans,
      tree('de.yaml', wanted),
    )
    expect(problems).toEqual([])
  })
})
