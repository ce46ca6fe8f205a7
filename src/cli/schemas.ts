import path from 'node:path'
import type { OutputFile } from '../model/output-file.ts'
import { facilityJsonSchema, libraryJsonSchema } from '../validate/json-schema/json-schema.ts'
import { facility } from '../validate/schemas/facility.ts'
import { librarySchemas } from '../validate/schemas/library-schemas.ts'
import { writeFiles } from '../write/write-files.ts'
import { projectFolders } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'

/** Where the schemas of the project's own files lie, below the project. */
const schemasFolder = 'schemas'

const json = (schema: object): string => `${JSON.stringify(schema)}\n`

/** The schema that stands beside a facility file. */
export const facilitySchemaFile = (): OutputFile => ({
  path: 'facility.schema.json',
  data: json(facilityJsonSchema(facility)),
})

const libraryFiles = (): readonly OutputFile[] =>
  Object.entries(librarySchemas).map(([name, schema]) => ({
    path: `${name}.schema.json`,
    data: json(libraryJsonSchema(schema, `Ovalkeep: ${name}`)),
  }))

/**
 * Writes JSON Schemas, with which editors complete and check while one types: those of the library
 * and of the demos below the project, or the one of a facility into its folder.
 */
export async function schemas(folder: string | undefined, io: Io): Promise<ExitCode> {
  const target =
    folder === undefined
      ? path.join(projectFolders().project, schemasFolder)
      : path.resolve(io.cwd, folder)
  const files =
    folder === undefined ? [facilitySchemaFile(), ...libraryFiles()] : [facilitySchemaFile()]
  await writeFiles(target, files)
  io.out(
    `${files.length === 1 ? 'The schema' : `${files.length} schemas`} in ${path.relative(io.cwd, target) || '.'}; editors that read YAML schemas find it by the first line of a file.`,
  )
  return exit.fine
}
