import { figureIds, isFigureId } from '../../compute/uses/ids.ts'
import { useIdOf } from '../../compute/uses/use.ts'
import { capabilityOf, factPaths, isFactPath } from '../../model/fact-spec.ts'
import { isEstimated } from '../../model/figure.ts'
import type { NamedQuantity } from '../../model/manual/named-quantity.ts'
import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import { formatQuantity } from '../../model/quantity/format-quantity.ts'
import { factWords } from '../../validate/fact-words.ts'
import type { Words } from '../../validate/schemas/words.ts'
import type { ComposeContext } from '../context.ts'
import { composeParts } from '../parts.ts'

/** A fact in words, and for a machine's field which work it is for. */
export function measureLabel(path: string, library: ComposeContext['library']): string {
  const label = factWords(library).label(path)
  const capability = capabilityOf(path)
  return capability ? `${label}, ${library.words.capabilities[capability]}` : label
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

/** In place of a number: that there is none, and why. */
const without = (
  reason: string,
  words: Words,
): Pick<NamedQuantity, 'number' | 'unit' | 'text' | 'si' | 'ok' | 'reason'> => ({
  number: words.figure.notKnown,
  unit: '',
  text: words.figure.notKnown,
  si: undefined,
  ok: false,
  reason,
})

type Given = Pick<ComposeContext, 'engine' | 'locale' | 'library'>

function ofFigure(name: string, { engine, library }: Given): NamedQuantity | undefined {
  const figure = isFigureId(name) ? engine.figure(name) : undefined
  if (!figure) return undefined
  const shared = {
    name,
    label: figure.label,
    estimate: figure.estimate,
    toMeasure: figure.toMeasure.map((path) => measureLabel(path, library)),
    worksheet: { number: figure.worksheet, id: useIdOf(name) },
  }
  if (!figure.value.ok)
    return { ...shared, ...without(figure.value.reason, library.words), estimate: false }
  const { text, si } = figure.value
  return { ...shared, ...large(figure.value), text, si, ok: true, reason: '' }
}

function ofFact(name: string, { engine, locale }: Given): NamedQuantity | undefined {
  const fact = isFactPath(name) ? engine.facts.get(name) : undefined
  if (!fact) return undefined
  const estimate = isEstimated(fact.provenance)
  return {
    name,
    label: fact.label,
    ...large(formatQuantity(fact.si, fact.kind, locale, 'nearest')),
    text: formatExact(fact.si, fact.kind, locale, 'prose'),
    si: fact.si,
    ok: true,
    reason: '',
    estimate,
    toMeasure: estimate ? [fact.label] : [],
    worksheet: undefined,
  }
}

/** What there is no machine for, or what the facility file does not say. */
function ofNothing(name: string, { library }: Given): NamedQuantity {
  const label = isFactPath(name) ? factWords(library).label(name) : undefined
  const { words } = library
  const reason =
    label === undefined ? words.figure.noMachine : fill(words.figure.notInFile, { label })
  return {
    name,
    label: label ?? name,
    ...without(reason, words),
    estimate: false,
    toMeasure: [],
    worksheet: undefined,
  }
}

/**
 * Every figure and fact as text can show it, by its name, worked out when it is first asked for: what
 * does not exist here says so instead of giving a number.
 */
export function composeQuantities(given: Given): Manual['quantities'] {
  const quantity = (name: string) => (): NamedQuantity =>
    ofFigure(name, given) ?? ofFact(name, given) ?? ofNothing(name, given)
  const names = [...figureIds, ...factPaths].sort()
  return composeParts<Manual['quantities'], undefined>(
    Object.fromEntries(names.map((name) => [name, quantity(name)])),
    () => undefined,
  )
}
