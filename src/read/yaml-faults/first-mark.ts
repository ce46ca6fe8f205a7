import { type Document, isAlias, isNode, visit } from 'yaml'
import { inQuotes, keyBefore } from './fault.ts'

/** Where an anchor, alias or tag stands, and what to type instead. */
type Mark = { readonly at: number; readonly length: number; readonly hint: string }

/**
 * The first anchor, alias or tag of a document. They belong to YAML and not to the text behind them,
 * so that `name: &the fair` would be printed as "fair".
 */
export function firstMark(text: string, doc: Document): Mark | undefined {
  let found: Mark | undefined
  visit(doc, {
    Node(_, node) {
      if (!isNode(node) || !node.range) return undefined
      if (isAlias(node)) {
        const [at, end] = node.range
        found = { at, length: end - at, hint: 'write the value out' }
        return visit.BREAK
      }
      const anchor = 'anchor' in node ? node.anchor : undefined
      const sign = anchor !== undefined ? '&' : node.tag?.startsWith('!') ? '!' : undefined
      if (sign === undefined) return undefined
      const start = text.lastIndexOf(sign, node.range[0])
      const at = start === -1 ? node.range[0] : start
      const line =
        text
          .slice(at)
          .split('\n')[0]
          ?.replace(/[,}\]].*$/, '')
          .trim() ?? ''
      found = {
        at,
        length: Math.max(1, node.range[0] - at),
        // A mark before a group or a list is no part of a text.
        hint: /^\S+\s+[{[]/.test(line)
          ? `delete ${line.split(/\s/)[0]}`
          : `if it belongs to the text, ${inQuotes(line, keyBefore(text, at))}`,
      }
      return visit.BREAK
    },
  })
  return found
}
