import { emergencySheet } from '../../../model/sheet-names.ts'
import { emergencyView } from '../../views/emergency-view.ts'
import { facilityView } from '../../views/facility-view.ts'
import { hazardsView } from '../../views/hazards-view.ts'
import { signalView } from '../../views/signal-view.ts'
import type { SitePage } from '../page.ts'
import { offeredFile, sheetFile } from '../papers.ts'

export const safety: SitePage = {
  id: 'safety',
  words: ['menu', 'link', 'about'],
  door: true,
  data: ({ manual, pen }) => ({
    signals: signalView(pen),
    at: facilityView(manual, pen),
  }),
}

export const emergency: SitePage = {
  id: 'emergency',
  words: [],
  under: 'safety',
  data: ({ pen, printed, words }) => ({
    emergency: emergencyView(pen, 'screen'),
    sheet: offeredFile(sheetFile(emergencySheet), printed, words),
  }),
}

export const hazards: SitePage = {
  id: 'hazards',
  words: [],
  under: 'safety',
  data: ({ manual, pen }) => ({ hazards: hazardsView(manual, pen) }),
}
