import { mkdirSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { facility } from '../../src/validate/schemas/facility.ts'
import { entriesPage } from './entries-page.ts'
import { takePictures } from './pictures.ts'

// Makes what the guide in docs/ takes from the program: the list of all entries, and pictures of
// the printed demo in dist/ (npm run manual before it):
// npm run guide

const docs = path.join(process.cwd(), 'docs')

mkdirSync(path.join(docs, 'pictures'), { recursive: true })
writeFileSync(path.join(docs, 'entries.md'), entriesPage(facility))
await takePictures(path.join(process.cwd(), 'dist', 'larkmoor'), path.join(docs, 'pictures'))
console.log('The list of entries and the pictures of docs/ are new.')
