import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { blankFacility } from '../../src/edit/blank-facility.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { groupsOf } from '../../src/validate/schema-advice/schema-keys.ts'
import { facility } from '../../src/validate/schemas/facility.ts'

/** The file with every entry taken out of its remark; remarks proper have one space behind the #. */
const allOpen = (text: string): string => text.replaceAll(/^#(?! \S|$)/gm, '')

describe.each(['us', 'metric'] as const)('a blank facility file in %s units', (system) => {
  const text = blankFacility(facility, system)

  it('says nothing but for the entries that must be filled in', () => {
    expect(parse(text)).toEqual({
      id: null,
      name: null,
      place: { town: null },
      units: null,
      paper: null,
      oval: { lap: null, straight: null },
      cushion: { material: null },
    })
  })

  it('has every entry that there may be, outside of lists', () => {
    const opened = parse(allOpen(text)) as Record<string, unknown>
    const at = (path: readonly string[]): unknown =>
      path.reduce<unknown>((v, key) => (v as Record<string, unknown> | undefined)?.[key], opened)
    const paths = groupsOf(facility)
      .filter((g) => !g.listed)
      .flatMap((g) => g.keys.map((key) => [...g.path, key]))
    expect(paths.length).toBeGreaterThan(200)
    // Practices of grit have no entries.
    expect(paths.filter((p) => at(p) === undefined).map((p) => p.join('.'))).toEqual([
      'practice.grit',
    ])
  })

  it('has examples that can be read, each of them', () => {
    const filled = allOpen(text)
      .replace(/^id:$/m, 'id: our-fair')
      .replace(/^name:$/m, 'name: Our Fair')
      .replace(/^( {2}town):$/m, '$1: Our Town')
      .replace(/^units:$/m, `units: ${system}`)
      .replace(/^paper:$/m, 'paper: a4')
      .replace(/^( {2}lap):$/m, '$1: 2,640 ft')
      .replace(/^( {2}straight):$/m, '$1: 600 ft')
      .replace(/^( {2}material):$/m, '$1: clay')
    const { value, problems } = readYaml({ path: 'facility.yaml', text: filled })
    expect(problems).toEqual([])
    const found = value ? checkFacility(value).problems : []
    const unread = found.filter((p) => /^(schema|quantity|yaml)\//.test(p.code))
    expect(unread.map((p) => `${p.source}: ${p.message}`)).toEqual([])
  })

  it('tells of each how to measure it', () => {
    expect(text).toContain(system === 'us' ? '#  elevation: ' : '#  elevation: ')
    expect(text.replaceAll(/\n# /g, ' ')).toContain('Tape square across from the rail')
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(130)
  })
})
