/** The bytes that a text in Base64 stands for. */
export const bytesOf = (text: string): Uint8Array =>
  Uint8Array.from(atob(text), (c) => c.charCodeAt(0))
