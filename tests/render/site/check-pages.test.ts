import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { expect, it } from 'vitest'
import { loadTemplates } from '../../../src/cli/load/load-templates.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkPages, checkPageTemplates } from '../../../src/render/site/check-pages.ts'
import { folders } from '../../support/demo.ts'

const words = await readFile(path.join(folders.content, 'words.yaml'), 'utf8')

function problems(text: string): string[] {
  const tree = readYaml({ path: 'words.yaml', text }).value
  if (!tree) throw new Error('no tree')
  return checkPages(tree).map((p) => `${p.place.line} ${p.message}`)
}

it('finds nothing wrong with the words as they are', () => expect(problems(words)).toEqual([]))

it('asks for the title and the entry in the menu of every page, at its line', () => {
  const learn = words.slice(0, words.indexOf('\n  learn:\n')).split('\n').length + 1
  const less = words.replace(/(\n {2}learn:\n) {4}title: .*\n {4}menu: .*\n/, '$1')
  expect(problems(less)).toEqual([
    `${learn} "title" is missing in "pages.learn"`,
    `${learn} "menu" is missing in "pages.learn"`,
  ])
})

it('knows no page that nobody declares', () =>
  expect(problems(words.replace('\npages:\n', '\npages:\n  news:\n    title: News\n'))).toEqual([
    expect.stringContaining('unknown entry "news"'),
  ]))

it('knows no entry in the menu of a page that has none', () =>
  expect(problems(words.replace('\n  hazards:\n', '\n  hazards:\n    menu: Hazards\n'))).toEqual([
    expect.stringContaining('unknown entry "menu"'),
  ]))

it('asks for the template of every page', async () => {
  const { templates } = await loadTemplates(folders)
  expect(checkPageTemplates(templates)).toEqual([])
  const { 'site/learn': learn, ...others } = templates
  expect(learn).toBeDefined()
  expect(checkPageTemplates(others).map((p) => `${p.code} ${p.place.file}`)).toEqual([
    'file/missing templates/site/learn.hbs',
  ])
})
