import type { SearchIndex } from '../../model/search.ts'

/** What is worked out once for an index, so that a key costs little on a slow phone. */
type WordList = {
  /** Words of phrases that have others for the same. */
  readonly inPhrases: ReadonlySet<string>
  readonly has: ReadonlySet<string>
  /** Places of the words with a first letter. */
  readonly beginning: ReadonlyMap<string, readonly number[]>
  readonly places: readonly number[]
}

function worked({ words, same }: SearchIndex): WordList {
  const beginning = new Map<string, number[]>()
  for (const [place, word] of words.entries()) {
    const first = word[0] ?? ''
    const list = beginning.get(first)
    if (list) list.push(place)
    else beginning.set(first, [place])
  }
  return {
    inPhrases: new Set(same.flat(2)),
    has: new Set(words),
    beginning,
    places: words.map((_, place) => place),
  }
}

const lists = new WeakMap<SearchIndex, WordList>()

export function wordList(index: SearchIndex): WordList {
  const list = lists.get(index) ?? worked(index)
  lists.set(index, list)
  return list
}
