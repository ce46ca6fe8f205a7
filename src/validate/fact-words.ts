import { capabilityOf } from '../model/fact-spec.ts'
import type { FactWords } from '../model/fact-words.ts'
import type { Library } from './check-library.ts'
import type { FactsFile } from './schemas/facts.ts'

function wordsOf(file: FactsFile | undefined): FactWords {
  const fieldOf = (path: string): string => path.slice(path.lastIndexOf('.') + 1)
  const row = (path: string) => (capabilityOf(path) ? file?.gear[fieldOf(path)] : file?.facts[path])
  return {
    label: (path) => row(path)?.label ?? path,
    howTo: (path) => row(path)?.howTo ?? '',
    why: (path, material) => {
      const typical = file?.gearTypical[path] ?? file?.facts[path]?.typical
      const own = typical && 'byMaterial' in typical ? typical.byMaterial?.[material] : undefined
      return own?.note ?? typical?.note ?? ''
    },
    fieldLabel: (field) => file?.gear[field]?.label ?? field,
    fieldHowTo: (field) => file?.gear[field]?.howTo ?? '',
  }
}

/** What is said of facts in the language of the library; without a library nothing is. */
export const factWords = (library: Pick<Library, 'facts'> | undefined): FactWords =>
  wordsOf(library?.facts[0]?.value)
