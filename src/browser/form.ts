import * as z from 'zod'
import { dayAt } from '../model/day.ts'
import { type PageData, pageDataId } from '../model/page-data.ts'
import { showBare } from './form/host/bare.ts'
import { takeFonts } from './form/host/fonts.ts'
import { placeOfProgram } from './form/host/from-program.ts'
import { libraryOf } from './form/workshop/library.ts'
import { workFor } from './form/workshop/work.ts'

// Code made of text is forbidden to the page, and asking whether it is would be reported.
z.config({ jitless: true })

async function main(): Promise<void> {
  const root = document.getElementById('form')
  const data = JSON.parse(document.getElementById(pageDataId)?.textContent ?? '') as PageData
  if (!root) return
  takeFonts(data.fonts)
  const { words } = libraryOf(data, new Map())
  const { host, workbooks } = await placeOfProgram(root, words)
  await showBare(host, workFor(data, dayAt(Date.now()), workbooks), root)
}

main()
