import type { FormChoice, FormState, MakingEvent } from '../../../model/form-exchange.ts'
import { fill } from '../../../model/pattern.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import type { FacilityFiles, Host, Making, Opened, Saved } from '../contract.ts'
import { bytesOf } from '../workshop/base64.ts'
import { goneBar } from './gone.ts'
import type { Place } from './place.ts'
import { eventsOf } from './stream.ts'

const facilityFile = 'facility.yaml'

/** Letters of a file that a browser sends to its end when its page is closed (64 KiB of bytes). */
const mostSentToItsEnd = 20_000

const yaml = { 'content-type': 'text/yaml' }

async function stateFrom(answer: Response): Promise<FormState> {
  if (!answer.ok) throw new Error(await answer.text())
  return (await answer.json()) as FormState
}

/** What the program offers, or has open. */
export const askState = async (): Promise<FormState> => stateFrom(await fetch('state'))

/** Opens a folder that the program has offered, or a new one. */
export const choose = async (choice: FormChoice): Promise<FormState> =>
  stateFrom(
    await fetch('choice', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
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
  let tag = open?.tag ?? ''
  let last: string | undefined
  const gone = goneBar(facilityFile, words)
  const save = async (text: string): Promise<Saved> => {
    try {
      const headers = { ...yaml, 'if-match': `"${tag}"` }
      const answer = await fetch(facilityFile, { method: 'PUT', headers, body: text })
      const reply = (await answer.json()) as Reply
      if (reply.tag !== undefined) tag = reply.tag
      if (reply.kind === 'saved') {
        last = text
        return { kind: 'saved' }
      }
      if (reply.kind === 'changed') return { kind: 'changed', text: reply.text ?? '' }
      const why =
        reply.reason === 'no-name' ? words.maker.noName : (reply.why ?? words.maker.programGone)
      return { kind: 'failed', why }
    } catch {
      gone.warn(text)
      return { kind: 'failed', why: words.maker.programGone }
    }
  }
  const host: Host = {
    kind: 'program',
    open: async (): Promise<Opened> => {
      const files: FacilityFiles = new Map(Object.entries(open?.files ?? {}))
      last = files.get(facilityFile)
      return { name: open?.name ?? '', files, draft: open?.draft }
    },
    save,
    keep: (text) => {
      // It is sent to its end even when the page is closed, which browsers do for small files alone.
      const keepalive = text.length < mostSentToItsEnd
      fetch('draft', { method: 'PUT', headers: yaml, body: text, keepalive }).then(
        () => gone.back(),
        () => gone.warn(text),
      )
    },
    make: async (files, tell) => {
      // What would be made is what is saved, and nobody has seen what is not.
      if (files.get(facilityFile) !== last || tag === 'none')
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
