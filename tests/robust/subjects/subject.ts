import type { Chance } from '../chance.ts'
import type { Ground } from '../ground.ts'

/** How a run ended: the input was refused, something was made of it, or it changed nothing. */
type Ending = 'refused' | 'made' | 'unharmed'

export type Run = {
  /** The file that was changed, as it is called, and by changes of which groups. */
  readonly file: string
  readonly by: readonly string[]
  readonly ending: Ending
  /** What must not be, in words. */
  readonly faults: readonly string[]
}

/** One kind of file: changes one of that kind and looks at what comes of it. */
export type Subject = (ground: Ground, chance: Chance) => Promise<Run>
