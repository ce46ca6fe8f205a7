import path from 'node:path'
import type { WeatherDay } from '../../model/weather.ts'
import { readGeoJson } from '../../read/rail-line/read-geojson.ts'
import { readGpx } from '../../read/rail-line/read-gpx.ts'
import type { CsvTable } from '../../read/read-csv.ts'
import { readCsv } from '../../read/read-csv.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { SourceFile } from '../../read/source-file.ts'
import type { Facility } from '../../validate/check-facility.ts'
import { checkRailLine, type RailLine } from '../../validate/check-rail-line.ts'
import { checkSurvey, type Survey } from '../../validate/check-survey.ts'
import { checkWeather } from '../../validate/check-weather.ts'
import { readText } from './read-text.ts'
import type { Loaded } from './read-tree.ts'

/** The facility folder, and what problems call it. */
export type FacilityRoot = { readonly root: string; readonly shown: string }

/**
 * Reads a file that the facility file names; when it is not there, that is a fault of the line that
 * names it.
 */
async function loadNamed(
  name: string,
  at: Path,
  { tree }: Facility,
  { root, shown }: FacilityRoot,
): Promise<Loaded<SourceFile>> {
  const text = await readText(path.join(root, name), path.posix.join(shown, name), root)
  if (text.value) return { ...text, files: [text.value] }
  return {
    value: undefined,
    problems: text.problems.map((p) =>
      tree.problem(
        tree.placeOf(at),
        p.code,
        p.message,
        p.hint === undefined ? {} : { hint: p.hint },
      ),
    ),
    files: [],
  }
}

async function loadTable(
  name: string,
  at: Path,
  facility: Facility,
  folder: FacilityRoot,
): Promise<Loaded<CsvTable>> {
  const text = await loadNamed(name, at, facility, folder)
  return text.value ? { ...readCsv(text.value), files: text.files } : { ...text, value: undefined }
}

async function loadSurveys(
  facility: Facility,
  folder: FacilityRoot,
): Promise<Loaded<readonly Survey[]>> {
  const loaded = await Promise.all(
    (facility.file.surveys ?? []).map(async (entry, i): Promise<Loaded<Survey>> => {
      const at: Path = ['surveys', i, 'file']
      const table = await loadTable(entry.file, at, facility, folder)
      if (!table.value) return { ...table, value: undefined }
      return {
        ...checkSurvey(table.value, entry.of, entry.by, facility.tree.placeOf(at)),
        files: table.files,
      }
    }),
  )
  return {
    value: loaded.flatMap((l) => l.value ?? []),
    problems: loaded.flatMap((l) => [...l.problems]),
    files: loaded.flatMap((l) => l.files),
  }
}

async function loadWeather(
  facility: Facility,
  folder: FacilityRoot,
): Promise<Loaded<readonly WeatherDay[]>> {
  if (!facility.file.weather) return { value: [], problems: [], files: [] }
  const table = await loadTable(facility.file.weather.file, ['weather', 'file'], facility, folder)
  return table.value
    ? { ...checkWeather(table.value), files: table.files }
    : { ...table, value: undefined }
}

async function loadRailLine(
  facility: Facility,
  folder: FacilityRoot,
): Promise<Loaded<RailLine | undefined>> {
  const entry = facility.file.oval['rail-line']
  if (!entry) return { value: undefined, problems: [], files: [] }
  const at: Path = ['oval', 'rail-line', 'file']
  const text = await loadNamed(entry.file, at, facility, folder)
  if (!text.value) return { ...text, value: undefined }
  const read = entry.file.toLowerCase().endsWith('.gpx')
    ? readGpx(text.value)
    : readGeoJson(text.value)
  const checked = read.value
    ? checkRailLine(read.value, text.value, facility.file.place)
    : { value: undefined, problems: read.problems }
  return {
    value: checked.value && {
      points: checked.value,
      date: entry.date,
      by: entry.by,
      at: facility.tree.placeOf(at),
    },
    problems: checked.problems,
    files: text.files,
  }
}

/** Adds to a facility the tables of readings and the walked line that its file names. */
export async function loadTables(
  facility: Facility,
  folder: FacilityRoot,
): Promise<Loaded<Facility>> {
  const [surveys, weather, railLine] = await Promise.all([
    loadSurveys(facility, folder),
    loadWeather(facility, folder),
    loadRailLine(facility, folder),
  ])
  return {
    value: {
      ...facility,
      surveys: surveys.value ?? [],
      weather: weather.value ?? [],
      railLine: railLine.value,
    },
    problems: [...surveys.problems, ...weather.problems, ...railLine.problems],
    files: [...surveys.files, ...weather.files, ...railLine.files],
  }
}
