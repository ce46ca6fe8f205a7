import type { FormState } from '../../../model/form-exchange.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import type { Place } from './place.ts'
import { askState, choose, programHost } from './program-host.ts'
import { startScreen } from './start-screen.ts'

/** The folder that the program was started with, or that is chosen first. */
export async function placeOfProgram(root: HTMLElement, { maker }: Words): Promise<Place> {
  const state = await askState()
  if (state.open) return programHost(state, maker)
  const opened = await startScreen<FormState>(root, maker, [
    {
      list: [
        { title: maker.newFair, about: maker.newAbout, take: () => choose({ folder: 'new' }) },
      ],
    },
    {
      title: maker.yours,
      list: state.folders.map(({ name, where }, folder) => ({
        title: name,
        about: where,
        take: () => choose({ folder }),
      })),
    },
  ])
  return programHost(opened, maker)
}
