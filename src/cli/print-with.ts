import path from 'node:path'
import { cacheFolder } from '../print/browser/cache-folder.ts'
import type { BrowserFound } from '../print/browser/find-browser.ts'
import { thisMachine } from '../print/browser/machine.ts'
import { printCache } from '../print/press/print-cache.ts'
import { lastBinder } from './last-binder.ts'
import type { ManualJob, Ready } from './make-manual.ts'
import type { Printed } from './print-manual.ts'

type PrintAsked = {
  readonly version: string
  readonly target: string
  /** Begins what does not need the browser, when that has something to do. */
  readonly meanwhile: () => Promise<unknown>
}

/** Makes everything that needs a browser; the printing itself is loaded only where there is one. */
export async function printWith(
  found: BrowserFound,
  { manual, library }: Ready,
  { version, target, meanwhile }: PrintAsked,
  { folders, progress, io }: ManualJob,
): Promise<Printed> {
  const { printManual } = await import('./print-manual.ts')
  const last = await lastBinder(target)
  const before = last?.revision.revision === manual.facility.revision ? last.before : last?.revision
  const cache = printCache(path.join(await cacheFolder(thisMachine(io.env)), 'prints'))
  await cache.prune()
  const job = {
    ...{ found, cache, manual, words: library.words, folders, version, last, before },
    meanwhile,
  }
  return progress.stage(
    'print',
    (tell) => printManual(job, tell),
    (p) =>
      `binder of ${p.binderPages} pages, field book of ${p.fieldBookPages}, ${p.sheets} sheets`,
  )
}
