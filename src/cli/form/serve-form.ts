import type { IncomingMessage, ServerResponse } from 'node:http'
import {
  draftFiles,
  type FormChoice,
  facilityFile,
  type MakingEvent,
  savedFiles,
} from '../../model/form-exchange.ts'
import type { FormPage } from '../load/load-form-page.ts'
import { type Answer, guardHeaders, pathOf, plain } from '../loopback/guard.ts'
import { type Listening, listen } from '../loopback/listen.ts'
import { userFault } from '../user-fault.ts'
import { isLetIn, isOwnPage, type Key, letIn } from './access.ts'
import type { Desk } from './desk.ts'
import { largest } from './facility-folder.ts'
import { madeFile, madePath } from './made-site.ts'

const json = (status: number, value: unknown): Answer => ({
  status,
  type: 'application/json',
  body: JSON.stringify(value),
})

const nothing = plain(404, 'There is nothing here')

/** The body of a request as UTF-8 text; undefined when it is longer than any facility file. */
async function bodyOf(request: IncomingMessage): Promise<string | undefined> {
  if (Number(request.headers['content-length'] ?? 0) > largest) return undefined
  const chunks: Buffer[] = []
  let length = 0
  for await (const chunk of request as AsyncIterable<Buffer>) {
    length += chunk.length
    if (length > largest) return undefined
    chunks.push(chunk)
  }
  return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(Buffer.concat(chunks))
}

/** The text that a page sends; or what is wrong with how it does. */
async function textFrom(request: IncomingMessage, type: string): Promise<string | Answer> {
  if ((request.headers['content-type'] ?? '').split(';')[0]?.trim() !== type)
    return plain(415, `Expected ${type}`)
  try {
    const text = await bodyOf(request)
    return text ?? { ...plain(413, 'Too long'), headers: { connection: 'close' } }
  } catch {
    return plain(400, 'This is no UTF-8 text')
  }
}

async function save(name: string, request: IncomingMessage, desk: Desk): Promise<Answer> {
  const seen = request.headers['if-match']
  if (seen === undefined) return plain(428, 'Expected If-Match')
  const text = await textFrom(request, name === facilityFile ? 'text/yaml' : 'text/csv')
  if (typeof text !== 'string') return text
  const result = await desk.save({ name, text, seen: seen.replace(/^"|"$/g, '') })
  if (result.kind === 'saved') return json(200, result)
  return json(result.kind === 'changed' ? 412 : 409, result)
}

async function keep(request: IncomingMessage, desk: Desk): Promise<Answer> {
  const text = await textFrom(request, 'application/json')
  if (typeof text !== 'string') return text
  try {
    await desk.keep(draftFiles(JSON.parse(text)))
    return { ...plain(204, ''), body: '' }
  } catch (error) {
    if (error instanceof SyntaxError) return plain(400, 'Expected JSON')
    throw error
  }
}

async function choose(request: IncomingMessage, desk: Desk): Promise<Answer> {
  const text = await textFrom(request, 'application/json')
  if (typeof text !== 'string') return text
  try {
    const { folder } = JSON.parse(text) as FormChoice
    if (folder !== 'new' && !Number.isInteger(folder)) return plain(400, 'Expected a folder')
    return (await desk.choose(folder)) ? json(200, await desk.state()) : nothing
  } catch {
    return plain(400, 'Expected JSON')
  }
}

async function make(response: ServerResponse, desk: Desk): Promise<'taken'> {
  response.writeHead(200, { ...guardHeaders, 'content-type': 'text/event-stream' })
  const tell = (event: MakingEvent): void => {
    response.write(`data: ${JSON.stringify(event)}\n\n`)
  }
  await desk.make(tell)
  response.end()
  return 'taken'
}

/** What the page asks to be done; only the page itself may. */
async function done(
  asked: string,
  request: IncomingMessage,
  response: ServerResponse,
  desk: Desk,
): Promise<Answer | 'taken'> {
  if (!isOwnPage(request)) return plain(403, 'Only the form itself may do this')
  const what = `${request.method} ${asked}`
  const name = savedFiles.find((file) => what === `PUT /${file}`)
  if (name !== undefined) return save(name, request, desk)
  if (what === 'PUT /draft') return keep(request, desk)
  if (what === 'POST /choice') return choose(request, desk)
  if (what === 'POST /manual') return make(response, desk)
  return nothing
}

async function shown(
  asked: string,
  request: IncomingMessage,
  desk: Desk,
  page: FormPage,
): Promise<Answer> {
  if (asked === '/')
    return {
      status: 200,
      type: 'text/html; charset=utf-8',
      body: page.html,
      headers: { 'content-security-policy': page.policy },
    }
  if (asked === '/state') return json(200, await desk.state())
  const site = desk.madeSite()
  // A worker would go on answering for this address when another fair is served there.
  const isWorker = request.headers['service-worker'] !== undefined
  if (site === undefined || isWorker || !asked.startsWith(madePath)) return nothing
  return madeFile(asked, site)
}

/**
 * Serves the form on the loopback address to whoever brings the key. It reads and writes what the
 * desk does, and nothing else.
 * @param port 0 lets the system choose one that is free.
 * @throws Error when the port is taken or not allowed.
 */
export const serveForm = (desk: Desk, page: FormPage, key: Key, port: number): Promise<Listening> =>
  listen(async (request, response, own) => {
    const { method = '', url = '/' } = request
    const asked = pathOf(url)
    if (asked === undefined) return plain(400, 'This address cannot be read')
    const entry = method === 'GET' ? letIn(url, key, own) : undefined
    if (entry) return entry
    if (!isLetIn(request, key, own))
      return plain(403, 'Open the form with the address that the program has printed')
    try {
      return method === 'GET' || method === 'HEAD'
        ? await shown(asked, request, desk, page)
        : await done(asked, request, response, desk)
    } catch (error) {
      const why = error instanceof RangeError ? error.message : userFault(error)
      if (why === undefined || response.headersSent) throw error
      return json(422, { kind: 'failed', why })
    }
  }, port)
