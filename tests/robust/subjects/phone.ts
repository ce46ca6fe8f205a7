import { joined, type Kept, parseKept } from '../../../src/browser/records/kept.ts'
import { readBack } from '../../../src/browser/records/read-back.ts'
import { savedAll, savedTables } from '../../../src/browser/records/tables.ts'
import type { Problem } from '../../../src/model/problem.ts'
import type { Chance } from '../chance.ts'
import { type Files, today } from '../ground.ts'
import { faultsOfOutput } from '../judge/outputs.ts'
import { faultsOfProblems } from '../judge/problems.ts'
import { hostileTexts, oddDays, oddNumbers } from '../mutations/hostile.ts'
import { mutate } from '../mutations/mutate.ts'
import { saidByChance } from '../mutations/said.ts'
import type { Run, Subject } from './subject.ts'

const names = [
  'seen',
  'work',
  'tomorrow',
  'use',
  'loads',
  'stored',
  'rain',
  'high',
  'low',
  'wind',
  'depth@0.000,1.524',
  'depth@121.920,4.572',
  'moisture-log.row-1.wet',
  'moisture-log.row-1.dry',
  'moisture-log.row-1.station',
  'moisture-log.row-99999999999.wet',
  'depth@NaN,Infinity',
  '__proto__',
  'constructor',
  '<zq-name>',
]

const textOf = (chance: Chance): string =>
  chance.happens(0.5)
    ? `${chance.below(90)}${chance.oneOf(['', ' in', ' mm', ' °F', ' gal'])}`
    : chance.happens(0.5)
      ? saidByChance(chance)
      : chance.oneOf(chance.oneOf([hostileTexts, oddNumbers, oddDays]))

/** What a phone has kept, by chance. */
const keptByChance = (chance: Chance): Record<string, Record<string, string>> =>
  Object.fromEntries(
    Array.from({ length: 1 + chance.below(4) }, () => [
      chance.happens(0.9) ? `2027-06-${10 + chance.below(5)}` : chance.oneOf(oddDays),
      Object.fromEntries(
        Array.from({ length: 1 + chance.below(8) }, () => [chance.oneOf(names), textOf(chance)]),
      ),
    ]),
  )

/** A phone knows of one file at a time, and does not say which. */
const named = (problems: readonly Problem[]): readonly Problem[] =>
  problems.map((p) => ({ ...p, place: { ...p.place, file: p.place.file || 'saved.csv' } }))

/** What comes of records: tables that the folder takes, without formulas, and a file that says the same again. */
function faultsOfKept(kept: Kept, chance: Chance): readonly string[] {
  const system = chance.oneOf(['us', 'metric'] as const)
  const all = savedAll(kept)
  const back = readBack(all, system, today)
  const days = Object.keys(kept).length
  return [
    ...savedTables(kept, system, today).flatMap(({ file, text, problems }) => [
      ...faultsOfOutput({ path: file, text }, []),
      ...faultsOfProblems(named(problems), () => undefined),
    ]),
    ...('kept' in back ? [] : days > 0 ? ['what was saved is not read back'] : []),
    ...('kept' in back && joined(back.kept, back.kept).differ > 0
      ? ['records differ from themselves']
      : []),
  ]
}

/** Records of a phone: kept in its store, or saved as a file and read again, and changed in between. */
export const phone: Subject = async ({ facilities }, chance): Promise<Run> => {
  const kept = keptByChance(chance)
  if (chance.happens(0.3)) {
    const { file, by } = mutate(Buffer.from(JSON.stringify(kept)), 'entries', chance)
    const read = parseKept(file.toString('utf8'))
    return { file: 'store.json', by, ending: 'made', faults: faultsOfKept(read, chance) }
  }
  const name = chance.oneOf(['all.csv', 'depths.csv', 'weather.csv', 'moisture.csv', 'log.csv'])
  const bytes = name === 'all.csv' ? Buffer.from(savedAll(kept)) : fileOf(facilities.shaken, name)
  const { file, by } = mutate(bytes, 'table', chance)
  const text = file.toString('utf8')
  const read = readBack(text, chance.oneOf(['us', 'metric'] as const), today)
  if ('kept' in read)
    return { file: name, by, ending: 'made', faults: faultsOfKept(read.kept, chance) }
  const faults = 'problems' in read ? faultsOfProblems(named(read.problems), () => text) : []
  return { file: name, by, ending: 'refused', faults }
}

const fileOf = (files: Files, name: string): Buffer => files.get(name) ?? Buffer.alloc(0)
