import { element } from '../../element.ts'

/** How long a browser may take to write a file down before its place is given up, ms. */
const patience = 60_000

/** Hands data to the browser as a file; it goes nowhere else. */
export function handOver(name: string, data: string | Uint8Array, type: string): void {
  const link = element('a')
  link.href = URL.createObjectURL(new Blob([data as BlobPart], { type }))
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), patience)
}
