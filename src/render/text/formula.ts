import temml from 'temml'
import { rememberOf } from '../../model/remembered.ts'
import { escapeHtml } from './escape-html.ts'
import { type Html, html } from './html.ts'

/**
 * Where a line may end: before an equals sign behind the first, behind a comma with a space, and
 * before a sign of a long sum.
 */
const ends = /(\\left|\\right|[{}])|(\s*=)|(,\\(?:quad|;))|(\s[+-])(?=\s)/g

/** Letters of TeX that stay on one line, about half a page's width. */
const longSum = 70

/**
 * The parts of a formula that stay whole, each on one line: the first with its equals sign, then
 * what it is equal to, and what it says of its own letters. Inside brackets nothing is parted.
 */
function wholeParts(tex: string): readonly string[] {
  const parts: string[] = []
  let [depth, from, equals] = [0, 0, 0]
  for (const { 0: found, 1: bracket, 2: sign, 3: comma, index } of tex.matchAll(ends)) {
    if (bracket) depth += bracket === '{' || bracket === '\\left' ? 1 : -1
    else if (depth === 0) {
      if (comma) equals = 0
      else if (sign) equals++
      const stays = sign ? equals === 1 : !comma && index - from < longSum
      if (stays) continue
      const at = comma ? index + found.length : index
      parts.push(tex.slice(from, at))
      from = at
    }
  }
  return [...parts, tex.slice(from)].filter((part) => part.trim() !== '')
}

const mathOf = rememberOf('formulas', (tex) =>
  wholeParts(tex)
    .map((part) =>
      temml.renderToString(`\\displaystyle {}${part}`, {
        throwOnError: true,
        annotate: false,
        // Classes alone: formulas hold no links.
        trust: ({ command }: { readonly command: string }) => command === '\\class',
      }),
    )
    .join(' ')
    // Pages of the site allow styles of their sheet alone; what these say, attributes say too.
    .replace(/ style="math-depth:\d;"/g, ''),
)

/**
 * A formula as MathML. The wrapper with a label is what a PDF keeps for people who listen.
 * @param tex Formula of a worksheet.
 * @param label The formula in words.
 */
export function formulaHtml(tex: string, label: string): Html {
  return html(
    `<span class="formula" role="img" aria-label="${escapeHtml(label)}">${mathOf(tex)}</span>`,
  )
}

/**
 * A formula as MathML in which an element with the class `n-<name>` stands for each number.
 * @param tex Formula with `@name` for the numbers.
 */
const formulaPlaces = (tex: string): string =>
  mathOf(tex.replace(/@([a-zA-Z][a-zA-Z0-9-]*)/g, '{\\class{n-$1}{\\text{0}}}'))

/** A symbol as MathML, without the row and style that a whole formula has around it. */
const symbolMath = (tex: string): string =>
  mathOf(tex).replace(/^<math><mstyle[^>]*><mrow><\/mrow>|<\/mstyle><\/math>$/g, '')

/** Templates from which a page sets the line of a formula with other numbers. */
export const formulaTemplates = (places: string, symbols: Readonly<Record<string, string>>): Html =>
  html(
    [
      `<template>${formulaPlaces(places)}</template>`,
      ...Object.entries(symbols).map(
        ([name, tex]) =>
          `<template data-symbol="${name}"><math>${symbolMath(tex)}</math></template>`,
      ),
    ].join(''),
  )
