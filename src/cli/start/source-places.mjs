// Where something of a bundle stands in its sources: worked out only when somebody looks, since a
// map of all sources takes longer to read than most commands to run.
import { readFileSync } from 'node:fs'
import { SourceMap } from 'node:module'
import path from 'node:path'

/** Lets errors of one script name the files and lines of its sources. */
export function nameSources(script) {
  let map
  const read = () => {
    map ??= new SourceMap(JSON.parse(readFileSync(`${script}.map`, 'utf8')))
    return map
  }
  const shown = (frame) => {
    const [line, column] = [frame.getLineNumber(), frame.getColumnNumber()]
    if (frame.getFileName() !== script || line === null || column === null) return String(frame)
    const { originalSource, originalLine, originalColumn } = read().findEntry(line - 1, column - 1)
    if (originalSource === undefined) return String(frame)
    const source = path.resolve(path.dirname(script), originalSource)
    const place = `${source}:${originalLine + 1}:${originalColumn + 1}`
    const name = frame.getFunctionName()
    return name === null ? place : `${name} (${place})`
  }
  Error.prepareStackTrace = (error, frames) => {
    try {
      return [String(error), ...frames.map((frame) => `    at ${shown(frame)}`)].join('\n')
    } catch {
      return [String(error), ...frames.map((frame) => `    at ${frame}`)].join('\n')
    }
  }
}
