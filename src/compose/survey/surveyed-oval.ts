import type { SurveyedOval } from '../../model/survey.ts'
import type { ComposeContext } from '../context.ts'

/** The shape and width that the survey's figures were worked with. */
export const surveyedOval = ({
  engine,
}: Pick<ComposeContext, 'engine'>): SurveyedOval | undefined =>
  engine.siOfAll({
    straight: 'shape.straight',
    radius: 'shape.radius',
    widthStraights: 'oval.width.straights',
    widthTurns: 'oval.width.turns',
  })
