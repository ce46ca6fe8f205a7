import { describe, expect, it } from 'vitest'
import type { KeptSite } from '../../../src/model/kept-site.ts'
import { workerFile } from '../../../src/render/site/kept-site.ts'
import { sha256 } from '../../../src/write/build-record.ts'

const kept = (data: string | Uint8Array): KeptSite =>
  JSON.parse(/^var keptSite=(.*);$/m.exec(String(data))?.[1] ?? '{}')

const site = [
  { path: 'b.html', data: 'two' },
  { path: 'a.html', data: 'abc' },
]

describe('the worker of a site', () => {
  it('knows every file by its hash, in one order', () => {
    const { path, data } = workerFile(
      'run()',
      site,
      [{ path: 'sheets/x.pdf', data: 'pdf' }],
      sha256,
    )
    expect(path).toBe('worker.js')
    expect(String(data)).toMatch(/\nrun\(\)$/)
    const { files, papers } = kept(data)
    expect(Object.keys(files)).toEqual(['a.html', 'b.html'])
    // FIPS 180-2, appendix B.1: the digest of "abc", of which 16 digits are kept.
    expect(files['a.html']).toBe('ba7816bf8f01cfea')
    expect(Object.keys(papers)).toEqual(['sheets/x.pdf'])
  })

  it('is of another version when any file is another, and of the same when none is', () => {
    const version = (files: typeof site, papers: typeof site = []): string =>
      kept(workerFile('run()', files, papers, sha256).data).version
    expect(version([...site].reverse())).toBe(version(site))
    expect(version([{ path: 'a.html', data: 'abd' }])).not.toBe(version(site))
    expect(version(site, [{ path: 'c.pdf', data: 'c' }])).not.toBe(version(site))
  })
})
