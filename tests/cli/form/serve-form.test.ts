import { readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { tagOf } from '../../../src/cli/form/facility-folder.ts'
import { servedForm, text } from './support/served.ts'

let form: Awaited<ReturnType<typeof servedForm>>
beforeEach(async () => {
  form = await servedForm()
})
afterEach(() => form.close())

describe('the server of the form', () => {
  it('lets in who brings the key, once, and takes it out of the address', async () => {
    const { status, headers } = await form.ask(`/?key=${form.key}`)
    expect(status).toBe(303)
    expect(headers.location).toBe('/')
    expect(headers['set-cookie']).toEqual([`${form.cookie()}; HttpOnly; SameSite=Strict; Path=/`])
    const page = await form.asPage('/')
    expect(page).toMatchObject({ status: 200, body: 'the form' })
    expect(page.headers).toMatchObject({
      'content-security-policy': "default-src 'none'",
      'x-frame-options': 'DENY',
      'x-content-type-options': 'nosniff',
      'cache-control': 'no-store',
      'cross-origin-resource-policy': 'same-origin',
    })
    expect(page.headers['access-control-allow-origin']).toBeUndefined()
  })

  it('tells nobody else anything', async () => {
    for (const headers of [
      {},
      { cookie: `ovalkeep-form-${form.port()}=another` },
      { cookie: `ovalkeep-form-1=${form.key}` },
    ])
      for (const asked of ['/', '/state', '/?key=another', '/made/', '/facility.yaml'])
        expect(await form.ask(asked, { headers })).toMatchObject({ status: 403 })
  })

  it('answers nobody who calls it by another name, whatever is asked', async () => {
    for (const host of ['fair.example', `fair.example:${form.port()}`, '127.0.0.1', '[::1]'])
      for (const [method, asked] of [
        ['GET', '/'],
        ['GET', '/state'],
        ['GET', `/?key=${form.key}`],
        ['PUT', '/facility.yaml'],
      ])
        expect(
          await form.ask(asked ?? '', {
            method: method ?? '',
            headers: { host, cookie: form.cookie(), origin: `http://${host}` },
          }),
        ).toMatchObject({ status: 421 })
    expect(await form.onDisk()).toBe(text)
  })

  it('gives the texts of the folder and nothing else in it', async () => {
    const { open } = JSON.parse((await form.asPage('/state')).body)
    expect(open).toMatchObject({ name: 'our-fair', where: form.folder })
    expect(open.tags).toEqual({
      'facility.yaml': tagOf(text),
      'depths.csv': tagOf('depth (in)\n'),
      'levels.csv': 'none',
    })
    expect(open.files).toEqual({ 'facility.yaml': text, 'depths.csv': 'depth (in)\n' })
  })

  it('saves what is sent, to the byte', async () => {
    const next = '\ufeff# ours, again\r\nname: Füllhorn Fair\n'
    const { status, body } = await form.save(next)
    expect(status).toBe(200)
    expect(JSON.parse(body)).toEqual({ kind: 'saved', tag: tagOf(next) })
    expect(await form.onDisk()).toBe(next)
    // Nothing half written is left behind.
    expect((await readdir(form.folder)).sort()).toEqual([
      'depths.csv',
      'facility.yaml',
      'letter.docx',
    ])
  })

  it('never writes over what somebody else has written meanwhile', async () => {
    await writeFile(path.join(form.folder, 'facility.yaml'), 'name: theirs\n')
    const { status, body } = await form.save('name: mine\n')
    expect(status).toBe(412)
    expect(JSON.parse(body)).toMatchObject({ kind: 'changed', text: 'name: theirs\n' })
    expect(await form.onDisk()).toBe('name: theirs\n')
    // Of two at once one is told of the other.
    const seen = { 'if-match': `"${tagOf('name: theirs\n')}"` }
    const both = await Promise.all([form.save('name: a\n', seen), form.save('name: b\n', seen)])
    expect(both.map(({ status: code }) => code).sort()).toEqual([200, 412])
  })

  it.each([
    ['another page', { origin: 'http://127.0.0.1:1' }, 403],
    ['another host', { origin: 'https://fair.example' }, 403],
    ['a file', { origin: 'null' }, 403],
    ['another site', { 'sec-fetch-site': 'cross-site' }, 403],
    ['another port', { 'sec-fetch-site': 'same-site' }, 403],
    ['a plain form', { 'content-type': 'text/plain' }, 415],
    ['a form of a page', { 'content-type': 'application/x-www-form-urlencoded' }, 415],
  ])('lets %s write nothing', async (_, headers, status) => {
    expect((await form.save('name: mine\n', headers)).status).toBe(status)
    expect(await form.onDisk()).toBe(text)
  })

  it('wants to know what was seen last', async () => {
    const { status } = await form.asPage('/facility.yaml', {
      method: 'PUT',
      body: 'x',
      headers: { 'content-type': 'text/yaml' },
    })
    expect(status).toBe(428)
  })

  it.each([
    '/../facility.yaml',
    '/%2e%2e/facility.yaml',
    '/..%2ffacility.yaml',
    '/facility.yaml%00',
    '/facility.yaml/..',
    '/FACILITY.YAML',
    '/rail.csv',
    '//facility.yaml',
    '/depths.csv/../facility.yaml',
    '/procedures/depths.csv',
    '/..%2fdepths.csv',
    '/depths.csv%00',
    '/procedures/../facility.yaml',
  ])('writes nothing for %s', async (asked) => {
    const { status } = await form.save('name: mine\n', {}, asked)
    const isTheFile = new URL(asked, 'http://localhost').pathname === '/facility.yaml'
    expect(status).toBe(isTheFile ? 200 : status === 400 ? 400 : 404)
    if (!isTheFile) expect(await form.onDisk()).toBe(text)
    expect(await readFile(path.join(form.folder, 'depths.csv'), 'utf8')).toBe('depth (in)\n')
    expect((await readdir(form.root)).sort()).toEqual(['our-fair'])
  })

  it('saves a table of readings under its own name, and no other file', async () => {
    const table = 'station (ft),offset (ft),depth (in),date\n0,5,1 1/2,2027-05-15\n'
    const { status, body } = await form.saveTable(table)
    expect(status).toBe(200)
    expect(JSON.parse(body)).toEqual({ kind: 'saved', tag: tagOf(table) })
    expect(await form.inFolder('depths.csv')).toBe(table)
    expect(await form.onDisk()).toBe(text)
    expect((await readdir(form.folder)).sort()).toEqual([
      'depths.csv',
      'facility.yaml',
      'letter.docx',
    ])
  })

  it('guards tables as it guards the file', async () => {
    const none = { 'if-match': '"none"' }
    for (const [headers, status] of [
      [{ origin: 'null' }, 403],
      [{ origin: 'http://127.0.0.1:1' }, 403],
      [{ 'sec-fetch-site': 'same-site' }, 403],
      [{ 'content-type': 'text/yaml' }, 415],
      [{ 'content-type': 'text/plain' }, 415],
      [{ 'if-match': `"${tagOf('something else')}"` }, 412],
      [none, 412],
    ] as const)
      expect((await form.saveTable('mine\n', headers)).status).toBe(status)
    expect((await form.saveTable(Buffer.alloc(1024 * 1024 + 1, 'a'))).status).toBe(413)
    expect((await form.saveTable(Buffer.from([0xff, 0xfe, 0x00]))).status).toBe(400)
    const bare = { method: 'PUT', body: 'x', headers: { 'content-type': 'text/csv' } }
    expect((await form.asPage('/levels.csv', bare)).status).toBe(428)
    expect((await form.ask('/depths.csv', bare)).status).toBe(403)
    for (const other of ['/rail.csv', '/weather.csv', '/letter.docx', '/levels.csv.part'])
      expect((await form.saveTable('mine\n', none, other)).status).toBe(404)
    await form.restart(undefined)
    expect((await form.saveTable('mine\n')).status).toBe(409)
    expect(await form.inFolder('depths.csv')).toBe('depth (in)\n')
  })

  it('writes a table through no link that leads out of the folder', async () => {
    await writeFile(path.join(form.root, 'elsewhere.csv'), 'theirs\n')
    await symlink(path.join(form.root, 'elsewhere.csv'), path.join(form.folder, 'levels.csv'))
    const { status } = await form.saveTable('mine\n', { 'if-match': '"none"' }, '/levels.csv')
    expect(status).toBe(422)
    expect(await readFile(path.join(form.root, 'elsewhere.csv'), 'utf8')).toBe('theirs\n')
  })

  it('keeps the mark by which a spreadsheet knows the letters of a table', async () => {
    const marked = Buffer.from('\ufeffdepth (in)\n', 'utf8')
    const windows = Buffer.from([...Buffer.from('# f'), 0xfc, ...Buffer.from('r\ndepth (in)\n')])
    for (const [bytes, seen] of [
      [marked, 'depth (in)\n'],
      [windows, '# für\ndepth (in)\n'],
    ] as const) {
      await writeFile(path.join(form.folder, 'depths.csv'), bytes)
      const done = await form.saveTable('depth (mm)\n', { 'if-match': `"${tagOf(seen)}"` })
      expect(done.status).toBe(200)
      expect(await form.inFolder('depths.csv')).toBe('\ufeffdepth (mm)\n')
    }
  })

  it('takes no text that is too long or no text', async () => {
    expect((await form.save(Buffer.alloc(1024 * 1024 + 1, 'a'))).status).toBe(413)
    expect((await form.save(Buffer.from([0xff, 0xfe, 0x00]))).status).toBe(400)
    expect(await form.onDisk()).toBe(text)
  })

  it('writes through no link that leads out of the folder', async () => {
    await rm(path.join(form.folder, 'facility.yaml'))
    await writeFile(path.join(form.root, 'elsewhere.yaml'), 'name: theirs\n')
    await symlink(path.join(form.root, 'elsewhere.yaml'), path.join(form.folder, 'facility.yaml'))
    const { status } = await form.save('name: mine\n', { 'if-match': '"none"' })
    expect(status).toBe(422)
    expect(await readFile(path.join(form.root, 'elsewhere.yaml'), 'utf8')).toBe('name: theirs\n')
  })

  it.each(['/%', '/%E0%A4%A', '//', '/state/', '/nothing', '/made/', '/made/../state/x'])(
    'survives a request for %s',
    async (asked) => {
      expect([400, 404]).toContain((await form.asPage(asked)).status)
      expect((await form.asPage('/')).status).toBe(200)
    },
  )

  it('keeps a draft until it is saved', async () => {
    const draft = async () => JSON.parse((await form.asPage('/state')).body).open.draft
    const keep = { method: 'PUT', headers: { 'content-type': 'application/json' } }
    const half = { 'facility.yaml': 'name: half', 'depths.csv': 'half a table' }
    const body = JSON.stringify({ ...half, '../elsewhere.csv': 'x', 'levels.csv': 7 })
    expect((await form.asPage('/draft', { ...keep, body })).status).toBe(204)
    expect(await form.onDisk()).toBe(text)
    await form.restart(form.folder)
    expect(await draft()).toEqual(half)
    await form.save('name: whole\n')
    expect(await draft()).toEqual({ 'depths.csv': 'half a table' })
    await form.saveTable('depth (in)\n1 in\n')
    expect(await draft()).toBeUndefined()
    for (const wrong of ['half', '7', 'null'])
      expect([204, 400]).toContain((await form.asPage('/draft', { ...keep, body: wrong })).status)
    expect(await draft()).toBeUndefined()
  })

  it('makes the manual, tells how far it is, and shows it', async () => {
    expect((await form.asPage('/made/')).status).toBe(404)
    expect(
      (await form.asPage('/manual', { method: 'POST', headers: { origin: 'null' } })).status,
    ).toBe(403)
    const { body, headers } = await form.asPage('/manual', { method: 'POST' })
    expect(headers['content-type']).toBe('text/event-stream')
    expect([...body.matchAll(/^data: (.*)$/gm)].map((m) => JSON.parse(m[1] ?? '').kind)).toEqual([
      'stage',
      'made',
    ])
    expect(form.made).toEqual([form.folder])
    const page = await form.asPage('/made/')
    expect(page).toMatchObject({ status: 200, body: 'the manual' })
    expect(page.headers['content-security-policy']).toContain("default-src 'self'")
    for (const asked of [
      '/made/a',
      '/made/a/',
      '/made/link.txt',
      '/made/..%2f..%2fsecret.txt',
      '/made/..%5c..%5csecret.txt',
      '/made/%2e%2e/%2e%2e/secret.txt',
      '/made/index.html%00.txt',
      '/made//index.html',
    ])
      expect(await form.asPage(asked)).toMatchObject({ status: expect.toSatisfy((n) => n >= 400) })
    expect((await form.ask('/made/')).status).toBe(403)
    const worker = { headers: { 'service-worker': 'script' } }
    expect((await form.asPage('/made/index.html', worker)).status).toBe(404)
  })
})
