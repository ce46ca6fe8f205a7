import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { Ajv } from 'ajv'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import table from '../../../shared/entries.json' with { type: 'json' }
import { entryAbout } from '../../../src/model/entry-about.ts'
import { hasErrors } from '../../../src/model/problem.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkFacility } from '../../../src/validate/check-facility.ts'
import {
  facilityJsonSchema,
  libraryJsonSchema,
} from '../../../src/validate/json-schema/json-schema.ts'
import { groupsOf } from '../../../src/validate/schema-advice/schema-keys.ts'
import { facility } from '../../../src/validate/schemas/facility.ts'
import { librarySchemas } from '../../../src/validate/schemas/library-schemas.ts'
import { demoFolder, demos, folders } from '../../support/demo.ts'
import { mistakesOfTyping } from '../../support/mistakes.ts'
import { plantedFaults } from '../../support/planted-yaml.ts'

// Formats are those of JSON Schema; ranges of dates are left to the patterns beside them.
const ajv = new Ajv({ strict: false, validateFormats: false, allErrors: true })
const schema = facilityJsonSchema(facility)
const accepts = ajv.compile(schema)

const textOf = (demo: string): string =>
  readFileSync(path.join(demoFolder(demo), 'facility.yaml'), 'utf8')

/** Whether the program takes a text; undefined where it is no YAML. */
function taken(text: string): boolean | undefined {
  const { value } = readYaml({ path: 'facility.yaml', text })
  return value && !hasErrors(checkFacility(value).problems)
}

describe('the JSON Schema of a facility file', () => {
  it.each(demos)('accepts %s', (demo) => {
    accepts(parse(textOf(demo)))
    expect(accepts.errors ?? []).toEqual([])
  })

  it('refuses nothing that the program accepts', () => {
    const texts = [
      ...demos.flatMap((demo) =>
        plantedFaults(textOf(demo))
          .filter((_, i) => i % 11 === 0)
          .map((p) => p.text),
      ),
      ...mistakesOfTyping().map((m) => m.text),
    ]
    const wrong = texts.filter((text) => taken(text) === true && !accepts(parse(text)))
    expect(wrong).toEqual([])
  })

  it.each([
    [
      'oval',
      'lap',
      ['2,640 ft', '1/2 mi', '0.5 mile', '804.7 m', '2640 FEET', '452 ft 6 in', "2640'"],
    ],
    ['prices', 'labor', ['$22/h', '$22 per hour', '22 money/h', '€18.50/h']],
    ['water', 'fill-flow', ['250 gal/min', '250 gpm', '900 L/min', '0.5 ft3/s']],
  ])('accepts %s.%s in every way that it can be written', (group, key, ways) => {
    for (const way of ways) {
      const text = textOf('larkmoor').replace(new RegExp(`(\n  ${key}: ).*`), `$1${way}`)
      expect(text).toContain(way)
      expect({ group, way, accepted: accepts(parse(text)) }).toEqual({ group, way, accepted: true })
    }
  })

  it('refuses what a schema can see', () => {
    const read = mistakesOfTyping().filter((m) => taken(m.text) === false)
    const seen = read.filter((m) => !accepts(parse(m.text)))
    // What it cannot: values out of range, references, two things of one id, the shape of an oval, remarks.
    expect(read.filter((m) => !seen.includes(m)).map((m) => m.name)).toEqual([
      'a point for thousands',
      'a value that cannot be',
      'the lap left out',
      'a measurement by its label',
      'a measurement by another name',
      'a web address without its beginning',
      'two machines with one id',
      'a race day of another century',
      'an id that Windows takes for a device',
      'a table with the name of a device',
      'a line of the rail with the name of a device',
      'the address of the annotated file',
      'the gate of the annotated file',
      'the town of the annotated file',
      'a person of the annotated file',
      'the position of the annotated file',
      'a telephone under a head that is still a remark',
      'a smaller unit before a larger one',
      'a ridge by another name',
      'a gate far from the place',
    ])
    expect(seen.length).toBeGreaterThanOrEqual(55)
  })

  it('has a label for every entry, and how to measure every quantity', () => {
    const paths = groupsOf(facility).flatMap((g) => g.keys.map((key) => [...g.path, key]))
    expect(paths.filter((p) => entryAbout(p) === undefined)).toEqual([])
    const known = new Set(paths.map((p) => p.join('.')))
    expect(Object.keys(table.entries).filter((p) => !known.has(p))).toEqual([])
    const lap = JSON.stringify(schema).match(/"lap":\{[^}]*/)?.[0]
    expect(lap).toContain('"title":"one lap at the measuring line"')
    expect(lap).toContain('licensed surveyor')
  })
})

const compiled = new Map<unknown, ReturnType<typeof ajv.compile>>()

describe('the JSON Schemas of the library', () => {
  const files = readdirSync(folders.content, { recursive: true, encoding: 'utf8' })
    .filter((f) => f.endsWith('.yaml') && !f.startsWith('facilities') && f !== 'not-said.yaml')
    .map(
      (f) =>
        [f.split(path.sep).join('/'), readFileSync(path.join(folders.content, f), 'utf8')] as const,
    )

  it.each(files)('is named in the first line of %s, and accepts it', (file, text) => {
    const name = file.includes('/') ? file.split('/')[0] : path.basename(file, '.yaml')
    const up = '../'.repeat(file.split('/').length)
    expect(text.split('\n')[0]).toBe(
      `# yaml-language-server: $schema=${up}schemas/${name}.schema.json`,
    )
    const own = librarySchemas[name as keyof typeof librarySchemas]
    const check = compiled.get(own) ?? ajv.compile(libraryJsonSchema(own, file))
    compiled.set(own, check)
    check(parse(text))
    expect(check.errors ?? []).toEqual([])
  })
})
