// The script of every page: it adds to what is there, and nothing that anybody needs.
import { offerDay } from './page/day-numbers.ts'
import { showDue } from './page/due.ts'
import { closeByKey, showMenu } from './page/menu.ts'
import { openTarget } from './page/open-target.ts'
import { openForPrint } from './page/print.ts'
import { keepSite } from './page/saved.ts'
import { skipStill } from './page/scrollers.ts'

showMenu()
closeByKey()
showDue(new Date())
skipStill()
openForPrint()
openTarget()
keepSite()
offerDay()
