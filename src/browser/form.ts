import * as z from 'zod'
import { dayAt } from '../model/day.ts'
import { type PageData, pageDataId } from '../model/page-data.ts'
import type { TemplateSet } from '../render/text/templates.ts'
import type { Words } from '../validate/schemas/words.ts'
import { element } from './element.ts'
import type { Work } from './form/contract.ts'
import { takeFonts } from './form/host/fonts.ts'
import { beginInPage } from './form/host/from-page.ts'
import { placeOfProgram } from './form/host/from-program.ts'
import { pageHost } from './form/host/page-host.ts'
import type { Place } from './form/host/place.ts'
import { startForm } from './form/start.ts'
import { libraryOf } from './form/workshop/library.ts'
import { workshopOf } from './form/workshop/making-site.ts'
import { workFor } from './form/workshop/work.ts'

// Code made of text is forbidden to the page, and asking whether it is would be reported.
z.config({ jitless: true })

/** Stands before this script. */
declare const pageTemplates: TemplateSet

/** The day where the page is read, not that of Greenwich. */
const today = (): string => dayAt(Date.now() - new Date().getTimezoneOffset() * 60_000)

/** The program behind the page, or the page alone. */
async function placeFor(
  root: HTMLElement,
  data: PageData,
  words: Words,
  work: Work,
): Promise<Place> {
  const workshop = workshopOf(data, pageTemplates)
  if (!workshop) return placeOfProgram(root, words)
  const shelf = element('div')
  root.after(shelf)
  return pageHost(await beginInPage(root, words), { words, workshop, work, shelf })
}

async function main(): Promise<void> {
  const root = document.getElementById('form')
  const data = JSON.parse(document.getElementById(pageDataId)?.textContent ?? '') as PageData
  if (!root) return
  takeFonts(data.fonts)
  const library = libraryOf(data, new Map())
  const asked = library.form[0]?.value
  if (!asked) return
  let place: Place | undefined
  const work = workFor(data, today(), () => place?.workbooks() ?? new Map())
  place = await placeFor(root, data, library.words, work)
  await startForm(place.host, work, root, { form: asked, library })
}

main()
