import { valueAt } from '../../../edit/form/data.ts'
import { aboutQuestion, type Question } from '../../../edit/form/question.ts'
import { understandQuantity } from '../../../edit/form/typed-quantity.ts'
import { factSpec } from '../../../model/fact-spec.ts'
import { fill } from '../../../model/pattern.ts'
import { sieveNames } from '../../../model/sieves.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { button, classed, element } from '../../element.ts'
import { selectControl, textControl } from '../controls.ts'
import type { Sitting } from '../sitting.ts'
import type { Part } from './field.ts'

const labelled = (words: string, node: HTMLElement, id: string): HTMLElement => {
  const label = element('label', words)
  label.htmlFor = id
  return classed('div', 'field', label, node)
}

/** One sieve: what passes it, and a way to take it out. */
function row(sitting: Sitting, at: Path, name: string, passes: string): HTMLElement {
  const { list } = sitting.said.form.says
  const control = textControl(1)
  control.show(passes)
  const [input] = control.inputs
  const fault = classed('p', 'fault')
  const spec = factSpec('sieve.passing')
  const write = (): void => {
    if (!spec) return
    const found = understandQuantity(spec, control.read(), sitting.locale())
    if (found.value !== undefined)
      sitting.answer([{ path: [...at, name], value: found.value }], [...at, name].join('.'))
    fault.textContent = found.fault ?? ''
    fault.hidden = found.fault === undefined
  }
  input?.addEventListener('input', write)
  input?.addEventListener('change', () => {
    if (spec) control.show(understandQuantity(spec, control.read(), sitting.locale()).typed)
    sitting.settle()
  })
  const out = button(fill(list.sieveRemove, { sieve: name }), () => {
    sitting.answer([{ path: [...at, name], value: undefined }], '')
    sitting.reshape()
  })
  write()
  return classed('div', 'row', labelled(name, control.node, input?.id ?? ''), out, fault)
}

/** What passes each of several sieves. */
export function sharesOf(sitting: Sitting, question: Question, at: Path): Part {
  const { list, field } = sitting.said.form.says
  const found = (valueAt(sitting.draft().data, at) ?? {}) as Readonly<Record<string, unknown>>
  const sieve = selectControl(
    sieveNames.filter((name) => !(name in found)).map((name) => ({ value: name, said: name })),
    field.choose,
  )
  const share = textControl(1)
  const add = button(list.sieveAdd, () => {
    const spec = factSpec('sieve.passing')
    const typed = spec && understandQuantity(spec, share.read(), sitting.locale())
    if (sieve.read() === '' || typed?.value === undefined) {
      ;(sieve.read() === '' ? sieve : share).inputs[0]?.focus()
      return
    }
    sitting.answer([{ path: [...at, sieve.read()], value: typed.value }], '')
    sitting.reshape()
  })
  const legend = element('legend', aboutQuestion(question, sitting.locale().system).label)
  const node = classed(
    'fieldset',
    'field shares',
    legend,
    ...Object.entries(found).map(([name, passes]) => row(sitting, at, name, String(passes))),
    classed(
      'div',
      'row fresh',
      labelled(list.sieve, sieve.node, sieve.inputs[0]?.id ?? ''),
      labelled(list.share, share.node, share.inputs[0]?.id ?? ''),
      add,
    ),
  )
  node.dataset['at'] = at.join('.')
  return { node, refresh: () => undefined }
}
