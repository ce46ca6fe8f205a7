import type { Result } from '../../model/problem.ts'
import { railLines } from './rail-line.ts'
import { surveys } from './surveys.ts'
import { weather } from './weather.ts'

/** Every kind of file that a facility may bring along. */
export const imports = { surveys, weather, railLines } as const

type ImportName = keyof typeof imports

type ValueOf<Kind> = Kind extends { readonly read: (...given: never[]) => Result<infer Value> }
  ? Value
  : never

/** What was read of each kind, in the order in which the facility file names the files. */
export type Imported = {
  readonly [Name in ImportName]: readonly ValueOf<(typeof imports)[Name]>[]
}

/** Before any file was read. */
export const nothingImported: Imported = { surveys: [], weather: [], railLines: [] }
