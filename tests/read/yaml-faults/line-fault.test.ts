import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { lineFault } from '../../../src/read/yaml-faults/line-fault.ts'
import { folders } from '../../support/demo.ts'

const files = readdirSync(folders.content, { recursive: true, encoding: 'utf8' })
  .filter((f) => f.endsWith('.yaml'))
  .map((f) => [f, readFileSync(path.join(folders.content, f), 'utf8')] as const)

describe('lineFault', () => {
  it.each(files)('finds nothing in %s, which is sound', (_, text) => {
    expect(lineFault(text)).toBeUndefined()
  })

  it('finds nothing in texts over several lines, lists at the margin, blocks and quotes', () => {
    const sound = [
      '# a remark\n---\na:\n- b\n- c: d\n  e: f\n',
      'a: some words\n  that go on\nb: |\n  x: y: z\n    - { [\nc: >-\n  text\nd: e\n',
      'a: "said\n  over two lines"\nb: { c: 1,\n  d: [2,\n    3] } # remark\ne: f\n',
      "a: 'it''s'\nb: \"a \\\" quote\"\nc: https://x.example/#top\nd: -12\n- e\n".replace(
        '- e\n',
        '',
      ),
      'a:\n  - - 1\n    - 2\n  -\n    b: c\n',
    ]
    for (const text of sound) expect(lineFault(text)).toBeUndefined()
  })
})
