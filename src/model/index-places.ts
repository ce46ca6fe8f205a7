/** Pages of a binder that have no other id. */
export const indexPages = ['call', 'glance', 'findings', 'record', 'signals', 'hazards'] as const

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

/** The parts of `procedure:dust`. */
export function indexTarget(written: string): { readonly kind: IndexKind; readonly id: string } {
  const [kind = '', id = ''] = written.split(':')
  return { kind: kind as IndexKind, id }
}

/** Id of a place in a binder. */
export function indexPlace(written: string): string {
  const { kind, id } = indexTarget(written)
  return kind === 'page' ? id : `${kind}-${id}`
}
