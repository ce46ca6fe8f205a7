import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { tagOf } from '../../../src/cli/form/facility-folder.ts'
import { servedForm } from './support/served.ts'

let form: Awaited<ReturnType<typeof servedForm>>
beforeEach(async () => {
  form = await servedForm()
})
afterEach(() => form.close())

describe('the server of the form without a folder', () => {
  beforeEach(async () => {
    await mkdir(path.join(form.root, 'home', 'their-fair'), { recursive: true })
    await writeFile(path.join(form.root, 'home', 'their-fair', 'facility.yaml'), 'name: Theirs\n')
    await mkdir(path.join(form.root, 'home', 'photos'))
    await form.restart(undefined)
  })

  const choose = (folder: unknown) =>
    form.asPage('/choice', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ folder }),
    })

  it('offers the folders that hold a facility file, and opens no others', async () => {
    expect(JSON.parse((await form.asPage('/state')).body)).toEqual({
      folders: [{ name: 'their-fair', where: path.join(form.root, 'home', 'their-fair') }],
    })
    for (const wrong of [1, -1, 0.5, '../our-fair', null])
      expect([400, 404]).toContain((await choose(wrong)).status)
    expect(JSON.parse((await choose(0)).body).open).toMatchObject({
      name: 'their-fair',
      files: { 'facility.yaml': 'name: Theirs\n' },
    })
    expect((await choose('new')).status).toBe(404)
  })

  it('makes the folder of a new fair once it has a name, beside one of the same name', async () => {
    const { open } = JSON.parse((await choose('new')).body)
    expect(open).toMatchObject({
      name: '',
      tags: { 'facility.yaml': 'none', 'depths.csv': 'none' },
    })
    // The schema will lie beside the file, and editors are led to it.
    expect(open.head).toMatch(/^# yaml-language-server: \$schema=\.\/facility\.schema\.json\n$/)
    expect(open.files).toEqual({ 'facility.yaml': '' })
    const seen = { 'if-match': '"none"' }
    const nameless = await form.save('units: us\n', seen)
    expect(nameless.status).toBe(409)
    expect(JSON.parse(nameless.body).reason).toBe('no-name')
    expect((await form.save('name: Their Fair\n', seen)).status).toBe(200)
    const folderOf = path.join(form.root, 'home', 'their-fair-2')
    expect((await readdir(folderOf)).sort()).toEqual(['facility.schema.json', 'facility.yaml'])
    const again = { 'if-match': `"${tagOf('name: Their Fair\n')}"` }
    expect((await form.save('name: Their Other Fair\n', again)).status).toBe(200)
    expect(await readFile(path.join(folderOf, 'facility.yaml'), 'utf8')).toBe(
      'name: Their Other Fair\n',
    )
  })
})
