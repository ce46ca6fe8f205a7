import type { Problem, Result } from '../../model/problem.ts'
import type { RailPoint } from '../../model/rail-line.ts'
import { tooDeep } from '../limits.ts'
import { knownYaml, type Path, readYaml, type SourceTree } from '../read-yaml.ts'
import { placeAt, problemAt, type SourceFile } from '../source-file.ts'
import { tooManyPoints } from './most-points.ts'

type Node = Readonly<Record<string, unknown>>

const isNode = (x: unknown): x is Node => typeof x === 'object' && x !== null && !Array.isArray(x)

/** The first line or outer ring in a GeoJSON object, with the path that leads to its positions. */
function findLine(
  node: unknown,
  path: Path,
  // Features hold geometries, and collections features: nothing stands deeper.
  deepest = 4,
): { readonly positions: readonly unknown[]; readonly path: Path } | undefined {
  if (!isNode(node) || deepest === 0) return undefined
  const at = (key: string): Path => [...path, key]
  const list = (x: unknown): readonly unknown[] => (Array.isArray(x) ? x : [])
  switch (node['type']) {
    case 'LineString':
      return { positions: list(node['coordinates']), path: at('coordinates') }
    case 'Polygon':
      return { positions: list(list(node['coordinates'])[0]), path: [...at('coordinates'), 0] }
    case 'Feature':
      return findLine(node['geometry'], at('geometry'), deepest - 1)
    case 'FeatureCollection':
      return list(node['features']).flatMap(
        (f, i) => findLine(f, [...at('features'), i], deepest - 1) ?? [],
      )[0]
    default:
      return undefined
  }
}

const isDegrees = (value: unknown): value is number => Number.isFinite(value)

function readPoint(position: unknown, path: Path, tree: SourceTree): RailPoint | Problem {
  const [longitude, latitude] = Array.isArray(position) ? (position as unknown[]) : []
  const place = tree.placeOf(path)
  if (isDegrees(longitude) && isDegrees(latitude)) return { latitude, longitude, place }
  return tree.problem(place, 'file/format', 'a position is not two numbers', {
    hint: 'write [longitude, latitude] in degrees',
  })
}

/** Programs write all of it into one line, and thousands of points, which the other reader takes long over. */
function readJson(file: SourceFile): Result<SourceTree> {
  try {
    return { value: knownYaml(file, JSON.parse(file.text)), problems: [] }
  } catch {
    return readYaml(file)
  }
}

/**
 * Reads the first LineString or Polygon of a GeoJSON file (RFC 7946, positions on WGS84). JSON is
 * YAML, so the reader that knows lines and columns reads it.
 */
export function readGeoJson(file: SourceFile): Result<readonly RailPoint[]> {
  const deep = tooDeep(file)
  if (deep) return { value: undefined, problems: [deep] }
  const tree = readJson(file)
  if (!tree.value) return { value: undefined, problems: tree.problems }
  const source = tree.value
  const line = findLine(source.data, [])
  const many = tooManyPoints(file, line?.positions.length ?? 0)
  if (many) return { value: undefined, problems: [many] }
  if (!line || line.positions.length === 0)
    return {
      value: undefined,
      problems: [
        problemAt(file, placeAt(file, 0, 1), 'file/empty', 'the file holds no line', {
          hint: 'expected a LineString or a Polygon, alone or in a Feature',
        }),
      ],
    }
  const read = line.positions.map((p, i) => readPoint(p, [...line.path, i], source))
  const problems = read.filter((p): p is Problem => 'code' in p)
  return problems.length > 0
    ? { value: undefined, problems }
    : { value: read.filter((p): p is RailPoint => 'latitude' in p), problems }
}
