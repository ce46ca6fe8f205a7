/** On paper nothing can be opened by a touch, so that answers and lists are printed open. */
export function openForPrint(): void {
  let opened: readonly HTMLDetailsElement[] = []
  addEventListener('beforeprint', () => {
    opened = [
      ...document.querySelectorAll<HTMLDetailsElement>('main details:not([open], .jump, .ask)'),
    ]
    for (const details of opened) details.open = true
  })
  addEventListener('afterprint', () => {
    for (const details of opened) details.open = false
  })
}
