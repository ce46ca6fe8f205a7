import type { ManualReckoner } from '../../model/manual/reckoner.ts'
import { applies } from '../applies.ts'
import { type ComposeContext, itemsOf } from '../context.ts'
import { composeMonths } from './months.ts'
import { composeReckoner } from './reckoner.ts'

/** All ready reckoners that have something to say here; water by month stands last. */
export function composeReckoners(context: ComposeContext): readonly ManualReckoner[] {
  const { library, here, engine, locale } = context
  const written = itemsOf(library.reckoners)
    .filter((r) => applies(r.when, here))
    .flatMap((r) => composeReckoner(r, engine, locale) ?? [])
  const months = composeMonths(context)
  return months ? [...written, months] : written
}
