import { readdirSync, readFileSync } from 'node:fs'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { loadFormPage } from '../../src/cli/load/load-form-page.ts'
import { demoFolder, folders } from './demo.ts'

/** What lies in the folder of a demo, by name. */
export const demoFiles = (id: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(demoFolder(id))
      .filter((name) => /\.(?:yaml|csv|geojson)$/.test(name))
      .map((name) => [name, readFileSync(path.join(demoFolder(id), name), 'utf8')]),
  )

/**
 * The page's script with a host that keeps everything in the page: `form.saved` has what was
 * written of the fair's own file, `form.files` all of it, `form.elsewhere` what somebody else writes
 * into that file meanwhile, and `form.elsewhereIn` into others.
 */
const entry = `
import * as z from 'zod'
import { pageDataId } from './src/model/page-data.ts'
import { takeFonts } from './src/browser/form/host/fonts.ts'
import { startForm } from './src/browser/form/start.ts'
import { libraryOf } from './src/browser/form/workshop/library.ts'
import { workFor } from './src/browser/form/workshop/work.ts'

z.config({ jitless: true })
const jsonIn = (id) => JSON.parse(document.getElementById(id).textContent)
const data = jsonIn(pageDataId)
const files = jsonIn('given')
takeFonts(data.fonts)
const form = { saved: [], files: {}, made: 0, elsewhere: undefined, elsewhereIn: {} }
globalThis.form = form
const host = {
  kind: 'page',
  open: async () => ({
    name: 'facility.yaml',
    files: new Map(files),
    draft: new Map(JSON.parse(localStorage.getItem('drafts') ?? '[]')),
    head: '',
    workbooks: [],
  }),
  save: async (all) => {
    for (const [file, text] of all) {
      const elsewhere = file === 'facility.yaml' ? form.elsewhere : form.elsewhereIn[file]
      if (elsewhere !== undefined) {
        form.elsewhere = undefined
        form.elsewhereIn = {}
        return { kind: 'changed', file, text: elsewhere }
      }
      if (file === 'facility.yaml') form.saved.push(text)
      form.files[file] = text
    }
    return { kind: 'saved' }
  },
  keep: (all) => {
    localStorage.setItem('draft', all.get('facility.yaml'))
    localStorage.setItem('drafts', JSON.stringify([...all]))
  },
  make: async (made, tell) => {
    form.made += 1
    tell({ kind: 'stage', text: 'pages' })
    tell({ kind: 'made', address: 'about:blank', text: 'in its folder' })
  },
}
const library = libraryOf(data, new Map())
const work = workFor(data, '2027-06-15', () => new Map())
startForm(host, work, document.getElementById('form'), {
  form: library.form[0].value,
  library,
})
`

async function bundled(): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: entry, resolveDir: folders.project, loader: 'ts' },
    bundle: true,
    write: false,
    format: 'iife',
    charset: 'utf8',
  })
  return (outputFiles[0]?.text ?? '').replaceAll('</script', '<\\/script')
}

/** Its own scripts, which ask the program behind it, and what forbids all others give way. */
async function made(): Promise<{ readonly bare: string; readonly script: string }> {
  const { html } = await loadFormPage(folders)
  const bare = html
    .replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, '')
    .replace(/<script>[\s\S]*<\/script>/, '')
  return { bare, script: await bundled() }
}

/** Made once for all tests of a process. */
let page: ReturnType<typeof made> | undefined

/**
 * Writes the form's page into a folder of its own, to be opened from disk.
 * @param files What lies in the folder of the fair, by name; none for a new one.
 */
export async function formPage(files: Readonly<Record<string, string>>) {
  page ??= made()
  const { bare, script } = await page
  const folder = await mkdtemp(path.join(os.tmpdir(), 'form-'))
  const given = JSON.stringify(Object.entries(files)).replaceAll('<', '\\u003c')
  const scripts = `<script type="application/json" id="given">${given}</script><script>${script}</script>`
  const at = bare.lastIndexOf('</body>')
  await writeFile(path.join(folder, 'form.html'), bare.slice(0, at) + scripts + bare.slice(at))
  return {
    address: pathToFileURL(path.join(folder, 'form.html')).href,
    remove: () => rm(folder, { recursive: true, force: true }),
  }
}
