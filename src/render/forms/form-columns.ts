import type { ManualForm } from '../../model/manual/form.ts'

export type Column = NonNullable<ManualForm['table']>['columns'][number]

export const columnsOf = ({ table }: ManualForm): readonly Column[] => table?.columns ?? []

/** The part of the table's width that a column takes, 0 to 1. */
export const shareOf = (column: Column, columns: readonly Column[]): number =>
  column.wide / columns.reduce((sum, c) => sum + c.wide, 0)
