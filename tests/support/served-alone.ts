import { spawn } from 'node:child_process'
import http from 'node:http'
import net from 'node:net'

// Runs inside a network of its own: starts the program, fetches what it serves with everything that its
// first page asks for, and tells all of it as JSON: served-alone.mjs <start.mjs> <command> <folder>.

type Fetched = { readonly path: string; readonly status: number; readonly bytes: number }

const [start = '', command = '', folder = ''] = process.argv.slice(2)

/** The address that a command prints when it serves. */
function addressOf(child: ReturnType<typeof spawn>): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = ''
    const hear = (data: Buffer): void => {
      said += data.toString('utf8')
      const [address] = /http:\/\/\S+/.exec(said) ?? []
      if (address !== undefined) resolve(address)
    }
    child.stdout?.on('data', hear)
    child.stderr?.on('data', hear)
    child.once('exit', () => reject(new Error(said)))
  })
}

type Reply = { readonly status: number; readonly headers: http.IncomingHttpHeaders; body: string }

const ask = (url: URL, cookie: string): Promise<Reply> =>
  new Promise((resolve, reject) => {
    http
      .get(url, { headers: { cookie } }, (response) => {
        let body = ''
        response.on('data', (chunk: Buffer) => (body += chunk.toString('latin1')))
        response.on('end', () =>
          resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
        )
      })
      .once('error', reject)
  })

/** Why nothing outside can be reached: an address of TEST-NET-1 (RFC 5737). */
const outside = (): Promise<string> =>
  new Promise((resolve) => {
    const socket = net.connect({ host: '192.0.2.1', port: 80, timeout: 3000 })
    socket.once('connect', () => resolve('reached'))
    socket.once('timeout', () => resolve('no answer'))
    socket.once('error', (error: NodeJS.ErrnoException) => resolve(error.code ?? error.message))
  })

const child = spawn(process.execPath, [start, command, folder, '--no-open', '--port', '0'])
try {
  const address = new URL(await addressOf(child))
  let cookie = ''
  let first = await ask(address, cookie)
  if (first.status === 303) {
    cookie = (first.headers['set-cookie'] ?? []).map((c) => c.split(';')[0]).join('; ')
    first = await ask(new URL(first.headers.location ?? '/', address), cookie)
  }
  // Scripts hold markup that they make later.
  const page = first.body.replace(/<(script|style)\b([^>]*)>[\s\S]*?<\/\1>/g, '<$1$2></$1>')
  const asked = [...page.matchAll(/\s(?:src|href)="([^"#]+)/g)].map((m) => m[1] ?? '')
  const strange = asked.filter((href) => /^(?:https?:)?\/\//.test(href))
  const own = [...new Set(asked)].filter((href) => !/^[a-z]+:|^\/\//.test(href))
  const fetched: Fetched[] = []
  for (const href of own) {
    const { status, body } = await ask(new URL(href, new URL('/', address)), cookie)
    fetched.push({ path: href, status, bytes: body.length })
  }
  const told = { status: first.status, bytes: first.body.length, strange, fetched }
  console.log(JSON.stringify({ ...told, outside: await outside() }))
} finally {
  child.kill('SIGKILL')
}
