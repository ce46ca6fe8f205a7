import { describe, expect, it } from 'vitest'
import { fileOf } from '../../../src/browser/worker/file-of.ts'

const base = 'https://fair.example/track/'

describe('the file that an address means', () => {
  it.each([
    ['https://fair.example/track/', 'index.html'],
    ['https://fair.example/track/procedures/seal.html?from=phone#roll', 'procedures/seal.html'],
    ['https://fair.example/track/sheets/seal.pdf', 'sheets/seal.pdf'],
    ['https://fair.example/other.html', undefined],
    ['https://elsewhere.example/track/index.html', undefined],
  ])('%s', (address, file) => {
    expect(fileOf(address, base)).toBe(file)
  })
})
