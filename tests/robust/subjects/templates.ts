import { assembleManual } from '../../../src/cli/load/assemble-manual.ts'
import type { Manual } from '../../../src/model/manual.ts'
import { hasErrors, type Problem } from '../../../src/model/problem.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkPageTemplates } from '../../../src/render/site/check-pages.ts'
import { checkTemplates } from '../../../src/render/text/check-templates.ts'
import { templateFault } from '../../../src/render/text/template-fault.ts'
import type { TemplateTexts } from '../../../src/render/text/templates.ts'
import { checkFacility } from '../../../src/validate/check-facility.ts'
import { type Ground, today } from '../ground.ts'
import { faultsOfProblems } from '../judge/problems.ts'
import { slipIn } from '../judge/slips.ts'
import { allOutputs } from '../make-outputs.ts'
import { mutate } from '../mutations/mutate.ts'
import type { Subject } from './subject.ts'

const manuals = new WeakMap<Ground, Manual>()

/** A small manual, made once. */
function manualOf(ground: Ground): Manual {
  const known = manuals.get(ground)
  if (known) return known
  const { facilities, small, sources } = ground
  const text = facilities.brambleford.get('facility.yaml')?.toString('utf8') ?? ''
  const tree = readYaml({ path: 'facility.yaml', text }).value
  const { value: facility, problems = [] } = tree ? checkFacility(tree) : {}
  const library = { value: small.library, problems: small.problems }
  const { manual } = assembleManual({ facility, date: today, problems }, library, sources)
  if (!manual) throw new Error('the demo has faults')
  manuals.set(ground, manual)
  return manual
}

/** A template, held against the words and then filled. */
export const templates: Subject = async (ground, chance) => {
  const { assets, small } = ground
  const { words } = small.library
  // Read from their files, and not compiled before.
  const texts = assets.templates as TemplateTexts
  const name = chance.oneOf(Object.keys(texts))
  const { file, by } = mutate(Buffer.from(texts[name] ?? ''), 'template', chance)
  const text = file.toString('utf8')
  const changed = { ...texts, [name]: text }
  const seen = { file: `templates/${name}.hbs`, by }
  const textOf = (path: string): string | undefined => (path === seen.file ? text : undefined)
  const problems = [...checkTemplates(changed, words), ...checkPageTemplates(changed)]
  const said = (list: readonly Problem[]) => faultsOfProblems(list, textOf)
  if (hasErrors(problems)) return { ...seen, ending: 'refused', faults: said(problems) }
  try {
    const outputs = allOutputs(manualOf(ground), { ...assets, templates: changed, words })
    const slips = outputs.flatMap(({ path, text: page }) => {
      const slip = path.endsWith('.html')
        ? slipIn(page.replace(/<(style|script)\b[\s\S]*?<\/\1>/g, ''))
        : undefined
      return slip === undefined ? [] : [`${path}: "${slip}"`]
    })
    return { ...seen, ending: 'made', faults: [...said(problems), ...slips.slice(0, 1)] }
  } catch (error) {
    const fault = templateFault(error)
    if (!fault) throw error
    return { ...seen, ending: 'refused', faults: said([fault]) }
  }
}
