// The script of the lessons: one after another, with questions that come back until they are right.
import { learnPage } from './learn/learn-page.ts'

learnPage()
