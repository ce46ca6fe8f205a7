import { projectFolders } from '../../src/cli/folders.ts'
import { processIo } from '../../src/cli/io.ts'
import { makeManual } from '../../src/cli/make-manual.ts'
import { findBrowser } from '../../src/print/browser/find-browser.ts'
import { keepBrowser } from '../../src/print/browser/keep-browser.ts'
import { disk } from '../../src/write/disk.ts'

// A build as a process of its own, to be killed: says on its output which stage begins. It kills itself
// at the n-th file operation of the write, before or after it, where it is told so; how many there were is
// told at the end.

const [facility = '', content = '', dist = '', date = '', at = '0', when = 'before'] =
  process.argv.slice(2)

let count = 0
const kill = (): void => {
  process.kill(process.pid, 'SIGKILL')
}
for (const [name, operation] of Object.entries(disk)) {
  const work = operation as (...args: readonly unknown[]) => unknown
  Object.assign(disk, {
    [name]: (...args: readonly unknown[]): unknown => {
      const isIt = ++count === Number(at)
      if (isIt && when === 'before') kill()
      const done = work(...args)
      if (isIt && done instanceof Promise) void done.finally(kill)
      else if (isIt) kill()
      return done
    },
  })
}

const io = processIo()
const browser = keepBrowser(() => findBrowser(io.env))
await makeManual({
  facility,
  date,
  today: date,
  quiet: true,
  needPdfs: false,
  folders: { ...projectFolders(dist), content },
  progress: {
    stage: (name, work) => {
      console.log(name)
      return work(() => undefined)
    },
  },
  browser,
  io,
})
await browser.close()
console.log(`operations ${count}`)
