import net from 'node:net'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { plain } from '../../../src/cli/loopback/guard.ts'
import { type Listening, listen, portFor } from '../../../src/cli/loopback/listen.ts'

/** So little that a test sees the end of it; a busy computer may keep others waiting for longer. */
const impatient = { headersTimeout: 60, requestTimeout: 120, connectionsCheckingInterval: 20 }

const serve = (patience?: typeof impatient): Promise<Listening> =>
  listen(
    async (request) => {
      if (request.url === '/bad') throw new Error('a fault of ours')
      for await (const _ of request) if (request.url === '/first') break
      return plain(200, 'fine')
    },
    0,
    patience,
  )

/** What comes back for some bytes of a request, which is never ended. */
function sent({ port }: Listening, bytes: string): Promise<string> {
  return new Promise((resolve) => {
    let said = ''
    const socket = net.connect(port, '127.0.0.1')
    socket.on('data', (chunk) => {
      said += String(chunk)
    })
    socket.on('error', () => undefined)
    socket.on('close', () => resolve(said))
    socket.write(bytes)
  })
}

const asked = async (server: Listening): Promise<number> =>
  (await fetch(new URL('/', server.address))).status

describe('listen to who sends slowly', () => {
  let server: Listening
  beforeEach(async () => {
    server = await serve(impatient)
  })
  afterEach(() => server.close())

  /** Whoever is taken for slow because the computer is asks once more. */
  const isAnswered = () =>
    expect.poll(() => asked(server).catch(String), { timeout: 120_000 }).toBe(200)

  it.each([
    ['half of a head', 'PUT /facility.yaml HTTP/1.1\r\nHost: x'],
    ['half of a body', 'PUT / HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\nContent-Length: 100\r\n\r\nhalf'],
  ])('ends who sends %s, and answers others meanwhile', async (_, bytes) => {
    const slow = sent(server, bytes.replace('PORT', String(server.port)))
    await isAnswered()
    expect(await slow).toMatch(/^HTTP\/1\.1 (?:408|500) |^$/)
    await isAnswered()
  })
})

describe('listen', () => {
  let server: Listening
  beforeEach(async () => {
    server = await serve()
  })
  afterEach(() => server.close())

  it.each(['GET / HTTP/1.1\r\n\r\n', 'nonsense\r\n\r\n', '\u0000\u0001\u0002\r\n\r\n'])(
    'answers %j with an error and goes on',
    async (bytes) => {
      expect(await sent(server, bytes)).toMatch(/^HTTP\/1\.1 4\d\d /)
      expect(await asked(server)).toBe(200)
    },
  )

  it('says no more of a fault of ours than that there was one', async () => {
    const answer = await fetch(new URL('/bad', server.address))
    expect(answer.status).toBe(500)
    expect(await answer.text()).not.toContain('a fault of ours')
    expect(await asked(server)).toBe(200)
  })
})

const silent = { err: () => undefined }

describe('portFor', () => {
  it.each(['-1', '65536', '80.5', 'http', ''])('takes %j for no port', (typed) => {
    const told: string[] = []
    expect(portFor(typed, { err: (words) => void told.push(words) })).toBeUndefined()
    expect(told).toEqual([`"${typed}" is no port; expected a number from 0 to 65535`])
  })
  it('takes whole numbers', () => {
    expect(portFor('0', silent)).toBe(0)
    expect(portFor('8080', silent)).toBe(8080)
  })
})
