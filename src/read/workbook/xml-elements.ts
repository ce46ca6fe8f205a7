import { strFromU8 } from 'fflate'
import { SaxesParser } from 'saxes'

/** What is told of a part of a workbook while it is read. */
export type Told = {
  readonly open?: (name: string, attributes: Readonly<Record<string, string>>) => void
  readonly text?: (text: string) => void
  readonly close?: (name: string) => void
}

/** An XML part that cannot be read, or that says what entities mean, which no workbook does. */
export type XmlStop = { readonly xml: 'broken' | 'entities' }
export const isXmlStop = (thrown: unknown): thrown is XmlStop =>
  typeof thrown === 'object' && thrown !== null && 'xml' in thrown

/** A name without the prefix of its namespace, which programs choose as they like. */
const local = (name: string): string => name.slice(name.indexOf(':') + 1)

/**
 * Reads an XML part element by element.
 * @throws XmlStop
 */
export function readXml(bytes: Uint8Array, told: Told): void {
  const parser = new SaxesParser({ position: false })
  const halt = (xml: XmlStop['xml']): never => {
    throw { xml } satisfies XmlStop
  }
  parser.on('error', () => halt('broken'))
  parser.on('doctype', () => halt('entities'))
  parser.on('opentag', ({ name, attributes }) =>
    told.open?.(local(name), attributes as Readonly<Record<string, string>>),
  )
  parser.on('text', (text) => told.text?.(text))
  parser.on('closetag', ({ name }) => told.close?.(local(name)))
  parser.write(strFromU8(bytes)).close()
}
