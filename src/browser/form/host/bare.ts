import { button, element } from '../../element.ts'
import type { Host, Work } from '../contract.ts'

/** The file as it stands, to be written in by hand: no questions yet. */
export async function showBare(host: Host, work: Work, root: HTMLElement): Promise<void> {
  const { name, files, draft } = await host.open()
  const text = element('textarea')
  const said = element('p')
  text.value = draft ?? files.get('facility.yaml') ?? ''
  text.addEventListener('input', () => host.keep(text.value))
  const save = button('Save', async () => {
    const saved = await host.save(text.value)
    const { problems } = work(new Map([...files, ['facility.yaml', text.value]]))
    said.textContent = `${saved.kind === 'failed' ? saved.why : saved.kind}, ${problems.length}`
  })
  const make = button('Make', () =>
    host.make(new Map([...files, ['facility.yaml', text.value]]), (step) => {
      said.textContent = JSON.stringify(step)
    }),
  )
  root.replaceChildren(element('h1', name), text, save, make, said)
}
