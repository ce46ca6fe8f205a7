import { expect, it } from 'vitest'
import { useTable } from '../../../src/compute/uses/use-table.ts'
import { subjectsOfAll } from '../../../src/render/site/check-subjects.ts'

const all = Object.keys(useTable)

const faults = (...worksheets: readonly (readonly string[])[]): readonly string[] =>
  subjectsOfAll
    .safeParse(worksheets.map((own) => ({ worksheets: own })))
    .error?.issues.map(({ message }) => message) ?? []

it('finds every worksheet under one subject', () => expect(faults(all)).toEqual([]))

it('names the one that stands under none, and the one that stands under two', () => {
  expect(faults(all.slice(1))).toEqual([`worksheet "${all[0]}" stands under no subject`])
  expect(faults(all, all.slice(0, 1))).toEqual([`worksheet "${all[0]}" stands under several`])
})

it('knows no worksheet that cannot be', () =>
  expect(faults([...all, 'weather-vane'])).toHaveLength(1))
