import {
  type FormChoice,
  type FormState,
  facilityFile,
  type MakingEvent,
  savedFiles,
} from '../../../model/form-exchange.ts'
import { fill } from '../../../model/pattern.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import type { FacilityFiles, Host, Making, Opened, Saved } from '../contract.ts'
import { bytesOf } from '../workshop/base64.ts'
import { goneBar } from './gone.ts'
import type { Place } from './place.ts'
import { eventsOf } from './stream.ts'

/** Letters of a file that a browser sends to its end when its page is closed (64 KiB of bytes). */
const mostSentToItsEnd = 20_000

const typeOf = (name: string): string => (name === facilityFile ? 'text/yaml' : 'text/csv')

async function stateFrom(answer: Response): Promise<FormState> {
  if (!answer.ok) throw new Error(await answer.text())
  return (await answer.json()) as FormState
}

/** What the program offers, or has open. */
export const askState = async (): Promise<FormState> => stateFrom(await fetch('state'))

const json = { 'content-type': 'application/json' }

/** Opens a folder that the program has offered, or a new one. */
export const choose = async (choice: FormChoice): Promise<FormState> =>
  stateFrom(
    await fetch('choice', {
      method: 'POST',
      headers: json,
      body: JSON.stringify(choice),
    }),
  )

type Reply = {
  readonly kind: 'saved' | 'changed' | 'failed'
  readonly tag?: string
  readonly text?: string
  readonly why?: string
  readonly reason?: string
}

/** How far the program is, in words. */
function stepOf(event: MakingEvent, words: Words): Making {
  if (event.kind === 'failed') return event
  if (event.kind === 'stage') return { kind: 'stage', text: words.maker.stages[event.stage] }
  const where = fill(words.maker.madeIn, { folder: event.where })
  const text = event.why === '' ? where : `${where} ${words.maker.noPdfs} ${event.why}`
  return { kind: 'made', address: event.address, text }
}

async function readMaking(
  answer: Response,
  words: Words,
  tell: (step: Making) => void,
): Promise<void> {
  let isOver = false
  if (answer.body)
    for await (const data of eventsOf(answer.body)) {
      const event = JSON.parse(data) as MakingEvent
      isOver = event.kind !== 'stage'
      tell(stepOf(event, words))
    }
  if (!isOver) tell({ kind: 'failed', why: words.maker.programGone })
}

/** The program behind the page reads and writes the folder. */
export function programHost({ open }: FormState, words: Words): Place {
  const tags = new Map(Object.entries(open?.tags ?? {}))
  // What the files say that the program makes manuals of.
  const last = new Map(Object.entries(open?.files ?? {}))
  const gone = goneBar(words)
  const saveOne = async (name: string, text: string): Promise<Saved> => {
    const headers = { 'content-type': typeOf(name), 'if-match': `"${tags.get(name) ?? 'none'}"` }
    const answer = await fetch(name, { method: 'PUT', headers, body: text })
    const reply = (await answer.json()) as Reply
    if (reply.tag !== undefined) tags.set(name, reply.tag)
    if (reply.kind === 'saved') {
      last.set(name, text)
      return { kind: 'saved' }
    }
    if (reply.kind === 'changed') return { kind: 'changed', file: name, text: reply.text ?? '' }
    const why =
      reply.reason === 'no-name' ? words.maker.noName : (reply.why ?? words.maker.programGone)
    return { kind: 'failed', why }
  }
  const isNew = (): boolean => tags.get(facilityFile) === 'none'
  const save = async (files: FacilityFiles): Promise<Saved> => {
    // A new fair has no folder before its file is written; else the file comes after what it names.
    const isFirst = (name: string): boolean => isNew() === (name === facilityFile)
    const order = [...files].sort(([a], [b]) => Number(isFirst(b)) - Number(isFirst(a)))
    try {
      for (const [name, text] of order) {
        const result = await saveOne(name, text)
        if (result.kind !== 'saved') return result
      }
      return { kind: 'saved' }
    } catch {
      gone.warn(files)
      return { kind: 'failed', why: words.maker.programGone }
    }
  }
  const host: Host = {
    kind: 'program',
    open: async (): Promise<Opened> => {
      const files: FacilityFiles = new Map(Object.entries(open?.files ?? {}))
      return {
        name: open?.name ?? '',
        files,
        draft: new Map(Object.entries(open?.draft ?? {})),
        head: open?.head ?? '',
        workbooks: Object.keys(open?.workbooks ?? {}),
      }
    },
    save,
    keep: (draft) => {
      const body = JSON.stringify(Object.fromEntries(draft))
      // It is sent to its end even when the page is closed, which browsers do for small files alone.
      const keepalive = body.length < mostSentToItsEnd
      fetch('draft', { method: 'PUT', headers: json, body, keepalive }).then(
        () => gone.back(),
        () => gone.warn(draft),
      )
    },
    make: async (files, tell) => {
      // What would be made is what is saved, and nobody has seen what is not.
      if (savedFiles.some((name) => files.get(name) !== last.get(name)) || isNew())
        return tell({ kind: 'failed', why: words.maker.saveFirst })
      try {
        await readMaking(await fetch('manual', { method: 'POST' }), words, tell)
      } catch {
        tell({ kind: 'failed', why: words.maker.programGone })
      }
    },
  }
  const workbooks = new Map(
    Object.entries(open?.workbooks ?? {}).map(([name, data]) => [name, bytesOf(data)]),
  )
  return { host, workbooks: () => workbooks }
}
