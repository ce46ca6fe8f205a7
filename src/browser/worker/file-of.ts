/** The file that an address means: what stands behind `?` and `#` is for the page itself. */
export function fileOf(address: string, base: string): string | undefined {
  const { origin, pathname } = new URL(address)
  const plain = origin + pathname
  if (!plain.startsWith(base)) return undefined
  return plain === base ? 'index.html' : plain.slice(base.length)
}
