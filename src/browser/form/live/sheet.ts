import { button, classed, element } from '../../element.ts'

/** A panel beside the questions; where there is no room beside them, a sheet that opens over them. */
export type Sheet = {
  readonly node: HTMLElement
  readonly body: HTMLElement
  readonly name: (words: {
    readonly title: string
    readonly open: string
    readonly close: string
  }) => void
  readonly close: () => void
}

/** As wide as this there is room for it beside the questions; the style says the same. */
const isBeside = '(min-width: 80rem)'

export function sheetFor(): Sheet {
  const body = classed('div', 'live-body')
  const title = element('h2')
  title.tabIndex = -1
  const node = classed('div', 'live')
  const sheet = classed('div', 'live-sheet')
  sheet.id = 'live-sheet'
  const show = (isOpen: boolean): void => {
    node.classList.toggle('live-shown', isOpen)
    open.setAttribute('aria-expanded', String(isOpen))
    if (isOpen) title.focus()
    else open.focus()
  }
  const open = button('', () => show(true))
  open.className = 'live-open'
  open.setAttribute('aria-controls', sheet.id)
  open.setAttribute('aria-expanded', 'false')
  const close = button('', () => show(false))
  close.className = 'live-close'
  const isOpen = (): boolean => node.classList.contains('live-shown')
  sheet.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && isOpen()) show(false)
  })
  sheet.append(classed('div', 'live-head', title, close), body)
  node.append(open, sheet)
  return {
    node,
    body,
    name: (words) => {
      title.textContent = words.title
      open.textContent = words.open
      close.textContent = words.close
    },
    close: () => {
      if (isOpen() && !matchMedia(isBeside).matches) show(false)
    },
  }
}
