const menu = (): HTMLDetailsElement | null => document.querySelector('details.menu')

/** Browsers that cannot style what a closed menu holds are given an open one on wide screens. */
export function showMenu(): void {
  if (CSS.supports('selector(::details-content)')) return
  const wide = matchMedia('(min-width: 60rem)')
  const set = (): void => {
    const found = menu()
    if (found) found.open = wide.matches
  }
  wide.addEventListener('change', set)
  set()
}

/** Escape closes the menu, and the focus goes back to its name. */
export function closeByKey(): void {
  addEventListener('keydown', ({ key }) => {
    const found = menu()
    if (key !== 'Escape' || !found?.open || !found.contains(document.activeElement)) return
    found.open = false
    found.querySelector('summary')?.focus()
  })
}
