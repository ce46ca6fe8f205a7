import { expect, it } from 'vitest'
import { loadTemplates } from '../../../src/cli/load/load-templates.ts'
import { checkTemplates } from '../../../src/render/text/check-templates.ts'
import { folders } from '../../support/demo.ts'
import { smallManual } from '../../support/small.ts'

const { words } = await smallManual()
const { templates } = await loadTemplates(folders)

const said = (text: string): string[] =>
  checkTemplates({ ...templates, 'site/own': text }, words).map(
    ({ place, message, hint }) =>
      `${place.file}:${place.line}:${place.column} ${message}${hint === undefined ? '' : `; ${hint}`}`,
  )

it('finds nothing wrong with the templates as they are', () =>
  expect(checkTemplates(templates, words)).toEqual([]))

it('finds a misspelt word in any branch, with its place', () => {
  expect(said('<p>\n{{#if x}}{{else}}{{words.sheet.scann}}{{/if}}</p>')).toEqual([
    'templates/site/own.hbs:2:20 content/words.yaml has no "scann" as in words.sheet.scann; did you mean "scan"?',
  ])
  expect(said('{{#each rows}}<p title="{{@root.words.shet.scan}}"></p>{{/each}}')).toEqual([
    'templates/site/own.hbs:1:27 content/words.yaml has no "shet" as in @root.words.shet.scan; did you mean "sheet"?',
  ])
})

it('finds a group that is printed as if it were a word', () =>
  expect(said('{{words.sheet}}')).toEqual([expect.stringContaining('name one word of the group')]))

it('refuses a partial whose name is worked out', () =>
  expect(said('{{> (lookup this "name")}}')).toEqual([
    'templates/site/own.hbs:1:5 the name of a partial is worked out; write its name',
  ]))

it('finds words that are handed on to a partial', () =>
  expect(said('{{> figure label=words.figure.estimat}}')).toEqual([
    expect.stringContaining('did you mean "estimate"?'),
  ]))

it('finds a partial that is not there', () =>
  expect(said('{{> cauton}}')).toEqual([
    'templates/site/own.hbs:1:5 there is no partial "cauton"; did you mean "caution"?',
  ]))

it('finds words typed in a template: as text and in what is read out', () => {
  expect(said('<p>{{#if ok}}Made on{{/if}} {{date}}</p>')).toEqual([
    'templates/site/own.hbs:1:14 "Made on" stands in a template; words stand in content/words.yaml',
  ])
  expect(said('<nav aria-label="Menu">{{date}}&nbsp;·</nav>')).toEqual([
    expect.stringContaining('"Menu" stands in a template'),
  ])
})

it('says the line of a template that cannot be read', () => {
  const [problem] = checkTemplates({ 'site/own': '<p>\n{{#if x}}\n</p>' }, words)
  expect(problem?.code).toBe('template/syntax')
  expect(problem?.place).toMatchObject({ file: 'templates/site/own.hbs', line: 3 })
})
