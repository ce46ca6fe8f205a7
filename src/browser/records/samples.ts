import { fill } from '../../model/pattern.ts'
import type { Desk, Part } from './desk.ts'
import { rowName, rowsOf } from './kept.ts'
import { printedText, soundNumber } from './numbers.ts'
import { sampleMoisture } from './tables.ts'

/** A row of places to write, from the template of the page. */
function makeRow(template: HTMLTemplateElement, form: string, row: number, desk: Desk): Element {
  const made = template.content.cloneNode(true) as DocumentFragment
  for (const field of made.querySelectorAll<HTMLElement>('[data-field]'))
    field.dataset['name'] = rowName(form, row, field.dataset['field'] ?? '')
  // What belongs together by its id does so within each row.
  for (const { attribute, element } of ['id', 'for', 'aria-describedby'].flatMap((attribute) =>
    [...made.querySelectorAll(`[${attribute}]`)].map((element) => ({ attribute, element })),
  ))
    element.setAttribute(attribute, `row-${row}-${element.getAttribute(attribute)}`)
  const head = made.querySelector('legend')
  if (head) head.textContent = fill(desk.data.words.records.sample, { number: row })
  return made.firstElementChild ?? document.createElement('div')
}

/** Samples of a day, one below the other, with a button for another one. */
export function samplesPart(box: HTMLElement, desk: Desk): Part {
  const form = box.dataset['samples'] ?? ''
  const template = box.querySelector('template')
  const list = box.querySelector('.sample-list')
  const another = box.querySelector<HTMLButtonElement>('button')
  let wanted = 1
  let shownDay = ''
  const grow = (): void => {
    if (!template || !list) return
    const last = rowsOf(desk.kept(), form).at(-1)?.row ?? 0
    if (shownDay !== desk.day()) wanted = 1
    shownDay = desk.day()
    const rows = Math.max(wanted, last)
    while (list.children.length > rows) list.lastElementChild?.remove()
    while (list.children.length < rows)
      list.append(makeRow(template, form, list.children.length + 1, desk))
    wanted = rows
  }
  another?.addEventListener('click', () => {
    wanted += 1
    desk.show()
    list?.lastElementChild?.querySelector('input')?.focus()
  })
  return {
    show: () => {
      grow()
      const texts = new Map(rowsOf(desk.kept(), form).map((r) => [r.row, r.texts]))
      for (const [i, row] of [...(list?.children ?? [])].entries()) {
        const sample = texts.get(i + 1)
        const line = row.querySelector<HTMLElement>('.oven')
        const found =
          sample && sample['moisture'] === undefined
            ? soundNumber('moisture', sampleMoisture(sample))
            : undefined
        if (line)
          line.textContent =
            found === undefined
              ? ''
              : fill(desk.data.words.records.oven, {
                  moisture: printedText('moisture', found, desk.locale),
                })
      }
    },
  }
}
