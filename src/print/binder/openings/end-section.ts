import type { LayingPage } from '../../page/open-page.ts'
import type { TextArea } from './lay-openings.ts'

/** Fewer lines to write on than this are not worth their heading. */
const fewestLines = 4

/** Lines that a record keeps where a lesson stands above it; with fewer it makes way. */
const fewestRecords = 3

/**
 * Moves reasons and lessons for which their procedures had no room to the end of the section, and rules what its
 * page has left for notes. More lessons than it holds stand above the records of the section; what is
 * too much for these too goes on over the next page, without lines.
 * Self-contained, since it is sent to the browser.
 */
function endInPage({ width, height }: TextArea, fewest: number, fewestRecords: number): void {
  const end = document.querySelector('.section-end')
  if (!end) return
  const { body } = document
  const before = body.style.getPropertyValue('width')
  body.style.setProperty('width', `${width}px`)
  body.style.setProperty('--area-height', `${height}px`)
  end.querySelector('.reasons')?.append(...document.querySelectorAll('.procedure > .why'))
  if (!end.querySelector('.why')) end.querySelector('.section-reasons')?.remove()
  const left = [...document.querySelectorAll('.procedure > .lesson')]
  end.querySelector('.lessons')?.append(...left)
  if (left.length === 0) end.querySelector('.section-lessons')?.remove()
  end.classList.add('side')
  const isOver = (): boolean => end.scrollHeight > end.clientHeight + 1
  const notes = end.querySelector('.section-notes')
  const lines = [...end.querySelectorAll('.section-notes tbody tr')]
  const isFull = (side: PageElement): boolean => side.scrollHeight > side.clientHeight + 1
  notes?.remove()
  const records = [...document.querySelectorAll('.side > .record')]
  while (isOver() && left.length > 1) {
    const lesson = left.pop()
    const home = records.find((record) => {
      const side = record.parentElement
      if (!side || !lesson) return false
      record.before(lesson)
      const rows = [...record.querySelectorAll('tbody tr')]
      const shown = [...rows]
      while (isFull(side) && shown.length > fewestRecords) shown.pop()?.remove()
      if (isFull(side)) record.remove()
      if (!isFull(side)) return true
      lesson.after(record)
      record.querySelector('tbody')?.append(...rows)
      return false
    })
    if (home || !lesson) continue
    end.querySelector('.lessons')?.append(lesson)
    break
  }
  if (isOver()) {
    end.classList.remove('side')
    // Two pages of lessons are followed by one of notes, so that no page of the leaf is blank.
    if (notes && Math.ceil(end.scrollHeight / height) % 2 === 0) {
      notes.classList.add('own-page')
      end.append(notes)
    }
  } else if (notes) {
    end.append(notes)
    while (isOver() && lines.length > 0) lines.pop()?.remove()
    if (lines.length < fewest) notes.remove()
  }
  if (!end.querySelector('h2')) end.remove()
  body.style.setProperty('width', before)
}

/** Ends a section with what its procedures have left over. */
export const endSection = (page: LayingPage, area: TextArea): Promise<void> =>
  page.evaluate(endInPage, area, fewestLines, fewestRecords)
