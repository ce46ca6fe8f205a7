declare const kind: unique symbol

/** Known by its kind alone, so that nothing outside this folder depends on the library. */
type Kind<K extends string> = { readonly [kind]: K }

/** Any object of a document (ISO 32000-1, 7.3). */
export type PdfObject = Kind<'dictionary' | 'array' | 'stream' | 'reference' | 'other'>

export type PdfDictionary = Kind<'dictionary'>

export type PdfArray = Kind<'array'>

export type PdfStream = Kind<'stream'>

/**
 * A reference to an object that stands by itself. The same reference is the same value, so that it
 * may be compared and be the key of a map.
 */
export type PdfReference = Kind<'reference'>

export type PdfDocument = Kind<'document'>

/**
 * What new objects are made of: plain text becomes a name, lists become arrays, records become
 * dictionaries without their undefined entries.
 */
export type Literal = PdfObject | string | number | boolean | readonly Literal[] | LiteralRecord

export type LiteralRecord = { readonly [key: string]: Literal | undefined }
