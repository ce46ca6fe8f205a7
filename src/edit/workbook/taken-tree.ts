import type { Place } from '../../model/problem.ts'
import type { Path, SourceTree } from '../../read/read-yaml.ts'
import { lineOf, problemAt, type SourceFile } from '../../read/source-file.ts'

/** Where the entries of a facility come from that was put together of a file and sheets. */
export type Sources = {
  /** The file as it is; undefined where there is none yet. */
  readonly tree: SourceTree | undefined
  /** Places of what sheets say, by path. */
  readonly places: ReadonlyMap<string, Place>
  /** Places of cells in which an entry could stand, by path. */
  readonly empty: ReadonlyMap<string, Place>
  /** The sheet or file that a place is in. */
  readonly fileOf: (place: Place) => SourceFile
}

export const placeKey = (path: Path): string => JSON.stringify(path)

/**
 * The data of a facility as a workbook would make them, as a tree that every check of the facility
 * file reads: what comes from a sheet is told with its cell.
 */
export function takenTree(data: unknown, { tree, places, empty, fileOf }: Sources): SourceTree {
  const file = tree?.file ?? { path: 'facility.yaml', text: '' }
  const inSheet = (path: Path): Place | undefined => {
    for (let length = path.length; length > 0; length--) {
      const place = places.get(placeKey(path.slice(0, length)))
      if (place) return place
    }
    return undefined
  }
  /** Something in a group whose entries come from sheets. */
  const within = (path: Path): Place | undefined => {
    const start = placeKey(path).slice(0, -1)
    for (const [key, place] of places) if (key.startsWith(`${start},`)) return place
    return undefined
  }
  const start: Place = { file: file.path, line: 1, column: 1, length: 1 }
  const placeOf = (path: Path): Place =>
    inSheet(path) ?? within(path) ?? tree?.placeOf(path) ?? start
  const at = (place: Place): SourceFile =>
    place.cell || place.file !== file.path ? fileOf(place) : file
  return {
    file,
    data,
    placeOf,
    keyPlaceOf: (path) => inSheet(path) ?? within(path) ?? tree?.keyPlaceOf(path) ?? start,
    textPlaceOf: (path, part) => inSheet(path) ?? tree?.textPlaceOf(path, part) ?? start,
    lineAt: (place) => lineOf(at(place), place.line),
    emptyPlaceOf: (path) => empty.get(placeKey(path)),
    problem: (place, code, message, more) => problemAt(at(place), place, code, message, more),
  }
}
