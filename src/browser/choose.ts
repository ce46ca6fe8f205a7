// The script of the page "What do you see?": answers narrow what may be the matter.
import { showChooser } from './choose/show-chooser.ts'

showChooser(document)
