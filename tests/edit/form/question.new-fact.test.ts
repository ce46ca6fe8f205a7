import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { build } from 'esbuild'
import { expect, it } from 'vitest'
import { parse } from 'yaml'
import type { aboutQuestion, questionsOf } from '../../../src/edit/form/question.ts'
import type { screensOf } from '../../../src/edit/form/subjects.ts'
import type { facility } from '../../../src/validate/schemas/facility.ts'
import type { form } from '../../../src/validate/schemas/form.ts'
import { folders } from '../../support/demo.ts'

type Sources = {
  readonly aboutQuestion: typeof aboutQuestion
  readonly questionsOf: typeof questionsOf
  readonly screensOf: typeof screensOf
  readonly facility: typeof facility
  readonly form: typeof form
}

const dust = {
  label: 'dust on a dry day',
  kind: 'share',
  range: ['0 %', '100 %'],
  howTo: 'Look along the track behind a horse.',
}

/** The sources as they are, with one fact more in the table. */
async function withOneMore(): Promise<Sources> {
  const { outputFiles } = await build({
    stdin: {
      contents: [
        'edit/form/question',
        'edit/form/subjects',
        'validate/schemas/facility',
        'validate/schemas/form',
      ]
        .map((file) => `export * from './src/${file}.ts'`)
        .join('\n'),
      resolveDir: folders.project,
    },
    bundle: true,
    write: false,
    format: 'esm',
    plugins: [
      {
        name: 'one-more',
        setup: ({ onLoad }) => {
          onLoad({ filter: /[\\/]shared[\\/]facts\.json$/ }, async ({ path: file }) => {
            const table = JSON.parse(await readFile(file, 'utf8')) as { facts: object }
            const facts = { ...table.facts, 'cushion.grit.dust': dust }
            return { contents: JSON.stringify({ ...table, facts }), loader: 'json' }
          })
        },
      },
    ],
  })
  const code = Buffer.from(outputFiles[0]?.contents ?? '').toString('base64')
  return (await import(`data:text/javascript;base64,${code}`)) as Sources
}

it('a fact that the table has from now on is asked for by itself, where its group is', async () => {
  const made = await withOneMore()
  const said = made.form.parse(
    parse(await readFile(path.join(folders.content, 'form.yaml'), 'utf8')),
  )
  const screen = made
    .screensOf(said, made.questionsOf(made.facility))
    .find(({ more }) => more.some((q) => q.path.join('.') === 'cushion.grit.dust'))
  expect(screen?.subject.id).toBe('cushion')
  const found = screen?.more.find((q) => q.path.at(-1) === 'dust')
  expect(found).toMatchObject({ kind: 'quantity', needed: false })
  expect(found && made.aboutQuestion(found, 'us')).toEqual({
    label: 'Dust on a dry day',
    howTo: 'Look along the track behind a horse.',
    example: '30 %',
  })
})
