import type { FacilityFiles, Saved } from '../contract.ts'

/** A file that a page may read and write, where its browser has that. */
export type Slot = {
  readonly read: () => Promise<string>
  readonly write: (text: string) => Promise<void>
}

type Given = {
  /** What the files say as they were opened. */
  readonly opened: FacilityFiles
  /** Files that were picked, by name. */
  readonly slots: ReadonlyMap<string, Slot>
  /** A new file; nothing where the page may not ask for one. @throws where somebody says no. */
  readonly newSlot: (name: string) => Promise<Slot | undefined>
  /** The last resort: the browser puts the file away. */
  readonly handOver: (name: string, text: string) => void
  /** Why nothing was written, in words. */
  readonly notWritten: string
}

/** Saves files one after the other where a page stands alone; nothing of others is written over. */
export function savingFiles({ opened, slots: picked, newSlot, handOver, notWritten }: Given) {
  const slots = new Map(picked)
  let saved = opened
  const known = (name: string, text: string): void => {
    saved = new Map([...saved, [name, text]])
  }
  const saveOne = async (name: string, text: string): Promise<Saved> => {
    try {
      const there = slots.get(name)
      const now = await there?.read()
      if (now !== undefined && now !== saved.get(name)) {
        known(name, now)
        return { kind: 'changed', file: name, text: now }
      }
      const slot = there ?? (await newSlot(name))
      if (slot) {
        slots.set(name, slot)
        await slot.write(text)
      } else handOver(name, text)
    } catch {
      return { kind: 'failed', why: notWritten }
    }
    known(name, text)
    return { kind: 'saved' }
  }
  return {
    /** What the files say now, as far as it is known. */
    saved: () => saved,
    /** Says what a file says that was added. */
    known,
    save: async (files: FacilityFiles): Promise<Saved> => {
      for (const [name, text] of files) {
        const result = await saveOne(name, text)
        if (result.kind !== 'saved') return result
      }
      return { kind: 'saved' }
    },
  }
}
