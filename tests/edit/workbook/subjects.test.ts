import { describe, expect, it } from 'vitest'
import { subjects } from '../../../src/edit/workbook/subjects.ts'
import { imports } from '../../../src/validate/imports/imports.ts'
import { asKey } from '../../../src/validate/schema-advice/near-name.ts'
import { groupsOf } from '../../../src/validate/schema-advice/schema-keys.ts'
import { facility } from '../../../src/validate/schemas/facility.ts'

describe.each(['us', 'metric'] as const)('the sheets of the workbook in %s units', (system) => {
  const all = subjects(system)
  const fields = all.flatMap((s) => (s.is === 'table' ? [] : s.fields))

  it('have every entry of a facility file, each once', () => {
    const paths = fields.map((f) => f.path.join('.'))
    expect(new Set(paths).size).toBe(paths.length)
    const groups = groupsOf(facility)
    const isGroup = (path: string): boolean => groups.some((g) => g.path.join('.') === path)
    // Tables beside the file have sheets of readings instead of entries.
    const tables = all.flatMap((s) => (s.is === 'table' ? [s.entry] : []))
    const leaves = groups
      .flatMap((g) => g.keys.map((key) => [...g.path, key].join('.')))
      .filter(
        (path) => !isGroup(path) && !tables.some((t) => path === t || path.startsWith(`${t}.`)),
      )
    expect(leaves.length).toBeGreaterThan(230)
    const open = leaves.filter((path) => !paths.some((p) => p === path || p.startsWith(`${path}.`)))
    // Practices of grit have no entries.
    expect(open).toEqual(['practice.grit'])
  })

  it('have heads that name one column each', () => {
    for (const subject of all) {
      if (subject.is !== 'list') continue
      const heads = subject.fields.map((f) => asKey(f.about.label))
      expect([subject.id, new Set(heads).size]).toEqual([subject.id, heads.length])
    }
  })

  it('have examples in tables of readings that their readers take', () => {
    for (const subject of all) {
      if (subject.is !== 'table') continue
      const text = [subject.columns.map((c) => c.head), subject.columns.map((c) => `"${c.suchAs}"`)]
        .map((row) => row.join(','))
        .join('\n')
      const at = { file: 'facility.yaml', line: 1, column: 1, length: 1 }
      const read = imports[subject.entry].read as unknown as (...given: unknown[]) => {
        readonly problems: readonly { readonly message: string }[]
      }
      const { problems } = read(
        { path: subject.file, text },
        { of: subject.of, by: '' },
        { at, date: '2027-06-14' },
      )
      // One reading is no survey; that it can be read is what counts.
      expect(problems.map((p) => p.message).filter((m) => !m.includes('too few'))).toEqual([])
    }
  })
})
