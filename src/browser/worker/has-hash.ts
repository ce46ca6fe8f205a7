/**
 * Whether bytes are what a list of files says.
 * @param hash The first digits of their SHA-256, in hex: as many as the list has.
 */
export async function hasHash(bytes: ArrayBuffer, hash: string): Promise<boolean> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
  const all = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  return hash !== '' && all.startsWith(hash)
}
