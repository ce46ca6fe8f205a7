/** Events of a stream (`text/event-stream`), each the data of one message. */
export async function* eventsOf(stream: ReadableStream<Uint8Array>): AsyncGenerator<string> {
  const reader = stream.getReader()
  const decoder = new TextDecoder()
  let waiting = ''
  for (;;) {
    const { value, done } = await reader.read()
    if (done) return
    waiting += decoder.decode(value, { stream: true })
    const messages = waiting.split('\n\n')
    waiting = messages.pop() ?? ''
    for (const message of messages)
      if (message.startsWith('data: ')) yield message.slice('data: '.length)
  }
}
