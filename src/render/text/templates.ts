import Handlebars from 'handlebars'
import { rememberOf } from '../../model/remembered.ts'
import type { SourceFile } from '../../read/source-file.ts'
import { blaming } from './template-fault.ts'

/**
 * Templates by name (`binder/book`, `partials/caution`), and style sheets by name (`site`,
 * `binder`, `sheet`).
 */
export type TemplateTexts = Readonly<Record<string, string>>

/** The same as they are written, or compiled before for a page that may make no code of text. */
export type TemplateSet = Readonly<Record<string, string | TemplateSpecification>>

/** Unknown names and missing values are errors. */
const templateOptions: PrecompileOptions = {
  strict: true,
  knownHelpersOnly: true,
  knownHelpers: { join: true, eq: true },
}

export type Templates = { readonly render: (name: string, data: object) => string }

type Node = ConstructorParameters<typeof Handlebars.Exception>[1]

/** What a helper is told beside its arguments: where it stands in its template. */
type Told = Handlebars.HelperOptions & { readonly loc?: NonNullable<Node>['loc'] }

/** @throws Handlebars.Exception with the place where something else is handed on than a list. */
function listOf(value: unknown, { loc }: Told): readonly unknown[] {
  if (Array.isArray(value)) return value
  throw new Handlebars.Exception('"join" is not given a list', { type: 'list', loc } as Node)
}

/** A template as a program. */
export const precompiled = rememberOf('templates', (text) =>
  String(Handlebars.precompile(text, templateOptions)),
)

/** A template as problems name it. */
export const templateFile = (name: string, text: string): SourceFile => ({
  path: `templates/${name}.hbs`,
  text,
})

const guarded = { allowProtoPropertiesByDefault: false, allowProtoMethodsByDefault: false } as const

const compiled = new WeakMap<TemplateSet, Templates>()

/**
 * Compiles all templates once; unknown names and missing values are errors that `templateFault`
 * knows with their place, prototypes cannot be reached.
 */
export function createTemplates(texts: TemplateSet): Templates {
  const before = compiled.get(texts)
  if (before) return before
  const hb = Handlebars.create()
  const compile = (template: string | TemplateSpecification): HandlebarsTemplateDelegate =>
    hb.template(
      typeof template === 'string'
        ? (new Function(`return ${precompiled(template)}`)() as TemplateSpecification)
        : template,
    )
  const ready = new Map<string, HandlebarsTemplateDelegate>()
  const fillIn = (
    name: string,
    text: string | TemplateSpecification,
    data: object,
    given: Handlebars.RuntimeOptions,
  ) =>
    blaming(templateFile(name, typeof text === 'string' ? text : ''), () => {
      const template = ready.get(name) ?? compile(text)
      ready.set(name, template)
      return template(data, given)
    })
  hb.registerHelper('join', (list: unknown, between: unknown, told: Told) =>
    listOf(list, told).join(String(between)),
  )
  hb.registerHelper('eq', (a: unknown, b: unknown) => a === b)
  for (const [name, text] of Object.entries(texts))
    if (name.startsWith('partials/'))
      hb.registerPartial(
        name.slice('partials/'.length),
        (data: object, given: Handlebars.RuntimeOptions = {}) => fillIn(name, text, data, given),
      )
  const render: Templates['render'] = (name, data) => {
    const text = texts[name]
    if (text === undefined) throw new RangeError(`there is no template ${name}`)
    return fillIn(name, text, data, guarded)
  }
  const result = { render }
  compiled.set(texts, result)
  return result
}
