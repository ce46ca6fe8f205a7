/** Drawings, tables and formulas that fit need no stop of the tab key. */
function mark(): void {
  for (const box of document.querySelectorAll<HTMLElement>('.wide[role], .math[role]')) {
    const scrolls = box.scrollWidth > box.clientWidth
    box.classList.toggle('scrolls', scrolls)
    if (scrolls) box.tabIndex = 0
    else box.removeAttribute('tabindex')
  }
}

/** Follows every change of the window's width, and of the page in a file that holds several. */
export function skipStill(): void {
  mark()
  addEventListener('resize', mark)
  addEventListener('hashchange', mark)
  // Words are set in another font until their own is there.
  document.fonts.addEventListener('loadingdone', mark)
}
