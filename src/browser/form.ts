import * as z from 'zod'
import { dayAt } from '../model/day.ts'
import { type PageData, pageDataId } from '../model/page-data.ts'
import { takeFonts } from './form/host/fonts.ts'
import { placeOfProgram } from './form/host/from-program.ts'
import { startForm } from './form/start.ts'
import { libraryOf } from './form/workshop/library.ts'
import { workFor } from './form/workshop/work.ts'

// Code made of text is forbidden to the page, and asking whether it is would be reported.
z.config({ jitless: true })

async function main(): Promise<void> {
  const root = document.getElementById('form')
  const data = JSON.parse(document.getElementById(pageDataId)?.textContent ?? '') as PageData
  if (!root) return
  takeFonts(data.fonts)
  const library = libraryOf(data, new Map())
  const asked = library.form[0]?.value
  if (!asked) return
  const { host, workbooks } = await placeOfProgram(root, library.words)
  const work = workFor(data, dayAt(Date.now()), workbooks)
  await startForm(host, work, root, { form: asked, library })
}

main()
