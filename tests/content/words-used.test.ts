import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'
import { renderDrawings } from '../../src/render/drawings/drawings.ts'
import { demoManual, demos, folders } from '../support/demo.ts'

const { words } = await demoManual('brambleford')

const filesIn = (folder: string, ending: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => path.join(folder, name))

const textOf = (files: readonly string[]): string =>
  files.map((file) => readFileSync(file, 'utf8')).join('\n')

const src = path.join(folders.project, 'src')
const declared = path.join('schemas', 'words')
const pages = textOf([
  ...filesIn(src, '.ts').filter((file) => !file.includes(declared)),
  ...filesIn(folders.templates, '.hbs'),
])
const drawings = filesIn(path.join(src, 'render', 'drawings'), '.ts').map((file) => ({
  file,
  text: readFileSync(file, 'utf8'),
}))

/** Looked up by what the data says, so that the compiler alone knows that each has its word. */
const lookedUp = new Set([
  'groups',
  'roles',
  'capabilities',
  'provenance',
  'before',
  'signals',
  'signalMeanings',
  'severities',
  'materials',
  'ovals',
  'ownership',
  'compass',
  'calendar',
  'soils',
  'units',
  'parts',
])

/** Held against what declares them when they are loaded. */
const declaredElsewhere = new Set(['drawings', 'labels', 'pages', 'subjects'])

it('every word is printed somewhere: code and templates name it in full', () => {
  const unused = Object.entries(words)
    .filter(([group]) => !lookedUp.has(group) && !declaredElsewhere.has(group))
    .flatMap(([group, entries]) => Object.keys(entries).map((name) => `words.${group}.${name}`))
    .filter((word) => !new RegExp(`\\b${word.replaceAll('.', '\\.')}\\b`).test(pages))
  expect(unused).toEqual([])
})

/** All that the drawings of a demo say, in the order in which it stands there. */
async function saidInDrawings(id: string): Promise<string> {
  const { manual, words } = await demoManual(id)
  return Object.values(renderDrawings(manual, words))
    .flatMap(({ at, alt }) => [alt, at('page'), at('side')])
    .map((said) => said.replace(/<[^>]*>/g, ' '))
    .join(' ')
    .replace(/\s+/g, ' ')
}

it('every label stands in a drawing', async () => {
  const said = (await Promise.all(demos.map(saidInDrawings))).join(' ')
  const isSaid = (label: string): boolean =>
    label.split(/\{\w+\}/).every((part) => said.includes(part.trim()))
  const unused = Object.entries(words.labels).flatMap(([group, entries]) => {
    const own = drawings.filter(
      ({ text }) => text.includes(`labels('${group}'`) || text.includes(`labels(\n  '${group}'`),
    )
    expect(own, group).toHaveLength(1)
    return Object.entries(entries)
      .filter(
        ([name, label]) =>
          !isSaid(label) &&
          !drawings.some(
            ({ text, file }) =>
              new RegExp(`\\bwords\\.${name}\\b`).test(text) ||
              // Zones are named by the data; the file that declares a label does not use it yet.
              (file !== own[0]?.file && text.includes(`'${name}'`)),
          ),
      )
      .map(([name]) => `${group}.${name}`)
  })
  expect(unused).toEqual([])
})

it('every group of the facility at a glance has facts', () => {
  const facts = readFileSync(path.join(folders.shared, 'facts.json'), 'utf8')
  const without = Object.keys(words.groups).filter((group) => !facts.includes(`"${group}.`))
  expect(without).toEqual([])
})
