import * as z from 'zod'
import { makingStages } from '../../../model/form-exchange.ts'
import { entries, group, holding } from './group.ts'

/** The page on which a facility file is filled in: where its file comes from and goes to. */
export const maker = z.strictObject({
  ...entries(
    'title',
    'lead',
    'newFair',
    'newAbout',
    'yours',
    'fair',
    'town',
    'noName',
    'saveFirst',
    'noPdfs',
    'programGone',
    'saveCopy',
    'copyAbout',
    'newAboutPage',
    'goOn',
    'goOnAbout',
    'openFile',
    'openAbout',
    'noFacility',
    'notWritten',
    'faults',
    'madeHere',
    'products',
    'saveOneAbout',
    'saveSiteAbout',
    'onlyProgram',
  ),
  stages: group(...makingStages),
  /** The folder in which a manual lies. */
  madeIn: holding('folder'),
  /** Files that are handed over, with their size in megabytes. */
  saveOne: holding('size'),
  saveSite: holding('size', 'pages'),
})
