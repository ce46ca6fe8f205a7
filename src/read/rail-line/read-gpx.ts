import { SaxesParser } from 'saxes'
import type { Place, Result } from '../../model/problem.ts'
import type { RailPoint } from '../../model/rail-line.ts'
import { placeAt, problemAt, type SourceFile } from '../source-file.ts'
import { tooManyPoints } from './most-points.ts'

/** Elements of GPX 1.1 whose points make a line, the first kind that a file has. */
const kinds = ['trkpt', 'rtept', 'wpt'] as const

/** What the parser says, without its place. */
const saidOf = (message: string): string =>
  message
    .replace(/^\d+:\d+: /, '')
    .replace(/\.$/, '')
    .replace('undefined entity', 'an entity (& … ;) that XML does not have')

/**
 * Reads the line of a GPX 1.1 file (Topografix, 2004): its track, else its route, else its
 * waypoints, in the order of the file.
 */
export function readGpx(file: SourceFile): Result<readonly RailPoint[]> {
  const found: Record<(typeof kinds)[number], RailPoint[]> = { trkpt: [], rtept: [], wpt: [] }
  const problems: ReturnType<typeof problemAt>[] = []
  const parser = new SaxesParser({ position: true })
  // By its offset: the parser counts lines that end otherwise than ours.
  const here = (): Place => placeAt(file, Math.max(0, parser.position - 1), 1)
  parser.on('error', (error) => {
    if (problems.length === 0)
      problems.push(
        problemAt(file, here(), 'file/format', saidOf(error.message), {
          hint: 'expected GPX 1.1 as a receiver or a phone writes it',
        }),
      )
  })
  parser.on('opentag', ({ name, attributes }) => {
    const kind = kinds.find((k) => name === k || name.endsWith(`:${k}`))
    if (!kind) return
    const place = here()
    const [latitude, longitude] = [
      Number(attributes['lat'] ?? Number.NaN),
      Number(attributes['lon'] ?? Number.NaN),
    ]
    if (Number.isFinite(latitude) && Number.isFinite(longitude))
      found[kind].push({ latitude, longitude, place })
    else
      problems.push(
        problemAt(file, place, 'file/format', `a ${kind} without lat and lon`, {
          hint: 'every point has both, in degrees',
        }),
      )
  })
  parser.write(file.text).close()
  if (problems.length > 0) return { value: undefined, problems }
  const points = kinds.map((k) => found[k]).find((list) => list.length > 0)
  const many = tooManyPoints(file, points?.length ?? 0)
  if (many) return { value: undefined, problems: [many] }
  return points
    ? { value: points, problems }
    : {
        value: undefined,
        problems: [
          problemAt(file, placeAt(file, 0, 1), 'file/empty', 'the file holds no points', {
            hint: 'expected a track (trk), a route (rte) or waypoints (wpt)',
          }),
        ],
      }
}
