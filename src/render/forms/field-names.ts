/** A name for a file's field: `Water, gal` is `water-gal`. */
export const slug = (label: string): string =>
  label
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')

/** Names of places to write by their labels, each once. */
export function fieldNames(): (label: string) => string {
  const seen = new Map<string, number>()
  return (label) => {
    const name = slug(label) || 'place'
    const times = (seen.get(name) ?? 0) + 1
    seen.set(name, times)
    return times === 1 ? name : `${name}-${times}`
  }
}
