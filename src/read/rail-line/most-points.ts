import type { Problem } from '../../model/problem.ts'
import { placeAt, problemAt, type SourceFile } from '../source-file.ts'

/** A receiver that notes a point every second is walked round for three hours before it has as many. */
const mostPoints = 10_000

/** A line of more points than anybody walks. */
export const tooManyPoints = (file: SourceFile, count: number): Problem | undefined =>
  count <= mostPoints
    ? undefined
    : problemAt(
        file,
        placeAt(file, 0, 1),
        'file/too-large',
        `the line has ${count} points, and ${mostPoints} are more than anybody walks`,
        { hint: 'save one lap, with a point every few feet' },
      )
