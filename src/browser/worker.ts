// The service worker: keeps one revision of the whole site and answers from it, signal or none.
import type { AskOfWorker, KeptSite } from '../model/kept-site.ts'
import { answer } from './worker/answer.ts'
import { dropOthers, keepAll, pagesCache, papersCache } from './worker/keep.ts'
import type { WorkerScope } from './worker/scope.ts'

declare global {
  /** Made with the site, before this script. */
  var keptSite: KeptSite
}

const worker = globalThis as unknown as WorkerScope
const site = globalThis.keptSite
const base = new URL('./', worker.location.href).href

const keepPapers = (): Promise<void> => keepAll(papersCache(site), site.papers, base)

worker.addEventListener('install', (event) => {
  event.waitUntil(keepAll(pagesCache(site), site.files, base))
})

// A newer revision waits until somebody asks for it or no page of the old one is open, so that what
// is on the screen is never of two.
worker.addEventListener('activate', (event) => {
  event.waitUntil(
    dropOthers(site).then(async (hadPapers) => {
      await worker.clients.claim()
      // Without signal they are kept at the next asking.
      if (hadPapers) await keepPapers().catch(() => undefined)
    }),
  )
})

worker.addEventListener('message', (event) => {
  const asked = event.data as AskOfWorker
  if (asked === 'show the newer revision') event.waitUntil(worker.skipWaiting())
  if (asked === 'keep the papers')
    event.waitUntil(
      keepPapers().then(
        () => event.ports[0]?.postMessage(true),
        () => event.ports[0]?.postMessage(false),
      ),
    )
})

worker.addEventListener('fetch', (event) => {
  const kept = answer(event.request, site, base)
  if (kept) event.respondWith(kept)
})
