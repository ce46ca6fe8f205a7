import type { CitedSource } from '../model/manual/source.ts'
import type { Words } from '../validate/schemas/words.ts'
import type { ComposeContext } from './context.ts'

/** An item of CSL-JSON, as far as references are printed from it. */
export type SourceItem = {
  readonly id: string
  readonly title: string
  readonly number?: string
  readonly author?: readonly {
    readonly literal?: string
    readonly family?: string
    readonly given?: string
  }[]
  readonly publisher?: string
  readonly issued?: { readonly 'date-parts': readonly (readonly number[])[] }
  readonly section?: string
  readonly note?: string
}

/** One printed reference: issuing body, title, number, year. */
function referenceText(item: SourceItem, title: string): string {
  const bodies =
    (item.author ?? [])
      .map((a) => a.literal ?? [a.given, a.family].filter(Boolean).join(' '))
      .join(', ') || item.publisher
  const year = item.issued?.['date-parts'][0]?.[0]
  const parts = [
    bodies,
    title,
    item.number,
    item.section,
    year === undefined ? undefined : String(year),
  ].filter((p) => p !== undefined && p !== '')
  return `${parts.join(', ')}.${item.note ? ` ${item.note}` : ''}`
}

/** The references with these ids, in their order, as they are printed. */
export function printedSources(
  ids: ReadonlySet<string>,
  references: readonly SourceItem[],
  words: Pick<Words, 'sources'>,
): readonly CitedSource[] {
  // What is no publication is said in the language of the manual.
  const unpublished: Readonly<Record<string, string>> = {
    'common-practice': words.sources.commonPractice,
    geometry: words.sources.geometry,
  }
  return references
    .filter(({ id }) => ids.has(id))
    .map((s) => ({
      id: s.id,
      text: referenceText(s, unpublished[s.id] ?? s.title),
      short: s.id === 'common-practice' ? words.sources.commonPracticeMark : (s.number ?? s.title),
    }))
}

/** Sources that something in the manual cites, in the order of the references. */
export function composeSources({
  references,
  library,
  parts,
}: ComposeContext): readonly CitedSource[] {
  const cited = new Set([
    ...parts.procedures.flatMap((p) => [...p.background.map((b) => b.source), ...p.references]),
    ...parts.cautions.flatMap((c) => c.sources),
    ...parts.worksheets.flatMap((w) => [
      ...w.sources,
      ...w.inputs.flatMap((i) => ('sources' in i.provenance ? i.provenance.sources : [])),
    ]),
  ])
  return printedSources(cited, references, library.words)
}
