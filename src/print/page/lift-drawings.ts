import type { LayingPage } from './open-page.ts'

// Drawings are a third of what a page is made of, and every size of type that is tried would set
// their words anew. While a document is laid out they are empty; what they are made of is put back
// for the print. A drawing is as large as its view box says, with or without it.

/** In the page: makes ready to lift drawings, also for scripts that put more of them in. */
function install(): void {
  let lifted: PageElement[] = []
  globalThis.drawings = {
    begin: () => {
      lifted = []
      globalThis.drawings.lift(document.body)
    },
    lift: (within) => {
      for (const drawing of within.querySelectorAll('.drawing svg')) {
        const parts = document.createDocumentFragment()
        parts.append(...drawing.childNodes)
        drawing.dataset['lifted'] = String(lifted.push(parts) - 1)
      }
    },
    partsOf: (drawing) => lifted[Number(drawing.dataset['lifted'])] ?? drawing,
    putBack: () => {
      for (const drawing of document.querySelectorAll('[data-lifted]')) {
        // A page that was copied may show it twice.
        drawing.append(globalThis.drawings.partsOf(drawing).cloneNode(true))
        drawing.removeAttribute('data-lifted')
      }
    },
  }
}

/** Makes a page ready to lift drawings. */
export const installDrawings = (page: LayingPage): Promise<void> => page.evaluate(install)
