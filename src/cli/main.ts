import { Command, CommanderError } from 'commander'
import { templateFault } from '../render/text/template-fault.ts'
import type { BuildOptions } from './build.ts'
import { exitHelp, severalHelp } from './exit-help.ts'
import type { FormOptions } from './form/form.ts'
import { type ExitCode, exit, type Io, processIo } from './io.ts'
import { keepTexts } from './kept/kept-texts.ts'
import type { MakerOptions } from './maker.ts'
import type { PreviewOptions } from './preview/preview.ts'
import { problemsText } from './problem-text.ts'
import { userFault } from './user-fault.ts'
import type { WorkbookOptions } from './workbook/workbook.ts'

export { startedFrom } from './kept/program-id.ts'

/** How a facility is chosen, and what other inputs do. */
const explainExamples = `
Examples:
  npm run explain -- content/facilities/ostmere harrow.time speed="4 mph"
                              Ostmere's harrow at another speed
  npm run explain -- --facility content/facilities/ostmere W-20
                              the same facility, named by option
  npm run explain -- --all heat temperature="95 °F" humidity="40 %"
                              a calculation with all inputs of your own
`

const facilityHelp = 'facility folder (holds facility.yaml); the demo fair if left out'

/**
 * Sets up all commands, each loaded only when it runs; `done` receives the exit code of the one
 * that ran.
 */
function program(io: Io, done: (code: ExitCode) => void): Command {
  const p = new Command('ovalkeep')
    .description(
      'Makes the manual of one harness-racing oval from the facts of its facility: website, binder, posted sheets, figures.',
    )
    .configureOutput({ writeOut: (s) => io.out(s.trimEnd()), writeErr: (s) => io.err(s.trimEnd()) })
    .showSuggestionAfterError()
    .exitOverride()
    .addHelpText('after', exitHelp(0, 1, 2, 3, 4, 5, 70))
  p.command('build')
    .description('make the manual and write it to dist/<facility>/; with several folders, of each')
    .argument('[folders...]', `${facilityHelp}; several, or fairs/*, by one command`)
    .option('--quiet', 'say nothing but errors')
    .option(
      '--date <date>',
      'date printed in the manual, such as 2027-06-14 (default: as-of of the facility file, else today)',
    )
    .option('--into <folder>', 'write below this folder instead of dist/')
    .option(
      '--need-pdfs',
      'write nothing where PDFs cannot be made; else those of the last build stay, marked as old',
    )
    .option(
      '--part <k/n>',
      'of several folders only one part, such as 3/8, the same on every machine: see docs/many-fairs.md',
    )
    .addHelpText('after', exitHelp(0, 1, 2, 3, 5, 70))
    .addHelpText('after', severalHelp)
    .action(async (named: string[], options: BuildOptions) =>
      done(await (await import('./build.ts')).build(named, options, io)),
    )
  p.command('check')
    .description('check everything and print what was found; writes nothing')
    .argument('[folder]', facilityHelp)
    .addHelpText('after', exitHelp(0, 1, 2, 70))
    .action(async (folder: string | undefined) =>
      done(await (await import('./check.ts')).check(folder, io)),
    )
  p.command('explain')
    .description('print the working of a figure, also with other inputs; without one, list all')
    .argument(
      '[figure]',
      'such as grade.time, grade, or W-20; before it a facility folder, if not the demo; with --all the name of any calculation',
    )
    .argument(
      '[inputs...]',
      'inputs to work it with, such as speed="4 mph"; the rest stay as the facility has them',
    )
    .option('--facility <folder>', facilityHelp)
    .option('--all', 'calculations for inputs of your own, also those of no facility')
    .option('--json', 'print the same entry as in figures.json')
    .addHelpText('after', explainExamples)
    .addHelpText('after', exitHelp(0, 1, 2, 4, 70))
    .action(
      async (
        figure: string | undefined,
        inputs: string[],
        options: { facility?: string; json?: boolean; all?: boolean },
      ) => done(await (await import('./explain/explain.ts')).explain(figure, inputs, options, io)),
    )
  p.command('preview')
    .description('show the site on this computer and follow every change')
    .argument('[folder]', facilityHelp)
    .option('--port <number>', 'port on the loopback address; 0: one that is free', '0')
    .option('--no-open', 'only print the address; do not show it in the browser')
    .addHelpText('after', exitHelp(0, 2, 70))
    .action(async (folder: string | undefined, options: PreviewOptions) =>
      done(await (await import('./preview/preview.ts')).preview(folder, options, io)),
    )
  addMakers(p, io, done)
  return p
}

/** Commands that make files to write in. */
function addMakers(p: Command, io: Io, done: (code: ExitCode) => void): void {
  p.command('new')
    .description('make a facility folder whose file explains every entry; asks for name and size')
    .argument('<folder>', 'folder to make; a facility.yaml that is there already is left alone')
    .addHelpText('after', exitHelp(0, 2, 5, 70))
    .action(async (folder: string) =>
      done(await (await import('./new-facility.ts')).newFacility(folder, io)),
    )
  p.command('form')
    .description('show a page on this computer on which the facility file is filled in')
    .argument(
      '[folder]',
      'facility folder, made on the first saving if it is not there; the page offers some if left out',
    )
    .option('--port <number>', 'port on the loopback address; 0: one that is free', '0')
    .option('--no-open', 'only print the address; do not show it in the browser')
    .addHelpText('after', exitHelp(0, 2, 5, 70))
    .action(async (folder: string | undefined, options: FormOptions) =>
      done(await (await import('./form/form.ts')).form(folder, options, io)),
    )
  p.command('workbook')
    .description('make the workbook to fill in; with a file, take it in: a workbook or a table')
    .argument('[folder]', 'facility folder; it need not be there yet')
    .argument('[file]', 'workbook (.xlsx) or table (.csv) to take in; shows what it says first')
    .option('--yes', 'enter what was read without asking')
    .option('--units <system>', 'us or metric: of the examples in a workbook for a new facility')
    .addHelpText('after', exitHelp(0, 1, 2, 5, 70))
    .action(
      async (folder: string | undefined, file: string | undefined, options: WorkbookOptions) =>
        done(await (await import('./workbook/workbook.ts')).workbook(folder, file, options, io)),
    )
  p.command('maker')
    .description(
      'write maker.html, a page that makes manuals in any browser with nothing installed',
    )
    .option('--into <folder>', 'write into this folder instead of dist/')
    .addHelpText('after', exitHelp(0, 2, 5, 70))
    .action(async (options: MakerOptions) =>
      done(await (await import('./maker.ts')).maker(options, io)),
    )
  p.command('schemas')
    .description('write JSON Schemas for editors: those of the library, or that of a facility')
    .argument('[folder]', 'facility folder into which its schema is written')
    .addHelpText('after', exitHelp(0, 2, 5, 70))
    .action(async (folder: string | undefined) =>
      done(await (await import('./schemas.ts')).schemas(folder, io)),
    )
}

/** Runs the command line; returns the exit code. */
export async function main(args: readonly string[], io: Io = processIo()): Promise<ExitCode> {
  // Started by a build of many facilities, which talks to it; nobody types this.
  if (args[0] === 'hand' && process.send) return (await import('./many/hand.ts')).lendHand(io)
  let code: ExitCode = exit.fine
  try {
    await program(io, (c) => {
      code = c
    }).parseAsync([...args], { from: 'user' })
    return code
  } catch (error) {
    const outside = userFault(error)
    if (outside !== undefined) {
      io.err(outside)
      return exit.unwritable
    }
    const ofTemplate = templateFault(error)
    if (ofTemplate) {
      io.err(problemsText([ofTemplate], (file) => file, io.colors))
      return exit.faults
    }
    if (error instanceof CommanderError) return error.exitCode === 0 ? exit.fine : exit.usage
    io.err(error instanceof Error ? (error.stack ?? error.message) : String(error))
    io.err('This is a fault of the program itself; please report it with the lines above.')
    return exit.bug
  } finally {
    keepTexts()
  }
}
