/** Pages of a binder that have no other id; those of the front and those of whole parts. */
export const indexPages = [
  'call',
  'glance',
  'findings',
  'record',
  'signals',
  'hazards',
  'training',
] as const

/** What a term of the index can lead to. */
export const indexKinds = [
  'procedure',
  'hazard',
  'symptom',
  'plan',
  'reckoner',
  'chapter',
  'page',
] as const

export type IndexKind = (typeof indexKinds)[number]

/** Ids of whole parts, where they are not the name of their page. */
const ofParts: Readonly<Record<string, string>> = { training: 'part-training' }

/** The parts of `procedure:dust`. */
export function indexTarget(written: string): { readonly kind: IndexKind; readonly id: string } {
  const [kind = '', id = ''] = written.split(':')
  return { kind: kind as IndexKind, id }
}

/** Id of a place in a binder. */
export function indexPlace(written: string): string {
  const { kind, id } = indexTarget(written)
  return kind === 'page' ? (ofParts[id] ?? id) : `${kind}-${id}`
}
