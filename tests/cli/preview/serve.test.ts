import http from 'node:http'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Shown } from '../../../src/cli/preview/answer.ts'
import { type Served, serve } from '../../../src/cli/preview/serve.ts'

let faults: string | undefined
let server: Served

const shown = (): Shown => ({
  files: new Map([
    ['index.html', () => '<body>hello</body>'],
    ['a/b.html', () => '<body>b</body>'],
  ]),
  faults,
})

beforeEach(async () => {
  faults = undefined
  server = await serve(shown, 0)
})
afterEach(() => server.close())

type Reply = { readonly status: number | undefined; readonly body: string }

/** A request as it stands, without what a browser would put right before sending. */
function ask(path: string, options: http.RequestOptions = {}): Promise<Reply> {
  const { port } = new URL(server.address)
  return new Promise((resolve, reject) => {
    const request = http.request({ host: '127.0.0.1', port, path, ...options }, (response) => {
      let body = ''
      response.on('data', (chunk: Buffer) => {
        body += chunk.toString()
      })
      response.on('end', () => resolve({ status: response.statusCode, body }))
    })
    request.on('error', reject).end()
  })
}

describe('serve', () => {
  it('gives the pages that are shown now, with what makes them load again', async () => {
    expect(await ask('/')).toMatchObject({ status: 200, body: expect.stringContaining('hello') })
    expect((await ask('/')).body).toContain('EventSource')
    expect((await ask('/a/b.html')).body).toContain('b')
  })

  it('lists faults instead of an old page, as text', async () => {
    faults = 'facility.yaml:1:1: error: <bad>'
    expect((await ask('/')).body).toContain('error: &lt;bad&gt;')
  })

  it('tells open pages of a change', async () => {
    const stream = (
      await fetch(new URL('/changes-of-this-preview', server.address))
    ).body?.getReader()
    server.changed()
    const chunks = [await stream?.read(), await stream?.read()]
    expect(chunks.map((c) => new TextDecoder().decode(c?.value)).join('')).toContain(
      'data: changed',
    )
    await stream?.cancel()
  })

  it.each(['fair.example', 'fair.example:80', '127.0.0.1', 'localhost:1', '[::1]:80'])(
    'answers nobody who calls it %s, so that a name led here by a hostile page reads nothing',
    async (host) => {
      for (const path of ['/', '/changes-of-this-preview'])
        expect(await ask(path, { headers: { host } })).toMatchObject({
          status: 421,
          body: expect.not.stringContaining('hello'),
        })
    },
  )

  it('answers to its address by number and by name', async () => {
    const { port } = new URL(server.address)
    expect((await ask('/', { headers: { host: `localhost:${port}` } })).status).toBe(200)
  })

  it.each([
    ['/%', 400],
    ['/%E0%A4%A', 400],
    ['//', 400],
    ['/../../etc/passwd', 404],
    ['/..%2f..%2fetc%2fpasswd', 404],
    ['/a/b.html%00.txt', 404],
    ['/nothing.html', 404],
  ])('survives a request for %s', async (path, status) => {
    expect((await ask(path)).status).toBe(status)
    expect((await ask('/')).status).toBe(200)
  })

  it('only lets pages be read', async () => {
    expect((await ask('/', { method: 'POST' })).status).toBe(405)
    expect(await ask('/', { method: 'HEAD' })).toEqual({ status: 200, body: '' })
  })

  it('says so when the port is taken', async () => {
    const port = Number(new URL(server.address).port)
    await expect(serve(shown, port)).rejects.toThrow('EADDRINUSE')
  })
})
