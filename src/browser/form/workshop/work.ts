import { workWith } from '../../../answers/work-with.ts'
import type { PageData } from '../../../model/page-data.ts'
import type { FacilityFiles, Work, Worked } from '../contract.ts'
import { libraryOf, sourcesOf } from './library.ts'

/** Files of a facility that are no texts, by their path in its folder. */
export type Workbooks = ReadonlyMap<string, Uint8Array>

type Works = (files: ReadonlyMap<string, string | Uint8Array>) => Worked

const isOwn = ([path]: readonly [string, string]): boolean => path.startsWith('procedures/')

/** Procedures that a facility brings along, as one text: the library is another with others. */
const ownOf = (files: FacilityFiles): string => JSON.stringify([...files].filter(isOwn))

/**
 * Works out what answers make.
 * @param today What the clock says, `YYYY-MM-DD`.
 * @param workbooks Those that lie beside the facility file now.
 */
export function workFor(data: PageData, today: string, workbooks: () => Workbooks): Work {
  let known: { readonly own: string; readonly works: Works } | undefined
  const worksFor = (files: FacilityFiles): Works => {
    const own = ownOf(files)
    if (known?.own !== own) {
      const library = libraryOf(data, files)
      const { words } = library
      const unnamed = { fair: words.maker.fair, town: words.maker.town }
      const works = workWith({ library, sources: sourcesOf(data), today, unnamed })
      known = { own, works }
    }
    return known.works
  }
  return (files) =>
    worksFor(files)(new Map<string, string | Uint8Array>([...workbooks(), ...files]))
}
