/** A piece of work that is done once, when it is first asked for. */
export function once<T>(work: () => Promise<T>): () => Promise<T> {
  let done: Promise<T> | undefined
  return () => {
    done ??= work()
    return done
  }
}
