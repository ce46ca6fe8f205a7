/** The bytes that a text in Base64 stands for. */
export const bytesOf = (text: string): Uint8Array =>
  Uint8Array.from(atob(text), (c) => c.charCodeAt(0))

/** Bytes as Base64. */
export const fromBytes = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
