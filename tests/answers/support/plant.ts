import { parseDocument } from 'yaml'
import type { Path } from '../../../src/read/read-yaml.ts'
import { demoFiles } from './work.ts'

/** Every entry of a demo's facility file that holds no others. */
export function leavesOf(demo: string): readonly Path[] {
  const leaves = (data: unknown, at: Path): Path[] =>
    typeof data === 'object' && data !== null
      ? Object.entries(data).flatMap(([key, value]) =>
          leaves(value, [...at, Array.isArray(data) ? Number(key) : key]),
        )
      : [at]
  return leaves(parseDocument(demoFiles(demo).get('facility.yaml') ?? '').toJS(), [])
}

/** A demo with other values in some entries. */
export function planted(
  demo: string,
  faults: readonly (readonly [Path, unknown])[],
): ReadonlyMap<string, string> {
  const files = demoFiles(demo)
  const doc = parseDocument(files.get('facility.yaml') ?? '')
  for (const [path, value] of faults) doc.setIn(path, doc.createNode(value))
  return new Map([...files, ['facility.yaml', String(doc)]])
}
