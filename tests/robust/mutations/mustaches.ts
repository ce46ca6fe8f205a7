import type { Chance } from '../chance.ts'
import { type Mutations, ofText } from './mutation.ts'

const mustache = /\{\{[\s\S]*?\}\}/g

const tag = (other: (text: string, all: readonly string[], chance: Chance) => string) =>
  ofText((text, chance) => {
    const found = [...text.matchAll(mustache)]
    if (found.length === 0) return text
    const { index, 0: old } = chance.oneOf(found)
    const all = found.map(([m]) => m)
    return text.slice(0, index) + other(old, all, chance) + text.slice(index + old.length)
  })

const strange = [
  '{{constructor}}',
  '{{__proto__}}',
  '{{this.constructor.constructor}}',
  '{{lookup this "constructor"}}',
  '{{#with "s" as |string|}}{{string.sub.apply}}{{/with}}',
  '{{toString}}',
  '{{zq}}',
  '{{words.zq}}',
  '{{zq.zq}}',
  '{{> zq}}',
  '{{> (zq)}}',
  '{{#zq}}{{/zq}}',
  '{{#each zq}}{{/each}}',
  '{{{words}}}',
  '{{this}}',
  '{{.}}',
  '{{../..}}',
  '{{@root}}',
  '{{@index}}',
  '{{log "zq"}}',
  '{{!-- zq',
  '{{',
  '}}',
  '{{/if}}',
  '{{else}}',
  '{{#if',
  '{{eq 1}}',
  '{{join 1 2}}',
  '{{join words ","}}',
  '{{helperMissing}}',
  '{{#each words}}{{this}}{{/each}}',
]

/** Changes of what a template asks for. */
export const meaningsOfMustaches: Mutations = [
  tag((_, all, chance) => chance.oneOf(all)),
  tag(() => ''),
  tag((_, __, chance) => chance.oneOf(strange)),
  tag((old, __, chance) => old + chance.oneOf(strange)),
  tag((old) => old.replace(/[\w.]+/, (name) => `${name}x`)),
  tag((old) => old.replace(/\.\w+/, '')),
  tag((old) => old.replace(/\{\{([^{])/, '{{{$1').replace(/([^}])\}\}$/, '$1}}}')),
  tag((old) => old.replace('{{#if', '{{#unless')),
]
