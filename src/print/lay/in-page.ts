import { here } from '../page/here.ts'
import { installDrawings } from '../page/lift-drawings.ts'
import { isNoRoom } from '../page/no-room.ts'
import { begin, cards, fieldBook, part, sheets } from './lay-copy.ts'

// The script that the pages of a press run. Every question to a page is a journey to another program and
// back, in which neither of them works on; so each of these works is asked for once.

const all = { begin, cards, fieldBook, part, sheets }

/** What can be asked of a page. */
export type Layings = typeof all

export type Laid<T> = { readonly done: T } | { readonly noRoom: string }

/**
 * Does one of the works. An error comes out of a page without its kind, so words that have no room are
 * told as a result.
 */
globalThis.lay = async (name, args) => {
  const work = all[name] as (args: unknown) => Promise<unknown>
  try {
    return { done: await work(args) }
  } catch (error) {
    if (isNoRoom(error)) return { noRoom: error.message }
    throw error
  }
}

void installDrawings(here)
