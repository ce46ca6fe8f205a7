import type { FormState } from '../../../model/form-exchange.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import type { Place } from './place.ts'
import { askState, choose, programHost } from './program-host.ts'
import { startScreen } from './start-screen.ts'

/** The folder that the program was started with, or that is chosen first. */
export async function placeOfProgram(root: HTMLElement, words: Words): Promise<Place> {
  const state = await askState()
  if (state.open) return programHost(state, words)
  const opened = await startScreen<FormState>(root, words, [
    {
      list: [
        {
          title: words.maker.newFair,
          about: words.maker.newAbout,
          take: () => choose({ folder: 'new' }),
        },
      ],
    },
    {
      title: words.maker.yours,
      list: state.folders.map(({ name, where }, folder) => ({
        title: name,
        about: where,
        take: () => choose({ folder }),
      })),
    },
  ])
  return programHost(opened, words)
}
