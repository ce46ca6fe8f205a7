import type { AskOfWorker, SavedWords } from '../../model/kept-site.ts'
import { button } from '../element.ts'

declare global {
  /** Made with the site, before this script: no page has to carry them. */
  var savedWords: SavedWords
}

/** Asks a worker. @returns what it answers. */
const ask = (worker: ServiceWorker, what: AskOfWorker): Promise<boolean> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel()
    port1.onmessage = ({ data }) => done(data === true)
    worker.postMessage(what, [port2])
  })

/** Offers to keep the printed files too, where the page lists them. */
function offerPapers(worker: ServiceWorker): void {
  const list = document.querySelector<HTMLElement>('[data-keep]')
  if (!list || list.querySelector('button')) return
  const { keep = '', kept = '', failed = '' } = list.dataset
  const said = document.createElement('p')
  said.setAttribute('role', 'status')
  const offer = button(keep, (made) => {
    made.disabled = true
    void ask(worker, 'keep the papers').then((done) => {
      said.textContent = done ? kept : failed
      made.disabled = false
      made.hidden = done
    })
  })
  list.append(offer, said)
}

function follow(registration: ServiceWorkerRegistration, line: HTMLElement): void {
  const { saved, newer, show } = globalThis.savedWords
  const tell = (): void => {
    const { waiting, active } = registration
    if (waiting && active) {
      const shows = button(show, () => void ask(waiting, 'show the newer revision'))
      line.replaceChildren(`${newer} `, shows)
    } else if (active?.state === 'activated') {
      line.textContent = saved
      offerPapers(active)
    } else return
    line.hidden = false
  }
  const watch = (worker: ServiceWorker | null): void =>
    worker?.addEventListener('statechange', tell)
  watch(registration.installing)
  watch(registration.waiting)
  watch(registration.active)
  registration.addEventListener('updatefound', () => watch(registration.installing))
  tell()
}

/**
 * Keeps the site on this phone, where it is served so that a browser allows it, and says so at the
 * foot of the page; a newer revision is shown when somebody asks for it.
 */
export function keepSite(): void {
  const line = document.querySelector<HTMLElement>('.saved')
  if (!line || !location.protocol.startsWith('http') || !('serviceWorker' in navigator)) return
  const up = line.dataset['up'] ?? ''
  // From disk a browser would complain of a manifest.
  const link = document.createElement('link')
  link.rel = 'manifest'
  link.href = `${up}manifest.webmanifest`
  document.head.append(link)
  const { serviceWorker } = navigator
  // The first revision that is kept changes nothing on the page; a later one does.
  let isKept = serviceWorker.controller !== null
  serviceWorker.addEventListener('controllerchange', () => {
    if (isKept) location.reload()
    isKept = true
  })
  serviceWorker
    .register(`${up}worker.js`, { updateViaCache: 'none' })
    .then((registration) => follow(registration, line))
    .catch(() => undefined)
}
