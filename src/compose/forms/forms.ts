import type { FormBox, ManualForm } from '../../model/manual/form.ts'
import type { Form } from '../../validate/schemas/forms.ts'
import { applies } from '../applies.ts'
import { type ComposeContext, itemsOf } from '../context.ts'
import { composeTable, type FormMachine } from './form-table.ts'

const places = (list: Form['boxes']): readonly FormBox[] =>
  list.map((b) => ({
    label: b.label,
    wide: b.wide,
    tall: b.tall ?? 1,
    choices: b.choices ?? [],
    keeps: b.keeps ?? ['words'],
  }))

const composeForm = (
  form: Form,
  context: ComposeContext,
  machine: FormMachine | undefined,
): ManualForm => ({
  id: machine ? `${form.id}-${machine.id}` : form.id,
  title: machine ? `${form.title}: ${machine.name}` : form.title,
  about: form.about,
  who: form.who,
  moment: form.moment,
  kept: form.kept,
  boxes: places(form.boxes),
  table: composeTable(form, context, machine),
  after: places(form.after ?? []),
  sign: form.sign,
  phone: form.phone,
})

/** The forms that this facility has a use for. */
export const composeForms = (context: ComposeContext): readonly ManualForm[] =>
  itemsOf(context.library.forms)
    .filter((f) => applies(f.when, context.here))
    .flatMap((form) =>
      form.each === 'machine'
        ? (context.facility.file.equipment ?? []).map((m) => composeForm(form, context, m))
        : [composeForm(form, context, undefined)],
    )
