/** What browsers of Chromium have beyond the types of the compiler: files that a page writes back. */
interface FilePicking {
  readonly multiple?: boolean
  readonly suggestedName?: string
}

interface Window {
  readonly showOpenFilePicker?: (wanted: FilePicking) => Promise<FileSystemFileHandle[]>
  readonly showSaveFilePicker?: (wanted: FilePicking) => Promise<FileSystemFileHandle>
}
