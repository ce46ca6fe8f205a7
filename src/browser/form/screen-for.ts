import type { Screen } from '../../edit/form/subjects.ts'
import type { Sitting } from './sitting.ts'

const withoutNumbers = (at: string): string =>
  at
    .split('.')
    .filter((step) => !/^\d+$/.test(step))
    .join('.')

/** The screen that asks for an entry of the file. */
export function screenFor(sitting: Sitting, at: string): Screen | undefined {
  const plain = withoutNumbers(at)
  const isAbove = (path: string): boolean => plain === path || plain.startsWith(`${path}.`)
  const isBelow = (path: string): boolean => path.startsWith(`${plain}.`)
  const asks = ({ first, more }: Screen, fits: (path: string) => boolean): boolean =>
    more.some((q) => fits(q.path.join('.'))) ||
    first.some(({ question }) => (question.entries ?? []).some(fits))
  return (
    sitting.screens.find((screen) => asks(screen, isAbove)) ??
    sitting.screens.find((screen) => asks(screen, isBelow))
  )
}
