import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { blankFacility } from '../../src/edit/blank-facility.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { saidEntries } from '../../src/validate/facility/said-entries.ts'
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
      .replace(/^( {2}town):$/m, '$1: Hollow Creek')
      .replace('America/…', 'America/Chicago')
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

  it('has no example of a place, of people or of help that is taken as it stands', () => {
    const filled = allOpen(text)
      .replace(/^id:$/m, 'id: own-fair')
      .replace(/^name:$/m, 'name: Hollow Creek Fair')
      .replace(/^( {2}town):$/m, '$1: Our Town')
      .replace(/^units:$/m, `units: ${system}`)
      .replace(/^paper:$/m, 'paper: a4')
      .replace(/^( {2}lap):$/m, '$1: 2,640 ft')
      .replace(/^( {2}straight):$/m, '$1: 600 ft')
      .replace(/^( {2}material):$/m, '$1: clay')
    const problems = (opened: string) => {
      const { value } = readYaml({ path: 'facility.yaml', text: opened })
      return value ? { value, problems: checkFacility(value).problems } : { value, problems: [] }
    }
    // A time zone is only begun, so that it must be finished.
    const zone = problems(filled).problems.filter((p) => p.source?.includes('time-zone: America/…'))
    expect(zone.map((p) => p.severity)).toEqual(['error'])
    const { value, problems: found } = problems(filled.replace('America/…', 'America/Chicago'))
    const told = new Set(found.filter((p) => p.severity === 'error').map((p) => p.path?.join('.')))
    const data = value?.data as Readonly<Record<string, unknown>>
    const leaves = ['place', 'contacts', 'emergency'].flatMap((g) => saidEntries(data[g], [g]))
    expect(leaves.length).toBeGreaterThan(25)
    expect(leaves.map(({ at }) => at.join('.')).filter((at) => !told.has(at))).toEqual([
      'place.elevation',
      'place.time-zone',
      // Right in most places, or a choice; who may stop racing must be among the contacts.
      'contacts.0.role',
      'emergency.number',
      'emergency.stops-racing.1',
    ])
  })

  it('tells of each how to measure it', () => {
    expect(text).toContain(system === 'us' ? '#  elevation: ' : '#  elevation: ')
    expect(text.replaceAll(/\n# /g, ' ')).toContain('Tape square across from the rail')
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(130)
  })
})
