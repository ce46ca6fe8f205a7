import { type Document, isScalar, visit } from 'yaml'
import type { Problem } from '../model/problem.ts'
import { placeAt, problemAt, type SourceFile } from './source-file.ts'
import { inQuotes, keyBefore, quoted } from './yaml-faults/fault.ts'

/** A text in curly quotes; one that begins with a digit is a quantity, which says so itself. */
const curly = /^[“”„‘’](?!\d)[^“”„]*[“”„‘’]$/

/** A remark that begins without a space behind its mark is more likely the end of a text: `Gate #2`. */
const cutting = /^[^\s#!-]/

/**
 * What YAML reads without a word otherwise than it was meant: a text that ends before ` #2`, and
 * curly quotes, which are printed. Such a file is read all the same.
 */
export function silentSlips(file: SourceFile, doc: Document): Problem[] {
  const found: Problem[] = []
  const warn = (at: number, length: number, message: string, hint: string): void => {
    found.push(
      problemAt(file, placeAt(file, at, length), 'yaml/syntax', message, {
        hint,
        severity: 'warning',
      }),
    )
  }
  visit(doc, {
    Scalar(key, node) {
      const [from, to] = node.range ?? [0, 0]
      const remark = node.comment
      if (isScalar(node) && node.type === 'PLAIN' && key !== 'key' && typeof remark === 'string') {
        const at = file.text.indexOf('#', to)
        const between = file.text.slice(to, at)
        if (cutting.test(remark) && at !== -1 && !between.includes('\n'))
          warn(
            at,
            remark.length + 1,
            'the text ends before this #, and the rest is taken as a remark',
            `if it belongs to the text, ${inQuotes(file.text.slice(from, at + 1 + remark.length).trimEnd(), keyBefore(file.text, from))}; else put a space behind #`,
          )
      }
      if (typeof node.value === 'string' && node.type === 'PLAIN' && curly.test(node.value.trim()))
        warn(
          from,
          to - from,
          'the curly quotes round this text will be printed',
          `leave them out, or type straight ones: ${quoted(node.value.trim().slice(1, -1).trim())}`,
        )
    },
  })
  return found
}
