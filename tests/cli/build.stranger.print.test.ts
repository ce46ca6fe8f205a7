import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { madeUpFair } from '../support/made-up-fairs.ts'
import { buildInto } from '../support/printed-demos.ts'
import { openPdf } from '../support/read-pdf.ts'

const { id, text } = madeUpFair(31)

/** Words in which a program that looks for addresses would find some. */
const addresses =
  'https://zq.example/a www.zq.example mailto:zq@zq.example javascript:zq() \\\\server\\zq file:///etc/zq =HYPERLINK("https://zq.example/")'

const stranger = `${text
  .replace(
    /^name: .*$/m,
    `name: ${JSON.stringify('Fair <zq-a> https://zq.example/ javascript:zq()')}`,
  )
  .replace(
    'contacts:\n',
    `contacts:\n  - { role: fire, name: ${JSON.stringify('"><zq-b> https://zq.example/')}, phone: "701-2233" }\n`,
  )}
notes:
  - procedure: harrow
    text: ${JSON.stringify(`See ${addresses}`)}
site-address: https://fair.example/manual/
`

let root: string
let files: readonly string[]

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'stranger-'))
  const fair = path.join(root, 'fair')
  await mkdir(fair)
  await writeFile(path.join(fair, 'facility.yaml'), stranger)
  await buildInto(path.join(root, 'out'), fair, { quiet: true })
  const made = await readdir(path.join(root, 'out', id), { recursive: true })
  files = made.filter((name) => name.endsWith('.pdf')).sort()
})
afterAll(() => rm(root, { recursive: true, force: true }))

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
      for (const lead of await leadsOf(await openPdf(path.join(root, 'out', id, name))))
        leads.set(lead, name)
    const own =
      /^(?:tel:[\d+-]+|https:\/\/fair\.example\/manual\/|https:\/\/www\.openstreetmap\.org\/|geo:)/
    expect([...leads].filter(([lead]) => !own.test(lead))).toEqual([])
  })

  it('runs nothing, carries no files and opens nothing by itself', async () => {
    for (const name of files) {
      const pdf = await openPdf(path.join(root, 'out', id, name))
      expect(await pdf.getJSActions(), name).toBeNull()
      expect(await pdf.getAttachments(), name).toBeNull()
      const open = (await pdf.getOpenAction()) as { readonly action?: string } | null
      expect(open?.action, name).toBeUndefined()
    }
  })
})
