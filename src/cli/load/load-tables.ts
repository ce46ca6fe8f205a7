import path from 'node:path'
import type { WeatherDay } from '../../model/weather.ts'
import type { CsvTable } from '../../read/read-csv.ts'
import { readCsv } from '../../read/read-csv.ts'
import type { Path } from '../../read/read-yaml.ts'
import { type Facility, surveyedOval } from '../../validate/check-facility.ts'
import { checkSurvey, type Survey } from '../../validate/check-survey.ts'
import { checkWeather } from '../../validate/check-weather.ts'
import { readText } from './read-text.ts'
import type { Loaded } from './read-tree.ts'

/** The facility folder, and what problems call it. */
export type FacilityRoot = { readonly root: string; readonly shown: string }

/** Reads one table; a file that is not there is a fault of the line that names it. */
async function loadTable(name: string, at: Path, { tree }: Facility, { root, shown }: FacilityRoot): Promise<Loaded<CsvTable>> {
  const text = await readText(path.join(root, name), path.posix.join(shown, name), root)
  if (text.value) return { ...readCsv(text.value), files: [text.value] }
  return { value: undefined, problems: text.problems.map((p) => tree.problem(tree.placeOf(at), p.code, p.message, p.hint === undefined ? {} : { hint: p.hint })), files: [] }
}

async function loadSurveys(facility: Facility, folder: FacilityRoot): Promise<Loaded<readonly Survey[]>> {
  const oval = surveyedOval(facility.file)
  const loaded = await Promise.all((facility.file.surveys ?? []).map(async (entry, i): Promise<Loaded<Survey>> => {
    const at: Path = ['surveys', i, 'file']
    const table = await loadTable(entry.file, at, facility, folder)
    if (!table.value || !oval) return { ...table, value: undefined }
    return { ...checkSurvey(table.value, entry.of, entry.by, facility.tree.placeOf(at), oval), files: table.files }
  }))
  return { value: loaded.flatMap((l) => l.value ?? []), problems: loaded.flatMap((l) => [...l.problems]), files: loaded.flatMap((l) => l.files) }
}

async function loadWeather(facility: Facility, folder: FacilityRoot): Promise<Loaded<readonly WeatherDay[]>> {
  if (!facility.file.weather) return { value: [], problems: [], files: [] }
  const table = await loadTable(facility.file.weather.file, ['weather', 'file'], facility, folder)
  return table.value ? { ...checkWeather(table.value), files: table.files } : { ...table, value: undefined }
}

/** Adds to a facility the tables of readings that its file names. */
export async function loadTables(facility: Facility, folder: FacilityRoot): Promise<Loaded<Facility>> {
  const [surveys, weather] = await Promise.all([loadSurveys(facility, folder), loadWeather(facility, folder)])
  return { value: { ...facility, surveys: surveys.value ?? [], weather: weather.value ?? [] }, problems: [...surveys.problems, ...weather.problems], files: [...surveys.files, ...weather.files] }
}
