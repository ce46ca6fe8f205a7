/**
 * For the inside of a page: words that lie on others or reach out of their frame (`.sheet`,
 * `.card`, `.form`), and boxes that hold more than they show. Self-contained, since it is sent to
 * the browser.
 */
export function faultsInPage(frame: string): string[] {
  type Box = {
    readonly text: string
    readonly left: number
    readonly right: number
    readonly top: number
    readonly bottom: number
  }
  const dom = globalThis as unknown as {
    document: {
      querySelectorAll(s: string): Iterable<Dom>
      createTreeWalker(root: Dom, what: number): { nextNode(): TextNode | null }
      createRange(): {
        selectNodeContents(n: TextNode): void
        getClientRects(): Iterable<Box & { width: number }>
      }
    }
    getComputedStyle(e: Dom): {
      overflowX: string
      overflowY: string
      fontSize: string
      visibility: string
    }
  }
  type Dom = {
    readonly id: string
    readonly className: string
    readonly scrollHeight: number
    readonly clientHeight: number
    readonly scrollWidth: number
    readonly clientWidth: number
    querySelectorAll(s: string): Iterable<Dom>
    getBoundingClientRect(): Box
  }
  type TextNode = { readonly textContent: string | null; readonly parentElement: Dom | null }
  const faults: string[] = []
  for (const outer of dom.document.querySelectorAll(frame)) {
    const own = outer.getBoundingClientRect()
    for (const e of [outer, ...outer.querySelectorAll('*')]) {
      const style = dom.getComputedStyle(e)
      const cuts = style.overflowX !== 'visible' || style.overflowY !== 'visible'
      if (cuts && (e.scrollHeight > e.clientHeight + 1 || e.scrollWidth > e.clientWidth + 1))
        faults.push(`${outer.id}: ${e.className} holds more than it shows`)
    }
    const boxes: Box[] = []
    const walker = dom.document.createTreeWalker(outer, 4)
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = (node.textContent ?? '').trim()
      if (text === '' || !node.parentElement) continue
      const range = dom.document.createRange()
      range.selectNodeContents(node)
      // Only the middle of a line, where small letters stand: high lines of neighbours may reach
      // into each other.
      for (const r of range.getClientRects()) {
        const middle = (r.bottom - r.top) * 0.25
        if (r.width > 1)
          boxes.push({
            text: text.slice(0, 40),
            left: r.left,
            right: r.right,
            top: r.top + middle,
            bottom: r.bottom - middle,
          })
      }
    }
    for (const [i, a] of boxes.entries()) {
      if (
        a.left < own.left - 0.5 ||
        a.right > own.right + 0.5 ||
        a.top < own.top - 0.5 ||
        a.bottom > own.bottom + 0.5
      )
        faults.push(`${outer.id}: “${a.text}” reaches out`)
      for (const b of boxes.slice(i + 1))
        if (
          Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
          Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1
        )
          faults.push(`${outer.id}: “${a.text}” and “${b.text}” lie on each other`)
    }
  }
  return faults
}
