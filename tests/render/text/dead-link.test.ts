import { describe, expect, it } from 'vitest'
import { blamingLinks, deadLink } from '../../../src/render/text/dead-link.ts'
import { templateFault } from '../../../src/render/text/template-fault.ts'
import type { TemplateSet } from '../../../src/render/text/templates.ts'

/** Where a link that leads to nothing is said to be written. */
function placeOf(templates: TemplateSet, href: string): string | undefined {
  try {
    return blamingLinks(templates, () => {
      throw deadLink(href, `leads to ${href}`)
    })
  } catch (error) {
    const fault = templateFault(error)
    if (!fault) return undefined
    const { file, line, column } = fault.place
    return `${file}:${line}:${column} ${fault.message}`
  }
}

const templates = {
  'site/index': '<p>\n<a href="{{up}}plans/{{id}}.html">a</a> <a href="plans/{{id}}.html">b</a>',
  'binder/front': '<b id="x"></b><a href="#{{place}}">c</a><i data-page-of="procedure-{{id}}"></i>',
}

describe('a link that leads to nothing', () => {
  it('is told where the template writes most of it', () => {
    expect(placeOf(templates, 'plans/countdown.html')).toBe(
      'templates/site/index.hbs:2:44 leads to plans/countdown.html',
    )
    expect(placeOf(templates, '#procedure-seal')).toMatch(/^templates\/binder\/front\.hbs:1:\d+ /)
    expect(placeOf(templates, '#seal')).toBe('templates/binder/front.hbs:1:18 leads to #seal')
  })

  it('is a fault of the program where no template writes it, or none is there as text', () => {
    expect(placeOf(templates, 'elsewhere.html')).toBeUndefined()
    expect(placeOf({ 'site/index': { main: () => '' } as never }, 'x.html')).toBeUndefined()
  })

  it('is told from other errors', () =>
    expect(() =>
      blamingLinks(templates, () => {
        throw new TypeError('ours')
      }),
    ).toThrow(TypeError))
})
