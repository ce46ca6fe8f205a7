import { expect, it } from 'vitest'
import { symptomChartRows } from '../../../src/compose/schedules/symptom-chart.ts'
import type { ManualProcedure } from '../../../src/model/manual/procedure.ts'
import { contextFor, halfMile } from '../support/context.ts'

it('the symptom chart says the first check, and leads to each procedure once', async () => {
  const cause = (check: string, procedure: string) => ({ by: 'eye', check, cause: '', procedure })
  const context = await contextFor(
    halfMile,
    {},
    {
      symptoms: [
        {
          id: 's',
          says: 'It is cuppy.',
          looks: '',
          causes: [cause('Dig.', 'dry'), cause('Look.', 'worn'), cause('Ask.', 'dry')],
          stop: '',
        },
      ],
      procedures: ['dry', 'worn'].map((id) => ({ id, title: `Too ${id}` }) as ManualProcedure),
    },
  )
  expect(symptomChartRows(context)).toEqual([
    ['It is cuppy.', 'Dig.', '[Too dry](procedure:dry); [Too worn](procedure:worn)'],
  ])
})
