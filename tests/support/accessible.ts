import type { Tab } from './faults-of-page.ts'

/**
 * What can be touched in a part of the page and is lower than a gloved finger asks for, px; numbers
 * and links inside sentences are as high as these.
 */
export async function smallTargets(
  page: Tab,
  part: string,
  least = 48,
): Promise<readonly string[]> {
  const found = await page.evaluate(`[...document.querySelectorAll(${JSON.stringify(
    ['a', 'button', 'input', 'textarea', 'summary', 'label:has(input)']
      .map((name) => `${part} ${name}`)
      .join(),
  )})]
    .filter((e) => e.checkVisibility() && !(e.matches('a') && e.closest('p')) && !(e.matches('input') && e.closest('label')))
    .map((e) => ({ e, box: e.getBoundingClientRect() }))
    .filter(({ box }) => Math.round(box.height) < ${least})
    .map(({ e, box }) => e.tagName + ' ' + (e.id || e.textContent).trim().slice(0, 40) + ' ' + Math.round(box.height))`)
  return found as readonly string[]
}
