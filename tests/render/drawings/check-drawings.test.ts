import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { expect, it } from 'vitest'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkDrawings } from '../../../src/render/drawings/check-drawings.ts'
import type { Library } from '../../../src/validate/check-library.ts'
import { folders } from '../../support/demo.ts'
import { loadSmall } from '../../support/small.ts'

const words = await readFile(path.join(folders.content, 'words.yaml'), 'utf8')

async function problems(
  text: string,
  change: (library: Library) => Library = (l) => l,
): Promise<string[]> {
  const { library } = await loadSmall()
  const tree = readYaml({ path: 'words.yaml', text }).value
  if (!library || !tree) throw new Error('no library')
  const wordsFile = { ...library.wordsFile, tree }
  return checkDrawings(change({ ...library, wordsFile })).map(
    ({ place, message, hint }) =>
      `${place.file}:${place.line} ${message}${hint === undefined ? '' : `; ${hint}`}`,
  )
}

/** The line of the file of words on which a text stands, from 1. */
const lineOf = (text: string): number => words.slice(0, words.indexOf(text)).split('\n').length

it('finds nothing wrong with the words as they are', async () =>
  expect(await problems(words)).toEqual([]))

it('gives no number to two drawings', async () => {
  const two = words.replace(/( {2}pullback:\n {4}number: )\d+/, '$11')
  expect(await problems(two)).toEqual([
    `words.yaml:${lineOf('  pullback:') + 1} drawing 1 is "plan" already; take a number that no drawing has`,
  ])
})

it('asks for the title of every drawing, at its group', async () => {
  const title = '    title: A washout cut square\n'
  expect(await problems(words.replace(title, ''))).toEqual([
    `words.yaml:${lineOf('  washout:')} "title" is missing in "drawings.washout"; add a line "title:" and behind it the value, such as some text`,
  ])
})

it('asks for every label that a drawing uses', async () =>
  expect(await problems(words.replace('    found: Filled as found\n', ''))).toEqual([
    expect.stringContaining('"found" is missing in "labels.washout"'),
  ]))

it('knows no words that no drawing asks for', async () => {
  const more = words.replace(
    '    found: Filled as found\n',
    '    found: Filled as found\n    fond: lover\n',
  )
  expect(await problems(more)).toEqual([
    `words.yaml:${lineOf('    found: Filled as found') + 1} unknown entry "fond"; did you mean "found"?`,
  ])
})

it('asks for the places that the words of a label must hold', async () =>
  expect(await problems(words.replace('"lift {number}, tamped"', 'tamped'))).toEqual([
    expect.stringContaining('words that hold {number}'),
  ]))

const withSteps =
  (change: (drawing: string | undefined) => string | undefined) =>
  (library: Library): Library => ({
    ...library,
    procedures: library.procedures.map((p) => ({
      ...p,
      value: {
        ...p.value,
        methods: p.value.methods.map((m) => ({
          ...m,
          steps: m.steps.map((s) => ({ ...s, drawing: change(s.drawing) })),
        })),
      },
    })),
  })

it('knows no drawing that a step cites by a slip', async () => {
  const found = await problems(
    words,
    withSteps((d) => (d === 'passes-harrow' ? 'passes-harow' : d)),
  )
  expect(found).toEqual([
    expect.stringMatching(
      /harrow\.yaml:\d+ there is no drawing "passes-harow"; did you mean "passes-harrow"\?$/,
    ),
  ])
})

it('lets no drawing stand on a sheet that no step cites', async () => {
  const found = await problems(
    words,
    withSteps((d) => (d === 'plan' ? undefined : d)),
  )
  expect(found).toEqual([
    expect.stringMatching(
      /harrow\.yaml:\d+ no step cites the drawing "plan"; write "drawing: plan" at the step that needs it$/,
    ),
  ])
})

it('knows no drawing that content names by a slip, and says which was meant', async () => {
  const found = await problems(words, (library) => ({
    ...library,
    schedules: library.schedules.map((s) =>
      s.value.drawings ? { ...s, value: { ...s.value, drawings: ['countdwn'] } } : s,
    ),
  }))
  expect(found[0]).toMatch(
    /plans\.yaml:\d+ there is no drawing "countdwn"; did you mean "countdown"\?$/,
  )
})

it('knows what is measured first leads to, and that some step places it', async () => {
  const naming = (drawing: string) =>
    problems(words, (library) => ({
      ...library,
      procedures: library.procedures.map((p) => ({
        ...p,
        value: { ...p.value, measure: p.value.measure.map((m) => ({ ...m, drawing })) },
      })),
    }))
  expect((await naming('washuot'))[0]).toContain('there is no drawing "washuot"')
  expect((await naming('heat-index'))[0]).toContain('no step cites the drawing "heat-index"')
  expect(await naming('plan')).toEqual([])
})
