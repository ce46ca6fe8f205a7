import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import http from 'node:http'
import os from 'node:os'
import path from 'node:path'
import { createDesk } from '../../../../src/cli/form/desk.ts'
import { draftsIn } from '../../../../src/cli/form/drafts.ts'
import { tagOf } from '../../../../src/cli/form/facility-folder.ts'
import { serveForm } from '../../../../src/cli/form/serve-form.ts'

const key = 'a-key-that-nobody-guesses'

/** What the facility file of the folder says at first. */
export const text = '# ours\nname: Our Fair\r\nphone: 555-0100\n'

type Reply = {
  readonly status: number | undefined
  readonly headers: http.IncomingHttpHeaders
  readonly body: string
}

type Asked = Omit<http.RequestOptions, 'headers'> & {
  readonly headers?: http.OutgoingHttpHeaders
  readonly body?: string | Buffer
}

/** A manual of one page, and a link out of its folder. */
async function makeManual(root: string): Promise<string> {
  const site = path.join(root, 'dist', 'site')
  await writeFile(path.join(root, 'secret.txt'), 'secret')
  await mkdir(path.join(site, 'a'), { recursive: true })
  await writeFile(path.join(site, 'index.html'), 'the manual')
  await symlink(path.join(root, 'secret.txt'), path.join(site, 'link.txt'))
  return site
}

/** The form, served for a folder of its own: `our-fair`, below `root`. */
export async function servedForm() {
  const root = await mkdtemp(path.join(os.tmpdir(), 'form-'))
  const folder = path.join(root, 'our-fair')
  const made: string[] = []
  await mkdir(folder)
  await writeFile(path.join(folder, 'facility.yaml'), text)
  await writeFile(path.join(folder, 'depths.csv'), 'depth (in)\n')
  await writeFile(path.join(folder, 'letter.docx'), 'private')
  const serve = (named: string | undefined) =>
    serveForm(
      createDesk({
        folder: named,
        home: path.join(root, 'home'),
        near: [path.join(root, 'near')],
        drafts: draftsIn(path.join(root, 'cache')),
        makeManual: async (of, tell) => {
          made.push(of)
          tell({ kind: 'stage', stage: 'print' })
          const site = await makeManual(root)
          tell({ kind: 'made', address: '/made/', where: 'there', why: '' })
          return site
        },
      }),
      { html: 'the form', policy: "default-src 'none'" },
      key,
      0,
    )
  let server = await serve(folder)
  const cookie = (): string => `ovalkeep-form-${server.port}=${key}`

  /** A request as it stands, without what a browser would put right before sending. */
  const ask = (asked: string, { body, ...options }: Asked = {}): Promise<Reply> =>
    new Promise((resolve, reject) => {
      const whole = { host: '127.0.0.1', port: server.port, path: asked, ...options }
      const request = http.request(whole, (response) => {
        let said = ''
        response.on('data', (chunk: Buffer) => {
          said += chunk.toString()
        })
        response.on('end', () =>
          resolve({ status: response.statusCode, headers: response.headers, body: said }),
        )
      })
      request.on('error', reject).end(body)
    })

  /** A request of the page itself. */
  const asPage = (asked: string, options: Asked = {}): Promise<Reply> => {
    const origin = `http://127.0.0.1:${server.port}`
    return ask(asked, { ...options, headers: { cookie: cookie(), origin, ...options.headers } })
  }

  return {
    root,
    folder,
    made,
    key,
    cookie,
    port: () => server.port,
    ask,
    asPage,
    save: (
      body: string | Buffer,
      headers: http.OutgoingHttpHeaders = {},
      asked = '/facility.yaml',
    ): Promise<Reply> =>
      asPage(asked, {
        method: 'PUT',
        body,
        headers: { 'content-type': 'text/yaml', 'if-match': `"${tagOf(text)}"`, ...headers },
      }),
    saveTable: (
      body: string | Buffer,
      headers: http.OutgoingHttpHeaders = {},
      asked = '/depths.csv',
    ): Promise<Reply> => {
      const seen = `"${tagOf('depth (in)\n')}"`
      const given = { 'content-type': 'text/csv', 'if-match': seen, ...headers }
      return asPage(asked, { method: 'PUT', body, headers: given })
    },
    inFolder: (name: string) => readFile(path.join(folder, name), 'utf8'),
    onDisk: () => readFile(path.join(folder, 'facility.yaml'), 'utf8'),
    /** Starts the program anew, for another folder or for none. */
    restart: async (named: string | undefined): Promise<void> => {
      await server.close()
      server = await serve(named)
    },
    close: async (): Promise<void> => {
      await server.close()
      await rm(root, { recursive: true, force: true })
    },
  }
}
