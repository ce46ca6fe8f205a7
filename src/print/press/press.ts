import { createHash } from 'node:crypto'
import { lay } from '../lay/lay.ts'
import {
  type BrowserPage,
  openPage,
  type PageMakings,
  type PagesBrowser,
} from '../page/open-page.ts'
import { openLanes } from './lanes.ts'
import type { CachePart, PrintCache } from './print-cache.ts'

/** A document to print: its style and the inside of `body`. Fonts are the press's own. */
export type Copy = { readonly css: string; readonly body: string }

/**
 * A press prints many documents in one browser, on as many pages at once as the machine has cores
 * to spare.
 */
export type Press = {
  /**
   * Lays a document out and does something with its page, unless the same has been done before.
   * @param args Everything besides the document that the work depends on; its result is kept under
   * both.
   * @param isNext Whether it goes before what is already waiting, since other work waits for it.
   * @throws Error when the document asks for something outside itself.
   */
  readonly run: <A, T>(
    copy: Copy,
    args: A,
    work: (page: BrowserPage, args: A) => Promise<T>,
    isNext?: boolean,
  ) => Promise<T>
  /**
   * What was made before from the same parts by the same program, else what `make` makes now: for
   * work on what was printed.
   */
  readonly keep: <T>(parts: readonly CachePart[], make: () => Promise<T>) => Promise<T>
  /** Waits for its pages: they open sooner while this program does nothing else. */
  readonly opened: () => Promise<void>
  readonly close: () => Promise<void>
}

export type PressSettings = PageMakings & {
  readonly browser: PagesBrowser
  /** Name and version of the browser: another one prints other bytes. */
  readonly browserName: string
  /** Stands for the program that prints: what another state of it has printed is not taken. */
  readonly program: string
  readonly cache: PrintCache
}

/** One renderer for each of two cores; more only wait for each other. */
const lanes = 2

/** Opens a press with its pages. */
export function openPress(settings: PressSettings): Press {
  const { browser, browserName, program, lang, fontCss, script, cache } = settings
  // Fonts are half a million letters, and the same for every job.
  const makings = createHash('sha256').update(fontCss).update(script).digest()
  const pages = openLanes(lanes, () => openPage(browser, { lang, fontCss, script }))
  return {
    run: (copy, args, work, isNext = false) => {
      const { css, body } = copy
      const on = [css, body, JSON.stringify(args), String(work)]
      return cache.get([browserName, program, makings, lang, ...on], () =>
        pages.use(async (lane) => {
          await lay(lane.page, 'begin', copy)
          const done = await work(lane.page, args)
          lane.refuseOutside()
          return done
        }, isNext),
      )
    },
    keep: (parts, make) => cache.get([browserName, program, makings, lang, ...parts], make),
    opened: pages.opened,
    close: pages.close,
  }
}
