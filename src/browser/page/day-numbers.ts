import { fromFragment } from '../today/kept.ts'
import { readStore } from '../today/store.ts'

/** Loads what works out the numbers of the day; most readers never need it. */
function load(up: string): void {
  for (const name of ['day-numbers', 'today']) {
    const script = document.createElement('script')
    script.src = `${up}assets/${name}.js`
    // In their order.
    script.async = false
    document.head.append(script)
  }
}

/** Offers to put in numbers of the day, and shows those that were put in. */
export function offerDay(): void {
  const section = document.querySelector<HTMLElement>('.day-panel')
  if (!section) return
  const { key = '', up = '' } = section.dataset
  const open = section.querySelector('button')
  if (readStore(key) !== null || fromFragment(location.hash).size > 0) load(up)
  else if (open) offer(section, open, up)
}

function offer(section: HTMLElement, open: HTMLButtonElement, up: string): void {
  document.querySelector('main h1')?.after(section)
  section.hidden = false
  open.addEventListener(
    'click',
    () => {
      section.dataset['open'] = ''
      load(up)
    },
    { once: true },
  )
}
