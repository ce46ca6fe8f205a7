/** An event that lasts until something is done. */
type Lasting = Event & { readonly waitUntil: (work: Promise<unknown>) => void }

type Fetching = Event & {
  readonly request: Request
  readonly respondWith: (answer: Promise<Response>) => void
}

/** The few things of a service worker's own world that are used (W3C, Service Workers). */
export type WorkerScope = {
  readonly location: Location
  readonly clients: { readonly claim: () => Promise<void> }
  readonly skipWaiting: () => Promise<void>
  addEventListener(type: 'install' | 'activate', heard: (event: Lasting) => void): void
  addEventListener(type: 'fetch', heard: (event: Fetching) => void): void
  addEventListener(type: 'message', heard: (event: Lasting & MessageEvent) => void): void
}
