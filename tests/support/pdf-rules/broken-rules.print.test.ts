import { beforeAll, describe, expect, it } from 'vitest'
import { openDocument } from '../../../src/print/pdf/documents.ts'
import { printSample } from '../sample-document.ts'
import { brokenRules } from './broken-rules.ts'
import { faults } from './planted-faults.ts'

let sample: Awaited<ReturnType<typeof printSample>>

beforeAll(async () => {
  sample = await printSample()
})

describe('the rules of sound PDFs', () => {
  it('are kept by a finished document', async () => {
    expect(brokenRules(openDocument(sample.finished))).toEqual([])
  })

  it('are broken several times by what the browser has printed', async () => {
    const broken = brokenRules(openDocument(sample.raw)).join('\n')
    for (const rule of [/paints outside/, /LI holds/, /Link without Contents/, /no XMP/])
      expect(broken).toMatch(rule)
  })
})

describe('a planted fault is named:', () => {
  it.each(faults)('%s', async (_, plant, named) => {
    const document = openDocument(sample.finished)
    plant(document)
    expect(brokenRules(document).join('\n')).toMatch(named)
  })
})
