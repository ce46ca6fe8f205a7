/** A file of the output: path with forward slashes below the output folder. */
export type OutputFile = { readonly path: string; readonly data: string | Uint8Array }
