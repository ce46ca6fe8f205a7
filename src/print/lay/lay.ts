import { noRoom } from '../page/no-room.ts'
import type { LayingPage } from '../page/open-page.ts'
import type { Laid, Layings } from './in-page.ts'

/**
 * Has a page do one of the works of `lay-copy.ts`.
 * @throws Error as the work does; where words have no room, one that `isNoRoom` knows.
 */
export async function lay<N extends keyof Layings>(
  page: LayingPage,
  name: N,
  ...[args]: Parameters<Layings[N]>
): Promise<Awaited<ReturnType<Layings[N]>>> {
  const laid: Laid<unknown> = await page.evaluate(
    (work, given) => globalThis.lay(work, given),
    name,
    args,
  )
  if ('noRoom' in laid) throw noRoom(laid.noRoom)
  return laid.done as Awaited<ReturnType<Layings[N]>>
}
