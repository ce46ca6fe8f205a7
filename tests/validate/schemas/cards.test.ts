import { describe, expect, it } from 'vitest'
import { loadLibrary, loadSources } from '../../../src/cli/load/load-library.ts'
import { figureIds } from '../../../src/compute/uses/ids.ts'
import { factPaths } from '../../../src/model/fact-spec.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkLibrary, type LibraryTrees } from '../../../src/validate/check-library.ts'
import { checkText } from '../../../src/validate/check-text.ts'
import { folders } from '../../support/demo.ts'

describe('a list of cards with mistakes', () => {
  /** What is said of the list, as `line: message`, when its text is changed. */
  async function said(edit: (text: string) => string): Promise<string[]> {
    const [{ value }, sources] = await Promise.all([
      loadLibrary(folders.content, folders.shared),
      loadSources(folders.shared),
    ])
    const trees = value as LibraryTrees
    const text = edit(trees.cards.file.text)
    expect(text).not.toBe(trees.cards.file.text)
    const cards = readYaml({ path: 'content/cards.yaml', text }).value
    if (!cards) throw new Error('no tree')
    const checked = checkLibrary({ ...trees, cards }, new Set(sources.map((s) => s.id)))
    const named = checked.value
      ? checkText(checked.value.cards, {
          quantities: new Set([...figureIds, ...factPaths]),
          procedures: new Map(),
        })
      : []
    return [...checked.problems, ...named]
      .filter((p) => p.place.file === 'content/cards.yaml')
      .map((p) => `${text.split('\n')[p.place.line - 1]?.trim()} → ${p.message}`)
  }

  it.each([
    [
      'a quantity',
      (t: string) => t.replace('figure: round.loads,', 'figure: round.lods,'),
      'round.lods',
      'there is no figure or fact "round.lods"',
    ],
    [
      'a quantity in words',
      (t: string) => t.replace('loads for one round', 'loads at {pass.sped}'),
      'pass.sped',
      'there is no figure or fact "pass.sped"',
    ],
    [
      'a caution',
      (t: string) => t.replace('truck-bank, backing]', 'truck-bank, backin]'),
      'backin]',
      'there is no caution "backin"',
    ],
    [
      'a table',
      (t: string) => t.replace('[round, moisture]', '[round, moistur]'),
      'moistur]',
      'there is no reckoner "moistur"',
    ],
    [
      'an id twice',
      (t: string) => t.replace('id: grader', 'id: water-truck'),
      'id: water-truck',
      'card "water-truck" exists already',
    ],
    [
      'a role',
      (t: string) => t.replace('phones: [ambulance', 'phones: [ambulanc'),
      'ambulanc,',
      '',
    ],
  ])('points at the line of an unknown name: %s', async (_, edit, where, message) => {
    const problems = await said(edit)
    expect(problems).toHaveLength(1)
    expect(problems[0]?.split(' → ')[0]).toContain(where)
    expect(problems[0]).toContain(message)
  })
})
