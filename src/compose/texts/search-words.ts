import type { SearchWords } from '../../model/manual/search-words.ts'
import { type ComposeContext, itemsOf } from '../context.ts'

const listed = (line: string): readonly string[] => line.split(',').map((words) => words.trim())

/** Words for one thing, as the library says them. */
export function composeSearchWords({ library }: ComposeContext): SearchWords {
  const files = itemsOf(library.search)
  return {
    same: files.flatMap((file) => file.same.map(listed)),
    silent: files.flatMap((file) => listed(file.silent)),
  }
}
