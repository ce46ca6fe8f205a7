import type { Engine } from '../compute/engine.ts'
import { useIdOf } from '../compute/engine.ts'
import { factSpec } from '../model/fact-spec.ts'
import type { NamedQuantity } from '../model/manual.ts'
import { formatQuantity, type Locale } from '../model/quantity/format-quantity.ts'

const measureLabels = (paths: readonly string[]): readonly string[] => paths.map((path) => factSpec(path)?.label ?? path)

function ofFigure(name: string, engine: Engine): NamedQuantity | undefined {
  const figure = engine.figure(name)
  if (!figure) return undefined
  const shared = { name, label: figure.label, estimate: figure.estimate, toMeasure: measureLabels(figure.toMeasure), worksheet: { number: figure.worksheet, id: useIdOf(name) } }
  if (!figure.value.ok) return { ...shared, number: 'not known', unit: '', text: 'not known', ok: false, reason: figure.value.reason, estimate: false }
  const { number, unit, text } = figure.value
  return { ...shared, number, unit, text, ok: true, reason: '' }
}

function ofFact(name: string, engine: Engine, locale: Locale): NamedQuantity | undefined {
  const fact = engine.facts.get(name)
  if (!fact) return undefined
  const { number, unit } = formatQuantity(fact.si, fact.kind, locale, 'nearest')
  const estimate = fact.provenance.kind === 'typical'
  return { name, label: fact.label, number, unit, text: fact.text, ok: true, reason: '', estimate, toMeasure: estimate ? [fact.label] : [], worksheet: undefined }
}

/** A figure or fact as text can show it; what does not exist here says so instead of giving a number. */
export function namedQuantity(name: string, engine: Engine, locale: Locale): NamedQuantity {
  return (
    ofFigure(name, engine) ??
    ofFact(name, engine, locale) ?? {
      name,
      label: factSpec(name)?.label ?? name,
      number: 'not known',
      unit: '',
      text: 'not known',
      ok: false,
      reason: factSpec(name) ? `${factSpec(name)?.label} is not in the facility file` : 'nothing here can do this work',
      estimate: false,
      toMeasure: [],
      worksheet: undefined,
    }
  )
}
