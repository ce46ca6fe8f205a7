// Runs a script with the code that was compiled of it before.
import { createHash } from 'node:crypto'
import { readFileSync, renameSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import path from 'node:path'
import vm from 'node:vm'

const digest = (code) => createHash('sha256').update(code).digest()
const digestLength = 32

/**
 * Compiled code as it was written down, with its hash before it: V8 itself takes what is damaged
 * without looking.
 */
function readCode(file) {
  try {
    const bytes = readFileSync(file)
    const code = bytes.subarray(digestLength)
    return digest(code).equals(bytes.subarray(0, digestLength)) ? code : undefined
  } catch {
    return undefined
  }
}

/** Written whole or not at all: another process may read at the same moment. */
function writeCode(file, code) {
  const own = `${file}.${process.pid}`
  try {
    writeFileSync(own, Buffer.concat([digest(code), code]))
    renameSync(own, file)
  } catch {
    // The next start compiles it again.
  }
}

/**
 * Runs a script as a CommonJS module.
 * @param use What it is run for: each use compiles other parts of it, and is kept by itself.
 * @returns its exports, and what keeps its code as it is compiled by now.
 */
export function runScript(file, use) {
  const source = readFileSync(file, 'utf8')
  const codeFile = path.join(path.dirname(file), `${use}-${process.versions.v8}.code`)
  const code = readCode(codeFile)
  const script = new vm.Script(
    `(function (exports, require, module, __filename, __dirname) {${source}\n})`,
    {
      filename: file,
      ...(code && { cachedData: code }),
    },
  )
  const module = { exports: {} }
  const run = script.runInThisContext()
  run.call(module.exports, module.exports, createRequire(file), module, file, path.dirname(file))
  return {
    exports: module.exports,
    keep: () => {
      if (!code || script.cachedDataRejected) writeCode(codeFile, script.createCachedData())
    },
  }
}
