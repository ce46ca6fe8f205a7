import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'
import { parse } from 'yaml'
import { form } from '../../../src/validate/schemas/form.ts'
import { folders } from '../../support/demo.ts'

const said = form.parse(parse(readFileSync(path.join(folders.content, 'form.yaml'), 'utf8')))
const sources = path.join(folders.project, 'src', 'browser', 'form')
const scripts = readdirSync(sources, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => readFileSync(path.join(sources, file), 'utf8'))

it('every word of the form is shown somewhere: scripts name it with its group', () => {
  const { entries, ...groups } = said.says
  expect(Object.keys(entries).length).toBeGreaterThan(5)
  const unused = Object.entries(groups).flatMap(([group, words]) =>
    Object.keys(words)
      .filter(
        (word) =>
          !scripts.some(
            (script) =>
              script.includes(`${group}.${word}`) ||
              (script.includes(`{ ${group} }`) && script.includes(`${group}[${word}`)),
          ),
      )
      .map((word) => `${group}.${word}`),
  )
  // Name and telephone of a person are looked up by the entry that they fill in.
  expect(unused).toEqual(['field.phone'])
})
