import { mostTelling } from './narrow.ts'

/** Of more than this many, further answers tell more than measuring. */
const measuredAtMost = 6

/** What is done for a cause, as the page says it: its words, and where they are explained. */
const measureOf = (chooser: ParentNode, by: string): Node | undefined =>
  chooser
    .querySelector<HTMLTemplateElement>('template')
    ?.content.querySelector(`[data-by="${by}"]`)
    ?.cloneNode(true)

/** Shows what to measure to tell what is left apart, with where each finding leads. */
export function tellApart(chooser: Element, left: readonly Element[]): void {
  const place = chooser.querySelector<HTMLElement>('.apart')
  if (!place) return
  const causes = left
    .flatMap((symptom) =>
      [...symptom.querySelectorAll<HTMLElement>('.causes > li')].map((cause) => ({
        symptom,
        cause,
      })),
    )
    .map(({ symptom, cause }) => ({
      by: cause.dataset['by'] ?? '',
      leads: cause.querySelector('a')?.href ?? '',
      // "They stay everywhere" says nothing without what is seen.
      says: symptom.querySelector('summary')?.textContent ?? '',
      cause,
    }))
  const isUseful =
    left.length <= measuredAtMost && new Set(causes.map(({ leads }) => leads)).size > 1
  place.hidden = !isUseful
  const list = place.querySelector('ol')
  list?.replaceChildren(
    ...(isUseful ? mostTelling(causes) : []).map((by) => {
      const item = document.createElement('li')
      const findings = document.createElement('ul')
      for (const { cause, says } of causes.filter((c) => c.by === by)) {
        const finding = document.createElement('li')
        const seen = document.createElement('span')
        seen.className = 'soft'
        seen.textContent = `${says} `
        const check = cause.querySelector('.check')?.cloneNode(true)
        const link = cause.querySelector('a')?.cloneNode(true)
        finding.append(seen, ...(check ? [check, ' '] : []), ...(link ? [link] : []))
        findings.append(finding)
      }
      item.append(measureOf(chooser, by) ?? '', findings)
      return item
    }),
  )
}
