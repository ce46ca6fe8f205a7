// The script of the manual in one file. What the pages of the site do in scripts of their own is
// done here for all pages at once: a line for each.
import { fileData } from '../model/file-data.ts'
import type { SearchIndex } from '../model/search.ts'
import type { DayFile } from '../model/today.ts'
import { showChooser } from './choose/show-chooser.ts'
import { showFileSearch } from './one-file/file-search.ts'
import { showDue } from './page/due.ts'
import { closeByKey, showMenu } from './page/menu.ts'
import { openTarget } from './page/open-target.ts'
import { openForPrint } from './page/print.ts'
import { skipStill } from './page/scrollers.ts'
import { startPage } from './today/start-page.ts'

/** What the file carries beside what it shows. */
const dataIn = (id: string): unknown => JSON.parse(document.getElementById(id)?.textContent ?? '')

document.documentElement.classList.add('scripted')
showMenu()
closeByKey()
showDue(new Date())
skipStill()
openForPrint()
showFileSearch(dataIn(fileData.index) as SearchIndex)
showChooser(document)
startPage(dataIn(fileData.day) as DayFile, () => new Date(), false)
openTarget()
