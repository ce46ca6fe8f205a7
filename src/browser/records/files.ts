import { fill } from '../../model/pattern.ts'
import { element } from '../element.ts'
import type { Desk, Part } from './desk.ts'
import { daysOf, joined } from './kept.ts'
import { readBack } from './read-back.ts'
import { savedAll, savedTables, type TableName, tables } from './tables.ts'

/** The file of everything. */
const allFile = 'records.csv'

/** Hands a text to the browser as a file; it goes nowhere else. */
function save(file: string, text: string): void {
  const link = element('a')
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv' }))
  link.download = file
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000)
}

type Offered = {
  readonly file: string
  readonly text: string
  readonly about: string
  /** How the facility file names it; empty for what is no part of its folder. */
  readonly entry: string
  readonly problems: readonly string[]
}

/** What a day must have so that the folder takes it, where that is not plain. */
function needsOf(name: TableName, { data: { words } }: Desk): string {
  if (name === 'weather') return words.records.weatherNeeds
  return name === 'depths' ? words.records.depthsNeed : ''
}

/** What there is to save. */
function offered(desk: Desk): readonly Offered[] {
  const { data, store, today } = desk
  const { words } = data
  const kept = store.now()
  const saved = savedTables(kept, data.system, today())
    .filter(({ days, left }) => days + left > 0)
    .map(({ name, file, text, days, left, problems }) => ({
      file,
      text,
      about: [
        fill(words.records.days, { count: days }),
        ...(left > 0 ? [fill(words.records.left, { count: left }), needsOf(name, desk)] : []),
      ].join(' '),
      entry: fill(words.records.entry, { entry: tables[name].entry(words.records.named) }),
      problems: problems.map((p) => p.message),
    }))
  const count = daysOf(kept).length
  return count === 0
    ? []
    : [
        ...saved,
        {
          file: allFile,
          text: savedAll(kept),
          about: words.records.everything,
          entry: '',
          problems: [],
        },
      ]
}

function offer({ file, text, about, entry, problems }: Offered, { data }: Desk): Element {
  const { words } = data
  const button = element('button', fill(words.records.save, { file }))
  button.type = 'button'
  button.addEventListener('click', () => save(file, text))
  const area = element('textarea', text)
  area.readOnly = true
  area.rows = 8
  area.setAttribute('aria-label', file)
  return element(
    'li',
    button,
    element('span', about),
    ...(entry === '' ? [] : [element('span', entry)]),
    ...problems.map((problem) => element('p', problem)),
    element('details', element('summary', words.records.text), area),
  )
}

/** The files that the next manual rests on, and the one that brings records to another phone. */
export function filesPart(list: HTMLElement, desk: Desk): Part {
  let shown = ''
  return {
    show: () => {
      const state = JSON.stringify(desk.store.now())
      if (state === shown) return
      shown = state
      const files = offered(desk)
      list.replaceChildren(
        ...(files.length === 0
          ? [element('li', desk.data.words.records.noSeason)]
          : files.map((file) => offer(file, desk))),
      )
    },
  }
}

/** Takes a file in that somebody chooses. */
export function readFiles(field: HTMLInputElement, said: HTMLElement, desk: Desk): void {
  field.addEventListener('change', async () => {
    const [file] = field.files ?? []
    if (!file) return
    const { words, system } = desk.data
    const read = readBack(await file.text(), system, desk.today())
    field.value = ''
    if ('kept' in read) {
      const { kept, differ } = joined(desk.store.now(), read.kept)
      desk.put(kept)
      const count = daysOf(read.kept).length
      said.replaceChildren(
        element('p', fill(words.records.took, { count })),
        ...(differ > 0 ? [element('p', fill(words.records.differ, { count: differ }))] : []),
      )
      return
    }
    said.replaceChildren(
      element('p', fill(words.records.refused, { file: file.name })),
      ...('problems' in read
        ? read.problems
            .filter(({ severity }) => severity === 'error')
            .map((p) => element('p', `${p.place.line}: ${p.message}`))
        : [element('p', words.records.unknown)]),
    )
  })
}
