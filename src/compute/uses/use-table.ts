import type { Calculation } from '../calculation.ts'
import { coverage } from '../coverage/coverage.ts'
import { rolling } from '../coverage/rolling.ts'
import { cushionMass } from '../cushion/cushion-mass.ts'
import { layerOrder, layerOrderUnpriced } from '../cushion/layer-order.ts'
import { surveyReadings } from '../cushion/survey-readings.ts'
import { daylight } from '../daylight/daylight.ts'
import { sheetFlow } from '../drainage/sheet-flow.ts'
import { baseDensity } from '../materials/base-density.ts'
import { sieveAnalysis } from '../materials/sieve-analysis.ts'
import { stonePile } from '../materials/stone-pile.ts'
import { haul } from '../money/haul.ts'
import { machineHour } from '../money/machine-hour.ts'
import { raceDayCost } from '../money/race-day-cost.ts'
import {
  evenCost,
  materialCost,
  seasonCost,
  seasonCostUnset,
  takeOffCost,
} from '../money/season-cost.ts'
import { taskCost } from '../money/task-cost.ts'
import { tractorFuel } from '../money/tractor-fuel.ts'
import { tractorPower } from '../money/tractor-power.ts'
import { banking } from '../oval/banking.ts'
import { edgeRise } from '../oval/edge-rise.ts'
import { lapExtra } from '../oval/lap-extra.ts'
import { outsideLength } from '../oval/outside-length.ts'
import { pylons } from '../oval/pylons.ts'
import { railLength } from '../oval/rail-length.ts'
import { fittedShape } from '../oval/rail-line/fitted-shape.ts'
import { walkedLine } from '../oval/rail-line/walked-line.ts'
import { shapeFromLapAndRadius } from '../oval/shape-from-lap-and-radius.ts'
import { shapeFromLapAndStraight } from '../oval/shape-from-lap-and-straight.ts'
import { shapeFromStraightAndRadius } from '../oval/shape-from-straight-and-radius.ts'
import { stationCount } from '../oval/station-count.ts'
import { trackArea } from '../oval/track-area.ts'
import { turnLength } from '../oval/turn-length.ts'
import { crewDay } from '../people/crew-day.ts'
import { lesson } from '../people/lesson.ts'
import { wheelDays } from '../people/wheel-days.ts'
import { creep } from '../pullback/creep.ts'
import { ridge } from '../pullback/ridge.ts'
import { ridgeWater } from '../pullback/ridge-water.ts'
import { betweenRaces } from '../racing/between-races.ts'
import { intervalClock } from '../racing/interval-clock.ts'
import { raceDayClock } from '../racing/race-day-clock.ts'
import { raceDayWater, raceDayWaterFromStore } from '../racing/race-day-water.ts'
import { baseCut } from '../repairs/base-cut.ts'
import { excess, excessHauled } from '../repairs/excess.ts'
import { graderBooking } from '../repairs/grader-booking.ts'
import { gritBlend } from '../repairs/grit-blend.ts'
import { missingDepth, missingDepthUnpriced } from '../repairs/missing-depth.ts'
import { squareCut } from '../repairs/square-cut.ts'
import { drinkingWater } from '../safety/drinking-water.ts'
import { heatShift } from '../safety/heat-shift.ts'
import { letterHeight } from '../safety/letter-height.ts'
import { lifting } from '../safety/lifting.ts'
import { lightning } from '../safety/lightning.ts'
import { noise } from '../safety/noise.ts'
import { powerLine } from '../safety/power-line.ts'
import { silica } from '../safety/silica.ts'
import { truckOnBank } from '../safety/truck-on-bank.ts'
import { contactPressure } from '../sealing/contact-pressure.ts'
import { sealingTime } from '../sealing/sealing-time.ts'
import { depthBalance } from '../survey/depth-balance.ts'
import { depthSurvey } from '../survey/depth-survey.ts'
import { levelSurvey } from '../survey/level-survey.ts'
import { dailyDemand } from '../water/daily-demand.ts'
import { fleet, fleetOfThree, fleetOfTwo } from '../water/fleet.ts'
import { moistureByTruck, moistureToAdd, onePoint } from '../water/moisture.ts'
import { waterRound, waterRoundOfThree, waterRoundOfTwo } from '../water/round.ts'
import { storeDay } from '../water/store.ts'
import { raceDaySupply, sprayPass, tankRun, truckCycle } from '../water/truck.ts'
import { chill } from '../weather/chill.ts'
import { drying } from '../weather/drying.ts'
import { dryingClock } from '../weather/drying-clock.ts'
import { heat } from '../weather/heat.ts'
import { layerDrying } from '../weather/layer-drying.ts'
import { rainBalance } from '../weather/rain-balance.ts'
import {
  evapotranspiration,
  evapotranspirationByTemperature,
} from '../weather/reference-evapotranspiration.ts'
import { weatherRecord } from '../weather/weather-record.ts'
import { sampleReadings } from './readings.ts'

/**
 * Every worksheet that there can be, by the id of its use, with the calculations that it may show;
 * where there are several, the facility's facts decide which. What a use is called, and its number,
 * stand in content/worksheets. Calculations over readings are made here with samples: only what
 * they declare is looked at.
 */
export const useTable = {
  shape: [shapeFromLapAndRadius, shapeFromStraightAndRadius, shapeFromLapAndStraight],
  rail: [railLength],
  outside: [outsideLength],
  foot: [lapExtra],
  turn: [turnLength],
  area: [trackArea],
  stations: [stationCount],
  rise: [edgeRise],
  banking: [banking],
  cushion: [cushionMass],
  quarter: [layerOrder, layerOrderUnpriced],
  survey: [surveyReadings],
  levels: [levelSurvey(sampleReadings.levels)],
  depths: [depthSurvey(sampleReadings.depths)],
  balance: [depthBalance(sampleReadings.depths)],
  sieve: [sieveAnalysis(sampleReadings.sieve)],
  packing: [baseDensity(sampleReadings.densities)],
  grade: [coverage],
  'grade-band': [coverage],
  'draw-in': [coverage],
  harrow: [coverage],
  screen: [coverage],
  roll: [rolling],
  drum: [coverage],
  condition: [coverage],
  spray: [coverage],
  creep: [creep],
  ridge: [ridgeWater, ridge],
  layer: [moistureToAdd, moistureByTruck],
  point: [onePoint],
  pass: [sprayPass],
  record: [weatherRecord(sampleReadings.weather)],
  round: [waterRound, waterRoundOfTwo, waterRoundOfThree],
  fleet: [fleet, fleetOfTwo, fleetOfThree],
  cycle: [truckCycle],
  calibrate: [tankRun],
  rain: [rainBalance],
  'rain-flattened': [rainBalance],
  'rain-rolled': [rainBalance],
  back: [dryingClock],
  'back-flattened': [dryingClock],
  'back-rolled': [dryingClock],
  'layer-dry': [layerDrying],
  supply: [raceDaySupply],
  store: [storeDay],
  seal: [sealingTime],
  press: [contactPressure],
  air: [evapotranspiration, evapotranspirationByTemperature],
  dry: [drying],
  heat: [heat],
  daylight: [daylight],
  demand: [dailyDemand],
  bank: [truckOnBank],
  newcomer: [heatShift],
  drinks: [drinkingWater],
  washout: [squareCut],
  deep: [excess, excessHauled],
  hard: [missingDepth, missingDepthUnpriced],
  'base-cut': [baseCut],
  grit: [gritBlend],
  drain: [sheetFlow],
  between: [betweenRaces],
  gap: [intervalClock],
  break: [intervalClock],
  'grade-cost': [taskCost],
  'band-cost': [taskCost],
  'harrow-cost': [taskCost],
  'screen-cost': [taskCost],
  'roll-cost': [taskCost],
  'round-cost': [taskCost],
  'load-cost': [taskCost],
  'haul-cost': [taskCost],
  'deep-cost': [takeOffCost],
  'grit-cost': [materialCost],
  'even-cost': [evenCost],
  season: [seasonCost, seasonCostUnset],
  booking: [graderBooking],
  'harrow-fuel': [tractorFuel],
  'screen-fuel': [tractorFuel],
  'grade-fuel': [tractorFuel],
  'harrow-hour': [machineHour],
  'screen-hour': [machineHour],
  'spray-hour': [machineHour],
  'grade-hour': [machineHour],
  'harrow-power': [tractorPower],
  haul: [haul],
  pile: [stonePile],
  pylons: [pylons],
  chill: [chill],
  clock: [raceDayClock],
  'day-water': [raceDayWaterFromStore, raceDayWater],
  'race-day': [raceDayCost],
  'crew-day': [crewDay],
  noise: [noise],
  silica: [silica],
  lift: [lifting],
  line: [powerLine],
  thunder: [lightning],
  letters: [letterHeight],
  walked: [walkedLine],
  fitted: [fittedShape],
  lesson: [lesson],
  'wheel-harrow': [wheelDays],
  'wheel-truck': [wheelDays],
} as const satisfies Readonly<Record<string, readonly Calculation[]>>
