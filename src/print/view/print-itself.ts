import { fill, type Pattern } from '../../model/pattern.ts'
import { type PrintWork, printPlaces, printWorkId } from '../../model/print-view.ts'
import { layAsOnPaper } from './as-on-paper.ts'
import { layWork } from './lay-work.ts'
import { breathe, placeIn } from './place-in.ts'
import { printsMargins } from './prints-margins.ts'

/** What the document is given. */
type Given = {
  readonly work: PrintWork
  readonly says: {
    readonly laying: string
    readonly done: Pattern<'pages'>
    readonly fault: Pattern<'why'>
  }
}

/** Lays out what the document holds, then asks its browser to print it. */
async function printItself(): Promise<void> {
  const { work, says } = JSON.parse(placeIn(printWorkId).textContent ?? '') as Given
  const state = placeIn(printPlaces.state)
  const say = (words: string): void => {
    state.textContent = words
  }
  try {
    await Promise.all([...document.fonts].map((font) => font.load().catch(() => undefined)))
    await document.fonts.ready
    const scale = layAsOnPaper()
    const pages = await layWork(placeIn(printPlaces.book), work, scale, (share) =>
      say(`${says.laying} ${Math.round(share * 100)} %`),
    )
    say(fill(says.done, { pages }))
  } catch (error) {
    say(fill(says.fault, { why: error instanceof Error ? error.message : String(error) }))
    return
  }
  document.body.classList.add('is-laid')
  const canPrintAll = work.kind !== 'binder' || printsMargins()
  if (!canPrintAll) placeIn(printPlaces.noFeet).hidden = false
  const button = placeIn(printPlaces.button)
  button.hidden = false
  button.onclick = () => print()
  await breathe()
  if (canPrintAll) print()
}

void printItself()
