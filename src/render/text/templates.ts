import Handlebars from 'handlebars'
import { rememberOf } from './remembered.ts'

/**
 * Templates by name (`binder/book`, `partials/caution`), and style sheets by name (`site`,
 * `binder`, `sheet`).
 */
export type TemplateTexts = Readonly<Record<string, string>>

export type Templates = { readonly render: (name: string, data: object) => string }

const given = (value: unknown, options: Handlebars.HelperOptions): unknown => {
  if (value === undefined)
    throw new RangeError(
      `a template uses something that it is not given (line ${String((options as unknown as { loc?: { start: { line: number } } }).loc?.start.line)})`,
    )
  return value
}

const options: CompileOptions = {
  strict: true,
  knownHelpersOnly: true,
  knownHelpers: { join: true, eq: true },
}

/** A template as a program. */
const precompiled = rememberOf('templates', (text) => String(Handlebars.precompile(text, options)))

const compiled = new WeakMap<TemplateTexts, Templates>()

/**
 * Compiles all templates once; unknown names and missing values are errors, prototypes cannot be
 * reached.
 */
export function createTemplates(texts: TemplateTexts): Templates {
  const known = compiled.get(texts)
  if (known) return known
  const hb = Handlebars.create()
  const compile = (text: string): HandlebarsTemplateDelegate =>
    hb.template(new Function(`return ${precompiled(text)}`)() as TemplateSpecification)
  hb.registerHelper('join', (list: unknown, between: unknown, o: Handlebars.HelperOptions) =>
    (given(list, o) as readonly string[]).join(String(between)),
  )
  hb.registerHelper('eq', (a: unknown, b: unknown) => a === b)
  for (const [name, text] of Object.entries(texts))
    if (name.startsWith('partials/'))
      hb.registerPartial(name.slice('partials/'.length), compile(text))
  const ready = new Map<string, HandlebarsTemplateDelegate>()
  const render: Templates['render'] = (name, data) => {
    let template = ready.get(name)
    if (!template) {
      const text = texts[name]
      if (text === undefined) throw new RangeError(`there is no template ${name}`)
      template = compile(text)
      ready.set(name, template)
    }
    return template(data, {
      allowProtoPropertiesByDefault: false,
      allowProtoMethodsByDefault: false,
    })
  }
  const result = { render }
  compiled.set(texts, result)
  return result
}
