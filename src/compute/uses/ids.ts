import { type FactPath, isFactPath } from '../../model/fact-spec.ts'
import { useTable } from './use-table.ts'

/** Id of a use, such as `grade`: the worksheet that shows one calculation with its inputs bound. */
export type UseId = keyof typeof useTable

/** The calculations that a use may show. */
export type CalculationOf<Id extends UseId> = (typeof useTable)[Id][number]

/** Id of a figure, `<use>.<output>`, such as `grade.time`. */
export type FigureId = { [Id in UseId]: `${Id}.${CalculationOf<Id>['outputNames']}` }[UseId]

/** What text and code may ask a value of: a figure or a fact. */
export type QuantityId = FigureId | FactPath

/** Every figure that there can be, for any facility. */
export const figureIds: ReadonlySet<string> = new Set(
  Object.entries(useTable).flatMap(([id, calculations]) =>
    calculations.flatMap((c) => Object.keys(c.outputs).map((output) => `${id}.${output}`)),
  ),
)

/** Tells whether a name is the id of a figure that there can be. */
export const isFigureId = (name: string): name is FigureId => figureIds.has(name)

/** Tells whether a name is the id of a figure or the path of a fact. */
export const isQuantityId = (name: string): name is QuantityId =>
  isFigureId(name) || isFactPath(name)

function checked<Name extends string>(
  name: string,
  is: (name: string) => name is Name,
  what: string,
): Name {
  if (is(name)) return name
  throw new RangeError(`there is no ${what} "${name}"`)
}

/** A figure's id from content that was checked. @throws RangeError for any other name. */
export const figureIdOf = (name: string): FigureId => checked(name, isFigureId, 'figure')

/** A fact's path from content that was checked. @throws RangeError for any other name. */
export const factPathOf = (name: string): FactPath => checked(name, isFactPath, 'fact')

/** A figure's id or a fact's path from content that was checked. @throws RangeError else. */
export const quantityIdOf = (name: string): QuantityId =>
  checked(name, isQuantityId, 'figure or fact')
