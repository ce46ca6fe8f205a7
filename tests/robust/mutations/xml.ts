import type { Chance } from '../chance.ts'
import { hostileTexts, oddDays, oddNumbers } from './hostile.ts'
import { type Mutations, ofText } from './mutation.ts'

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;')

/** A change of one match of a pattern, which has what is changed as its second group. */
const oneOf = (pattern: RegExp, other: (text: string, chance: Chance) => string) =>
  ofText((text, chance) => {
    const found = [...text.matchAll(pattern)]
    if (found.length === 0) return text
    const { index, 0: all, 1: before = '', 2: inner = '' } = chance.oneOf(found)
    const rest = all.slice(before.length + inner.length)
    return `${text.slice(0, index)}${before}${other(inner, chance)}${rest}${text.slice(index + all.length)}`
  })

const words = /(>)([^<>]+)(?=<)/g
const attribute = /(\s[\w:]+=")([^"]*)(?=")/g
const element = /()(<[\w:]+[^<>]*(?:\/>|>[^<>]*<\/[\w:]+>))/g

const attributes = [
  '0',
  '-1',
  '1e9',
  '99999999',
  'A0',
  'ZZZZ1',
  'XFD1048576',
  'A99999999999',
  's',
  'n',
  'd',
  'b',
  'e',
  'inlineStr',
  'rId1',
  'rId999',
  '../../../zq',
  '/etc/zq',
  'https://zq.example/a.xml',
]

const declarations = [
  '<!DOCTYPE zq [<!ENTITY a "zq"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>',
  '<!DOCTYPE zq SYSTEM "file:///etc/zq">',
  '<!DOCTYPE zq [<!ENTITY a SYSTEM "https://zq.example/">]>',
]

/** Changes of what the elements of an XML text say. */
export const meaningsOfXml: Mutations = [
  oneOf(words, (_, chance) => escaped(chance.oneOf(hostileTexts))),
  oneOf(words, (_, chance) => chance.oneOf(oddNumbers)),
  oneOf(words, (_, chance) => chance.oneOf(oddDays)),
  oneOf(words, () => ''),
  oneOf(words, (text) => `${text}&a;`),
  oneOf(words, (text) => `<zq>${text}</zq>`),
  oneOf(words, (text) => `<![CDATA[${text}]]>`),
  oneOf(attribute, (_, chance) => chance.oneOf(attributes)),
  oneOf(attribute, (_, chance) => escaped(chance.oneOf(hostileTexts))),
  oneOf(element, () => ''),
  oneOf(element, (text) => text.repeat(2)),
  oneOf(element, (text, chance) => text.repeat(2 + chance.below(200))),
  // Elements within each other, deeper than anybody writes them.
  oneOf(element, (text) => `${'<zq>'.repeat(3000)}${text}${'</zq>'.repeat(3000)}`),
  ofText((text, chance) => text.replace(/(?<=\?>)|^(?!<\?)/, chance.oneOf(declarations))),
]
