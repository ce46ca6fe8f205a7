import { loadFonts } from '../../src/cli/load/load-fonts.ts'
import { finishPdf } from '../../src/print/finish/finish-pdf.ts'
import { addTypingFont } from '../../src/print/forms/typing-font.ts'
import { openDocument } from '../../src/print/pdf/documents.ts'
import { addFields } from '../../src/print/pdf/fields.ts'
import { printRaw } from '../../src/print/press/print-pages.ts'
import { openTestPress } from './test-press.ts'

/** What a document for a test says about itself. */
export const about = {
  title: 'A small paper',
  author: 'Nobody',
  subject: 'Rules',
  keywords: ['one'],
  lang: 'en',
  date: '2026-01-02',
  creator: 'tests',
  seed: 'seed',
}

const css = `@page{size:letter;margin:1in;@bottom-center{content:"foot"}}
.probe a{position:absolute;width:1px;height:1px}
section{border-bottom:1px solid #000}
.second{break-before:page}`

const body = `<nav class="probe" aria-hidden="true"><a href="#table"></a><a href="#only-probed"></a></nav>
<section><h1>One</h1><p>See <a href="#table">the table</a>, <em>soon</em>.</p><div>loose words <strong>here</strong></div><dl><dt>Term</dt><dd>Meaning</dd></dl>
<ul><li>outer <b>bold</b><ul><li>inner</li></ul></li><li><p>paragraph</p></li></ul><div><span></span></div></section>
<section class="second"><h2 id="table">Two</h2><table><caption>Speeds</caption><thead><tr><th scope="col">A</th><th scope="col">B</th></tr></thead><tbody><tr><th scope="row">a</th><td style="border:1px solid #000"></td></tr></tbody></table>
<p id="only-probed">Thus <span role="img" aria-label="d equals V over A"><math><mi>d</mi><mo>=</mo><mfrac><mi>V</mi><mi>A</mi></mfrac></math></span>.</p>
<figure role="group"><svg role="img" aria-label="A box" width="40" height="40"><rect width="40" height="40" fill="none" stroke="#000"/></svg><figcaption>Box</figcaption></figure></section>`

/**
 * A document of two pages with one of everything that a rule is about: as the browser has printed
 * it, and finished, with a field on its second page.
 */
export async function printSample(): Promise<{
  readonly raw: Uint8Array
  readonly finished: Uint8Array
}> {
  const { press, close } = await openTestPress()
  try {
    const raw = await printRaw(press, { css, body })
    const printed = openDocument(raw)
    const field = {
      kind: 'line',
      name: 'name',
      tooltip: 'Your name',
      page: 1,
      box: { x: 100, y: 100, width: 80, height: 20 },
    } as const
    addFields(printed, [field], addTypingFont(printed, (await loadFonts()).typing))
    return { raw, finished: finishPdf(printed, about) }
  } finally {
    await close()
  }
}
