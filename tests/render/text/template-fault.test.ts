import { describe, expect, it } from 'vitest'
import { templateFault } from '../../../src/render/text/template-fault.ts'
import { createTemplates } from '../../../src/render/text/templates.ts'

/** The fault for which filling a template ends, as `file:line:column message`. */
function faultOf(texts: Readonly<Record<string, string>>, data: object): string | undefined {
  try {
    createTemplates(texts).render('site/own', data)
    return undefined
  } catch (error) {
    const fault = templateFault(error)
    if (!fault) throw error
    const { file, line, column } = fault.place
    return `${file}:${line}:${column} ${fault.message}`
  }
}

describe('a template that cannot be filled', () => {
  it('says where it asks for what it is not given', () => {
    expect(faultOf({ 'site/own': '<p>\n  {{name}}</p>' }, {})).toBe(
      'templates/site/own.hbs:2:5 the template asks for "name", which it is not given',
    )
    expect(faultOf({ 'site/own': '{{a.b.c}}' }, { a: {} })).toMatch(
      /^templates\/site\/own\.hbs:1:\d+ the template asks for "[bc]", which it is not given$/,
    )
  })

  it.each(['\r', '\r\n', '\n'])('says so where lines end with %j', (end) => {
    const text = ['<p>', '<b>', '  {{name}}</b></p>'].join(end)
    const [, line, column] = /:(\d+):(\d+) /.exec(faultOf({ 'site/own': text }, {}) ?? '') ?? []
    // The name behind both braces, in lines as an editor of ours counts them.
    const before = text.split('\n')[Number(line) - 1]?.slice(0, Number(column) - 1)
    expect(before?.split('\r').at(-1)).toBe('  {{')
  })

  it('says it of the partial in which it happens', () =>
    expect(faultOf({ 'site/own': '\n{{> inner}}', 'partials/inner': '<b>{{name}}</b>' }, {})).toBe(
      'templates/partials/inner.hbs:1:6 the template asks for "name", which it is not given',
    ))

  it('says where a group of values is printed as if it were a text', () =>
    expect(faultOf({ 'site/own': '<h1>x</h1>\n<p>{{group}}</p>' }, { group: { a: 1 } })).toBe(
      'templates/site/own.hbs:2:4 a group of values is printed as if it were a text',
    ))

  it('says where something else than a list is joined', () =>
    expect(faultOf({ 'site/own': '<p>{{join name ", "}}</p>' }, { name: 'x' })).toBe(
      'templates/site/own.hbs:1:4 "join" is not given a list',
    ))

  it('is told from a fault of the program', () => {
    const data = Object.defineProperty({}, 'name', {
      enumerable: true,
      get: () => {
        throw new RangeError('ours')
      },
    })
    expect(() => faultOf({ 'site/own': '{{name}}' }, data)).toThrow('ours')
  })
})
