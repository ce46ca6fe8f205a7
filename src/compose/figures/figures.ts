import type { Figure, Worksheet } from '../../model/figure.ts'
import type { ComposeContext } from '../context.ts'

/** Orders numbers of worksheets, such as `W-9` before `W-12`. */
export const byNumber = (a: string, b: string): number => Number(a.slice(2)) - Number(b.slice(2))

/** Every figure that there is here, with or without a value. */
export const composeFigures = ({ engine }: ComposeContext): readonly Figure[] =>
  engine.figureIds.flatMap((id) => engine.figure(id) ?? [])

/** All worksheets in the order of their numbers. */
export const composeWorksheets = ({ engine }: ComposeContext): readonly Worksheet[] =>
  engine.worksheets().toSorted((a, b) => byNumber(a.number, b.number))
