import { describe, expect, it } from 'vitest'
import { hasHash } from '../../../src/browser/worker/has-hash.ts'
import { workerFile } from '../../../src/render/site/kept-site.ts'
import { sha256 } from '../../../src/write/build-record.ts'

const bytes = (text: string): ArrayBuffer => new TextEncoder().encode(text).buffer as ArrayBuffer

// FIPS 180-2, appendix B.1: the digest of "abc".
const abc = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'

describe('what a phone is sent', () => {
  it('is told by as many digits of its hash as a list has', async () => {
    for (const hash of [abc, abc.slice(0, 16)]) {
      expect(await hasHash(bytes('abc'), hash)).toBe(true)
      expect(await hasHash(bytes('abd'), hash)).toBe(false)
    }
    expect(await hasHash(bytes('abc'), '')).toBe(false)
  })

  it('is what the list that is made with the site says', async () => {
    const { data } = workerFile('', [{ path: 'a.html', data: 'a page' }], [], sha256)
    const hash = /"a\.html":"(\w+)"/.exec(String(data))?.[1] ?? ''
    expect(await hasHash(bytes('a page'), hash)).toBe(true)
    expect(await hasHash(bytes('another'), hash)).toBe(false)
  })
})
