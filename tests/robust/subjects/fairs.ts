import { madeFair, textOfFair } from '../fairs/made-fair.ts'
import type { Files } from '../ground.ts'
import { nonsenseIn } from '../judge/nonsense.ts'
import { mutate } from '../mutations/mutate.ts'
import { inFolder, lookAtFolder } from './facility-folder.ts'
import type { Subject } from './subject.ts'

/** How often a fair stays as it was made; the rest is changed as other facility files are. */
const asMade = 0.7

/** A facility that nobody has, in the whole library: its pages say nothing absurd. */
export const fairs: Subject = async (ground, chance) => {
  const text = Buffer.from(textOfFair(madeFair(chance)))
  const { file, by } = chance.happens(asMade)
    ? { file: text, by: ['made'] }
    : mutate(text, 'entries', chance)
  const files: Files = new Map([['facility.yaml', file]])
  const isOurs = by[0] === 'made'
  const seen = await inFolder(ground, files, (root) =>
    lookAtFolder(root, files, ground.whole, ground, chance, isOurs ? nonsenseIn : undefined),
  )
  return { file: 'a made fair', by, ...seen }
}
