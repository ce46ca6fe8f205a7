import { expect, it } from 'vitest'
import { readYaml } from '../../src/read/read-yaml.ts'
import { chooserReferences } from '../../src/validate/chooser-references.ts'
import { chooser } from '../../src/validate/schemas/chooser.ts'
import { symptoms } from '../../src/validate/schemas/library.ts'

const questions = `questions:
  - id: look
    ask: What do you see?
    answers:
      - { id: dust, says: Dust }
      - { id: water, says: Water }
measures:
  - { id: squeeze, do: Squeeze a handful. }
`

const seen = `symptoms:
  - id: dusty
    says: It is dusty.
    looks: A cloud.
    marks: { look: [dust, water] }
    causes:
      - { check: It falls apart., by: squeeze, cause: It is dry., procedure: dust }
    stop: Nobody sees.
`

function treeOf(path: string, text: string) {
  const tree = readYaml({ path, text }).value
  if (!tree) throw new Error('no tree')
  return tree
}

function problems(file: string, said: string) {
  const tree = treeOf('content/chooser.yaml', file)
  const seenTree = treeOf('content/symptoms.yaml', said)
  const list = symptoms.parse(seenTree.data).symptoms
  const found = chooserReferences({
    procedures: [],
    chooser: [{ value: chooser.parse(tree.data), tree, path: [], schema: chooser }],
    symptoms: list.map((value, i) => {
      return { value, tree: seenTree, path: ['symptoms', i], schema: symptoms }
    }),
  })
  return found.map(({ place, message }) => `${place.file}:${place.line} ${message}`)
}

it('finds nothing wrong where questions and symptoms know each other', () =>
  expect(problems(questions, seen)).toEqual([]))

it('names the line of an answer, a question or a measure that is not there', () => {
  expect(problems(questions, seen.replace('[dust, water]', '[dust, water, mud]'))).toEqual([
    'content/symptoms.yaml:5 there is no answer "mud"',
  ])
  expect(problems(questions, seen.replace('marks: {', 'marks: { smell: [bad],'))).toEqual([
    'content/symptoms.yaml:5 there is no question "smell"',
  ])
  expect(problems(questions, seen.replace('by: squeeze', 'by: smell'))).toEqual([
    'content/symptoms.yaml:7 there is no measure "smell"',
  ])
  expect(problems(questions.replace('handful. }', 'handful., procedure: none }'), seen)).toEqual([
    'content/chooser.yaml:8 there is no procedure "none"',
  ])
})

it('names an answer that fits nothing', () =>
  expect(problems(questions, seen.replace(', water]', ']'))).toEqual([
    'content/chooser.yaml:6 no symptom has the answer "water"',
  ]))
