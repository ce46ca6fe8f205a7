import dictionary from 'dictionary-en'
import { fleschKincaid } from 'flesch-kincaid'
import nspell from 'nspell'
import { syllable } from 'syllable'
import { describe, expect, it } from 'vitest'
import entries from '../../shared/entries.json' with { type: 'json' }
import facts from '../../shared/facts.json' with { type: 'json' }
import writing from '../../shared/writing.json' with { type: 'json' }

type About = { readonly label: string; readonly howTo?: string }

const told: readonly (readonly [string, About])[] = [
  ...Object.entries(entries.entries),
  ...Object.entries(facts.facts),
  ...Object.entries(facts.gear),
]

const wordsIn = (text: string): readonly string[] => text.match(/[A-Za-z][A-Za-z'’]*/g) ?? []

/** Choices, names of files and of formats as they are typed are no words. */
const typed = /GeoJSON|\.(?:csv|xlsx)\b|\b[a-z0-9]+(?:-[a-z0-9]+)+\b|\b\w+[/_]\w+\b|\b\w+\.\w+\b/g

describe('what the form, the workbook and editors say of entries', () => {
  it('is spelt as the dictionary and the trade spell it', () => {
    const spell = nspell(Buffer.from(dictionary.aff), Buffer.from(dictionary.dic))
    for (const word of writing.accepted) spell.add(word)
    const isRight = (w: string): boolean =>
      /^[A-Z]{2,}s?$/.test(w) || spell.correct(w) || spell.correct(w.replace(/['’]s$/, ''))
    const wrong = told.flatMap(([name, { label, howTo = '' }]) =>
      wordsIn(`${label}. ${howTo}`.replaceAll(typed, ' '))
        .filter((w) => !isRight(w))
        .map((w) => `${name}: ${w}`),
    )
    expect(wrong).toEqual([])
  })

  it('can be read by a careful reader of fourteen', () => {
    const sentences = told.flatMap(([, { howTo = '' }]) => howTo.split(/(?<=[.!?:;])\s+/))
    const words = sentences.flatMap(wordsIn)
    const grade = fleschKincaid({
      sentence: sentences.filter((s) => wordsIn(s).length > 0).length,
      word: words.length,
      syllable: words.reduce((sum, w) => sum + syllable(w), 0),
    })
    expect(grade).toBeLessThanOrEqual(7)
  })
})
