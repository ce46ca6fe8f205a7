import type { Engine } from '../compute/engine/engine.ts'
import { isFigureId } from '../compute/uses/ids.ts'
import { useIdOf } from '../compute/uses/use.ts'
import { capabilityOf, factSpec, isFactPath } from '../model/fact-spec.ts'
import type { NamedQuantity } from '../model/manual.ts'
import { formatExact } from '../model/quantity/format-exact.ts'
import { formatQuantity, type Locale } from '../model/quantity/format-quantity.ts'

/** A fact in words, and for a machine's field which work it is for. */
export function measureLabel(path: string, work: Readonly<Record<string, string>>): string {
  const label = factSpec(path)?.label ?? path
  const capability = capabilityOf(path)
  return capability ? `${label}, ${work[capability] ?? capability}` : label
}

/** Number and unit as they are set large; a degree sign belongs to its number. */
const large = ({
  number,
  unit,
}: {
  readonly number: string
  readonly unit: string
}): { number: string; unit: string } =>
  unit === '°' ? { number: `${number}°`, unit: '' } : { number, unit }

function ofFigure(
  name: string,
  engine: Engine,
  work: Readonly<Record<string, string>>,
): NamedQuantity | undefined {
  const figure = isFigureId(name) ? engine.figure(name) : undefined
  if (!figure) return undefined
  const shared = {
    name,
    label: figure.label,
    estimate: figure.estimate,
    toMeasure: figure.toMeasure.map((path) => measureLabel(path, work)),
    worksheet: { number: figure.worksheet, id: useIdOf(name) },
  }
  if (!figure.value.ok)
    return {
      ...shared,
      number: 'not known',
      unit: '',
      text: 'not known',
      ok: false,
      reason: figure.value.reason,
      estimate: false,
    }
  return { ...shared, ...large(figure.value), text: figure.value.text, ok: true, reason: '' }
}

function ofFact(name: string, engine: Engine, locale: Locale): NamedQuantity | undefined {
  const fact = isFactPath(name) ? engine.facts.get(name) : undefined
  if (!fact) return undefined
  const estimate = fact.provenance.kind === 'typical'
  return {
    name,
    label: fact.label,
    ...large(formatQuantity(fact.si, fact.kind, locale, 'nearest')),
    text: formatExact(fact.si, fact.kind, locale, 'prose'),
    ok: true,
    reason: '',
    estimate,
    toMeasure: estimate ? [fact.label] : [],
    worksheet: undefined,
  }
}

/**
 * A figure or fact as text can show it; what does not exist here says so instead of giving a
 * number.
 * @param work What each capability is called.
 */
export function namedQuantity(
  name: string,
  engine: Engine,
  locale: Locale,
  work: Readonly<Record<string, string>>,
): NamedQuantity {
  return (
    ofFigure(name, engine, work) ??
    ofFact(name, engine, locale) ?? {
      name,
      label: factSpec(name)?.label ?? name,
      number: 'not known',
      unit: '',
      text: 'not known',
      ok: false,
      reason: factSpec(name)
        ? `${factSpec(name)?.label} is not in the facility file`
        : 'nothing here can do this work',
      estimate: false,
      toMeasure: [],
      worksheet: undefined,
    }
  )
}
