import { type BlankPage, blankPageRules } from './page-rules.ts'

/**
 * Pages that fill a leaf; their words stand in the margin, where readers for the blind pass them
 * over.
 */
export function renderBlankPages(pages: readonly BlankPage[]): {
  readonly css: string
  readonly body: string
} {
  const named = pages.map((_, i) => `.blank-${i}{page:blank-${i};break-before:page;height:1px}`)
  return {
    css: ['body{margin:0}', blankPageRules(pages), ...named].join('\n'),
    body: pages.map((_, i) => `<div class="blank-${i}"></div>`).join(''),
  }
}
