/** A name as it is typed in a command: in quotes where it has spaces or the like. */
export const inCommand = (name: string): string =>
  /^[\w./\\:@+,-]+$/.test(name) ? name : `"${name}"`
