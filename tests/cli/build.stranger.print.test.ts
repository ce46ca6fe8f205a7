import { readdir } from 'node:fs/promises'
import path from 'node:path'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { beforeAll, describe, expect, it } from 'vitest'
import { openPdf } from '../support/read-pdf.ts'
import { strangersManual } from '../support/strangers-manual.ts'

let folder: string
let files: readonly string[]

beforeAll(async () => {
  folder = await strangersManual()
  const made = await readdir(folder, { recursive: true })
  files = made.filter((name) => name.endsWith('.pdf')).sort()
})

/** Where the links of a document lead outside of it. */
async function leadsOf(pdf: PDFDocumentProxy): Promise<readonly string[]> {
  const leads: string[] = []
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n)
    for (const one of await page.getAnnotations()) {
      const { url, unsafeUrl, actions, action } = one as Record<string, unknown>
      for (const lead of [url, unsafeUrl]) if (typeof lead === 'string') leads.push(lead)
      if (actions) leads.push(JSON.stringify(actions))
      if (typeof action === 'string') leads.push(action)
    }
    page.cleanup()
  }
  return leads
}

describe('what is printed of a facility that a stranger has written', () => {
  it('leads nowhere but to telephones, maps and the address that the facility says', async () => {
    expect(files.length).toBeGreaterThan(30)
    const leads = new Map<string, string>()
    for (const name of files)
      for (const lead of await leadsOf(await openPdf(path.join(folder, name))))
        leads.set(lead, name)
    const own =
      /^(?:tel:[\d+-]+|https:\/\/fair\.example\/manual\/|https:\/\/www\.openstreetmap\.org\/|geo:)/
    expect([...leads].filter(([lead]) => !own.test(lead))).toEqual([])
  })

  it('runs nothing, carries no files and opens nothing by itself', async () => {
    for (const name of files) {
      const pdf = await openPdf(path.join(folder, name))
      expect(await pdf.getJSActions(), name).toBeNull()
      expect(await pdf.getAttachments(), name).toBeNull()
      const open = (await pdf.getOpenAction()) as { readonly action?: string } | null
      expect(open?.action, name).toBeUndefined()
    }
  })
})
