import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { parse } from 'yaml'
import { loadTemplates } from '../../src/cli/load/load-templates.ts'
import { stylesOf } from '../../src/render/assets.ts'
import { folders } from './demo.ts'

/**
 * The form in a page of its own, with a host that keeps everything in the page: `form.saved` has
 * what was written, `form.elsewhere` what somebody else writes meanwhile.
 */
const entry = `
import { startForm } from './src/browser/form/start.ts'
import { readYaml } from './src/read/read-yaml.ts'
import { checkFacility } from './src/validate/check-facility.ts'

const { said, files } = JSON.parse(document.getElementById('data').textContent)
const form = { saved: [], made: 0, elsewhere: undefined }
globalThis.form = form
const host = {
  kind: 'page',
  open: async () => ({
    name: 'facility.yaml',
    files: new Map(files),
    draft: localStorage.getItem('draft') ?? undefined,
  }),
  save: async (text) => {
    if (form.elsewhere !== undefined) {
      const changed = { kind: 'changed', text: form.elsewhere }
      form.elsewhere = undefined
      return changed
    }
    form.saved.push(text)
    return { kind: 'saved' }
  },
  keep: (text) => localStorage.setItem('draft', text),
  make: async (made, tell) => {
    form.made += 1
    tell({ kind: 'stage', text: 'pages' })
    tell({ kind: 'made', address: 'about:blank', text: 'in its folder' })
  },
}
const work = (given) => {
  const read = readYaml({ path: 'facility.yaml', text: given.get('facility.yaml') ?? '' })
  const checked = read.value ? checkFacility(read.value) : { value: undefined, problems: [] }
  return {
    problems: [...read.problems, ...checked.problems],
    facility: checked.value,
    computed: undefined,
    manual: undefined,
    leftOut: [],
    standIns: [],
  }
}
startForm(host, work, document.getElementById('form'), said)
`

async function script(): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: entry, resolveDir: folders.project, loader: 'ts' },
    bundle: true,
    write: false,
    format: 'iife',
  })
  return (outputFiles[0]?.text ?? '').replaceAll('</script', '<\\/script')
}

/** Writes the page into a folder of its own. @param text What the file says; empty for a new one. */
export async function formPage(text: string) {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'form-'))
  const read = async (name: string): Promise<string> =>
    readFile(path.join(folders.content, name), 'utf8')
  const words = parse(await read('words.yaml')) as Record<string, unknown>
  const said = { form: parse(await read('form.yaml')), words }
  const { styles } = await loadTemplates(folders)
  const names = Object.keys(styles).filter((name) => name.startsWith('form/'))
  const assets = { templates: {}, styles, words: words as never, fontCss: '' }
  const data = JSON.stringify({ said, files: text === '' ? [] : [['facility.yaml', text]] })
  const html = `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Form</title><style>${stylesOf(assets, 'shared', ...(styles['form-page'] ? ['form-page'] : []), ...names)}</style></head><body><div id="form"></div><script type="application/json" id="data">${data.replaceAll('<', '\\u003c')}</script><script>${await script()}</script></body></html>`
  await writeFile(path.join(folder, 'form.html'), html)
  return {
    address: pathToFileURL(path.join(folder, 'form.html')).href,
    remove: () => rm(folder, { recursive: true, force: true }),
  }
}
